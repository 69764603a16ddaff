package fayline.basis.finding;

import fayline.basis.units.UnitSystem;

/**
 * What a computation says about the work: not an error but an answer a builder can act on.
 *
 * @param severity how much it matters
 * @param about what it concerns, as a key path or a name in the builder's words
 * @param phrase one sentence a builder can act on, with the number and the limit in it, told in the reader's units
 * @param source where the limit comes from: a key of {@code docs/sources.md}, "common practice, no source", or the
 *     definition
 */
public record Finding(Severity severity, String about, Phrase phrase, String source) {
    /** A finding whose sentence holds no amount that depends on the reader's units. */
    public Finding(Severity severity, String about, String sentence, String source) {
        this(severity, about, Phrase.plain(sentence), source);
    }

    /** The sentence in metric units. */
    public String sentence() {
        return phrase.toString();
    }

    /** The sentence in the reader's units. */
    public String sentence(UnitSystem system) {
        return phrase.in(system);
    }
}
