package fayline.flow.result.mix;

import fayline.basis.finding.Figure;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;

/**
 * A mix that a step needs, whoever mixes it and whenever.
 *
 * @param system the system
 * @param purpose what for
 * @param inPart mass that stays in the part or joint
 * @param toMix mass to mix, waste included
 * @param thickener thickener by mass of the mix; 0 for none
 * @param figure how the mass came about
 */
public record StepMix(String system, String purpose, Mass inPart, Mass toMix, Fraction thickener, Figure figure) {}
