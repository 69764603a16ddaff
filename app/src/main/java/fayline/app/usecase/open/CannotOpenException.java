package fayline.app.usecase.open;

import fayline.store.sql.FolderInUseException;
import fayline.store.sql.StoreException;

/** A data folder that cannot be opened: in use, damaged, or out of reach. The message is a sentence for the user. */
public final class CannotOpenException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final boolean inUse;

    private CannotOpenException(RuntimeException cause, boolean inUse) {
        super(String.valueOf(cause.getMessage()), cause);
        this.inUse = inUse;
    }

    /** Another program has the folder. */
    public static CannotOpenException of(FolderInUseException e) {
        return new CannotOpenException(e, true);
    }

    /** The folder or its database is damaged or out of reach. */
    public static CannotOpenException of(StoreException e) {
        return new CannotOpenException(e, false);
    }

    /** Whether another running program has the folder. */
    public boolean inUse() {
        return inUse;
    }
}
