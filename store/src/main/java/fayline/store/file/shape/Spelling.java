package fayline.store.file.shape;

/** Both spellings of mould are understood wherever a key or a word is read; the product writes mould. */
public final class Spelling {
    private Spelling() {}

    /** The house's spelling of a word. */
    public static String house(String word) {
        return word.contains("mould") ? word : word.replace("mold", "mould");
    }

    /** The other spelling of a word; the word itself where there is none. */
    static String other(String word) {
        return word.replace("mould", "mold");
    }
}
