/**
 * What follows from a definition and from what has happened: quantities, mixes, steps, clocks, stores, and the work to plan.
 * Start at {@link fayline.flow.result.ProjectCalculator}, which makes a {@link fayline.flow.result.ProjectResult}. Formulas
 * stand in {@code fayline.method}; who does what when is the planner's.
 */
@NullMarked
package fayline.flow.result;

import org.jspecify.annotations.NullMarked;
