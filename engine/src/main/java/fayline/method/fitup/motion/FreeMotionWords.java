package fayline.method.fitup.motion;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.List;
import java.util.Locale;

/** Says in plain words which motion the readings do not know. */
public final class FreeMotionWords {
    private static final double ALONG = 0.985;
    private static final double ROUND = 1e-3;

    private FreeMotionWords() {}

    static Phrase free(Move direction, MoveRows rows, int freedoms) {
        if (direction.turnRad() == 0) {
            return unmeasured("along the edge", way(direction));
        }
        Spot centre = centre(direction, rows.pivot());
        List<Station> stations = rows.rows().stream().map(FitRow::station).toList();
        if (freedoms == 1 && stations.size() > 2 && round(stations, centre)) {
            return Phrase.plain("Turning about the centre: a round part, turn it as you like.");
        }
        return Phrase.of(
                "Turning about %s: every gap is measured straight towards or away from there, so no reading notices the turn.",
                told(centre));
    }

    static Phrase weak(Move direction, MoveRows rows) {
        double shift = direction.shiftMm();
        if (Math.abs(direction.turnRad()) * rows.scaleLengthMm() < 0.1 * shift) {
            return weakShift(way(direction));
        }
        return weakTurn(told(centre(direction, rows.pivot())));
    }

    /** That a shift is not measured: "along the edge" and "fore or aft". */
    public static Phrase unmeasured(String along, String way) {
        return Phrase.plain("Sliding " + along + ": nothing is measured " + way + ".");
    }

    /** That a shift is hardly measured. */
    public static Phrase weakShift(String way) {
        return Phrase.plain("The shift " + way + " is hardly measured: read a gap that faces that way.");
    }

    /** That a turn is hardly measured. */
    public static Phrase weakTurn(Phrase about) {
        return Phrase.of("The turn about %s is hardly measured: read gaps that lie farther apart.", about);
    }

    /** The point that stays where it is. */
    private static Spot centre(Move m, Spot pivot) {
        return pivot.plus(-m.dyMm() / m.turnRad(), m.dxMm() / m.turnRad());
    }

    private static String way(Move m) {
        double size = m.shiftMm();
        if (Math.abs(m.dxMm()) > ALONG * size) {
            return "fore or aft";
        }
        if (Math.abs(m.dyMm()) > ALONG * size) {
            return "up or down";
        }
        double slope = Math.toDegrees(Math.atan2(m.dyMm(), m.dxMm()));
        return String.format(
                Locale.ROOT,
                "along a line %.0f deg off level",
                Math.abs(slope) > 90 ? 180 - Math.abs(slope) : Math.abs(slope));
    }

    private static Phrase told(Spot s) {
        return Phrase.of("x %s, y %s", Amount.placeMm(s.xMm(), 0), Amount.placeMm(s.yMm(), 0));
    }

    private static boolean round(List<Station> stations, Spot centre) {
        double first = stations.get(0).at().distanceMm(centre);
        return first > 0
                && stations.stream().allMatch(s -> Math.abs(s.at().distanceMm(centre) - first) < ROUND * first);
    }
}
