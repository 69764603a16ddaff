package fayline.method.mix.batch;

import fayline.basis.units.Mass;

/**
 * The question into how many equal batches a mix is split.
 *
 * @param total the whole mix
 * @param largest the largest batch allowed
 */
public record EqualBatches(Mass total, Mass largest) {}
