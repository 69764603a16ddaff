/**
 * Work and plan as values, whole in themselves: everything a planner needs and an auditor judges, with nothing of the
 * definition behind it. Start at {@link fayline.flow.plan.Work} and {@link fayline.flow.plan.Plan}. Times are instants on
 * whole minutes; spans are minutes. Chemistry runs on a {@link fayline.flow.plan.CureClock}: a span on a clock is equivalent
 * minutes at the clock's reference temperature. Choosing and judging do not belong here.
 */
@NullMarked
package fayline.flow.plan;

import org.jspecify.annotations.NullMarked;
