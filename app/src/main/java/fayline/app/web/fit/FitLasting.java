package fayline.app.web.fit;

import fayline.app.usecase.fit.FitSight;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.basis.finding.Finding;
import fayline.basis.units.Temperature;
import fayline.flow.result.fit.FitAfter;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.LaterState;
import fayline.flow.result.fit.StateReadings;
import fayline.method.fitup.after.AsBuiltResult;
import fayline.method.fitup.heat.BondedHeatResult;
import fayline.method.fitup.heat.HeatResult;
import fayline.method.fitup.heat.TemperatureHeat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Words what comes later: states to come, heat, the bonded part, the opposite hand. */
final class FitLasting {
    private static final String MIDDLE = "the middle of the stations";

    private FitLasting() {}

    static List<FitView.Later> later(Sight sight, FitResult r) {
        return r.later().stream().map(l -> later(sight, r, l)).toList();
    }

    private static FitView.Later later(Sight sight, FitResult r, LaterState l) {
        List<String> change = new ArrayList<>();
        if (l.move().isSome()) {
            change.add("moves it " + FitWords.move(sight, r.side(), l.move(), l.pivot(), MIDDLE));
        }
        if (l.gapMm() != 0) {
            change.add("every gap " + FitStates.signed(sight, l.gapMm()));
        }
        return new FitView.Later(
                l.state().name(),
                change.isEmpty() ? "nothing" : String.join("; ", change),
                l.deviationMm().isPresent()
                        ? FitWords.fine(sight, l.deviationMm().getAsDouble())
                        : "",
                l.origin());
    }

    static Optional<FitView.Heat> heat(Sight sight, FitResult r) {
        return r.heat().map(h -> free(sight, h)).or(() -> r.bonded().map(b -> bonded(sight, b)));
    }

    private static FitView.Heat free(Sight sight, HeatResult h) {
        List<String> rows = h.temperatures().stream().map(t -> row(sight, t)).toList();
        List<FitView.HeatStation> stations = h.stations().stream()
                .map(s -> new FitView.HeatStation(
                        s.row().station().id(),
                        FitWords.length(sight, s.setNowMm()),
                        FitWords.length(sight, s.smallestShopGapMm()),
                        s.touchDegC().isPresent()
                                ? temperature(sight, s.touchDegC().getAsDouble())
                                : ""))
                .toList();
        // how the readings were corrected is said beside the move
        List<Finding> rest = h.findings().stream()
                .filter(f -> !f.about().equals("temperature"))
                .toList();
        return new FitView.Heat(rows, stations, sight.say(rest));
    }

    private static String row(Sight sight, TemperatureHeat t) {
        return "At " + temperature(sight, t.degC()) + ": gaps " + FitWords.length(sight, t.minimumMm()) + " to "
                + FitWords.length(sight, t.maximumMm())
                + (t.belowMinimum().isEmpty()
                        ? "."
                        : ", below the least allowed at " + String.join(", ", t.belowMinimum()) + ".");
    }

    private static FitView.Heat bonded(Sight sight, BondedHeatResult b) {
        List<String> rows = new ArrayList<>();
        rows.add(String.format(
                Locale.ROOT,
                "Bonded all round it cannot move freely: the bond shears by up to %.0f %% of its thickness.",
                100 * b.highestStrain()));
        if (b.thicknessForAllowedMm().isPresent()) {
            rows.add("The highest strain is the allowed one with a bond of "
                    + FitWords.length(sight, b.thicknessForAllowedMm().getAsDouble()) + ".");
        }
        return new FitView.Heat(rows, List.of(), sight.say(b.findings()));
    }

    static Optional<FitView.After> after(Sight sight, FitResult r) {
        return r.after()
                .map(a -> new FitView.After(
                        name(r, a.from()),
                        a.stations().stream().map(p -> row(sight, a, p)).toList(),
                        a.words(),
                        sight.say(a.lessonWords())));
    }

    private static FitView.AfterRow row(Sight sight, FitAfter a, FitAfter.Pair p) {
        Optional<AsBuiltResult.Deviation> d = a.result()
                .flatMap(x -> x.stations().stream()
                        .filter(s -> s.id().equals(p.station()))
                        .findFirst());
        return new FitView.AfterRow(
                p.station(),
                FitWords.length(sight, p.foretoldMm()),
                FitWords.length(sight, p.readMm()),
                FitStates.signed(sight, p.readMm() - p.foretoldMm()),
                d.map(x -> String.format(Locale.ROOT, "%+.1f", x.z())).orElse(""),
                d.map(AsBuiltResult.Deviation::isFlagged).orElse(false));
    }

    static Optional<FitView.Opposite> opposite(Sight sight, FitSight f, List<String> taught) {
        return f.opposite()
                .map(o -> new FitView.Opposite(
                        o.fit().name(),
                        "/fit/" + Visit.encoded(o.fit().id()),
                        Stream.concat(lessons(sight, o).stream(), taught.stream())
                                .toList()));
    }

    private static List<String> lessons(Sight sight, FitResult o) {
        List<String> all = new ArrayList<>();
        for (StateReadings s : o.states()) {
            // What the bond itself did is told by the comparison below, not as a change to expect.
            s.since()
                    .filter(c -> o.after().filter(a -> a.to().equals(c.to())).isEmpty())
                    .flatMap(c -> c.move().map(m -> FitWords.move(sight, o.side(), m, c.pivot(), MIDDLE)))
                    .ifPresent(w -> all.add("Coming into \"" + s.state().name() + "\" it moved " + w + "."));
        }
        o.after().ifPresent(a -> {
            all.add("After the bond: " + a.words());
            if (!a.lessonWords().isEmpty()) {
                all.add(sight.say(a.lessonWords())
                        + " It holds for this hand only where the cause lies in a tool that was mirrored too; a habit, a gauge"
                        + " or heat is not mirrored.");
            }
        });
        o.fit().part().flatMap(p -> sight.definition().parts().find(p)).ifPresent(p -> all.addAll(p.lessons()));
        return all;
    }

    private static String name(FitResult r, String state) {
        return r.fit().states().stream()
                .filter(s -> s.id().equals(state))
                .map(s -> s.name())
                .findFirst()
                .orElse(state);
    }

    private static String temperature(Sight sight, double degC) {
        return sight.format().temperature(Temperature.ofCelsius(degC));
    }
}
