/**
 * What CP-SAT knows of a plan: here a finish that no plan can beat; start at {@link fayline.solver.CpSatBound}. The native
 * library is loaded late and only here ({@link fayline.solver.CpSatLibrary}), and every search runs through {@link
 * fayline.solver.SolverRun}. Rules of plans do not belong here: the bound
 * leaves most of them out on purpose, for a bound may be low but never high.
 */
@NullMarked
package fayline.solver;

import org.jspecify.annotations.NullMarked;
