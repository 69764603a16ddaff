package fayline.flow.result.expand;

import fayline.basis.finding.Finding;
import fayline.flow.plan.Hold;
import fayline.flow.plan.OppositeHands;
import fayline.flow.result.air.ClockBook;
import fayline.flow.result.step.StepResult;
import java.util.List;

/**
 * A project's recipes made into steps.
 *
 * @param steps every step, in the order of the definition
 * @param holds what stays occupied over several steps
 * @param clocks the clocks on which their spans run
 * @param tree how makes wait for each other, and what references mean
 * @param hands what second hands take over from first ones
 * @param findings what concerns no step alone
 */
public record Expansion(
        List<StepResult> steps,
        List<Hold> holds,
        ClockBook clocks,
        MakeTree tree,
        OppositeHands hands,
        List<Finding> findings) {
    /** Copies the lists. */
    public Expansion {
        steps = List.copyOf(steps);
        holds = List.copyOf(holds);
        findings = List.copyOf(findings);
    }
}
