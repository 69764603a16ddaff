/** When the work will be done. Start at {@link fayline.app.usecase.forecast.ForecastQuestion}. Nothing computed belongs here. */
@NullMarked
package fayline.app.usecase.forecast;

import org.jspecify.annotations.NullMarked;
