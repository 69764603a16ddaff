/**
 * What CP-SAT knows of a plan: today a finish that no plan can beat. Start at {@link fayline.solver.CpSatBound}. The native
 * library is loaded late and only here ({@link fayline.solver.CpSatLibrary}). Rules of plans do not belong here: the bound
 * leaves most of them out on purpose, for a bound may be low but never high.
 */
@NullMarked
package fayline.solver;

import org.jspecify.annotations.NullMarked;
