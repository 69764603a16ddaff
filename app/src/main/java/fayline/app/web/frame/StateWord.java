package fayline.app.web.frame;

import fayline.app.drawing.Mark;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.util.Optional;

/**
 * How far a step is, as a word with its mark and its colour.
 *
 * @param word the word
 * @param mark the mark
 * @param tone the colour's name in the style sheet; empty for none
 */
public record StateWord(String word, Mark mark, String tone) {

    /** The state of a step at a moment. */
    public static StateWord of(WorkStep step, Instant now) {
        return switch (step.state()) {
            case DONE -> new StateWord("done", Mark.DONE, "done");
            case RUNNING ->
                step.actual().handsEnded().filter(t -> !t.isAfter(now)).isPresent()
                        ? new StateWord("curing or waiting", Mark.WET, "wet")
                        : new StateWord("at work", Mark.HANDS, "hands");
            case TODO -> new StateWord("to do", Mark.WAITING, "");
        };
    }

    /** The state of a step as its list on a page shows it: a hold point says so. */
    public static StateWord of(StepResult step, Sight sight) {
        StateWord plain = of(step.work(), sight.time().now());
        if (step.work().state() != WorkStep.State.TODO) {
            return plain;
        }
        if (step.signed()) {
            return new StateWord("to do, hold point", Mark.HOLD, "hold");
        }
        Optional<Plan.PlannedStep> planned = sight.planned(step.id());
        return planned.isEmpty() ? new StateWord("not planned", Mark.TROUBLE, "trouble") : plain;
    }
}
