/**
 * Dew point and moist air against the limits for wet work. Start at {@link fayline.method.climate.ShopAirCalculator}.
 * Saturation over water after Magnus with the coefficients of WMO [wmo8], Buck [buck1996] and Hyland and Wexler
 * [ashrae-f2017]; moist air after [ashrae-f2017], chapter 1. What does not belong here: the shop's readings and forecast.
 */
@NullMarked
package fayline.method.climate;

import org.jspecify.annotations.NullMarked;
