package fayline.method.cure;

import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;

/**
 * DiBenedetto's relation of glass transition to degree of cure.
 *
 * @param uncured glass transition of the uncured mix
 * @param full glass transition at full cure
 * @param lambda the shape parameter, in (0, 1]
 * @param stallAbove how far the glass transition rises above the cure temperature before the reaction stalls
 */
public record GlassTransition(Temperature uncured, Temperature full, double lambda, TemperatureDifference stallAbove) {}
