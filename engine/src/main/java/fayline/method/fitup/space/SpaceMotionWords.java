package fayline.method.fitup.space;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.method.fitup.motion.FreeMotionWords;
import java.util.Locale;

/** Says in plain words which motion in space the readings do not know; as in the plane where a motion is one of it. */
final class SpaceMotionWords {
    private static final double ALONG = 0.985;
    private static final double SHIFT_SHARE = 0.1;

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

    /** The line that the part turns about, through the place on it nearest to the pivot. */
    private static Phrase axis(SpaceMove m, Vector pivot) {
        Vector turn = m.turnRad();
        Vector at = pivot.plus(turn.cross(m.shiftMm()).times(1 / turn.dot(turn)));
        double size = turn.length();
        String line = Math.abs(turn.x()) > ALONG * size
                ? "a line fore and aft"
                : Math.abs(turn.y()) > ALONG * size
                        ? "an upright line"
                        : Math.abs(turn.z()) > ALONG * size ? "a line straight out" : "a line along " + shares(turn);
        return Phrase.of(
                "%s through x %s, y %s, z %s",
                line, Amount.placeMm(at.x(), 0), Amount.placeMm(at.y(), 0), Amount.placeMm(at.z(), 0));
    }

    private static String shares(Vector v) {
        Vector u = v.times(1 / v.length());
        return String.format(Locale.ROOT, "x %.2f, y %.2f, z %.2f", u.x(), u.y(), u.z());
    }
}
