package fayline.flow.card.fit;

import fayline.flow.card.Card;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.design.Joint;
import fayline.flow.result.quantity.JointResult;
import fayline.flow.result.step.ClockRunning;
import java.util.List;
import java.util.Optional;

/**
 * The joint that bonds a fitted part.
 *
 * @param joint the joint
 * @param amounts its amounts
 * @param adhesive name of the adhesive
 * @param others names of other joints of the same part
 * @param card the card of the step that mixes its adhesive: batches and lots; empty where no step of it mixes
 * @param running clocks of that step that run out, the soonest first
 */
public record FitBond(
        Joint joint,
        JointResult amounts,
        String adhesive,
        List<String> others,
        Optional<Card> card,
        List<ClockRunning> running) {
    /** Copies the lists. */
    public FitBond {
        others = List.copyOf(others);
        running = List.copyOf(running);
    }

    /** How far the step that mixes its adhesive is. */
    public Optional<WorkStep.State> state() {
        return card.map(c -> c.when().state());
    }
}
