package fayline.flow.result.fit;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitState;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Vector;
import fayline.method.fitup.mirror.OppositeHand;
import fayline.method.fitup.scheme.Assumption;
import fayline.method.fitup.scheme.Missing;
import fayline.method.fitup.scheme.SchemeComparison;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What follows from the readings of a fit. */
public final class FitCalculator {
    private FitCalculator() {}

    /** Answers the question. */
    public static FitResult calculate(FitQuestion question) {
        Fit fit = question.fit();
        FitPlaces places = FitPlaces.of(fit);
        Certainty certainty = new Certainty(fit, question.assume());
        Targets targets = new Targets(fit, question.side(), places);
        List<StateReadings> states = new ReadStates(fit, places, certainty, targets).of(question.readings());
        Advice advice = new Advice(fit, places, targets, certainty);
        List<Finding> findings = new ArrayList<>(places.findings());
        Optional<StateReadings> now = states.isEmpty() ? Optional.empty() : Optional.of(states.get(states.size() - 1));
        List<LaterState> later = later(question, now.map(n -> n.state().id()).orElse(""), places);
        Optional<FitAdvice> advised = now.flatMap(n -> advice.at(n, later, later));
        now.ifPresent(n -> findings.addAll(advice.tooEarly(n, later)));
        now.ifPresent(n -> findings.addAll(n.findings()));
        Optional<SchemeComparison> beforehand =
                advised.isEmpty() && !places.stations().isEmpty() ? advice.beforehand(later) : Optional.empty();
        HeatNow heat = now.map(n -> HeatNow.of(targets, n, later, advised.map(FitAdvice::shop), findings))
                .orElse(HeatNow.NONE);
        Optional<FitAfter> after = after(question, states, places, targets, certainty, advice);
        if (now.isPresent() && FitResult.isSet(fit, now.get().state().id())) {
            findings.add(new Finding(
                    Severity.NOTE,
                    fit.id(),
                    "The adhesive has set: what is left is to trim, build up, fill, hang it anew or remake it.",
                    "common practice, no source"));
        }
        Optional<SchemeComparison> schemes = advised.flatMap(FitAdvice::schemes).or(() -> beforehand);
        return new FitResult(
                fit,
                question.side(),
                places.outline(),
                places.stations(),
                places.edgeOf(),
                states,
                later,
                advised,
                beforehand,
                heat.free(),
                heat.bonded(),
                now.flatMap(n -> Castings.of(n, places)),
                after,
                missing(certainty, schemes),
                assumed(certainty, advised, schemes),
                findings);
    }

    /** A row for each station that has a place, at the gap wanted there now, with the limits that hold now. */
    public static List<FitRow> wanted(FitResult result) {
        return new Targets(result.fit(), result.side(), FitPlaces.of(result.fit())).nominalRows(result.later());
    }

    /**
     * What this hand teaches the opposite one: how it moved coming into each state, seen in the mirror. What the bond did is not
     * among it: that is the scheme's lesson, which is mirrored only where its cause is.
     */
    public static List<LearnedChange> teaches(FitResult result) {
        List<LearnedChange> all = new ArrayList<>();
        for (StateReadings s : result.states()) {
            if (s.since().isPresent() && !s.state().id().equals(FitResult.BONDED)) {
                StateChange c = s.since().get();
                c.move()
                        .ifPresent(m -> all.add(new LearnedChange(
                                c.to(),
                                OppositeHand.of(m),
                                OppositeHand.of(c.pivot()),
                                c.restMm(),
                                result.fit().name())));
            }
        }
        return List.copyOf(all);
    }

    private static List<LaterState> later(FitQuestion question, String now, FitPlaces places) {
        List<FitState> order = question.fit().states();
        int here = order.stream().map(FitState::id).toList().indexOf(now);
        Vector middle = places.middleInSpace();
        List<LaterState> all = new ArrayList<>();
        for (FitState s : order.subList(here + 1, order.size())) {
            Optional<LearnedChange> learned = question.learned().stream()
                    .filter(l -> l.state().equals(s.id()))
                    .findFirst();
            if (s.disturbs().isPresent()) {
                FitState.Disturbance d = s.disturbs().get();
                all.add(new LaterState(s, d.move(), middle, d.gapMm(), d.deviationMm(), false, d.origin()));
            } else if (learned.isPresent()) {
                LearnedChange l = learned.get();
                all.add(new LaterState(
                        s, l.move(), l.pivot(), 0, OptionalDouble.of(l.restMm()), true, "learned from " + l.from()));
            }
        }
        return List.copyOf(all);
    }

    private static Optional<FitAfter> after(
            FitQuestion question,
            List<StateReadings> states,
            FitPlaces places,
            Targets targets,
            Certainty certainty,
            Advice advice) {
        for (int i = 1; i < states.size(); i++) {
            if (states.get(i).state().id().equals(FitResult.BONDED)) {
                StateReadings before = states.get(i - 1);
                StateReadings bonded = states.get(i);
                List<LaterState> later = later(question, before.state().id(), places).stream()
                        .filter(l -> !l.state().id().equals(FitResult.BONDED))
                        .toList();
                // what comes after the bond had not happened when the bonded part was read
                return advice.at(before, later, List.of())
                        .flatMap(a -> new After(question.fit(), targets, certainty).of(a, bonded));
            }
        }
        return Optional.empty();
    }

    private static List<String> missing(Certainty certainty, Optional<SchemeComparison> schemes) {
        Set<String> all = new LinkedHashSet<>(certainty.missing());
        schemes.ifPresent(s -> s.schemes()
                .forEach(o -> o.missing().stream()
                        .filter(m -> !(m.offer().equals(Optional.of(Assumption.READING))
                                || m.offer().equals(Optional.of(Assumption.READING_COMMON))))
                        .map(FitCalculator::words)
                        .forEach(all::add)));
        return List.copyOf(all);
    }

    private static String words(Missing m) {
        return m.about().isEmpty() ? m.what() : m.what() + " (" + m.about() + ")";
    }

    private static List<Phrase> assumed(
            Certainty certainty, Optional<FitAdvice> advised, Optional<SchemeComparison> schemes) {
        Set<Assumption> all = new TreeSet<>(certainty.taken());
        schemes.ifPresent(s -> s.schemes().forEach(o -> all.addAll(o.assumed())));
        boolean warmed = schemes.isPresent()
                && advised.filter(a -> !a.shop().doubts().isEmpty()).isPresent();
        return Stream.concat(
                        all.stream().map(Assumption::words),
                        warmed ? Stream.of(Growth.ASSUMED) : Stream.<Phrase>empty())
                .toList();
    }
}
