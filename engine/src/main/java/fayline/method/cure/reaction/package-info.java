/**
 * Degree of cure and glass transition. Start at {@link fayline.method.cure.reaction.DegreeOfCureCalculator} and
 * {@link fayline.method.cure.reaction.HeatPlanCalculator}. Rate laws after Kamal and Sourour [kamal-sourour1973] and Lee, Loos
 * and Springer [lee-loos-springer1982], glass transition after DiBenedetto [dibenedetto1987]. Degree of cure runs from 0 to 1;
 * times are from mixing. No constants of any resin are kept here.
 */
@NullMarked
package fayline.method.cure.reaction;

import org.jspecify.annotations.NullMarked;
