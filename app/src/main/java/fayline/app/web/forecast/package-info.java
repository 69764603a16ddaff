/** Pages on when the work will be done and what the shop's own times teach. Start at {@link fayline.app.web.forecast.ForecastPage}. */
@NullMarked
package fayline.app.web.forecast;

import org.jspecify.annotations.NullMarked;
