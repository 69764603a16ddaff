package fayline.app.drawing.fit;

import fayline.basis.units.Amount;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityFormat;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitStation;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.FitWay;
import fayline.flow.result.fit.LaterState;
import fayline.flow.result.fit.ShopHeat;
import fayline.flow.result.fit.StateReadings;
import fayline.flow.result.fit.StationValue;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import fayline.method.fitup.reading.StationGap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What is drawn of a fit, taken from the same rows and gaps that made the answer. */
public final class FitPictures {
    private FitPictures() {}

    /**
     * The gaps as read last, and after the move where one is advised.
     *
     * @param r the fit
     * @param format the reader's units
     * @param station the station to be marked; empty for none
     * @param links where a station's mark leads
     */
    public static GapPicture gaps(FitResult r, QuantityFormat format, String station, Function<String, String> links) {
        return gaps(r, format, Optional.empty(), station, links);
    }

    /**
     * The same after the move of another way to judge it.
     *
     * @param way the way; empty for the recommended one
     */
    public static GapPicture gaps(
            FitResult r, QuantityFormat format, Optional<FitWay> way, String station, Function<String, String> links) {
        String moved = way.isPresent() ? "after this move" : "after the move";
        return new GapPicture(
                r.fit().name(),
                r.outline(),
                r.hand(),
                r.fit().stations().stream()
                        .map(s -> station(r, s, way, format, links))
                        .toList(),
                station.isEmpty() ? Optional.empty() : Optional.of(station),
                "as read",
                r.advice()
                        .map(FitAdvice::shop)
                        .filter(ShopHeat::matters)
                        .map(h -> moved + ", at "
                                + Amount.degC(h.shopDegC().orElseThrow()).in(format.system()))
                        .orElse(moved));
    }

    private static StationPicture station(
            FitResult r, FitStation s, Optional<FitWay> way, QuantityFormat format, Function<String, String> links) {
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
                    after = a.seenAfterMm(way)
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
                words(shown, format),
                links.apply(s.id()));
    }

    private static String words(OptionalDouble mm, QuantityFormat format) {
        return mm.isPresent() ? format.gap(Length.ofMillimetres(mm.getAsDouble())) : "";
    }

    /** The gaps over the states, those read first, then those foretold. */
    public static StatesPicture states(FitResult r, QuantityFormat format) {
        List<StatesPicture.State> states = new ArrayList<>();
        r.states().forEach(s -> states.add(new StatesPicture.State(s.state().name(), false)));
        r.later().forEach(l -> states.add(new StatesPicture.State(l.state().name(), true)));
        return new StatesPicture(
                r.fit().name(),
                states,
                r.fit().stations().stream().map(s -> row(r, s, format)).toList());
    }

    private static StatesPicture.Row row(FitResult r, FitStation s, QuantityFormat format) {
        Fit fit = r.fit();
        double nominal = fit.gapAt(s).value().millimetres();
        double tolerance = fit.gapToleranceAt(s).value().millimetres();
        List<OptionalDouble> gaps = new ArrayList<>();
        r.states().forEach(state -> gaps.add(read(state, s.id())));
        OptionalDouble now = gaps.get(gaps.size() - 1);
        OptionalDouble at = now;
        for (LaterState l : r.later()) {
            at = after(at, l, r.places().get(s.id()));
            gaps.add(at);
        }
        return new StatesPicture.Row(
                s.id(),
                nominal - tolerance,
                nominal,
                nominal + tolerance,
                gaps,
                words(now, format),
                r.later().isEmpty() ? "" : words(at, format));
    }

    private static OptionalDouble read(StateReadings state, String station) {
        return state.stations().stream()
                .filter(v -> v.station().id().equals(station))
                .findFirst()
                .flatMap(StationValue::gap)
                .map(StationGap::gapMm)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** A gap once a later state has moved the part; a station without a place follows the change that is told of every gap. */
    private static OptionalDouble after(OptionalDouble gap, LaterState l, @Nullable Station at) {
        if (gap.isEmpty()) {
            return gap;
        }
        double changed = gap.getAsDouble() + l.gapMm();
        return OptionalDouble.of(
                at == null ? changed : FitRow.of(at, changed, 0, 0, 0).gapAfterMm(l.move(), l.pivot()));
    }
}
