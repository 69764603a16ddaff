package fayline.flow.card.fit;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.FitState;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.LaterState;
import fayline.flow.result.fit.StateReadings;
import fayline.flow.result.fit.StationValue;
import fayline.flow.result.fit.frame.SprungResult;
import fayline.flow.result.fit.frame.WidthAnswer;
import fayline.flow.result.fit.frame.WidthsResult;
import fayline.method.fitup.move.MoveReport;
import fayline.method.fitup.shim.ShimFlag;
import fayline.method.fitup.shim.ShimResult;
import fayline.method.fitup.space.PartMove;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What speaks against the adhesive, and what else to know before it is mixed. */
final class FitReasons {
    private static final String READINGS = "readings";
    private static final String PRACTICE = "common practice, no source";
    private static final double GOOD_CHANCE = 0.9;
    private final FitResult fit;
    private final List<Finding> all = new ArrayList<>();

    private FitReasons(FitResult fit) {
        this.fit = fit;
    }

    /** Everything, stops first. */
    static List<Finding> of(
            FitResult fit,
            Optional<FitCard.Located> located,
            Optional<FitBond> bond,
            WidthsResult widths,
            Optional<SprungResult> sprung) {
        FitReasons reasons = new FitReasons(fit);
        reasons.read();
        fit.advice().ifPresent(reasons::move);
        reasons.chance(located);
        reasons.bond(bond);
        widths.widths().forEach(reasons::width);
        sprung.ifPresent(reasons::sprung);
        reasons.states();
        return reasons.all.stream()
                .distinct()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
    }

    private void add(Severity severity, String about, String sentence, String source) {
        add(severity, about, Phrase.plain(sentence), source);
    }

    private void add(Severity severity, String about, Phrase phrase, String source) {
        all.add(new Finding(severity, about, phrase, source));
    }

    private void read() {
        Optional<StateReadings> now = fit.now();
        if (now.isEmpty() || now.get().read() == 0) {
            add(Severity.STOP, READINGS, "No gap is read yet: read the part at a dry fit first.", READINGS);
            return;
        }
        if (fit.advice().isEmpty()) {
            add(
                    Severity.STOP,
                    READINGS,
                    "Where the stations lie is not known, so no move can be told: give each its place and direction, or the"
                            + " outline.",
                    "the definition");
        }
        List<String> unread = now.get().stations().stream()
                .filter(s -> s.gap().isEmpty())
                .map(s -> s.station().id())
                .toList();
        if (!unread.isEmpty()) {
            add(
                    Severity.CAUTION,
                    READINGS,
                    "Not read in this state: " + String.join(", ", unread) + ". Nothing is known there.",
                    READINGS);
        }
        for (StationValue s : now.get().stations()) {
            s.suspects()
                    .forEach(x -> add(
                            Severity.STOP,
                            s.station().id(),
                            Phrase.of("Read again: %s", x.sentence()),
                            "own readings"));
        }
        if (now.get().temperatureDegC().isEmpty()) {
            add(
                    fit.fit().heat().isPresent() ? Severity.STOP : Severity.CAUTION,
                    READINGS,
                    "No temperature was noted with these readings. Read it beside the part"
                            + (fit.fit().heat().isPresent() ? ": its gap moves with it." : "."),
                    PRACTICE);
        }
    }

    private void move(FitAdvice a) {
        PartMove best = a.best();
        switch (best.status()) {
            case OK -> {}
            case NO_FIT ->
                best.outside().forEach(o -> add(Severity.STOP, o.wanted().station(), outside(o), "the definition"));
            case INFEASIBLE ->
                add(
                        Severity.STOP,
                        READINGS,
                        "No move keeps every minimum gap: trim first, or move a neighbour.",
                        "the definition");
            case UNDETERMINED_MOVE ->
                add(
                        Severity.STOP,
                        READINGS,
                        "The stations read do not know every motion: read one on another edge.",
                        READINGS);
            case MOVE_TOO_LARGE ->
                add(
                        Severity.STOP,
                        READINGS,
                        "The part lies too far off: set it nearer its place by eye and read again.",
                        READINGS);
        }
        best.findings().stream().filter(f -> f.severity() == Severity.CAUTION).forEach(all::add);
        a.findings().stream().filter(f -> f.severity() != Severity.STOP).forEach(all::add);
        a.shims().ifPresent(this::shims);
    }

    private static Phrase outside(MoveReport.Outside o) {
        boolean flush = o.wanted().flush();
        return Phrase.of(
                "Station %s ends at %s even after the best move, %s %s: %s.",
                o.wanted().named(),
                Amount.mm(o.valueMm(), 1),
                Amount.mm(Math.abs(o.beyondMm()), 1),
                flush ? o.beyondMm() < 0 ? "too low" : "too proud" : o.beyondMm() < 0 ? "too tight" : "too wide",
                flush ? "bring its shape right first, no trim of the edge helps" : "trim or build up first");
    }

    private void shims(ShimResult shims) {
        if (shims.flags().contains(ShimFlag.STOP_IN_THE_WAY)) {
            add(Severity.STOP, "shims", "A stop stands where the part must go: relieve it first.", READINGS);
        }
        if (shims.flags().contains(ShimFlag.INDEX_UNDETERMINED)) {
            add(
                    Severity.STOP,
                    "shims",
                    "The index points leave a motion free: add one, or nothing holds the part while the adhesive cures.",
                    "the definition");
        }
        if (shims.flags().contains(ShimFlag.POOR_INDEXING)) {
            add(
                    Severity.CAUTION,
                    "shims",
                    "The index points lie badly: small errors of the shims become large ones of the part.",
                    "the definition");
        }
    }

    private void chance(Optional<FitCard.Located> located) {
        if (located.isEmpty()) {
            if (!fit.fit().holding().schemes().isEmpty()) {
                add(Severity.CAUTION, "scheme", "No way to locate the part is chosen yet.", "the definition");
            }
            return;
        }
        FitCard.Located l = located.get();
        if (l.chance().isPresent() && l.chance().getAsDouble() < GOOD_CHANCE) {
            add(
                    Severity.CAUTION,
                    "scheme",
                    String.format(
                            Locale.ROOT,
                            "With %s every gap ends inside in %.0f of 100 cases; under 90 look for a better way first.",
                            l.scheme(),
                            100 * l.chance().getAsDouble()),
                    PRACTICE);
        }
    }

    private void bond(Optional<FitBond> bond) {
        if (bond.isEmpty()) {
            add(
                    Severity.CAUTION,
                    "joint",
                    "No joint of the definition bonds this part: adhesive and working time are not known.",
                    "the definition");
            return;
        }
        bond.get()
                .card()
                .ifPresent(c -> c.mixes().stream()
                        .filter(m -> !m.list().fits())
                        .forEach(m -> add(
                                Severity.CAUTION,
                                "joint",
                                "The adhesive " + m.name()
                                        + " does not last for this joint as it is planned: see its card.",
                                "the definition")));
    }

    /** What the beams say, before the bond: a mismatch that is not known yet is told, and stops nothing by itself. */
    private void sprung(SprungResult r) {
        if (fit.isSet()) {
            return;
        }
        r.missing().forEach(m -> add(Severity.CAUTION, "frame", m, READINGS));
        r.findings().stream().filter(f -> f.severity() != Severity.NOTE).forEach(all::add);
    }

    private void width(WidthAnswer w) {
        if (w.stage() == WidthAnswer.Stage.WAIT && !fit.isSet()) {
            add(
                    Severity.STOP,
                    "frame",
                    "Width " + w.width().id() + " of the frame, " + w.width().where() + ": "
                            + (w.trial().isEmpty()
                                    ? "no trial is made yet. Clamp the sheet on dry, twice, before any adhesive."
                                    : "the trials have not come out yet. Set it anew and clamp the sheet on dry once more."),
                    PRACTICE);
        }
    }

    private void states() {
        List<FitState> order = fit.fit().states();
        int now = fit.now()
                .map(n -> order.stream()
                        .map(FitState::id)
                        .toList()
                        .indexOf(n.state().id()))
                .orElse(-1);
        if (fit.isSet()) {
            add(
                    Severity.STOP,
                    READINGS,
                    "The adhesive has set: this card is for looking back. What is left is to trim, build up, fill, hang anew"
                            + " or remake.",
                    PRACTICE);
        }
        List<String> known = fit.later().stream().map(l -> l.state().id()).toList();
        fit.later().forEach(this::allowedFor);
        List<String> unknown = order.subList(now + 1, order.size()).stream()
                .filter(s -> !known.contains(s.id()) && !s.id().equals(FitResult.BONDED))
                .map(FitState::name)
                .toList();
        if (!unknown.isEmpty()) {
            add(
                    Severity.NOTE,
                    "states",
                    "Still to come, and not known what it does to the gap: " + String.join(", ", unknown) + ".",
                    "the definition");
        }
    }

    private void allowedFor(LaterState l) {
        fit.findings().stream().filter(f -> f.about().equals(l.state().id())).forEach(all::add);
    }
}
