package fayline.method.fitup.space;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;
import fayline.method.fitup.motion.FreeMotionWords;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Says in plain words which motion in space the readings do not know; as in the plane where a motion is one of it. */
public final class SpaceMotionWords {
    private static final double ALONG = 0.985;
    private static final double NEARLY = 0.9;
    private static final double SHIFT_SHARE = 0.1;

    /** A tilt of less than 0.05 mm per metre is told to nobody. */
    private static final double LEAST_TILT_RAD = 5e-5;

    /** The ways a builder would try; one for each unknown of a move, in their order. */
    private static final List<String> WAYS = List.of(
            "fore or aft",
            "up or down",
            "in or out",
            "tilting the upper edge in or out",
            "swinging the aft end in or out",
            "turning nose-up or nose-down");

    /** From this share on a way counts as open: more of it lies among the free motions than among the known ones. */
    private static final double MOSTLY = 0.5;

    private SpaceMotionWords() {}

    static Phrase free(SpaceMove direction, SpaceRows rows) {
        return mostlyShift(direction, rows)
                ? FreeMotionWords.unmeasured("in that direction", way(direction.shiftMm()))
                : Phrase.of("Turning about %s: no reading notices it.", axis(direction, rows.pivot()));
    }

    static Phrase several(int known) {
        return Phrase.plain(String.format(
                Locale.ROOT,
                "The readings know %d of the six motions of the part; the others were left alone.",
                known));
    }

    /**
     * Of several free motions together, which of the six plain ones they leave open.
     *
     * @param free unit moves square to each other, turns at the scale length
     */
    static Phrase open(List<SpaceMove> free, SpaceRows rows) {
        double[] share = new double[WAYS.size()];
        for (SpaceMove m : free) {
            double[] x = rows.unknowns(m);
            double size = Arrays.stream(x).map(v -> v * v).sum();
            for (int k = 0; k < share.length; k++) {
                share[k] += x[k] * x[k] / size;
            }
        }
        List<String> named = IntStream.range(0, share.length)
                .filter(k -> share[k] > MOSTLY)
                .mapToObj(WAYS::get)
                .toList();
        return named.isEmpty() ? Phrase.NONE : Phrase.plain("Not known: " + String.join(", ", named) + ".");
    }

    static Phrase weak(SpaceMove direction, SpaceRows rows) {
        return mostlyShift(direction, rows)
                ? FreeMotionWords.weakShift(way(direction.shiftMm()))
                : FreeMotionWords.weakTurn(axis(direction, rows.pivot()));
    }

    private static boolean mostlyShift(SpaceMove m, SpaceRows rows) {
        return rows.turnRad(m) * rows.scaleLengthMm() < SHIFT_SHARE * rows.shiftMm(m);
    }

    private static String way(Vector v) {
        double size = v.length();
        if (Math.abs(v.x()) > ALONG * size) {
            return "fore or aft";
        }
        if (Math.abs(v.y()) > ALONG * size) {
            return "up or down";
        }
        return Math.abs(v.z()) > ALONG * size ? "in or out" : "along " + shares(v);
    }

    /**
     * The one line that a part turns about, through the place on it nearest to the pivot, as "a line fore and aft through x 12 mm,
     * y -80 mm, z 30 mm".
     *
     * @param m a move that turns
     * @param pivot its pivot
     */
    private static Phrase axis(SpaceMove m, Vector pivot) {
        Vector turn = m.turnRad();
        Vector at = pivot.plus(turn.cross(m.shiftMm()).times(1 / turn.dot(turn)));
        double size = turn.length();
        String line = plain(turn.x(), "a line fore and aft", "a line nearly fore and aft", size)
                .or(() -> plain(turn.y(), "an upright line", "a nearly upright line", size))
                .or(() -> plain(turn.z(), "a line straight out", "a line nearly straight out", size))
                .orElseGet(() -> "a line along " + shares(turn));
        return Phrase.of(
                "%s through x %s, y %s, z %s",
                line, Amount.placeMm(at.x(), 0), Amount.placeMm(at.y(), 0), Amount.placeMm(at.z(), 0));
    }

    /** How a line is called that runs along one axis, or nearly so; empty where it does not. */
    private static Optional<String> plain(double along, String is, String nearly, double size) {
        double share = Math.abs(along) / size;
        return share > ALONG ? Optional.of(is) : share > NEARLY ? Optional.of(nearly) : Optional.empty();
    }

    /**
     * All turns of a move in one, as "All turns in one: 0.25 deg about a line fore and aft through x 0 mm, y -80 mm, z 30 mm.";
     * empty where it does not tilt.
     *
     * @param m the move
     * @param pivot its pivot, in mm
     */
    public static Phrase oneTurn(SpaceMove m, Vector pivot) {
        double flat = Math.hypot(m.turnRad().x(), m.turnRad().y());
        return flat < LEAST_TILT_RAD
                ? Phrase.NONE
                : Phrase.of("All turns in one: %.2f deg about %s.", m.turnDeg().length(), axis(m, pivot));
    }

    private static String shares(Vector v) {
        Vector u = v.times(1 / v.length());
        return String.format(Locale.ROOT, "x %.2f, y %.2f, z %.2f", u.x(), u.y(), u.z());
    }
}
