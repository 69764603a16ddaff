package fayline.store.file.rule;

import fayline.flow.project.catalog.Keyed;
import fayline.store.file.yaml.Tree;

/**
 * A value with its place.
 *
 * @param value the value
 * @param at where it is written
 * @param sound whether nothing in it was refused; rules that compute skip what is not
 * @param <T> the kind
 */
public record Placed<T extends Keyed>(T value, Tree at, boolean sound) {
    /** The id. */
    public String id() {
        return value.id();
    }
}
