/**
 * What makes one plan better than another: dated goals, the end of all, parts done soon, windows kept, people with something
 * to do, early evenings, few moves. Start at {@link fayline.flow.planner.goal.PlanScorer}. One function scores every plan,
 * whoever made it. Whether a plan keeps the rules is judged elsewhere; how to find a better one does not belong here.
 */
@NullMarked
package fayline.flow.planner.goal;

import org.jspecify.annotations.NullMarked;
