/**
 * Makes plans out of work: who does which step where and when, chemistry and nights included. Start at {@link
 * fayline.flow.planner.SerialPlanner}. What a plan means is said in {@link fayline.flow.plan}; whether one keeps the rules is
 * judged elsewhere, by code that knows nothing of this package. Formulas of cure do not belong here: the work brings its
 * clocks along.
 *
 * <p>The method is serial schedule generation by chains. Steps that chemistry, a window or a shared place ties together make
 * one block; blocks are put in one after the other by a priority, each step of a block at its earliest feasible time; where a
 * window shuts too early, the step that opened it moves later and the block is put in anew. Several priorities are tried and
 * the best result is kept. The general scheme is in R. Kolisch, "Serial and parallel resource-constrained project scheduling
 * methods revisited", European Journal of Operational Research 90 (1996) 320-333 (from memory); the blocks are our own.
 */
@NullMarked
package fayline.flow.planner;

import org.jspecify.annotations.NullMarked;
