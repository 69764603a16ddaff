package fayline.method.fitup.motion;

import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Tells a move in the builder's words. The ways come from the side, so the same move of a part and of its opposite hand reads the
 * same. A shift hangs on the pivot, so the pivot is always named.
 *
 * @param side the side of the part
 * @param pivot the pivot of the moves
 * @param pivotName its name, as "the middle of the stations"
 */
public record MoveWords(Side side, Spot pivot, String pivotName) {
    private static final double LEAST_SHIFT_MM = 0.005;
    private static final double LEAST_TURN_DEG = 0.0005;

    /** The whole move, as "0.6 mm aft, 0.2 mm up, turn 0.12 deg nose-up (2.1 mm per metre), about the middle of the stations". */
    public String sentence(Move move) {
        List<String> parts = new ArrayList<>();
        String shift = shift(move.dxMm(), move.dyMm());
        if (!shift.isEmpty()) {
            parts.add(shift);
        }
        String turn = turn(move.turnRad());
        if (!turn.isEmpty()) {
            parts.add(turn);
        }
        return parts.isEmpty() ? "Leave it where it is" : String.join(", ", parts) + ", about " + pivotName;
    }

    /** The turn alone, as "turn 0.12 deg nose-up (2.1 mm per metre)"; empty where there is none worth telling. */
    public String turn(double turnRad) {
        double deg = Math.toDegrees(Math.abs(turnRad));
        if (deg < LEAST_TURN_DEG) {
            return "";
        }
        return String.format(
                Locale.ROOT,
                deg < 0.1 ? "turn %.3f deg %s (%s mm per metre)" : "turn %.2f deg %s (%s mm per metre)",
                deg,
                side.turned(turnRad),
                number(1000 * Math.abs(turnRad)));
    }

    /** Where a marked point goes, as "upper aft corner goes 0.9 mm aft, 0.1 mm down". */
    public String at(Move move, Spot place, String name) {
        Spot after = move.of(place, pivot);
        String shift = shift(after.xMm() - place.xMm(), after.yMm() - place.yMm());
        return name + (shift.isEmpty() ? " stays" : " goes " + shift);
    }

    /** Moves of marked points that together say the whole move without its pivot. */
    public List<String> at(Move move, List<Spot> places, List<String> names) {
        if (places.size() != names.size()) {
            throw new IllegalArgumentException(places.size() + " places but " + names.size() + " names");
        }
        List<String> all = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            all.add(at(move, places.get(i), names.get(i)));
        }
        return List.copyOf(all);
    }

    private String shift(double dxMm, double dyMm) {
        List<String> parts = new ArrayList<>();
        if (Math.abs(dxMm) >= LEAST_SHIFT_MM) {
            parts.add(number(Math.abs(dxMm)) + " mm " + side.along(dxMm));
        }
        if (Math.abs(dyMm) >= LEAST_SHIFT_MM) {
            parts.add(number(Math.abs(dyMm)) + " mm " + side.upward(dyMm));
        }
        return String.join(", ", parts);
    }

    private static String number(double value) {
        String s = String.format(Locale.ROOT, "%.2f", value);
        return s.endsWith("0") ? s.substring(0, s.length() - 1) : s;
    }
}
