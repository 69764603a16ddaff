package fayline.flow.audit;

import java.util.List;

/** One rule of the shop; its class name says it as a sentence. */
interface PlanRule {
    /** Every place at which the plan, or the work itself, breaks this rule; empty when it is kept. */
    List<BrokenRule> judge(Audited audited);

    /** The rule's name as the report gives it. */
    default String name() {
        return getClass().getSimpleName();
    }

    /** A breach by one step. */
    default BrokenRule broken(String step, String sentence) {
        return new BrokenRule(name(), List.of(step), sentence);
    }

    /** A breach by one step against another. */
    default BrokenRule broken(String step, String other, String sentence) {
        return new BrokenRule(name(), List.of(step, other), sentence);
    }
}
