/**
 * Readings over time drawn: values with their limits, and below them the steps between neighbours. Start at
 * {@link fayline.app.drawing.series.SeriesDrawing}.
 */
@NullMarked
package fayline.app.drawing.series;

import org.jspecify.annotations.NullMarked;
