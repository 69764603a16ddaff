package fayline.method.joint;

import java.util.OptionalDouble;

/**
 * A sheet bonded along its length to a frame that grows otherwise with heat.
 *
 * @param sheet the sheet
 * @param frame the frame
 * @param bond the adhesive
 * @param lengthM length of the bond; positive
 * @param heatK temperature less that at which the bond is free of stress
 * @param heldFlat whether the frame keeps both from bowing
 * @param allRound whether the sheet is bonded all round, so that it is held across as well
 * @param workingStrain shear strain that the adhesive may work at, where it is known
 */
public record BondedSheet(
        Adherend sheet,
        Adherend frame,
        Adhesive bond,
        double lengthM,
        double heatK,
        boolean heldFlat,
        boolean allRound,
        OptionalDouble workingStrain) {
    /**
     * Refuses what is no such bond.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public BondedSheet {
        if (!(lengthM > 0) || !Double.isFinite(lengthM + heatK)) {
            throw new IllegalArgumentException("a bond has a positive length and a finite change of temperature, found "
                    + lengthM + " m and " + heatK + " K");
        }
        if (lengthM < 4 * Math.max(sheet.thicknessM(), frame.thicknessM())) {
            throw new IllegalArgumentException("a strip is at least four thicknesses long, found " + lengthM + " m");
        }
        if (workingStrain.isPresent() && !(workingStrain.getAsDouble() > 0)) {
            throw new IllegalArgumentException("a working strain is positive, found " + workingStrain.getAsDouble());
        }
    }

    /** The sheet as it is pulled: stiffer by 1/(1 - nu) where it is held across as well. */
    Adherend asHeld() {
        return allRound
                ? new Adherend(
                        sheet.modulusPa() / (1 - sheet.poisson()),
                        sheet.poisson(),
                        sheet.thicknessM(),
                        sheet.shearPa(),
                        sheet.alphaPerK())
                : sheet;
    }

    BondedSheet withBond(double thicknessM) {
        Adhesive thicker =
                new Adhesive(bond.shearPa(), bond.modulusPa(), thicknessM, bond.yieldPa(), bond.plasticStrain());
        return new BondedSheet(sheet, frame, thicker, lengthM, heatK, heldFlat, allRound, workingStrain);
    }
}
