package fayline.store.file.table;

/** A file that is no table that can be read; the message says what was found. */
public final class UnreadableSheetException extends Exception {
    private static final long serialVersionUID = 1L;

    UnreadableSheetException(String found) {
        super(found);
    }

    UnreadableSheetException(String found, Exception cause) {
        super(found, cause);
    }
}
