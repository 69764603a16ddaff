package fayline.method.climate;

import fayline.basis.units.Fraction;
import fayline.basis.units.Pressure;
import fayline.basis.units.Temperature;
import java.util.Optional;

/**
 * The question what state moist air is in, from a wet-bulb thermometer or from relative humidity.
 *
 * @param dryBulb air temperature
 * @param wetBulb wet-bulb temperature; goes before the humidity where both are given
 * @param humidity relative humidity
 * @param pressure air pressure
 */
public record MoistAir(
        Temperature dryBulb, Optional<Temperature> wetBulb, Optional<Fraction> humidity, Pressure pressure) {}
