package fayline.method.mix.batch;

import fayline.basis.units.Mass;
import fayline.basis.units.TimeSpan;

/**
 * One batch on the scale list. Times count from the mixing of the first batch.
 *
 * @param number 1-based
 * @param mass the mixed mass
 * @param resin resin on the scale
 * @param hardener hardener on the scale
 * @param hardenerTolerance how far the hardener may be off, either way
 * @param mixAt when weighing begins
 * @param applyFrom when it is mixed and its use begins
 * @param appliedBy when it is used up, as planned
 * @param usableUntil when the trusted share of its pot life is over
 * @param potLife its pot life at the expected temperature
 */
public record Batch(
        int number,
        Mass mass,
        Mass resin,
        Mass hardener,
        Mass hardenerTolerance,
        TimeSpan mixAt,
        TimeSpan applyFrom,
        TimeSpan appliedBy,
        TimeSpan usableUntil,
        TimeSpan potLife) {}
