/**
 * Work and plan as files: the one JSON format of {@code plan --json} and {@code calc plan.audit}, a table, a calendar. Start
 * at {@link fayline.store.file.plan.PlanJson}. The JSON format is described in {@code docs/plan-format.md} and by
 * {@code schema/plan.schema.json}. Judging a plan does not belong here.
 */
@NullMarked
package fayline.store.file.plan;

import org.jspecify.annotations.NullMarked;
