package fayline.method.joint;

/**
 * A bonded strip under heat in closed form ([chen-nelson1979], derived anew): beta^2 = G/t C, C = 1/S1 + 1/S2, and
 * h^2 / (D1 + D2) more where both may bow, h the distance of their middles; shear at the ends G d / (t beta) tanh(beta L / 2) with d
 * the difference of free growth; pull in the sheet's middle - d / C (1 - 1 / cosh(beta L / 2)).
 *
 * @param betaPerM how fast the shear dies away from an end
 * @param reach beta L / 2
 * @param shearPa shear stress of the adhesive at the ends, without sign
 * @param sheetPa mean stress in the middle of the sheet; positive in tension
 * @param framePa mean stress in the middle of the frame
 * @param sheetOuterPa stress on the sheet's free face, in its middle
 * @param sheetBondedPa stress on the sheet's bonded face, in its middle
 * @param sheetEndM how far an end of the sheet moves outward
 * @param frameEndM how far an end of the frame moves outward
 * @param freeM how far an end of the one would move against the other, were they not bonded; without sign
 * @param bowM bow over the length; 0 where they are held flat
 */
public record StripHeat(
        double betaPerM,
        double reach,
        double shearPa,
        double sheetPa,
        double framePa,
        double sheetOuterPa,
        double sheetBondedPa,
        double sheetEndM,
        double frameEndM,
        double freeM,
        double bowM) {
    static StripHeat of(BondedSheet b) {
        Adherend sheet = b.asHeld();
        Adherend frame = b.frame();
        double stiff = b.bond().shearPa() / b.bond().thicknessM();
        double axial = 1 / sheet.stretchNPerM() + 1 / frame.stretchNPerM();
        double arm = (sheet.thicknessM() + frame.thicknessM()) / 2 + b.bond().thicknessM();
        double bending = bending(sheet) + bending(frame);
        double compliance = axial + (b.heldFlat() ? 0 : arm * arm / bending);
        double beta = Math.sqrt(stiff * compliance);
        double half = b.lengthM() / 2;
        double reach = beta * half;
        double more = (sheet.alphaPerK() - frame.alphaPerK()) * b.heatK();
        double whole = -more / compliance;
        double pull = whole * (1 - 1 / Math.cosh(reach));
        double curve = b.heldFlat() ? 0 : pull * arm / bending;
        double face = sheet.modulusPa() * curve * sheet.thicknessM() / 2;
        double mean = half - Math.tanh(reach) / beta;
        double bow = b.heldFlat()
                ? 0
                : Math.abs(whole * arm / bending * (half * half / 2 - (1 - 1 / Math.cosh(reach)) / (beta * beta)));
        return new StripHeat(
                beta,
                reach,
                Math.abs(stiff * more / beta * Math.tanh(reach)),
                pull / sheet.thicknessM(),
                -pull / frame.thicknessM(),
                pull / sheet.thicknessM() - face,
                pull / sheet.thicknessM() + face,
                sheet.alphaPerK() * b.heatK() * half + whole / sheet.stretchNPerM() * mean,
                frame.alphaPerK() * b.heatK() * half - whole / frame.stretchNPerM() * mean,
                Math.abs(more) * half,
                bow);
    }

    private static double bending(Adherend a) {
        return a.modulusPa() * Math.pow(a.thicknessM(), 3) / 12;
    }

    /** The larger pull on a face of the sheet, 0 where there is none, in pascals. */
    public double tensionPa() {
        return Math.max(0, Math.max(sheetOuterPa, sheetBondedPa));
    }
}
