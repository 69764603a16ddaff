package fayline.method.tube;

/**
 * A test bend of a piece of the tube that will be used.
 *
 * @param setRad what the bender was set to, above 0 and below pi
 * @param gotRad what the piece kept when it was taken out, above 0 and at most what was set
 */
public record TrialBend(double setRad, double gotRad) {
    /**
     * Refuses what no bend can give.
     *
     * @throws IllegalArgumentException naming the rule that is broken
     */
    public TrialBend {
        if (!(setRad > 0 && setRad < Math.PI)) {
            throw new IllegalArgumentException(
                    "a bender is set between 0 and 180 deg, found " + Math.toDegrees(setRad) + " deg");
        }
        if (!(gotRad > 0 && gotRad <= setRad)) {
            throw new IllegalArgumentException("a bend springs back: it keeps more than 0 and at most the "
                    + Math.toDegrees(setRad) + " deg it was set to, found " + Math.toDegrees(gotRad) + " deg");
        }
    }
}
