package fayline.basis.finding;

/**
 * What a computation says about the work: not an error but an answer a builder can act on.
 *
 * @param severity how much it matters
 * @param about what it concerns, as a key path or a name in the builder's words
 * @param sentence one sentence a builder can act on, with the number and the limit in it
 * @param source where the limit comes from: a key of {@code docs/sources.md}, "common practice, no source", or the
 *     definition
 */
public record Finding(Severity severity, String about, String sentence, String source) {}
