package fayline.app.web.fit;

import fayline.app.web.frame.Sight;
import fayline.basis.units.Length;
import fayline.basis.units.UnitSystem;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitStation;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.motion.MoveWords;
import fayline.method.fitup.motion.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Words and figures of a fit in the screen's units. */
final class FitWords {
    private static final double LEAST_THOU = 0.5;

    private FitWords() {}

    static String kind(Kind kind) {
        return switch (kind) {
            case GAP -> "Gap";
            case FLUSH -> "Flush";
            case CASTING -> "Test casting";
        };
    }

    /** A computed length of so many millimetres in the screen's units: to 0.1 mm or 1 thou. */
    static String length(Sight sight, double mm) {
        return sight.format().length(Length.ofMillimetres(mm));
    }

    /** A standard deviation: to 0.01 mm, or a tenth of a thou. */
    static String fine(Sight sight, double mm) {
        return sight.format().system() == UnitSystem.METRIC
                ? String.format(Locale.ROOT, "%.2f mm", mm)
                : String.format(
                        Locale.ROOT, "%.1f thou", Length.ofMillimetres(mm).thou());
    }

    /** What is wanted at a station, as typed in the definition. */
    static String wanted(Fit fit, FitStation station, Kind kind) {
        return switch (kind) {
            case GAP, CASTING ->
                station.gap().orElse(fit.wanted().gap()).asTyped() + " ± "
                        + station.gapTolerance()
                                .orElse(fit.wanted().gapTolerance())
                                .asTyped();
            case FLUSH ->
                fit.wanted().flush().asTyped() + " ± "
                        + fit.wanted().flushTolerance().asTyped();
        };
    }

    /** A reading exactly as typed, with the leaf that did not enter. */
    static String typed(FitReading r) {
        return r.noGoMm().isPresent() ? r.typed() + " goes in, the next leaf does not" : r.typed();
    }

    /** A move in the screen's units: the engine's own sentence in mm, the same ways in thou. */
    static String move(Sight sight, Side side, Move move, Spot pivot, String pivotName) {
        if (sight.format().system() == UnitSystem.METRIC) {
            return new MoveWords(side, pivot, pivotName).sentence(move);
        }
        List<String> parts = new ArrayList<>();
        parts.addAll(shift(side, move.dxMm(), move.dyMm()));
        String turn = turn(side, move.turnRad());
        if (!turn.isEmpty()) {
            parts.add(turn);
        }
        return parts.isEmpty() ? "Leave it where it is" : String.join(", ", parts) + ", about " + pivotName;
    }

    /** Where a marked place goes, in the screen's units. */
    static String at(Sight sight, Side side, Move move, Spot pivot, Fit.Mark mark) {
        if (sight.format().system() == UnitSystem.METRIC) {
            return new MoveWords(side, pivot, "").at(move, mark.at(), mark.name());
        }
        Spot after = move.of(mark.at(), pivot);
        List<String> parts = shift(
                side, after.xMm() - mark.at().xMm(), after.yMm() - mark.at().yMm());
        return mark.name() + (parts.isEmpty() ? " stays" : " goes " + String.join(", ", parts));
    }

    private static List<String> shift(Side side, double dxMm, double dyMm) {
        List<String> parts = new ArrayList<>();
        double dx = Length.ofMillimetres(Math.abs(dxMm)).thou();
        double dy = Length.ofMillimetres(Math.abs(dyMm)).thou();
        if (dx >= LEAST_THOU) {
            parts.add(String.format(Locale.ROOT, "%.0f thou %s", dx, side.along(dxMm)));
        }
        if (dy >= LEAST_THOU) {
            parts.add(String.format(Locale.ROOT, "%.0f thou %s", dy, side.upward(dyMm)));
        }
        return parts;
    }

    private static String turn(Side side, double rad) {
        double deg = Math.toDegrees(Math.abs(rad));
        return deg < 0.005
                ? ""
                : String.format(
                        Locale.ROOT,
                        "turn %.2f deg %s (%.0f thou per foot)",
                        deg,
                        side.turned(rad),
                        12_000 * Math.abs(rad));
    }
}
