package fayline.flow.project.fit;

import java.util.OptionalDouble;

/**
 * What gaps are read with.
 *
 * @param name what it is
 * @param deviationMm standard uncertainty of one reading, where it is known
 * @param sharedMm standard uncertainty that all readings of one hand share, where it is known
 */
public record FitGauge(String name, OptionalDouble deviationMm, OptionalDouble sharedMm) {}
