package fayline.app.usecase.open;

/** A data folder that cannot be opened: in use, damaged, or out of reach. The message is a sentence for the user. */
public final class CannotOpenException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final boolean inUse;

    CannotOpenException(String reason, boolean inUse, Throwable cause) {
        super(reason, cause);
        this.inUse = inUse;
    }

    /** Whether another running program has the folder. */
    public boolean inUse() {
        return inUse;
    }
}
