/**
 * Readings of one sort as they came over the months, and whether their scatter has limits yet. Start at
 * {@link fayline.flow.result.series.Series}. How limits come about is told in {@code method.chart} [nist-handbook]. Which readings make
 * a series, and pictures of it, do not belong here.
 */
@NullMarked
package fayline.flow.result.series;

import org.jspecify.annotations.NullMarked;
