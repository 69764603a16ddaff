package fayline.app.web.fit;

import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.basis.units.Amount;
import fayline.basis.units.Temperature;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitState;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.StateChange;
import fayline.flow.result.fit.StateReadings;
import fayline.flow.result.fit.StationValue;
import fayline.method.fitup.reading.StationGap;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words what was read in each state and how the part moved between them. */
final class FitStates {
    private static final double LEAST_MM = 0.005;

    private FitStates() {}

    /** The state read last comes first. */
    static List<FitView.State> of(Sight sight, FitResult r) {
        List<FitView.State> all = new ArrayList<>();
        for (int i = r.states().size() - 1; i >= 0; i--) {
            all.add(state(sight, r, r.states().get(i), i == r.states().size() - 1));
        }
        return all;
    }

    /** Every state in its order: those read lead to their readings, those to come to where they are read. */
    static List<FitView.Strip> strip(FitResult r) {
        List<FitView.Strip> all = new ArrayList<>();
        String last = r.now().map(n -> n.state().id()).orElse("");
        for (StateReadings s : r.states()) {
            if (r.fit().states().stream().noneMatch(f -> f.id().equals(s.state().id()))) {
                all.add(read(s, last));
            }
        }
        for (FitState f : r.fit().states()) {
            all.add(r.states().stream()
                    .filter(s -> s.state().id().equals(f.id()))
                    .findFirst()
                    .map(s -> read(s, last))
                    .orElseGet(() -> new FitView.Strip(
                            f.name(),
                            "not read",
                            "/fit/" + Visit.encoded(r.fit().id()) + "/read?state=" + Visit.encoded(f.id()),
                            false)));
        }
        return all;
    }

    private static FitView.Strip read(StateReadings s, String last) {
        long stations = s.stations().stream().filter(v -> !v.typed().isEmpty()).count();
        return new FitView.Strip(
                s.state().name(),
                stations + " of " + s.stations().size() + " read",
                "#state-" + Visit.encoded(s.state().id()),
                s.state().id().equals(last));
    }

    private static FitView.State state(Sight sight, FitResult r, StateReadings s, boolean last) {
        return new FitView.State(
                s.state().id(),
                s.state().name(),
                s.temperatureDegC().isPresent()
                        ? sight.format()
                                .temperature(Temperature.ofCelsius(
                                        s.temperatureDegC().getAsDouble()))
                        : "",
                s.stations().stream()
                        .map(v -> row(sight, r.fit(), s.state().id(), v))
                        .toList(),
                Stream.concat(
                                sight.say(s.findings()).stream(),
                                s.since().map(c -> since(sight, r, c)).orElse(List.of()).stream())
                        .toList(),
                last);
    }

    private static FitView.Row row(Sight sight, Fit fit, String state, StationValue v) {
        List<String> again = new ArrayList<>(
                v.suspects().stream().map(s -> sight.say(s.sentence())).toList());
        v.gap().ifPresent(g -> again.addAll(sight.say(g.findings())));
        return new FitView.Row(
                v.station().id(),
                v.station().where(),
                typed(fit, v, false),
                v.gap().map(g -> mean(sight, g)).orElse(""),
                typed(fit, v, true),
                FitFormer.at(sight, fit.id(), state, v.station().id()),
                FitWords.wanted(fit, v.station(), Kind.GAP),
                again.stream().distinct().toList(),
                "/fit/" + Visit.encoded(fit.id()) + "/read?state="
                        + Visit.encoded(state) + "&at="
                        + Visit.encoded(v.station().id()));
    }

    private static List<FitView.Typed> typed(Fit fit, StationValue v, boolean flush) {
        return v.typed().stream()
                .filter(t -> (t.kind() == Kind.FLUSH) == flush)
                .map(t -> new FitView.Typed(typed(t), FitFormer.link(fit.id(), t.seq())))
                .toList();
    }

    private static String typed(FitReading t) {
        return FitWords.typed(t)
                + (t.kind() == Kind.CASTING ? " (casting)" : "")
                + (t.round() > 1 ? " (round " + t.round() + ")" : "");
    }

    private static String mean(Sight sight, StationGap g) {
        return (g.count() > 1 ? "mean of " + g.count() + ": " + FitWords.length(sight, g.gapMm()) : "")
                + (g.spreadMm().isPresent() && g.spreadMm().getAsDouble() > LEAST_MM
                        ? ", spread " + FitWords.fine(sight, g.spreadMm().getAsDouble())
                        : "");
    }

    private static List<String> since(Sight sight, FitResult r, StateChange c) {
        String from = name(r, c.from());
        List<String> all = new ArrayList<>();
        c.move()
                .ifPresent(m -> all.add("Since \"" + from + "\" it moved "
                        + FitWords.move(sight, r.side(), m, c.pivot(), "the middle of the stations")
                        + ". What no rigid move explains: "
                        + FitWords.fine(sight, c.restMm()) + " (root of the mean square)."));
        if (!c.warmth().isEmpty()) {
            all.add(sight.say(c.warmth()));
        }
        if (!c.gaps().isEmpty()) {
            all.add("Gaps since then: "
                    + c.gaps().stream()
                            .map(g -> g.station() + " " + signed(sight, g.changeMm()))
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        return all;
    }

    static String signed(Sight sight, double mm) {
        return Amount.signedMm(mm, 1).in(sight.format().system());
    }

    private static String name(FitResult r, String state) {
        return r.fit().states().stream()
                .filter(s -> s.id().equals(state))
                .map(s -> s.name().toLowerCase(Locale.ROOT))
                .findFirst()
                .orElse(state);
    }
}
