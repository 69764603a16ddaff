package fayline.flow.record.payload;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A value as entries hold it: texts, whole numbers, lists and named fields, nothing else. Its {@link #canonical() canonical
 * form} is JSON as RFC 8785 writes it; without fractions the number rules of that form are not needed.
 */
public sealed interface Value permits Value.Text, Value.Whole, Value.Many, Value.Fields {
    /** Largest whole number either way: what RFC 8785 writes without loss. */
    long LARGEST = 9_007_199_254_740_991L;

    /** The JSON text of this value as RFC 8785 writes it: no spaces, keys in the order of their UTF-16 units. */
    default String canonical() {
        StringBuilder out = new StringBuilder();
        CanonicalText.write(this, out);
        return out.toString();
    }

    /** SHA-256 of the canonical form, 64 hexadecimal digits. */
    default String sha256() {
        return CanonicalText.sha256(canonical());
    }

    /**
     * Reads a canonical text back.
     *
     * @param canonical a text as {@link #canonical()} writes it
     * @throws NotCanonicalException if the text is anything else
     */
    static Value parse(String canonical) {
        Value value = new CanonicalParser(canonical).parse();
        if (!value.canonical().equals(canonical)) {
            throw new NotCanonicalException("the text is not in canonical form");
        }
        return value;
    }

    /**
     * A text as typed.
     *
     * @param text the characters; half of a surrogate pair alone is refused, since it has no UTF-8 form
     */
    record Text(String text) implements Value {
        /** Checks that the text can be written. */
        public Text {
            CanonicalText.requireWhole(text);
        }
    }

    /**
     * A whole number.
     *
     * @param number at most {@link #LARGEST} either way
     */
    record Whole(long number) implements Value {
        /** Checks the range. */
        public Whole {
            if (number > LARGEST || number < -LARGEST) {
                throw new IllegalArgumentException("whole number " + number + " is beyond 2^53 - 1");
            }
        }
    }

    /**
     * Values in order.
     *
     * @param items the values
     */
    record Many(List<Value> items) implements Value {
        /** Copies the list. */
        public Many {
            items = List.copyOf(items);
        }

        /** A list of texts. */
        public static Many ofTexts(Iterable<String> texts) {
            List<Value> items = new java.util.ArrayList<>();
            texts.forEach(t -> items.add(new Text(t)));
            return new Many(items);
        }
    }

    /**
     * Named values.
     *
     * @param fields the values by name, in the order of their names
     */
    record Fields(SortedMap<String, Value> fields) implements Value {
        /** No fields at all. */
        public static final Fields NONE = new Fields(new TreeMap<>());

        /** Copies the map. */
        public Fields {
            SortedMap<String, Value> copy = new TreeMap<>(fields);
            copy.keySet().forEach(CanonicalText::requireWhole);
            fields = Collections.unmodifiableSortedMap(copy);
        }

        /** These fields with one more, or one replaced. */
        public Fields with(String name, Value value) {
            SortedMap<String, Value> more = new TreeMap<>(fields);
            more.put(name, value);
            return new Fields(more);
        }

        /** These fields with a text. */
        public Fields with(String name, String text) {
            return with(name, new Text(text));
        }

        /** These fields with a whole number. */
        public Fields with(String name, long number) {
            return with(name, new Whole(number));
        }

        /** These fields with a list of texts. */
        public Fields with(String name, Iterable<String> texts) {
            return with(name, Many.ofTexts(texts));
        }

        /** These fields with a text, unless it is empty. */
        public Fields withUnlessEmpty(String name, String text) {
            return text.isEmpty() ? this : with(name, text);
        }

        /** These fields with those of another laid over them. */
        public Fields overlaidBy(Fields other) {
            SortedMap<String, Value> more = new TreeMap<>(fields);
            more.putAll(other.fields);
            return new Fields(more);
        }

        /** These fields but some. */
        public Fields without(List<String> names) {
            NavigableMap<String, Value> fewer = new TreeMap<>(fields);
            names.forEach(fewer::remove);
            return new Fields(fewer);
        }

        /** The text of a field; empty where it is absent or not a text. */
        public String text(String name) {
            return fields.get(name) instanceof Text t ? t.text() : "";
        }

        /** The number of a field, where it is there and a number. */
        public Optional<Long> whole(String name) {
            return fields.get(name) instanceof Whole w ? Optional.of(w.number()) : Optional.empty();
        }

        /** The texts of a list field; empty where it is absent. */
        public List<String> texts(String name) {
            return items(name).stream()
                    .filter(Text.class::isInstance)
                    .map(v -> ((Text) v).text())
                    .toList();
        }

        /** The values of a list field; empty where it is absent. */
        public List<Value> items(String name) {
            return fields.get(name) instanceof Many m ? m.items() : List.of();
        }

        /** The fields of a field; none where it is absent. */
        public Fields inner(String name) {
            return fields.get(name) instanceof Fields f ? f : NONE;
        }

        /** The text fields by name. */
        public Map<String, String> allTexts() {
            SortedMap<String, String> texts = new TreeMap<>();
            fields.forEach((k, v) -> {
                if (v instanceof Text t) {
                    texts.put(k, t.text());
                }
            });
            return Collections.unmodifiableSortedMap(texts);
        }
    }
}
