package fayline.store.sql;

/** The place where the record is kept fails or is not to be had. The message is a sentence that says what still works. */
public final class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** With the reason, in a sentence. */
    public StoreException(String reason) {
        super(reason);
    }

    /** With the reason, in a sentence, and what was behind it. */
    public StoreException(String reason, Throwable cause) {
        super(reason, cause);
    }
}
