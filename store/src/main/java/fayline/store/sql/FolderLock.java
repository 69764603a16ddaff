package fayline.store.sql;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Holds a data folder for one running program. The system frees the lock when the program ends, however it ends. The lock file
 * is one of its own: closing a second handle of the database file would drop the database's locks.
 */
final class FolderLock implements AutoCloseable {
    private static final String NAME = "shop.lock";
    /** Past any content, so that the process number in the file stays readable where locks are mandatory. */
    private static final long LOCKED_AT = Long.MAX_VALUE - 1;

    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    static FolderLock take(Path folder) {
        Path file = folder.resolve(NAME);
        try {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            if (lock(channel) == null) {
                channel.close();
                throw new FolderInUseException(
                        folder, Files.readString(file, StandardCharsets.UTF_8).strip());
            }
            channel.truncate(0);
            channel.write(
                    StandardCharsets.UTF_8.encode(
                            "process " + ProcessHandle.current().pid() + "\n"),
                    0);
            return new FolderLock(channel);
        } catch (IOException e) {
            throw new StoreException("The data folder " + folder + " cannot be locked: " + e.getMessage() + ".", e);
        }
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock(LOCKED_AT, 1, false);
        } catch (OverlappingFileLockException sameProgram) {
            return null;
        }
    }

    @Override
    public void close() {
        try {
            channel.truncate(0);
            channel.close();
        } catch (IOException e) {
            // The system frees the lock when the program ends.
            return;
        }
    }
}
