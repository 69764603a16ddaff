/**
 * What a shop's own history says about the end: booked hours against estimates, and hours really worked in a month. Start at
 * {@link fayline.method.forecast.PaceForecastCalculator}. The rate
 * factor and its error follow Cochran 1977 [cochran1977]. Plans and calendars are no concern of this package.
 */
@NullMarked
package fayline.method.forecast;

import org.jspecify.annotations.NullMarked;
