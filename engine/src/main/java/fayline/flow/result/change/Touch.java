package fayline.flow.result.change;

import fayline.flow.project.Definition;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.catalog.Keyed;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Something of the definition that a change alters.
 *
 * @param sort what it is
 * @param id its id
 */
public record Touch(Sort sort, String id) {
    /** The word in the record, as {@code laminate/hull-chine}. */
    public String key() {
        return sort.key() + "/" + id;
    }

    /** What a word in the record names; empty where it has not that form. */
    public static Optional<Touch> of(String key) {
        int at = key.indexOf('/');
        return Arrays.stream(Sort.values())
                .filter(s -> at > 0 && key.length() > at + 1 && s.key().equals(key.substring(0, at)))
                .map(s -> new Touch(s, key.substring(at + 1)))
                .findFirst();
    }

    /** All that words in the record name, in their order. */
    public static List<Touch> allOf(List<String> keys) {
        return keys.stream().flatMap(k -> of(k).stream()).toList();
    }

    /** Whether the definition holds it. */
    public boolean isIn(Definition d) {
        return item(d).isPresent();
    }

    /** What people call it; its id where the definition does not hold it. */
    public String name(Definition d) {
        return item(d).map(Item::name).orElse(id);
    }

    private Optional<Item> item(Definition d) {
        return sort.items(d).stream().filter(i -> i.id().equals(id)).findFirst();
    }

    /**
     * One thing of a sort.
     *
     * @param id its id
     * @param name what people call it
     */
    public record Item(String id, String name) {}

    /** What can be altered. */
    public enum Sort {
        PART("Parts"),
        LAMINATE("Laminates"),
        RECIPE("Recipes"),
        MOULD("Moulds"),
        JOINT("Joints"),
        FIT("Fits"),
        MATERIAL("Materials"),
        SYSTEM("Resins and adhesives");

        private final String words;

        Sort(String words) {
            this.words = words;
        }

        /** What several of it are called. */
        public String words() {
            return words;
        }

        /** The word in the record. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** All of its sort in a definition, in order. */
        public List<Item> items(Definition d) {
            return switch (this) {
                case PART -> items(d.parts(), p -> p.name());
                case LAMINATE -> items(d.laminates(), l -> l.name());
                case RECIPE -> items(d.recipes(), r -> r.name());
                case MOULD -> items(d.shop().moulds(), m -> m.name());
                case JOINT -> items(d.joints(), j -> j.name());
                case FIT -> items(d.fits(), f -> f.name());
                case MATERIAL -> items(d.materials(), m -> m.name());
                case SYSTEM -> items(d.systems(), r -> r.name());
            };
        }

        private static <T extends Keyed> List<Item> items(Catalog<T> all, Function<T, String> name) {
            return all.stream().map(k -> new Item(k.id(), name.apply(k))).toList();
        }
    }
}
