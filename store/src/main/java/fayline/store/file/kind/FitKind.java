package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.FitWanted;
import fayline.method.fitup.MoveLimits;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import java.util.List;
import java.util.Optional;

/** The kind {@code fits}. */
public final class FitKind {
    static final Keys FIT = Keys.of(
            "a fit",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            must("part", Forms.REF, "The part that is fitted."),
            must("against", Listed.some(Forms.REF), "Its neighbours."),
            must("gap", Measure.zeroUp(LENGTH), "Nominal gap."),
            must("gap-tolerance", Measure.zeroUp(LENGTH), "Allowed deviation of the gap either way."),
            must("flush", Measure.any(LENGTH), "Nominal flush, positive where the part stands proud."),
            must("flush-tolerance", Measure.zeroUp(LENGTH), "Allowed deviation of the flush either way."),
            must(
                    "stations",
                    Listed.some(Keys.of(
                            "a station",
                            must("id", Forms.MARK, "Its mark."),
                            must("where", Forms.TEXT, "Where it is, in words."))),
                    "Marked places along the edge."));

    private FitKind() {}

    /** Reads one fit. */
    public static Fit fit(Fields f) {
        return new Fit(
                f.text("id", ""),
                f.text("name", ""),
                Optional.of(f.text("part", "")).filter(p -> !p.isEmpty()),
                f.texts("against"),
                new FitWanted(
                        length(f, "gap"),
                        length(f, "gap-tolerance"),
                        length(f, "flush"),
                        length(f, "flush-tolerance"),
                        Optional.empty()),
                f.list("stations").stream()
                        .map(s -> FitStation.of(s.text("id", ""), s.text("where", "")))
                        .toList(),
                Optional.empty(),
                List.of(),
                MoveLimits.WIDEST,
                Optional.empty(),
                FitState.USUAL,
                FitHolding.NONE,
                FitCutting.ANY,
                Optional.empty());
    }

    private static Entered<Length> length(Fields f, String key) {
        return f.entered(key, LENGTH).orElseGet(() -> QuantityParser.parse("0 mm", LENGTH));
    }
}
