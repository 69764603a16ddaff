package fayline.app.web.fit;

import fayline.app.drawing.SvgRenderer;
import fayline.app.drawing.fit.GapDrawing;
import fayline.app.drawing.fit.GapPicture;
import fayline.app.drawing.fit.StationPicture;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitStation;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.ShopHeat;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import java.util.Optional;
import java.util.OptionalDouble;

/** The fit drawn for a page, from the same rows and gaps that made the answer. */
final class FitPicture {
    private FitPicture() {}

    /** Before and after with the key to the lines; empty where no place is known. */
    static String of(Sight sight, FitResult r) {
        return r.places().isEmpty() ? "" : SvgRenderer.forScreen().render(GapDrawing.of(picture(sight, r, "")));
    }

    /** The same beside the keypad: no key, and the station at hand marked; empty where no place is known. */
    static String small(Sight sight, FitResult r, String station) {
        return r.places().isEmpty()
                ? ""
                : SvgRenderer.forScreen().render(GapDrawing.withoutKey(picture(sight, r, station)));
    }

    private static GapPicture picture(Sight sight, FitResult r, String station) {
        return new GapPicture(
                r.fit().name(),
                r.outline(),
                r.hand(),
                r.fit().stations().stream().map(s -> station(sight, r, s)).toList(),
                station.isEmpty() ? Optional.empty() : Optional.of(station),
                "as read",
                r.advice()
                        .map(FitAdvice::shop)
                        .filter(ShopHeat::matters)
                        .map(h -> "after the move, at "
                                + Amount.degC(h.shopDegC().orElseThrow())
                                        .in(sight.format().system()))
                        .orElse("after the move"));
    }

    private static StationPicture station(Sight sight, FitResult r, FitStation s) {
        OptionalDouble before = OptionalDouble.empty();
        OptionalDouble after = OptionalDouble.empty();
        Fit fit = r.fit();
        double nominal = fit.gapAt(s).value().millimetres();
        double tolerance = fit.gapToleranceAt(s).value().millimetres();
        double lower = nominal - tolerance;
        double upper = nominal + tolerance;
        if (r.advice().isPresent()) {
            FitAdvice a = r.advice().get();
            for (int i = 0; i < a.rows().size(); i++) {
                FitRow row = a.rows().get(i);
                if (row.station().id().equals(s.id())) {
                    before = OptionalDouble.of(a.shop().seenMm(i, row.gapMm()));
                    lower = a.shop().seenMm(i, row.lowerMm());
                    nominal = a.shop().seenMm(i, row.nominalMm());
                    upper = a.shop().seenMm(i, row.upperMm());
                    int n = i;
                    after = a.seenAfterMm()
                            .map(g -> OptionalDouble.of(g.get(n)))
                            .orElse(OptionalDouble.empty());
                }
            }
        }
        OptionalDouble shown = after.isPresent() ? after : before;
        return new StationPicture(
                s.id(),
                Optional.ofNullable(r.places().get(s.id())).map(Station::drawn),
                before,
                after,
                lower,
                nominal,
                upper,
                shown.isPresent() ? FitWords.length(sight, shown.getAsDouble()) : "",
                "/fit/" + Visit.encoded(fit.id()) + "/read?at=" + Visit.encoded(s.id()));
    }
}
