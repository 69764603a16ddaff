package fayline.app.usecase.act;

import fayline.flow.project.Definition;
import fayline.flow.record.RecordState;
import fayline.flow.record.change.Change;
import fayline.flow.record.change.Verdict;
import fayline.flow.result.change.ReachCalculator;
import fayline.flow.result.change.Touch;
import java.util.Optional;
import java.util.Set;

/**
 * What changes of the design say about a start: no hand begins by a card that is withdrawn, nor on something that is about to be made
 * otherwise, unless the lead says so.
 */
public final class ChangeGate {
    private ChangeGate() {}

    /**
     * Why only the lead may let a step begin; empty where no change stands before it.
     *
     * @param change the change's name
     * @param sentence why
     */
    public record Bar(String change, String sentence) {}

    /**
     * The change that stands before a step, where one does.
     *
     * @param d the definition
     * @param state what is recorded
     * @param step the step
     */
    public static Optional<Bar> before(Definition d, RecordState state, FoundStep step) {
        String project = d.facts().id();
        for (Change c : state.change().ofProject(project)) {
            String made = step.made().id();
            if (c.stage() == Change.Stage.ACCEPTED) {
                Optional<String> awaited = awaited(d, c, step, project);
                if (awaited.isPresent()) {
                    return Optional.of(new Bar(
                            c.name(),
                            "Change " + c.name() + " is accepted, and the new revision of " + awaited.get()
                                    + " is not in the definition. Only the lead may let it begin."));
                }
            } else if (c.isOpen()
                    && ReachCalculator.madeOtherwise(d, Touch.allOf(c.touches()))
                            .contains(made)) {
                return Optional.of(new Bar(
                        c.name(),
                        "Change " + c.name() + " would make this otherwise and is "
                                + c.stage().words() + ". Only the lead may let it begin."));
            }
        }
        return Optional.empty();
    }

    private static Optional<String> awaited(Definition d, Change c, FoundStep step, String project) {
        Set<String> on = Held.dependsOn(d, step, project);
        return c.verdict().stream()
                .flatMap(v -> v.withdraws().stream())
                .map(Verdict.Withdrawn::made)
                .filter(c::awaitsDefinitionOf)
                .filter(m -> on.stream().anyMatch(s -> s.startsWith(m + "/")))
                .findFirst();
    }

    /**
     * Why a card may no longer be worked by: a change came after it was opened. Empty where none did, or where nobody knows when it was.
     *
     * @param state what is recorded
     * @param step the step
     * @param seen how far the record was when the card was made; 0 where nobody knows
     */
    public static Optional<String> withdrawn(RecordState state, FoundStep step, long seen) {
        String project = step.id().substring(0, step.id().indexOf('/'));
        String made = step.made().id();
        return state.change().ofProject(project).stream()
                .filter(c -> seen > 0 && c.isInForce())
                .filter(c -> c.verdict()
                        .filter(v -> v.isOn(made) && (v.holdsSince() > seen || settledAfter(c, made, seen)))
                        .isPresent())
                .map(
                        c -> "This card is withdrawn by change " + c.name()
                                + ", which came after it was opened. Do not use it: open the card anew and read what is otherwise.")
                .findFirst();
    }

    private static boolean settledAfter(Change c, String made, long seen) {
        return c.settled(Change.itemOf(made)).filter(s -> s.seq() > seen).isPresent();
    }
}
