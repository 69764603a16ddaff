/** Forecasts drawn: ends as spreads, hours against months. Start at {@link fayline.app.drawing.forecast.EndsDrawing}. */
@NullMarked
package fayline.app.drawing.forecast;

import org.jspecify.annotations.NullMarked;
