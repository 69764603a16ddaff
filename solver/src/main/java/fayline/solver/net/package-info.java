/**
 * Schedules a net of activities: heuristics for a good start, CP-SAT for proofs and for re-arranging parts of a schedule. Start
 * at {@link fayline.solver.net.NetSolver}. What a shop is does not belong here.
 */
@NullMarked
package fayline.solver.net;

import org.jspecify.annotations.NullMarked;
