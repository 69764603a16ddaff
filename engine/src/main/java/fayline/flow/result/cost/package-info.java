/**
 * What the work costs: to date, to go, at completion, against budgets. Start at {@link fayline.flow.result.cost.ProjectCosts}. Prices are
 * those of the lots that were used, else those of materials and systems; hours are booked ones, else the estimate. Nobody's guess stands
 * in for a price that is not known: what has none is named.
 */
@NullMarked
package fayline.flow.result.cost;

import org.jspecify.annotations.NullMarked;
