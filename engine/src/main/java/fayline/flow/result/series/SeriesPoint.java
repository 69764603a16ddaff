package fayline.flow.result.series;

import java.time.Instant;

/**
 * One value of a series.
 *
 * @param name what was measured, in the builder's words
 * @param of the part, step or fit it belongs to
 * @param at when the last reading it rests on was taken
 * @param value the value, in the unit of the series' sort
 * @param typed the readings it rests on, as typed
 * @param entry the last entry it rests on
 */
public record SeriesPoint(String name, String of, Instant at, double value, String typed, long entry) {}
