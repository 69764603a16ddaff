package fayline.store.file.archive;

/** A file that is no archive of a record, or one that is not as it was written. */
public final class DamagedArchiveException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final boolean ofEntry;

    /** With the file, what was found and what was expected, in a sentence. */
    public DamagedArchiveException(String message) {
        super(message);
        this.ofEntry = false;
    }

    /** With what failed below. */
    public DamagedArchiveException(String message, Throwable cause) {
        this(message, cause, false);
    }

    /** With what failed below, and whether it is the form of one entry. */
    DamagedArchiveException(String message, Throwable cause, boolean ofEntry) {
        super(message, cause);
        this.ofEntry = ofEntry;
    }

    /** Whether the entry after the last one given has no form that could be read. */
    public boolean isOfEntry() {
        return ofEntry;
    }
}
