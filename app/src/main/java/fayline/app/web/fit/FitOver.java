package fayline.app.web.fit;

import fayline.app.drawing.SvgRenderer;
import fayline.app.drawing.fit.StatesDrawing;
import fayline.app.drawing.fit.StatesPicture;
import fayline.app.web.frame.Sight;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitStation;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.LaterState;
import fayline.flow.result.fit.StateReadings;
import fayline.flow.result.fit.StationValue;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import fayline.method.fitup.reading.StationGap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** How the gaps went through the states and where they are bound, drawn and in words. */
final class FitOver {
    private static final int LEAST = 2;

    private FitOver() {}

    /** Empty where fewer than two states are read or foretold. */
    static Optional<FitView.Over> of(Sight sight, FitResult r) {
        if (r.states().isEmpty() || r.states().size() + r.later().size() < LEAST) {
            return Optional.empty();
        }
        return Optional.of(
                new FitView.Over(SvgRenderer.forScreen().render(StatesDrawing.of(picture(sight, r))), words(sight, r)));
    }

    private static StatesPicture picture(Sight sight, FitResult r) {
        List<StatesPicture.State> states = new ArrayList<>();
        r.states().forEach(s -> states.add(new StatesPicture.State(s.state().name(), false)));
        r.later().forEach(l -> states.add(new StatesPicture.State(l.state().name(), true)));
        return new StatesPicture(
                r.fit().name(),
                states,
                r.fit().stations().stream().map(s -> row(sight, r, s)).toList());
    }

    private static StatesPicture.Row row(Sight sight, FitResult r, FitStation s) {
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
                now.isPresent() ? FitWords.length(sight, now.getAsDouble()) : "",
                at.isPresent() && !r.later().isEmpty() ? FitWords.length(sight, at.getAsDouble()) : "");
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

    /** The move between states, one sentence each. */
    private static List<String> words(Sight sight, FitResult r) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < r.states().size(); i++) {
            int to = i + 1;
            String name = r.states().get(i).state().name();
            r.states()
                    .get(i)
                    .since()
                    .filter(c -> !c.words().isEmpty())
                    .ifPresent(c -> all.add("Into " + to + ", " + name + ": " + sight.say(c.words()) + "."));
        }
        List<FitView.Later> later = FitLasting.later(sight, r);
        for (int i = 0; i < later.size(); i++) {
            all.add("Into " + (r.states().size() + i + 1) + ", " + later.get(i).name() + ", foretold: "
                    + later.get(i).change() + " (" + later.get(i).origin() + ").");
        }
        return all;
    }
}
