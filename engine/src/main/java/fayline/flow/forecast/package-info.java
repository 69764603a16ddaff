/**
 * When the work will be done, as a spread: the plan made again and again with other times and later deliveries. Start at {@link
 * fayline.flow.forecast.PlanForecast}. What history says about pace stands in {@link fayline.method.forecast}.
 */
@NullMarked
package fayline.flow.forecast;

import org.jspecify.annotations.NullMarked;
