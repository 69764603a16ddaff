package fayline.flow.record;

/**
 * An entry that stands in the record and has no effect, because another one came first or because it names nothing.
 *
 * @param seq the entry without effect
 * @param other the entry that has the effect; 0 where there is none
 * @param about the step or entry it concerns
 * @param sentence what happened, for both who sent one
 */
public record Conflict(long seq, long other, String about, String sentence) {}
