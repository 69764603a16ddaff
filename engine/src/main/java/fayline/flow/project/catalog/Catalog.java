package fayline.flow.project.catalog;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Things of one kind in the order in which they are written, found by id. Immutable.
 *
 * @param <T> the kind
 */
public final class Catalog<T extends Keyed> implements Iterable<T> {
    private final List<T> items;
    private final Map<String, T> byId = new LinkedHashMap<>();

    /**
     * Makes a catalog.
     *
     * @param items the things, in order; of two with one id the first is found
     */
    public Catalog(List<? extends T> items) {
        this.items = List.copyOf(items);
        for (T item : this.items) {
            byId.putIfAbsent(item.id(), item);
        }
    }

    /** An empty catalog. */
    public static <T extends Keyed> Catalog<T> empty() {
        return new Catalog<>(List.of());
    }

    /** The thing with an id. */
    public Optional<T> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * The thing with an id that is known to exist.
     *
     * @throws IllegalArgumentException if there is none: the definition was not verified
     */
    public T get(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no such id: " + id));
    }

    /** All things in order. */
    public List<T> items() {
        return items;
    }

    /** All things in order. */
    public Stream<T> stream() {
        return items.stream();
    }

    @Override
    public Iterator<T> iterator() {
        return items.iterator();
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Catalog<?> c && items.equals(c.items);
    }

    @Override
    public int hashCode() {
        return items.hashCode();
    }

    @Override
    public String toString() {
        return byId.keySet().toString();
    }
}
