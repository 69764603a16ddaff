package fayline.app.usecase.act;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.inspect.StageGate;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Hands begin a step. What happened is recorded, with cautions where something before it is not finished. At the bench it is
 * refused while a hold point before it is unsigned, or while the card's question which way round is unanswered.
 */
public final class StartStep {
    private final ShopRecord shop;

    /** On a shop's record. */
    public StartStep(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Records a start.
     *
     * @param sent who sends it under which id
     * @param step the step: {@code project/made/make-number/key}
     * @param people who works on it; at least one
     * @param places where, as far as it is said: moulds, stands, ports
     * @param whichWay the answer to which way round; empty where it was not given
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome start(
            Sent sent, String step, List<String> people, List<String> places, String whichWay, Optional<Instant> at) {
        return start(sent, step, new Beginning(people, places, whichWay, ""), at);
    }

    /**
     * How a step begins.
     *
     * @param people who works on it; at least one
     * @param places where, as far as it is said: moulds, stands, ports
     * @param whichWay the answer to which way round; empty where it was not given
     * @param despite why the lead lets it begin although a change of the design stands before it; else empty
     */
    public record Beginning(List<String> people, List<String> places, String whichWay, String despite) {
        /** Copies the lists. */
        public Beginning {
            people = List.copyOf(people);
            places = List.copyOf(places);
        }
    }

    /**
     * Records a start.
     *
     * @param sent who sends it under which id, and how far the record was when their card was made
     * @param step the step: {@code project/made/make-number/key}
     * @param begins how it begins
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome start(Sent sent, String step, Beginning begins, Optional<Instant> at) {
        return shop.deciding(() -> decide(sent, step, begins, at.orElseGet(() -> shop.timeOf(sent))));
    }

    private Outcome decide(Sent sent, String step, Beginning begins, Instant at) {
        Optional<Definition> definition = shop.definitionWith(project(step), made(step));
        if (definition.isEmpty()) {
            return Outcome.refused("The project of " + step + " is not in this shop.");
        }
        Checks checks = new Checks(definition.get());
        Optional<FoundStep> found = checks.step(step);
        checks.person("by", sent.by());
        checks.people("people", begins.people());
        checks.places(begins.places());
        checks.text("which-way", begins.whichWay(), false);
        checks.text("despite", begins.despite(), false);
        checks.time(sent, at, shop.now());
        Optional<Instant> over = shop.state().step(step).finished().filter(f -> at.isAfter(f));
        if (over.isPresent() && !shop.knows(sent.client())) {
            checks.stop(
                    "at",
                    Checks.words(at, definition.get().shop().zone()),
                    "no later than the finish, "
                            + Checks.words(over.get(), definition.get().shop().zone()),
                    "give the time at which it began, or correct the finish first if that is wrong");
        }
        if (found.isEmpty() || !checks.problems().isEmpty()) {
            return Outcome.refused("The start was not recorded.", checks.problems());
        }
        if (sent.live()) {
            Optional<String> barred = barred(definition.get(), found.get(), begins.whichWay())
                    .or(() -> ofChange(definition.get(), sent, found.get(), begins.despite()));
            if (barred.isPresent()) {
                return Outcome.refused(barred.get());
            }
        }
        Value.Fields payload = Value.Fields.NONE
                .with("step", step)
                .with("at", at.toString())
                .with("people", begins.people())
                .withUnlessEmpty("which-way", begins.whichWay())
                .withUnlessEmpty("despite", begins.despite());
        List<Finding> cautions = cautions(definition.get(), found.get());
        if (!sent.live()) {
            // hands were at it already: it is not refused, but said
            barred(definition.get(), found.get(), begins.whichWay())
                    .or(() -> ofChange(definition.get(), sent, found.get(), begins.despite()))
                    .ifPresent(b -> cautions.add(new Finding(Severity.CAUTION, step, b, "the definition")));
        }
        return shop.append(Checks.entry(
                        shop,
                        sent,
                        project(step),
                        EntryKind.STEP_STARTED,
                        begins.places().isEmpty() ? payload : payload.with("places", begins.places())))
                .with(cautions);
    }

    /** What is made, of a step's id. */
    public static String made(String step) {
        String[] bits = step.split("/", -1);
        return bits.length > 1 ? bits[1] : "";
    }

    /** The project, of a step's id. */
    public static String project(String step) {
        return step.substring(0, Math.max(0, step.indexOf('/')));
    }

    private Optional<String> barred(Definition d, FoundStep step, String whichWay) {
        RecordState state = shop.state();
        List<String> stage = new StageGate(d, state.inspect())
                .barred(
                        made(step.id()),
                        step.id().substring(step.id().indexOf('/') + 1),
                        step.step().kind());
        if (!stage.isEmpty()) {
            return Optional.of(String.join(" ", stage));
        }
        for (FoundStep hold : step.holdsBefore(d)) {
            StepRecord kept = state.step(hold.id());
            if (kept.finished().isEmpty() || kept.signed().isEmpty()) {
                return Optional.of("The hold point \"" + hold.name()
                        + "\" is not signed. It must be signed before this step begins.");
            }
        }
        Optional<String> held = Held.by(d, state, step, shop.now());
        if (held.isPresent()) {
            return held;
        }
        if (step.step().whichWay() && whichWay.isBlank()) {
            return Optional.of("Which way round does it lie? Answer that on the card before the hands begin.");
        }
        return Optional.empty();
    }

    /** Why a change of the design bars it; what was recorded before stays. */
    private Optional<String> ofChange(Definition d, Sent sent, FoundStep step, String despite) {
        if (shop.knows(sent.client())) {
            return Optional.empty();
        }
        Optional<String> withdrawn = ChangeGate.withdrawn(shop.state(), step, sent.seen());
        if (withdrawn.isPresent()) {
            return withdrawn;
        }
        boolean leads = !despite.isBlank() && (shop.isJudged() || Signers.isOne(d, sent.by()));
        return leads
                ? Optional.empty()
                : ChangeGate.before(d, shop.state(), step).map(ChangeGate.Bar::sentence);
    }

    private List<Finding> cautions(Definition d, FoundStep step) {
        List<Finding> cautions = new ArrayList<>();
        RecordState state = shop.state();
        for (FoundStep before : step.before(d)) {
            if (state.step(before.id()).finished().isEmpty()) {
                cautions.add(new Finding(
                        Severity.CAUTION,
                        step.id(),
                        "\"" + before.name() + "\" comes before this step and is not recorded as finished.",
                        "the definition"));
            }
        }
        StepRecord kept = state.step(step.id());
        kept.started()
                .ifPresent(t -> cautions.add(new Finding(
                        Severity.CAUTION,
                        step.id(),
                        "This step was already started at "
                                + Checks.words(t, d.shop().zone())
                                + "; that start holds, this one stands beside it.",
                        "the record")));
        return cautions;
    }
}
