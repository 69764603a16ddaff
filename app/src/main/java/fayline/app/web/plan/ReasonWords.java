package fayline.app.web.plan;

import fayline.app.web.frame.Sight;
import fayline.basis.units.TimeSpan;
import fayline.flow.planner.PlanReasons.Reason;

/** A reason of the plan in words. */
public final class ReasonWords {
    private ReasonWords() {}

    /** Why it begins then and by how much it may slip, as {@code waits for ...; may begin up to 2 h later}. */
    public static String of(Sight sight, Reason reason) {
        return sight.named(reason.words()) + "; " + slip(sight, reason);
    }

    private static String slip(Sight sight, Reason reason) {
        return reason.slipMin() == 0
                ? "cannot begin later without moving something else"
                : "may begin up to " + sight.format().span(TimeSpan.ofMinutes(reason.slipMin()))
                        + " later without moving anything else";
    }
}
