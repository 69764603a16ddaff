package fayline.method.laminate;

/**
 * One layer of a stack: a ply, a cloth, a core, a sheet.
 *
 * @param lamina its material
 * @param thicknessM its thickness, m; positive
 * @param angleDeg from x counter-clockwise to the fibres, degrees
 */
public record Ply(Lamina lamina, double thicknessM, double angleDeg) {
    /**
     * Refuses what no layer can be.
     *
     * @throws IllegalArgumentException if the thickness is not positive or the angle no number
     */
    public Ply {
        LaminaRules.keep(LaminaRules.ofThickness(thicknessM));
        if (!Double.isFinite(angleDeg)) {
            throw new IllegalArgumentException("an angle of " + angleDeg);
        }
    }

    /** The same layer turned further. */
    public Ply turned(double deg) {
        return new Ply(lamina, thicknessM, angleDeg + deg);
    }
}
