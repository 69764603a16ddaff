package fayline.store.file.kind;

import fayline.basis.units.Entered;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.store.file.shape.Spelling;
import fayline.store.file.yaml.Tree;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Reads the fields of a mapping whose shape was checked; what was refused there comes out as the stand-in given. */
public final class Fields {
    private final Tree tree;

    /** Reads from a mapping. */
    public Fields(Tree tree) {
        this.tree = tree;
    }

    /** Where they stand. */
    public Tree tree() {
        return tree;
    }

    /** Whether a key is there. */
    public boolean has(String key) {
        return tree.get(key).isPresent();
    }

    /** A text. */
    public Optional<String> text(String key) {
        return tree.get(key)
                .filter(t -> t.form() == Tree.Form.SCALAR && !t.isBlank())
                .map(Tree::text);
    }

    /** A text, else a stand-in. */
    public String text(String key, String otherwise) {
        return text(key).orElse(otherwise);
    }

    /** A text read by a function; empty where the function refuses. */
    public <T> Optional<T> read(String key, Function<String, T> reader) {
        return text(key).flatMap(t -> attempt(t, reader));
    }

    static <T> Optional<T> attempt(String text, Function<String, T> reader) {
        try {
            return Optional.of(reader.apply(text));
        } catch (RuntimeException e) {
            return Optional.empty();
        }
    }

    /** A quantity as typed. */
    public <Q extends Quantity> Optional<Entered<Q>> entered(String key, QuantityKind<Q> kind) {
        return read(key, t -> QuantityParser.parse(t, kind));
    }

    /** A quantity. */
    public <Q extends Quantity> Optional<Q> measure(String key, QuantityKind<Q> kind) {
        return entered(key, kind).map(Entered::value);
    }

    /** A quantity; the stand-in must be one that can be read. */
    public <Q extends Quantity> Q measure(String key, QuantityKind<Q> kind, String otherwise) {
        return measure(key, kind)
                .orElseGet(() -> QuantityParser.parse(otherwise, kind).value());
    }

    /** A whole number. */
    public int whole(String key, int otherwise) {
        return read(key, Integer::valueOf).orElse(otherwise);
    }

    /** A number. */
    public double number(String key, double otherwise) {
        return read(key, Double::valueOf).orElse(otherwise);
    }

    /** A number where there is one. */
    public OptionalDouble maybe(String key) {
        Optional<Double> v = read(key, Double::valueOf);
        return v.isPresent() ? OptionalDouble.of(v.get()) : OptionalDouble.empty();
    }

    /** Yes or no. */
    public boolean yes(String key) {
        return text(key).filter(t -> t.equals("yes") || t.equals("true")).isPresent();
    }

    /** A day. */
    public Optional<LocalDate> date(String key) {
        return read(key, LocalDate::parse);
    }

    /** A day, else the first of 1970. */
    public LocalDate day(String key) {
        return date(key).orElse(LocalDate.EPOCH);
    }

    /** A moment in the shop's own time. */
    public Optional<LocalDateTime> moment(String key) {
        return read(key, LocalDateTime::parse);
    }

    /** One of the words of an enumeration, by its key. */
    public <E extends Enum<E>> Optional<E> word(String key, Class<E> type) {
        return read(key, t -> constant(t, type));
    }

    static <E extends Enum<E>> E constant(String text, Class<E> type) {
        return Enum.valueOf(
                type, Spelling.house(text).toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
    }

    /** The words by which files name the constants of an enumeration. */
    static String[] words(Class<? extends Enum<?>> type) {
        Enum<?>[] constants = type.getEnumConstants();
        String[] words = new String[constants.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = constants[i].name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
        return words;
    }

    /** A mapping below. */
    public Optional<Fields> below(String key) {
        return tree.get(key).filter(t -> t.form() == Tree.Form.MAPPING).map(Fields::new);
    }

    /** The mappings of a list. */
    public List<Fields> list(String key) {
        return tree.get(key).map(Tree::items).orElse(List.of()).stream()
                .filter(t -> t.form() == Tree.Form.MAPPING)
                .map(Fields::new)
                .toList();
    }

    /** The texts of a list. */
    public List<String> texts(String key) {
        return tree.get(key).map(Tree::items).orElse(List.of()).stream()
                .filter(t -> t.form() == Tree.Form.SCALAR && !t.isBlank())
                .map(Tree::text)
                .toList();
    }

    /** The texts of a mapping, in order. */
    public Map<String, String> named(String key) {
        Map<String, String> map = new LinkedHashMap<>();
        tree.get(key).map(Tree::entries).orElse(Map.of()).forEach((k, v) -> {
            if (v.form() == Tree.Form.SCALAR && !v.isBlank()) {
                map.put(k, v.text());
            }
        });
        return map;
    }
}
