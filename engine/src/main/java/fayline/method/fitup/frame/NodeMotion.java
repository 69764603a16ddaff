package fayline.method.fitup.frame;

/**
 * How one node moves, or what acts on it: then the shifts are forces in N and the turns are moments in N mm.
 *
 * @param ux shift along x, mm
 * @param uy along y
 * @param uz along z
 * @param rx turn about x, rad
 * @param ry about y
 * @param rz about z
 */
public record NodeMotion(double ux, double uy, double uz, double rx, double ry, double rz) {
    /** The shift as an arm, in mm. */
    public FramePoint shift() {
        return new FramePoint(ux, uy, uz);
    }

    /**
     * How a point moves that a rigid arm joins to the node: u + φ × o.
     *
     * @param arm o, from node to point
     */
    public FramePoint at(FramePoint arm) {
        return new FramePoint(
                ux + ry * arm.zMm() - rz * arm.yMm(),
                uy + rz * arm.xMm() - rx * arm.zMm(),
                uz + rx * arm.yMm() - ry * arm.xMm());
    }

    /** The size of the shift, in mm. */
    public double sizeMm() {
        return shift().lengthMm();
    }
}
