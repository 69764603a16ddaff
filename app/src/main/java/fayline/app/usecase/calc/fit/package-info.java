/**
 * The questions of fit-up that a script can ask, one topic each, named {@code fit.KIND}. Start at
 * {@link fayline.app.usecase.calc.fit.FitTopics}. Lengths in mm, angles in degrees in fields that end in Deg, forces in N,
 * stresses in MPa, temperatures in degC: the units of a bench sketch, so the fields carry none. What does not belong here: the
 * formulas, which are the engine's.
 */
@NullMarked
package fayline.app.usecase.calc.fit;

import org.jspecify.annotations.NullMarked;
