package fayline.app.usecase.act;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.Slip;
import fayline.flow.record.StepRecord;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Hands leave a step. A hold point is finished by the signature of someone whom the shop lets sign; that is the shop's own
 * record and no licensed signature.
 */
public final class FinishStep {
    private final ShopRecord shop;

    /** On a shop's record. */
    public FinishStep(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Records a finish.
     *
     * @param sent who sends it under which id
     * @param step the step
     * @param people who joined later; empty where nobody did
     * @param signed who signs the hold point; empty where it is none
     * @param slip why it took longer or came later than planned, a word of {@link Slip}; empty where nothing is said
     * @param at when the hands left, on a whole minute; now where nothing is said
     */
    public Outcome finish(
            Sent sent, String step, List<String> people, String signed, String slip, Optional<Instant> at) {
        return finish(sent, step, new Finish(people, signed, slip, List.of()), at);
    }

    /**
     * A finish.
     *
     * @param people who joined later; empty where nobody did
     * @param signed who signs the hold point; empty where it is none
     * @param slip why it took longer or came later than planned, a word of {@link Slip}; empty where nothing is said
     * @param missing what the step should have and has not, each with its reason
     */
    public record Finish(List<String> people, String signed, String slip, List<StepRecord.Lack> missing) {
        /** Copies the lists. */
        public Finish {
            people = List.copyOf(people);
            missing = List.copyOf(missing);
        }
    }

    /**
     * Records a finish. At the bench it is refused while something is missing for which no reason is given; each has its own.
     *
     * @param sent who sends it under which id
     * @param step the step
     * @param finish what is said of it
     * @param at when the hands left, on a whole minute; now where nothing is said
     */
    public Outcome finish(Sent sent, String step, Finish finish, Optional<Instant> at) {
        return shop.deciding(() -> decide(sent, step, finish, at.orElseGet(() -> shop.timeOf(sent))));
    }

    private Outcome decide(Sent sent, String step, Finish finish, Instant at) {
        List<String> people = finish.people();
        String signed = finish.signed();
        String slip = finish.slip();
        Optional<Definition> definition = shop.definitionWith(StartStep.project(step), StartStep.made(step));
        if (definition.isEmpty()) {
            return Outcome.refused("The project of " + step + " is not in this shop.");
        }
        Definition d = definition.get();
        Checks checks = new Checks(d);
        Optional<FoundStep> found = checks.step(step);
        checks.person("by", sent.by());
        people.forEach(p -> checks.person("people", p));
        checks.time(sent, at, shop.now());
        if (!signed.isEmpty()) {
            checks.person("signed", signed);
        }
        if (!slip.isEmpty() && Slip.of(slip).isEmpty()) {
            checks.stop("slip", slip, "one of " + String.join(", ", Slip.keys()), "or nothing");
        }
        StepRecord kept = shop.state().step(step);
        if (kept.started().filter(at::isBefore).isPresent() && !shop.knows(sent.client())) {
            checks.stop(
                    "at",
                    Checks.words(at, d.shop().zone()),
                    "no earlier than the start, "
                            + Checks.words(
                                    kept.started().orElseThrow(), d.shop().zone()),
                    "correct the start first if that is wrong");
        }
        if (sent.live() && !shop.knows(sent.client())) {
            missing(checks, finish.missing());
        }
        if (found.isEmpty() || !checks.problems().isEmpty()) {
            return Outcome.refused("The finish was not recorded.", checks.problems());
        }
        if (sent.live() && found.get().step().hold() && !Signers.isOne(d, signed)) {
            return Outcome.refused(
                    signed.isEmpty()
                            ? "This is a hold point: it is finished by the signature of someone who may sign."
                            : "This is a hold point, and " + signed + " is not among those who may sign it.");
        }
        Value.Fields payload = lacking(
                Value.Fields.NONE
                        .with("step", step)
                        .with("at", at.toString())
                        .withUnlessEmpty("signed", signed)
                        .withUnlessEmpty("slip", slip),
                missing(sent, finish.missing()));
        return shop.append(Checks.entry(
                        shop,
                        sent,
                        StartStep.project(step),
                        EntryKind.STEP_FINISHED,
                        people.isEmpty() ? payload : payload.with("people", people)))
                .with(cautions(d, step, kept));
    }

    private static void missing(Checks checks, List<StepRecord.Lack> missing) {
        for (StepRecord.Lack lack : missing) {
            checks.text("missing", lack.why(), false);
            if (lack.why().isBlank()) {
                checks.stop("missing", "no record of " + lack.what(), "it, or a reason why not", "");
            }
        }
    }

    /** What is missing; what was sent before says the same again, whatever was entered since. */
    private List<Value> missing(Sent sent, List<StepRecord.Lack> missing) {
        return shop.seqOf(sent.client())
                .flatMap(shop::entry)
                .map(e -> e.fields().items("missing"))
                .orElseGet(() -> missing.stream().map(l -> (Value) l.fields()).toList());
    }

    private static Value.Fields lacking(Value.Fields payload, List<Value> missing) {
        return missing.isEmpty() ? payload : payload.with("missing", new Value.Many(missing));
    }

    private static List<Finding> cautions(Definition d, String step, StepRecord kept) {
        List<Finding> cautions = new ArrayList<>();
        if (kept.started().isEmpty()) {
            cautions.add(new Finding(
                    Severity.CAUTION,
                    step,
                    "No start of this step is recorded; add it, so that times can be learned from it.",
                    "the record"));
        }
        kept.finished()
                .ifPresent(t -> cautions.add(new Finding(
                        Severity.CAUTION,
                        step,
                        "This step was already finished at "
                                + Checks.words(t, d.shop().zone())
                                + "; that finish holds, this one stands beside it.",
                        "the record")));
        return cautions;
    }
}
