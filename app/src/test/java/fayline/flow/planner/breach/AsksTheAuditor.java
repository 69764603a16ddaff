package fayline.flow.planner.breach;

import fayline.flow.audit.PlanAuditor;

/** Breaks the rule between planner and auditor on purpose, so that the structure test can show that it bites. */
final class AsksTheAuditor {
    private AsksTheAuditor() {}

    static String ask() {
        return PlanAuditor.class.getName();
    }
}
