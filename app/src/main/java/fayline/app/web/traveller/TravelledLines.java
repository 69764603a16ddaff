package fayline.app.web.traveller;

import fayline.app.usecase.traveller.LeakDowns;
import fayline.app.web.frame.PhotoView;
import fayline.app.web.frame.Sight;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.Mix;
import fayline.flow.record.made.StepMade;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Everything recorded of a part, one line each: what, when, by whom, from which lot, in which air, signed by whom. */
final class TravelledLines {
    private final Sight sight;
    private final RecordState state;
    private final MadeWords words;
    private final List<StepResult> steps;
    private final List<Dated> lines = new ArrayList<>();

    private record Dated(Instant at, TravelledView.Line line) {}

    TravelledLines(Sight sight, RecordState state, String made) {
        this.sight = sight;
        this.state = state;
        this.words = new MadeWords(sight, state);
        this.steps = sight.result().steps().stream()
                .filter(s -> s.made().equals(made))
                .toList();
        steps.forEach(this::step);
    }

    /** The lines by step, or by date. */
    List<TravelledView.Line> lines(boolean byDate) {
        List<Dated> all = new ArrayList<>(lines);
        if (byDate) {
            all.sort(Comparator.comparing(Dated::at));
        }
        return all.stream().map(Dated::line).toList();
    }

    private void step(StepResult step) {
        StepRecord kept = state.step(step.id());
        StepMade made = state.made().step(step.id());
        kept.started().ifPresent(at -> add(step, at, "Started", kept.startedBy(), began(kept), "", List.of()));
        List<Dated> between = new ArrayList<>();
        int from = lines.size();
        made.draws().forEach(d -> {
            TravelledView.Line l = line(step, d.seq(), words.draw(d), List.of());
            lines.add(new Dated(d.at(), l));
        });
        made.mixes()
                .forEach(m -> lines.add(new Dated(m.at(), line(step, m.seq(), words.mix(m), List.of(air(m.at()))))));
        made.plies().forEach(p -> ply(step, kept, made, p));
        readings(step);
        kept.notes().forEach(n -> {
            String begins = sight.time().at(n.at()) + ", " + sight.personName(n.by());
            lines.add(new Dated(
                    n.at(),
                    new TravelledView.Line(
                            step.title(),
                            Sight.cardLink(step.id()),
                            "Note: " + n.shown(sight.time().zone()),
                            begins,
                            List.of(),
                            PhotoView.of(n, begins),
                            "",
                            n.seq())));
        });
        between.addAll(lines.subList(from, lines.size()));
        between.sort(Comparator.comparing(Dated::at));
        lines.subList(from, lines.size()).clear();
        lines.addAll(between);
        kept.finished()
                .ifPresent(at -> add(
                        step,
                        at,
                        "Finished",
                        kept.finishedBy(),
                        signed(kept),
                        String.join(" ", MadeWords.lacks(kept)),
                        List.of()));
    }

    private List<TravelledView.Fact> began(StepRecord kept) {
        List<TravelledView.Fact> facts = new ArrayList<>();
        facts.add(new TravelledView.Fact("People", sight.personNames(kept.people())));
        if (!kept.whichWay().isEmpty()) {
            facts.add(new TravelledView.Fact("Which way round", kept.whichWay()));
        }
        kept.started().ifPresent(at -> facts.add(air(at)));
        return facts;
    }

    private List<TravelledView.Fact> signed(StepRecord kept) {
        return kept.signed().isEmpty()
                ? List.of()
                : List.of(new TravelledView.Fact("Signed", sight.personName(kept.signed())));
    }

    private void ply(StepResult step, StepRecord kept, StepMade made, Laid p) {
        List<TravelledView.Fact> facts = new ArrayList<>();
        facts.add(new TravelledView.Fact("Lot", p.lot().isEmpty() ? "not told" : p.lot()));
        Set<String> resin = new LinkedHashSet<>();
        for (Mix m : made.mixes()) {
            resin.add("resin " + m.resinLot() + ", hardener " + m.hardenerLot());
        }
        if (!resin.isEmpty()) {
            facts.add(new TravelledView.Fact("Resin lots", String.join("; ", resin)));
        }
        facts.add(air(p.at()));
        facts.add(new TravelledView.Fact("People", sight.personNames(kept.people())));
        facts.add(new TravelledView.Fact("Signed", signature(step)));
        lines.add(new Dated(
                p.at(),
                new TravelledView.Line(
                        step.title(),
                        Sight.cardLink(step.id()),
                        "Ply " + p.ply() + (p.name().isEmpty() ? "" : ", " + p.name())
                                + (p.skipped() ? ": left out" : ""),
                        words.entered(p.step(), p.at(), p.by(), p.told()),
                        facts,
                        List.of(),
                        p.why(),
                        p.seq())));
    }

    /** Who signed the next hold point of the part after a step. */
    private String signature(StepResult step) {
        Optional<StepResult> hold = steps.stream()
                .skip(steps.indexOf(step))
                .filter(StepResult::signed)
                .findFirst();
        return hold.map(h -> {
                    StepRecord kept = state.step(h.id());
                    return kept.signed().isEmpty()
                            ? "not yet: " + h.title()
                            : sight.personName(kept.signed()) + ", "
                                    + kept.finished()
                                            .map(f -> sight.time().at(f))
                                            .orElse("") + ", " + h.title();
                })
                .orElse("no hold point after it");
    }

    private void readings(StepResult step) {
        for (String kind : List.of("vacuum", "temperature", "mass", "mix")) {
            for (TakenReading r : words.readings(step, kind)) {
                add(
                        step,
                        r.at(),
                        "Reading: " + r.kind()
                                + (r.state().isEmpty() ? "" : ", " + r.state().replace('-', ' ')) + " " + r.value(),
                        r.seq(),
                        instrument(r.values()),
                        "",
                        List.of());
            }
        }
        LeakDowns.of(step, words.readings(step, "vacuum"))
                .forEach(t -> add(
                        step,
                        t.end().at(),
                        (t.tight() ? "Leak-down tight: " : "Leak-down leaks: ") + t.sentence(),
                        t.end().seq(),
                        List.of(),
                        t.tight() ? "" : "Not tight.",
                        List.of()));
    }

    private static List<TravelledView.Fact> instrument(Map<String, String> values) {
        String instrument = values.getOrDefault("instrument", "");
        return instrument.isEmpty() ? List.of() : List.of(new TravelledView.Fact("Instrument", instrument));
    }

    private TravelledView.Fact air(Instant at) {
        String air = words.air(at);
        return new TravelledView.Fact("Air", air.isEmpty() ? "not read" : air);
    }

    private static TravelledView.Line line(
            StepResult step, long entry, TravellerView.Line said, List<TravelledView.Fact> facts) {
        return new TravelledView.Line(
                step.title(), Sight.cardLink(step.id()), said.says(), "", facts, List.of(), said.trouble(), entry);
    }

    private void add(
            StepResult step,
            Instant at,
            String what,
            long entry,
            List<TravelledView.Fact> facts,
            String trouble,
            List<PhotoView> photos) {
        lines.add(new Dated(
                at,
                new TravelledView.Line(
                        step.title(),
                        Sight.cardLink(step.id()),
                        what,
                        sight.time().at(at),
                        facts,
                        photos,
                        trouble,
                        entry)));
    }
}
