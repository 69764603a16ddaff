/**
 * How long a mixed mass in a container can be used. Start at {@link fayline.method.cure.pot.PotLifeCalculator}. The power law
 * in mass and the estimates for container and thickener are common practice of this project, no source; the dependence on
 * temperature is that of {@link fayline.method.cure.CureLaw} [arrhenius1889]. What does not belong here: how large a batch may
 * be.
 */
@NullMarked
package fayline.method.cure.pot;

import org.jspecify.annotations.NullMarked;
