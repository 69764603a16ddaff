package fayline.method.fitup;

import java.util.OptionalDouble;

/**
 * What is known and wanted at one station.
 *
 * @param station where
 * @param gapMm the gap as the part lies now
 * @param lowerMm least gap in tolerance
 * @param nominalMm the gap wanted
 * @param upperMm most gap in tolerance
 * @param minimumMm a gap that must never be undercut, where there is one
 * @param weight how much a millimetre here counts; positive
 * @param edge the edge of the part it lies on, empty where that is not known
 */
public record FitRow(
        Station station,
        double gapMm,
        double lowerMm,
        double nominalMm,
        double upperMm,
        OptionalDouble minimumMm,
        double weight,
        String edge) {
    /**
     * Checks order and weight.
     *
     * @throws IllegalArgumentException naming the station
     */
    public FitRow {
        if (!Double.isFinite(gapMm) || !Double.isFinite(nominalMm)) {
            throw new IllegalArgumentException(
                    "station " + station.id() + " has no gap: " + gapMm + " of " + nominalMm);
        }
        if (!(lowerMm <= upperMm)) {
            throw new IllegalArgumentException(
                    "station " + station.id() + " has its limits the wrong way round: " + lowerMm + " to " + upperMm);
        }
        if (!(weight > 0) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException("station " + station.id() + " has weight " + weight);
        }
    }

    /** A row of weight one and no minimum. */
    public static FitRow of(Station station, double gapMm, double lowerMm, double nominalMm, double upperMm) {
        return new FitRow(station, gapMm, lowerMm, nominalMm, upperMm, OptionalDouble.empty(), 1, "");
    }

    /** This row with another gap. */
    public FitRow withGap(double otherMm) {
        return new FitRow(station, otherMm, lowerMm, nominalMm, upperMm, minimumMm, weight, edge);
    }

    /**
     * The gap after a small move, to first order: g − (n · shift) − lever · turn.
     *
     * @param move the move
     * @param pivot its pivot
     */
    public double gapAfterMm(Move move, Spot pivot) {
        return gapMm
                - station.nx() * move.dxMm()
                - station.ny() * move.dyMm()
                - station.leverMm(pivot) * move.turnRad();
    }

    /**
     * The gap after a small move in space, to first order: g − m · shift − (r × m) · turn.
     *
     * @param move the move
     * @param pivot its pivot
     */
    public double gapAfterMm(SpaceMove move, Vector pivot) {
        return gapMm - move.alongMm(station.place(), station.normal(), pivot);
    }
}
