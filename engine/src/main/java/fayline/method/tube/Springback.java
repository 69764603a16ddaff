package fayline.method.tube;

import java.util.List;

/**
 * How far to set the bender so that a bend comes out as wanted, from test bends of the same tube: the straight line through
 * them by least squares, kept = a + b set. Two bends of different angles are the least; with fewer a trial piece is asked for
 * (common practice, no source).
 *
 * @param offsetRad a
 * @param slope b, above nought
 * @param worstRad how far the worst test bend lies off the line
 * @param leastRad the smallest angle that was set
 * @param mostRad the largest angle that was set
 * @param bends how many test bends
 */
public record Springback(double offsetRad, double slope, double worstRad, double leastRad, double mostRad, int bends) {
    /** Test bends that are nearer than this in what was set tell no line. */
    private static final double LEAST_SPREAD_RAD = Math.toRadians(15);

    /** How many test bends there must be. */
    public static final int LEAST_BENDS = 2;

    /**
     * Draws the line through test bends.
     *
     * @throws IllegalArgumentException if they are too few, too near each other, or fall where more was set
     */
    public static Springback of(List<TrialBend> bends) {
        if (bends.size() < LEAST_BENDS) {
            throw new IllegalArgumentException("springback needs at least two test bends of this tube, found "
                    + bends.size() + ": bend a trial piece first");
        }
        double least = bends.stream().mapToDouble(TrialBend::setRad).min().orElseThrow();
        double most = bends.stream().mapToDouble(TrialBend::setRad).max().orElseThrow();
        if (most - least < LEAST_SPREAD_RAD) {
            throw new IllegalArgumentException("the test bends must lie at least 15 deg apart, found "
                    + Math.toDegrees(most - least) + " deg: bend one more");
        }
        double meanSet = bends.stream().mapToDouble(TrialBend::setRad).average().orElseThrow();
        double meanGot = bends.stream().mapToDouble(TrialBend::gotRad).average().orElseThrow();
        double with = 0;
        double own = 0;
        for (TrialBend b : bends) {
            with += (b.setRad() - meanSet) * (b.gotRad() - meanGot);
            own += (b.setRad() - meanSet) * (b.setRad() - meanSet);
        }
        double slope = with / own;
        if (!(slope > 0)) {
            throw new IllegalArgumentException(
                    "the more is set the more a bend keeps; these test bends say the opposite");
        }
        double offset = meanGot - slope * meanSet;
        double worst = bends.stream()
                .mapToDouble(b -> Math.abs(b.gotRad() - offset - slope * b.setRad()))
                .max()
                .orElseThrow();
        return new Springback(offset, slope, worst, least, most, bends.size());
    }

    /** What to set for a wanted angle, in radians. */
    public double setRad(double wantedRad) {
        return (wantedRad - offsetRad) / slope;
    }

    /** Whether a wanted angle lies within what was tested. */
    public boolean covers(double wantedRad) {
        double set = setRad(wantedRad);
        return set >= leastRad - 1e-12 && set <= mostRad + 1e-12;
    }
}
