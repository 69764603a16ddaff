package fayline.app.web.series;

import fayline.basis.units.Length;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.basis.units.Vacuum;
import fayline.flow.result.series.SeriesSort;
import java.util.Locale;

/** Names of series, and their values in the screen's units. */
final class SeriesWords {
    private static final double PERCENT = 100;
    private final QuantityFormat format;
    private final SeriesSort sort;

    SeriesWords(QuantityFormat format, SeriesSort sort) {
        this.format = format;
        this.sort = sort;
    }

    String name() {
        return switch (sort) {
            case LEAK -> "Vacuum lost in a leak-down";
            case MASS_OVER_COMPUTED -> "Mass against the computed one";
            case MASS_OVER_TARGET -> "Mass against the target";
            case RESIN -> "Resin content";
            case GAP_ERROR -> "Gap as bonded against the one foretold";
        };
    }

    /** How a value comes about. */
    String what() {
        return switch (sort) {
            case LEAK -> "Vacuum at the start less that at the end, over the minutes between, of every leak-down test.";
            case MASS_OVER_COMPUTED ->
                "First weighing of each part over its computed mass (cloth, core and all that stays of the mixes), less one."
                        + " An untrimmed part weighs more.";
            case MASS_OVER_TARGET ->
                "First weighing of each part over the target in its file, less one. An untrimmed part weighs more.";
            case RESIN ->
                "What of the first weighing of each part is neither cloth nor core as computed, over the whole, by mass. Inserts and"
                        + " paste count as resin.";
            case GAP_ERROR ->
                "Gap read after the bond less the gap foretold by the last dry fit, station by station, by what located it.";
        };
    }

    String value(double v) {
        return switch (sort) {
            case LEAK -> leak(v);
            case MASS_OVER_COMPUTED, MASS_OVER_TARGET -> String.format(Locale.ROOT, "%+.1f %%", PERCENT * v);
            case RESIN -> String.format(Locale.ROOT, "%.1f %%", PERCENT * v);
            case GAP_ERROR -> format.fineGap(Length.ofMillimetres(v));
        };
    }

    /** A distance of two values, which has no sign. */
    String step(double v) {
        String words = value(v);
        return words.startsWith("+") ? words.substring(1) : words;
    }

    /** A rate may be below nought in a limit, which a vacuum may not be. */
    private String leak(double pascals) {
        double inch = Vacuum.ofInchesOfMercury(1).si();
        return format.system() == UnitSystem.METRIC
                ? String.format(Locale.ROOT, "%.2f kPa/min", pascals / 1000)
                : String.format(Locale.ROOT, "%.2f inHg/min", pascals / inch);
    }
}
