package fayline.flow.record;

import java.util.Optional;
import java.util.SortedSet;

/**
 * Files that belong to entries and lie beside the record, each once under the SHA-256 of its bytes. A file is put here before
 * the entry that names it is added, so that no entry ever names a file that is not there; a file that no entry names is
 * harmless. Implementations are safe to call from several threads.
 */
public interface EntryFiles {
    /**
     * Keeps a file; once it returns the file survives a power cut. A file that is there already stays as it is.
     *
     * @param content the bytes
     * @return SHA-256 of the bytes, 64 hexadecimal digits
     * @throws CannotKeepException if it cannot be kept, the disk being full for instance; nothing half is left
     */
    String put(byte[] content);

    /**
     * A file whose bytes still have their hash; empty where there is none, or where it was damaged.
     *
     * @param sha256 its hash, 64 hexadecimal digits; anything else names no file
     */
    Optional<byte[]> get(String sha256);

    /**
     * Takes a file away that only erased entries name; nothing where it is not there.
     *
     * @param sha256 its hash, 64 hexadecimal digits
     * @throws CannotKeepException if it cannot be taken away
     */
    void remove(String sha256);

    /** The hashes of all files that are there, damaged ones included. */
    SortedSet<String> hashes();

    /** A file that could not be kept. The message is a sentence for the user. */
    final class CannotKeepException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        /**
         * For a reason.
         *
         * @param sentence what went wrong
         * @param cause from where it is known
         */
        public CannotKeepException(String sentence, Throwable cause) {
            super(sentence, cause);
        }
    }
}
