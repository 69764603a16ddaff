/**
 * Numerical methods behind our own names: integration of a rate law with error control, and roots by bracketing. Start at
 * {@link fayline.basis.numeric.OdeIntegrator} and {@link fayline.basis.numeric.RootFinder}; probabilities at
 * {@link fayline.basis.numeric.StandardNormal}, chance at {@link fayline.basis.numeric.RandomStream};
 * best points at {@link fayline.basis.numeric.optimum}. The numerical library that does
 * the work never shows in a signature. What does not belong here: any engineering formula.
 */
@NullMarked
package fayline.basis.numeric;

import org.jspecify.annotations.NullMarked;
