/**
 * Betters the plan of a shop with CP-SAT. Start at {@link fayline.solver.shop.ShopPlanner}. The model is coarser than the
 * rules: slots of five minutes, cures at the longest they take among starts of a kind, crews by number and skill before they
 * have names. What it finds gives order, crews and places; {@link fayline.flow.planner.serial.WishedSchedule} makes the plan of
 * it, to the minute and by every rule. A result counts only if whoever asked says that it keeps the rules; judging does not
 * belong here.
 *
 * <p>Starting from a plan and freeing a part of it at a time is large-neighbourhood search (P. Shaw, "Using constraint
 * programming and local search methods to solve vehicle routing problems", CP 1998; from memory); crews as cumulative
 * resources and stays as intervals of variable length are common practice in constraint-based scheduling (Ph. Baptiste, C. Le
 * Pape, W. Nuijten, "Constraint-Based Scheduling", Kluwer 2001; from memory). Clock-time starts, classes of cures and complete
 * starts from the serial plan are our own measured choices.
 */
@NullMarked
package fayline.solver.shop;

import org.jspecify.annotations.NullMarked;
