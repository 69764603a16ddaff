package fayline.app.web.traveller;

import fayline.app.usecase.traveller.Climates;
import fayline.app.usecase.traveller.LeakDowns;
import fayline.app.usecase.traveller.MixVerdict;
import fayline.app.usecase.traveller.StepAsks;
import fayline.app.web.frame.Sight;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.flow.record.made.Draw;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.Mix;
import fayline.flow.result.step.StepResult;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What went into a step, in sentences. */
final class MadeWords {
    private static final Duration OLD_AIR = Duration.ofHours(2);
    private final Sight sight;
    private final RecordState state;
    private final List<TakenReading> airs;
    private final Map<String, List<TakenReading>> readings;

    MadeWords(Sight sight, RecordState state) {
        this.sight = sight;
        this.state = state;
        this.airs = Climates.all(state);
        // By what they are of, once: a part's traveller asks for each of its steps and kinds.
        this.readings = state.readings(sight.definition().facts().id()).stream()
                .filter(r -> r.of().indexOf('/') > 0)
                .collect(Collectors.groupingBy(TakenReading::of));
    }

    /** When and by whom, and how late it was entered. */
    String entered(String step, Instant at, String by, Optional<Instant> told) {
        String late = told.map(t -> ", entered " + span(at, t) + " later")
                .or(() -> state.step(step)
                        .finished()
                        .filter(f -> Duration.between(f, at).compareTo(Duration.ofMinutes(10)) > 0)
                        .map(f -> ", entered " + span(f, at) + " after the step was finished"))
                .orElse("");
        return sight.time().at(at) + ", " + sight.personName(by) + late;
    }

    private String span(Instant from, Instant to) {
        return sight.time().span(Duration.between(from, to));
    }

    String laid(Laid l) {
        return entered(l.step(), l.at(), l.by(), l.told())
                + (l.lot().isEmpty() ? l.skipped() ? "" : ", lot not told" : ", lot " + l.lot())
                + (l.why().isEmpty() ? "" : ": " + l.why());
    }

    TravellerView.Line draw(Draw d) {
        String part = d.component().isEmpty() ? "" : d.component() + " ";
        return new TravellerView.Line(
                part + "lot " + d.lot() + (d.amount().isEmpty() ? "" : ", " + d.amount()) + ", "
                        + entered(d.step(), d.at(), d.by(), d.told()),
                d.override() ? "Out of date, allowed: " + d.why() : "",
                d.seq());
    }

    TravellerView.Line mix(Mix m) {
        String name = StepAsks.materialName(sight.definition(), m.system());
        String lots = m.resinLot().isEmpty() && m.hardenerLot().isEmpty()
                ? ", lots not told"
                : ", resin lot " + orNot(m.resinLot()) + ", hardener lot " + orNot(m.hardenerLot());
        Optional<MixVerdict> verdict =
                sight.definition().systems().find(m.system()).flatMap(s -> MixVerdict.of(s, m.resin(), m.hardener()));
        String scale = m.weighed()
                ? m.resin() + " and " + m.hardener()
                        + verdict.filter(MixVerdict::inTolerance)
                                .map(v -> ", " + v.sentence())
                                .orElse("")
                : "no scale reading";
        String trouble = m.weighed()
                ? verdict.filter(v -> !v.inTolerance())
                        .map(MixVerdict::sentence)
                        .orElse("")
                : "Mixed without a scale reading.";
        return new TravellerView.Line(
                "Cup " + orNot(m.batch()) + " of " + name + ": " + scale + lots + ", "
                        + entered(m.step(), m.at(), m.by(), m.told())
                        + (m.why().isEmpty() ? "" : ": " + m.why()),
                trouble,
                m.seq());
    }

    private static String orNot(String text) {
        return text.isEmpty() ? "not told" : text;
    }

    /** The shop's air as it was read last before a moment; empty where it never was. */
    String air(Instant at) {
        return Climates.newest(airs, at)
                .map(r -> {
                    Duration old = Duration.between(r.at(), at);
                    return values(r) + ", read " + sight.time().at(r.at())
                            + (old.compareTo(OLD_AIR) > 0 ? ", " + sight.time().span(old) + " before" : "");
                })
                .orElse("");
    }

    private static String values(TakenReading r) {
        List<String> said = new ArrayList<>();
        said.add("air " + r.values().getOrDefault("air", ""));
        Optional.ofNullable(r.values().get("humidity")).ifPresent(h -> said.add("humidity " + h));
        Optional.ofNullable(r.values().get("surface")).ifPresent(s -> said.add("surface " + s));
        Optional.ofNullable(r.values().get("probe")).ifPresent(said::add);
        return String.join(", ", said);
    }

    /** The readings of a kind that are of a step. */
    List<TakenReading> readings(StepResult step, String kind) {
        return Stream.of(step.local(), step.id())
                .flatMap(of -> readings.getOrDefault(of, List.of()).stream())
                .filter(r -> r.kind().equals(kind))
                .sorted(Comparator.comparingLong(TakenReading::seq))
                .toList();
    }

    List<TravellerView.Line> leaks(StepResult step) {
        return LeakDowns.of(step, readings(step, "vacuum")).stream()
                .map(t -> new TravellerView.Line(
                        (t.tight() ? "Tight: " : "Leaks: ") + t.sentence() + ". "
                                + sight.time().at(t.end().at()) + ", "
                                + sight.personName(t.end().by()),
                        t.tight() ? "" : "Find the leak before resin is mixed.",
                        t.end().seq()))
                .toList();
    }

    /** What a finished step lacks, each with its reason. */
    static List<String> lacks(StepRecord kept) {
        return kept.missing().stream()
                .map(l -> "Missing: " + l.what() + (l.why().isEmpty() ? ". No reason given." : ". " + l.why()))
                .toList();
    }
}
