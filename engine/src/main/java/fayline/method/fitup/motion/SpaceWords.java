package fayline.method.fitup.motion;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.basis.units.Measure;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Vector;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells a move in space in the builder's words: what of it lies in the plane as {@link MoveWords} does, then in or out and the tilts.
 *
 * @param side the side of the part
 * @param pivot the pivot of the moves, in mm
 * @param pivotName its name, as "the middle of the stations"
 */
public record SpaceWords(Side side, Vector pivot, Phrase pivotName) {
    /** Less than half of what a gauge tells apart is told to nobody; of a tilt, over a metre. */
    private static final double LEAST_MM = 0.05;

    /** Words of moves about a pivot whose name holds no amount. */
    public SpaceWords(Side side, Vector pivot, String pivotName) {
        this(side, pivot, Phrase.plain(pivotName));
    }

    private MoveWords inPlane() {
        return new MoveWords(side, new Spot(pivot.x(), pivot.y()), pivotName);
    }

    /** The whole move, as "0.6 mm aft, turn 0.12 deg nose-up (2.1 mm per metre), 0.3 mm outboard, about the middle of the stations". */
    public Phrase sentence(SpaceMove move) {
        List<Phrase> parts = new ArrayList<>(inPlane().parts(move.inPlane()));
        parts.addAll(lift(move));
        return parts.isEmpty()
                ? Phrase.plain("Leave it where it is")
                : Phrase.of("%s, about %s", Phrase.joined(", ", parts), pivotName);
    }

    /** What of a move leads out of the plane, as "0.3 mm outboard", "upper edge 1.2 mm per metre inboard"; none where it is nothing. */
    public List<Phrase> lift(SpaceMove m) {
        List<Phrase> parts = new ArrayList<>(outward(m.shiftMm().z()));
        tilt("upper edge", m.turnRad().x(), parts);
        // About y a positive turn takes what lies along x inboard: the aft end on a left part, the front one on a
        // right.
        tilt("aft end", side == Side.LEFT ? -m.turnRad().y() : m.turnRad().y(), parts);
        return parts;
    }

    private static void tilt(String what, double outRad, List<Phrase> parts) {
        if (Math.abs(outRad) * 1000 >= LEAST_MM) {
            parts.add(Phrase.of(
                    "%s %s %s",
                    what, new Amount(Measure.SLOPE, 1000 * Math.abs(outRad), 1, Amount.Manner.PLAIN), way(outRad)));
        }
    }

    private static List<Phrase> outward(double mm) {
        return Math.abs(mm) >= LEAST_MM
                ? List.of(Phrase.of("%s %s", Amount.shiftMm(Math.abs(mm)), way(mm)))
                : List.of();
    }

    private static String way(double out) {
        return out > 0 ? "outboard" : "inboard";
    }

    /** Where a marked point goes, as "upper aft corner goes 0.9 mm aft, 0.3 mm outboard". */
    public Phrase at(SpaceMove move, Vector place, String name) {
        Vector went = move.carries(place, pivot);
        List<Phrase> parts = new ArrayList<>(inPlane().shift(went.x(), went.y()));
        parts.addAll(outward(went.z()));
        return parts.isEmpty()
                ? Phrase.plain(name + " stays")
                : Phrase.of("%s goes %s", name, Phrase.joined(", ", parts));
    }
}
