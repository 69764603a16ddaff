package fayline.method.mix.batch;

import fayline.basis.units.TimeSpan;

/**
 * A way out where a lay-up does not fit the crew's day or the resin's life.
 *
 * @param kind which
 * @param possible whether it solves the matter
 * @param sentence what it means, for a builder
 * @param layUp time from the first cup to a tight bag with it; of one stage where it splits
 * @param work person-time that it costs more
 * @param delay working time or nights that it costs more
 * @param materials what it uses up more, in words; empty where nothing
 */
public record WayOut(
        Kind kind, boolean possible, String sentence, TimeSpan layUp, TimeSpan work, TimeSpan delay, String materials) {
    /** The ways out, in the order in which they are offered. */
    public enum Kind {
        /** Two or more stages with peel ply between, each inside the recoat window of the one before. */
        SPLIT,
        /** A second pair of hands. */
        ONE_MORE_PERSON,
        /** Beginning on another day. */
        ANOTHER_DAY
    }
}
