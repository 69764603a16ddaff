/**
 * What a laminate came out as: fibre and resin in it, how thick that makes it, voids, and what that does to its stiffness. Start
 * at {@link fayline.method.asmade.Content}, {@link fayline.method.asmade.BurnOffCalculator} and {@link
 * fayline.method.asmade.StiffnessChangeCalculator}. Balances of mass and volume; source [astm-d3171] (recalled). What does not
 * belong here: how much resin to mix ({@code method.mix}).
 */
@NullMarked
package fayline.method.asmade;

import org.jspecify.annotations.NullMarked;
