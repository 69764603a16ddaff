package fayline.flow.record;

import java.time.Instant;

/**
 * What a reading was before a correction: it stays to be seen beside what holds now.
 *
 * @param seq the correction's entry
 * @param before the reading as it stood until then
 * @param at when it was corrected
 * @param by who corrected it
 * @param why why, as typed; may be empty
 * @param withdrawn whether it was taken back; else something else stands in its place
 */
public record MendedReading(long seq, TakenReading before, Instant at, String by, String why, boolean withdrawn) {}
