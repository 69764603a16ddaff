/**
 * What is known of a result when its inputs are known with an uncertainty. Three ways to ask: first order for small
 * uncertainties ({@link fayline.method.uncertainty.FirstOrderCalculator}), drawing many trials where distributions matter
 * ({@link fayline.method.uncertainty.MonteCarloCalculator}), and a stack of toleranced dimensions
 * ({@link fayline.method.uncertainty.ToleranceStackCalculator}). Start at the first. Unit-less: coherent units go in and come
 * out. The guide to uncertainty [jcgm100] and its supplement on trials [jcgm101]. What does not belong here: what is measured.
 */
@NullMarked
package fayline.method.uncertainty;

import org.jspecify.annotations.NullMarked;
