/**
 * The standard atmosphere: temperature, pressure and density at a height, for the pressure on a sheet or in a bag. Start at
 * {@link fayline.method.atmosphere.StandardAtmosphere}. Heights are geopotential unless a name says geometric [iso2533]. What
 * does not belong here: the weather.
 */
@NullMarked
package fayline.method.atmosphere;

import org.jspecify.annotations.NullMarked;
