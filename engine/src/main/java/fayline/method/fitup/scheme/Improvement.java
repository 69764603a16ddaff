package fayline.method.fitup.scheme;

/**
 * One thing that could be done better, and what it would bring.
 *
 * @param kind what sort of thing
 * @param about the cause, the stop or the reading
 * @param alongMm how far the stop goes along its edge, counter-clockwise seen from outside; zero where it stays
 * @param chanceBefore chance of all gaps now, over the points that comparisons share
 * @param chanceAfter chance then
 * @param worstBeforeMm standard deviation of the worst station now
 * @param worstAfterMm standard deviation of that station then
 */
public record Improvement(
        Kind kind,
        String about,
        double alongMm,
        double chanceBefore,
        double chanceAfter,
        double worstBeforeMm,
        double worstAfterMm) {
    /** Sorts of improvement. */
    public enum Kind {
        /** Halve an error: a better spacer, a closer pin. */
        HALVE,
        /** Set a stop elsewhere along its edge. */
        SET_ELSEWHERE,
        /** Read the worst station twice more, so that the mean of three counts. */
        READ_AGAIN
    }

    /** By how much the chance rises. */
    public double gain() {
        return chanceAfter - chanceBefore;
    }
}
