package fayline.flow.record.payload;

/** A text that was meant to be a value of the record in canonical form and is not. */
public final class NotCanonicalException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** With the reason in a sentence. */
    public NotCanonicalException(String reason) {
        super(reason);
    }
}
