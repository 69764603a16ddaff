package fayline.flow.audit;

import java.util.List;

/**
 * One rule that a plan, or the work behind it, breaks.
 *
 * @param rule the rule's name, which says the rule as a sentence, as {@code OneCureInAMouldAtATime}
 * @param steps ids of the steps concerned, the accused first; empty where the work itself is at fault beside its steps
 * @param sentence what was found and what was expected, with the numbers
 */
public record BrokenRule(String rule, List<String> steps, String sentence) {
    /** Copies the list. */
    public BrokenRule {
        steps = List.copyOf(steps);
    }

    /**
     * Whether the plan itself admits it: a step is not planned, and the plan says why. Such a plan is not whole, but what it
     * plans can be done.
     */
    public boolean admitted() {
        return rule.equals(EveryStepIsPlanned.class.getSimpleName());
    }
}
