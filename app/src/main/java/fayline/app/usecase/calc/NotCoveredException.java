package fayline.app.usecase.calc;

/** Inputs outside the range for which a method answers; the message says which and why. */
public final class NotCoveredException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** With the reason. */
    public NotCoveredException(String reason) {
        super(reason);
    }

    /** The reason. */
    public String reason() {
        return String.valueOf(getMessage());
    }
}
