package fayline.basis.units;

/**
 * A span of elapsed time. Immutable; held in SI.
 *
 * @param seconds the value in seconds; finite
 */
public record TimeSpan(double seconds) implements Quantity, Comparable<TimeSpan> {
    private static final double MINUTES = 60;
    private static final double HOURS = 3600;
    private static final double DAYS = 86400;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public TimeSpan {
        Quantity.requireFinite("TimeSpan", seconds);
    }

    /** Makes a value from seconds. */
    public static TimeSpan ofSeconds(double seconds) {
        return new TimeSpan(seconds);
    }

    /** Makes a value from minutes. */
    public static TimeSpan ofMinutes(double minutes) {
        return new TimeSpan(minutes * MINUTES);
    }

    /** The value in minutes. */
    public double minutes() {
        return seconds / MINUTES;
    }

    /** Makes a value from hours. */
    public static TimeSpan ofHours(double hours) {
        return new TimeSpan(hours * HOURS);
    }

    /** The value in hours. */
    public double hours() {
        return seconds / HOURS;
    }

    /** Makes a value from days. */
    public static TimeSpan ofDays(double days) {
        return new TimeSpan(days * DAYS);
    }

    /** The value in days. */
    public double days() {
        return seconds / DAYS;
    }

    /** The sum of this and another. */
    public TimeSpan plus(TimeSpan other) {
        return new TimeSpan(seconds + other.seconds);
    }

    /** This less another. */
    public TimeSpan minus(TimeSpan other) {
        return new TimeSpan(seconds - other.seconds);
    }

    /** This times a plain number. */
    public TimeSpan times(double factor) {
        return new TimeSpan(seconds * factor);
    }

    @Override
    public double si() {
        return seconds;
    }

    @Override
    public int compareTo(TimeSpan other) {
        return Double.compare(seconds, other.seconds);
    }
}
