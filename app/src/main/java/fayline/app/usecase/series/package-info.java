/**
 * Readings over time as people look at them: leak-down tests, masses, resin, gaps as bonded. Start at
 * {@link fayline.app.usecase.series.LookAtSeries}. How limits come about belongs to the engine.
 */
@NullMarked
package fayline.app.usecase.series;

import org.jspecify.annotations.NullMarked;
