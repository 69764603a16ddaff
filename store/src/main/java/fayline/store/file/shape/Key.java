package fayline.store.file.shape;

/**
 * One key of a mapping.
 *
 * @param name the key
 * @param shape what its value may be
 * @param needed whether it must be there
 * @param about what it is, in a sentence for the documentation and the editor
 */
public record Key(String name, Shape shape, boolean needed, String about) {
    /** Makes such a shape. */
    public static Key must(String name, Shape shape, String about) {
        return new Key(name, shape, true, about);
    }

    /** Makes such a shape. */
    public static Key may(String name, Shape shape, String about) {
        return new Key(name, shape, false, about);
    }
}
