package fayline.method.fitup.chain;

import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;

/**
 * Where a bench frame lies in the final frame: p goes to R(turn) p + (x, y). Benches are seen from the same side as the part in
 * place, so nothing is mirrored.
 *
 * @param xMm where the bench's origin lies
 * @param yMm where the bench's origin lies
 * @param turnRad how far the bench's axes are turned, counter-clockwise
 */
public record Placement(double xMm, double yMm, double turnRad) {
    /** The bench frame is the final frame. */
    public static final Placement SAME = new Placement(0, 0, 0);

    /** Refuses what is no number. */
    public Placement {
        if (!Double.isFinite(xMm) || !Double.isFinite(yMm) || !Double.isFinite(turnRad)) {
            throw new IllegalArgumentException("no placement: " + xMm + ", " + yMm + " mm, " + turnRad + " rad");
        }
    }

    /** A place of the bench in the final frame. */
    public Spot toFinal(Spot bench) {
        double c = Math.cos(turnRad);
        double s = Math.sin(turnRad);
        return new Spot(c * bench.xMm() - s * bench.yMm() + xMm, s * bench.xMm() + c * bench.yMm() + yMm);
    }

    /** A place of the final frame on the bench. */
    public Spot toBench(Spot place) {
        double c = Math.cos(turnRad);
        double s = Math.sin(turnRad);
        double dx = place.xMm() - xMm;
        double dy = place.yMm() - yMm;
        return new Spot(c * dx + s * dy, -s * dx + c * dy);
    }

    /** A move told in the bench's axes, told in the final ones; the pivot is the same place. */
    public Move toFinal(Move bench) {
        double c = Math.cos(turnRad);
        double s = Math.sin(turnRad);
        return new Move(c * bench.dxMm() - s * bench.dyMm(), s * bench.dxMm() + c * bench.dyMm(), bench.turnRad());
    }

    /** A move told in the final axes, told in the bench's. */
    public Move toBench(Move move) {
        double c = Math.cos(turnRad);
        double s = Math.sin(turnRad);
        return new Move(c * move.dxMm() + s * move.dyMm(), -s * move.dxMm() + c * move.dyMm(), move.turnRad());
    }
}
