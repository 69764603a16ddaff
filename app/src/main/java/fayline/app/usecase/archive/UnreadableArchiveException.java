package fayline.app.usecase.archive;

import fayline.store.file.archive.DamagedArchiveException;

/** A file that is no archive of a record, or one that is not as it was written. The message is a sentence for the user. */
public final class UnreadableArchiveException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnreadableArchiveException(DamagedArchiveException cause) {
        super(String.valueOf(cause.getMessage()), cause);
    }
}
