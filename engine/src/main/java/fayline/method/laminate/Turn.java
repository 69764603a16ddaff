package fayline.method.laminate;

/** Cosine and sine of an angle in degrees, exact at quarter turns so that what is zero by symmetry is zero. */
record Turn(double cos, double sin) {
    private static final double QUARTER = 90;

    static Turn by(double angleDeg) {
        double quarters = angleDeg / QUARTER;
        if (quarters == Math.rint(quarters)) {
            int k = (int) (Math.round(quarters) & 3);
            return new Turn(k == 0 ? 1 : k == 2 ? -1 : 0, k == 1 ? 1 : k == 3 ? -1 : 0);
        }
        double a = Math.toRadians(angleDeg);
        return new Turn(Math.cos(a), Math.sin(a));
    }
}
