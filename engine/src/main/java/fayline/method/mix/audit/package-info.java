/**
 * Whether resin and hardener went into mixes in their ratio, told afterwards from what is left of both. Start at
 * {@link fayline.method.mix.audit.RatioAuditCalculator}. Masses in kilograms, uncertainties as standard uncertainties
 * [jcgm100]; the verdict keeps a guard band on either side of the limit [jcgm106]. What does not belong here: which mixes a lot
 * went into.
 */
@NullMarked
package fayline.method.mix.audit;

import org.jspecify.annotations.NullMarked;
