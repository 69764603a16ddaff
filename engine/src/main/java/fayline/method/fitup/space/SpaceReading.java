package fayline.method.fitup.space;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import java.util.OptionalDouble;

/**
 * One reading on a curved part, a gap or a flush, and what is wanted of it.
 *
 * @param station the mark at the bench
 * @param kind gap or flush
 * @param at where on the part edge, in mm
 * @param normal gap: unit normal from part to neighbour; flush: unit normal of the surface, outboard
 * @param valueMm the reading
 * @param lowerMm least in tolerance
 * @param nominalMm wanted
 * @param upperMm most in tolerance
 * @param minimumMm of a gap: what must never be undercut, where there is such a limit
 * @param weight how much a millimetre here counts; positive
 */
public record SpaceReading(
        String station,
        Kind kind,
        Vector at,
        Vector normal,
        double valueMm,
        double lowerMm,
        double nominalMm,
        double upperMm,
        OptionalDouble minimumMm,
        double weight) {
    private static final double LEAST_NORMAL = 1e-9;

    /** What is read. */
    public enum Kind {
        /** The gap along its normal. */
        GAP,
        /** The step along the surface normal, positive where the part stands proud. */
        FLUSH
    }

    /**
     * Makes the normal a unit vector and checks the rest.
     *
     * @throws IllegalArgumentException naming the station
     */
    public SpaceReading {
        if (!(normal.length() > LEAST_NORMAL)) {
            throw new IllegalArgumentException("station " + station + " has no direction: normal " + normal);
        }
        normal = normal.times(1 / normal.length());
        if (!Double.isFinite(valueMm) || !Double.isFinite(nominalMm)) {
            throw new IllegalArgumentException("station " + station + " reads " + valueMm + " of " + nominalMm);
        }
        if (!(lowerMm <= upperMm)) {
            throw new IllegalArgumentException(
                    "station " + station + " has its limits the wrong way round: " + lowerMm + " to " + upperMm);
        }
        if (!(weight > 0) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException("station " + station + " has weight " + weight);
        }
    }

    /** A reading without limits, of weight one. */
    public static SpaceReading of(
            String station, Kind kind, Vector at, Vector normal, double valueMm, double nominalMm) {
        return new SpaceReading(
                station,
                kind,
                at,
                normal,
                valueMm,
                Double.NEGATIVE_INFINITY,
                nominalMm,
                Double.POSITIVE_INFINITY,
                OptionalDouble.empty(),
                1);
    }

    /** The gap of a row. */
    public static SpaceReading gap(FitRow row) {
        return new SpaceReading(
                row.station().id(),
                Kind.GAP,
                row.station().place(),
                row.station().normal(),
                row.gapMm(),
                row.lowerMm(),
                row.nominalMm(),
                row.upperMm(),
                row.minimumMm(),
                row.weight());
    }

    /** A flush along the surface normal of a station, without limits, of weight one. */
    public static SpaceReading flush(Station at, double valueMm, double nominalMm) {
        return of(at.id(), Kind.FLUSH, at.place(), at.relief().surface(), valueMm, nominalMm);
    }

    /** The same reading with another weight. */
    public SpaceReading weighing(double each) {
        return new SpaceReading(station, kind, at, normal, valueMm, lowerMm, nominalMm, upperMm, minimumMm, each);
    }

    /** The same reading with other limits. */
    public SpaceReading within(double leastMm, double mostMm) {
        return new SpaceReading(station, kind, at, normal, valueMm, leastMm, nominalMm, mostMm, minimumMm, weight);
    }

    /** The same reading with a value that must never be undercut. */
    public SpaceReading atLeast(double mm) {
        return new SpaceReading(
                station, kind, at, normal, valueMm, lowerMm, nominalMm, upperMm, OptionalDouble.of(mm), weight);
    }

    /** The same reading with another value. */
    public SpaceReading reading(double mm) {
        return new SpaceReading(station, kind, at, normal, mm, lowerMm, nominalMm, upperMm, minimumMm, weight);
    }
}
