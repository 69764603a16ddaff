package fayline.store.file.archive;

/** A file that is no archive of a record, or one that is not as it was written. */
public final class DamagedArchiveException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** With the file, what was found and what was expected, in a sentence. */
    public DamagedArchiveException(String message) {
        super(message);
    }

    /** With what failed below. */
    public DamagedArchiveException(String message, Throwable cause) {
        super(message, cause);
    }
}
