package fayline.store.file.yaml;

/** A text that cannot be read, or a change that only a person can make in the text. */
public final class UneditableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Says why. */
    public UneditableException(String message) {
        super(message);
    }
}
