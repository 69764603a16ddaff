package fayline.store.sql;

import java.nio.file.Path;

/** Another running program has the data folder open. */
public final class FolderInUseException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * For a folder in use.
     *
     * @param folder the folder
     * @param by who has it, as far as is known; may be empty
     */
    FolderInUseException(Path folder, String by) {
        super("The data folder " + folder + " is already open in another Fayline"
                + (by.isEmpty() ? "" : " (" + by + ")") + ". Use that one, or stop it first; nothing was changed.");
    }
}
