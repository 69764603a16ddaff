/**
 * Readings over time on a page: a chart of each sort with limits and why. Start at {@link fayline.app.web.series.SeriesPage}.
 */
@NullMarked
package fayline.app.web.series;

import org.jspecify.annotations.NullMarked;
