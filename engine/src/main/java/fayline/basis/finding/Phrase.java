package fayline.basis.finding;

import fayline.basis.units.Amount;
import fayline.basis.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A sentence that keeps its amounts as amounts, so that each reader is told it in his own units. The engine says what it has to
 * say once; mm or thou is decided where it is read.
 */
public final class Phrase {
    /** Nothing said. */
    public static final Phrase NONE = plain("");

    private final String pattern;
    private final List<Object> parts;

    private Phrase(String pattern, List<Object> parts) {
        this.pattern = pattern;
        this.parts = List.copyOf(parts);
        in(UnitSystem.METRIC);
    }

    /** A sentence without amounts. */
    public static Phrase plain(String text) {
        return new Phrase("%s", List.of(text));
    }

    /**
     * A sentence with parts.
     *
     * @param pattern the sentence in the notation of {@link String#format}
     * @param parts what stands at its places: {@code %s} takes an {@link Amount}, another phrase or a word
     * @throws java.util.IllegalFormatException if pattern and parts do not go together
     */
    public static Phrase of(String pattern, Object... parts) {
        return new Phrase(pattern, List.of(parts));
    }

    /** Phrases one after the other with something between. */
    public static Phrase joined(String between, List<Phrase> phrases) {
        List<Object> all = new ArrayList<>();
        StringBuilder places = new StringBuilder();
        for (Phrase p : phrases) {
            if (all.isEmpty()) {
                places.append("%s");
            } else {
                places.append("%s%s");
                all.add(between);
            }
            all.add(p);
        }
        return new Phrase(places.toString(), all);
    }

    /** As it is read in these units. */
    public String in(UnitSystem system) {
        Object[] told = parts.stream().map(p -> told(p, system)).toArray();
        return String.format(Locale.ROOT, pattern, told);
    }

    /** Whether nothing is said. */
    public boolean isEmpty() {
        return toString().isEmpty();
    }

    private static Object told(Object part, UnitSystem system) {
        if (part instanceof Amount a) {
            return a.in(system);
        }
        return part instanceof Phrase p ? p.in(system) : part;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Phrase p && p.pattern.equals(pattern) && p.parts.equals(parts);
    }

    @Override
    public int hashCode() {
        return 31 * pattern.hashCode() + parts.hashCode();
    }

    /** In metric units. */
    @Override
    public String toString() {
        return in(UnitSystem.METRIC);
    }
}
