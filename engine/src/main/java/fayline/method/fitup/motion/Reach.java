package fayline.method.fitup.motion;

import fayline.method.fitup.Station;
import java.util.List;

/**
 * How far the stations of a part reach.
 *
 * @param lengthMm from the foremost to the hindmost, in mm
 * @param heightMm from the lowest to the highest, in mm
 */
public record Reach(double lengthMm, double heightMm) {
    /** The reach of some stations; none reach nowhere. */
    public static Reach of(List<Station> stations) {
        return new Reach(
                span(stations.stream().mapToDouble(s -> s.at().xMm()).toArray()),
                span(stations.stream().mapToDouble(s -> s.at().yMm()).toArray()));
    }

    private static double span(double[] places) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double p : places) {
            low = Math.min(low, p);
            high = Math.max(high, p);
        }
        return places.length == 0 ? 0 : high - low;
    }

    /** How far a turn carries the top fore or aft past the foot, in mm; not negative. */
    public double overHeightMm(double turnRad) {
        return heightMm * Math.abs(turnRad);
    }

    /** How far a turn carries one end up or down past the other, in mm; not negative. */
    public double overLengthMm(double turnRad) {
        return lengthMm * Math.abs(turnRad);
    }
}
