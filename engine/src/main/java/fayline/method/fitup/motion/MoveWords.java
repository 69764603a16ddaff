package fayline.method.fitup.motion;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells a move in the builder's words. The ways come from the side, so the same move of a part and of its opposite hand reads the
 * same. A shift hangs on the pivot, so the pivot is always named.
 *
 * @param side the side of the part
 * @param pivot the pivot of the moves
 * @param pivotName its name, as "the middle of the stations"
 */
public record MoveWords(Side side, Spot pivot, Phrase pivotName) {
    /** Half a thou: less is told to nobody, for no hand sets it. */
    private static final double LEAST_SHIFT_MM = 0.0127;

    /** What a gauge tells apart. */
    private static final double GAUGE_MM = 0.1;

    private static final double LEAST_TURN_DEG = 0.0005;

    /** Words of moves about a pivot whose name holds no amount. */
    public MoveWords(Side side, Spot pivot, String pivotName) {
        this(side, pivot, Phrase.plain(pivotName));
    }

    /** The whole move, as "0.6 mm aft, 0.2 mm up, turn 0.12 deg nose-up (2.1 mm per metre), about the middle of the stations". */
    public Phrase sentence(Move move) {
        List<Phrase> parts = parts(move);
        return parts.isEmpty()
                ? Phrase.plain("Leave it where it is")
                : Phrase.of("%s, about %s", Phrase.joined(", ", parts), pivotName);
    }

    /** Shift and turn, each as far as it is worth telling. */
    List<Phrase> parts(Move move) {
        List<Phrase> parts = shift(move.dxMm(), move.dyMm());
        Phrase turn = turn(move.turnRad());
        if (!turn.isEmpty()) {
            parts.add(turn);
        }
        return parts;
    }

    /** The turn alone, as "turn 0.12 deg nose-up (2.1 mm per metre)"; empty where there is none worth telling. */
    public Phrase turn(double turnRad) {
        double deg = Math.toDegrees(Math.abs(turnRad));
        if (deg < LEAST_TURN_DEG) {
            return Phrase.NONE;
        }
        return Phrase.of(
                deg < 0.1 ? "turn %.3f deg %s (%s)" : "turn %.2f deg %s (%s)",
                deg,
                side.turned(turnRad),
                Amount.slope(Math.abs(turnRad)));
    }

    /**
     * How far the turn alone carries one end of a part past the other, as "the turn makes 0.35 mm over the height of 400 mm, 0.79 mm
     * over the length of 900 mm"; empty where that is nothing worth telling.
     */
    public static Phrase turnAcross(double turnRad, Reach reach) {
        List<Phrase> parts = new ArrayList<>();
        if (reach.overHeightMm(turnRad) >= GAUGE_MM) {
            parts.add(Phrase.of(
                    "%s over the height of %s",
                    Amount.shiftMm(reach.overHeightMm(turnRad)), Amount.placeMm(reach.heightMm(), 0)));
        }
        if (reach.overLengthMm(turnRad) >= GAUGE_MM) {
            parts.add(Phrase.of(
                    "%s over the length of %s",
                    Amount.shiftMm(reach.overLengthMm(turnRad)), Amount.placeMm(reach.lengthMm(), 0)));
        }
        return parts.isEmpty() ? Phrase.NONE : Phrase.of("The turn makes %s.", Phrase.joined(", ", parts));
    }

    /** Where a marked point goes, as "upper aft corner goes 0.9 mm aft, 0.1 mm down". */
    public Phrase at(Move move, Spot place, String name) {
        Spot after = move.of(place, pivot);
        List<Phrase> shift = shift(after.xMm() - place.xMm(), after.yMm() - place.yMm());
        return shift.isEmpty()
                ? Phrase.plain(name + " stays")
                : Phrase.of("%s goes %s", name, Phrase.joined(", ", shift));
    }

    /** Moves of marked points that together say the whole move without its pivot. */
    public List<Phrase> at(Move move, List<Spot> places, List<String> names) {
        if (places.size() != names.size()) {
            throw new IllegalArgumentException(places.size() + " places but " + names.size() + " names");
        }
        List<Phrase> all = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            all.add(at(move, places.get(i), names.get(i)));
        }
        return List.copyOf(all);
    }

    List<Phrase> shift(double dxMm, double dyMm) {
        List<Phrase> parts = new ArrayList<>();
        if (Math.abs(dxMm) >= LEAST_SHIFT_MM) {
            parts.add(Phrase.of("%s %s", Amount.shiftMm(Math.abs(dxMm)), side.along(dxMm)));
        }
        if (Math.abs(dyMm) >= LEAST_SHIFT_MM) {
            parts.add(Phrase.of("%s %s", Amount.shiftMm(Math.abs(dyMm)), side.upward(dyMm)));
        }
        return parts;
    }
}
