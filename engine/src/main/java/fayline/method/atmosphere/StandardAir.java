package fayline.method.atmosphere;

import fayline.basis.units.Density;
import fayline.basis.units.Pressure;
import fayline.basis.units.Speed;
import fayline.basis.units.Temperature;

/**
 * The standard air at a height.
 *
 * @param temperature temperature
 * @param pressure pressure, absolute
 * @param density density
 * @param sound speed of sound
 */
public record StandardAir(Temperature temperature, Pressure pressure, Density density, Speed sound) {}
