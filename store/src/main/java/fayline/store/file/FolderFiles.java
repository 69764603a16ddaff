package fayline.store.file;

import fayline.flow.record.EntryFiles;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Files of entries in a folder, each named for the SHA-256 of its bytes. A file is written under another name, brought to the
 * disk, and then renamed, so that a name never stands for half a file. No name that somebody sent ever reaches the disk.
 */
public final class FolderFiles implements EntryFiles {
    private static final Pattern NAME = Pattern.compile("([0-9a-f]{64})\\.(jpg|png|bin)");
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");
    private static final String UNFINISHED = ".part";
    private static final List<String> ENDINGS = List.of(".jpg", ".png", ".bin");

    private final Path folder;

    /** A folder; it is made when the first file is put. */
    public FolderFiles(Path folder) {
        this.folder = folder;
    }

    @Override
    public synchronized String put(byte[] content) {
        String hash = DefinitionFolder.hash(content);
        if (get(hash).isPresent()) {
            return hash;
        }
        Path target = folder.resolve(hash + ending(content));
        Path unfinished = folder.resolve(hash + UNFINISHED);
        try {
            Files.createDirectories(folder);
            try (FileChannel out = FileChannel.open(
                    unfinished,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.TRUNCATE_EXISTING,
                    StandardOpenOption.WRITE)) {
                ByteBuffer bytes = ByteBuffer.wrap(content);
                while (bytes.hasRemaining()) {
                    out.write(bytes);
                }
                out.force(true);
            }
            Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            bringNamesToDisk();
            return hash;
        } catch (IOException e) {
            drop(unfinished);
            throw new CannotKeepException("The file could not be kept in " + folder + ": " + e.getMessage() + ".", e);
        }
    }

    private static String ending(byte[] content) {
        if (content.length > 1 && content[0] == (byte) 0xff && content[1] == (byte) 0xd8) {
            return ".jpg";
        }
        return content.length > 1 && content[0] == (byte) 0x89 && content[1] == 'P' ? ".png" : ".bin";
    }

    /** A new name lasts once the folder itself is on the disk; where folders cannot be opened the system sees to it. */
    private void bringNamesToDisk() throws IOException {
        if (System.getProperty("os.name", "").startsWith("Windows")) {
            return;
        }
        for (Path p : List.of(
                folder, Optional.ofNullable(folder.toAbsolutePath().getParent()).orElse(folder))) {
            try (FileChannel names = FileChannel.open(p, StandardOpenOption.READ)) {
                names.force(true);
            }
        }
    }

    private static void drop(Path unfinished) {
        try {
            Files.deleteIfExists(unfinished);
        } catch (IOException e) {
            // It is swept at the next start; its name stands for nothing.
            return;
        }
    }

    /** Takes away what was begun and not finished when the program was last stopped. */
    public synchronized void sweep() {
        try {
            list().stream()
                    .filter(p -> p.getFileName().toString().endsWith(UNFINISHED))
                    .forEach(FolderFiles::drop);
        } catch (IOException e) {
            throw new CannotKeepException("The folder " + folder + " cannot be read: " + e.getMessage() + ".", e);
        }
    }

    @Override
    public Optional<byte[]> get(String sha256) {
        if (!HASH.matcher(sha256).matches()) {
            return Optional.empty();
        }
        for (String ending : ENDINGS) {
            Path file = folder.resolve(sha256 + ending);
            if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                try {
                    byte[] content = Files.readAllBytes(file);
                    if (DefinitionFolder.hash(content).equals(sha256)) {
                        return Optional.of(content);
                    }
                } catch (IOException e) {
                    return Optional.empty();
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public synchronized void remove(String sha256) {
        if (!HASH.matcher(sha256).matches()) {
            return;
        }
        try {
            boolean gone = false;
            for (String ending : ENDINGS) {
                gone |= Files.deleteIfExists(folder.resolve(sha256 + ending));
            }
            if (gone) {
                bringNamesToDisk();
            }
        } catch (IOException e) {
            throw new CannotKeepException(
                    "The file " + sha256 + " could not be taken away: " + e.getMessage() + ".", e);
        }
    }

    @Override
    public SortedSet<String> hashes() {
        SortedSet<String> hashes = new TreeSet<>();
        try {
            list().stream()
                    .map(p -> NAME.matcher(p.getFileName().toString()))
                    .filter(Matcher::matches)
                    .forEach(m -> hashes.add(m.group(1)));
        } catch (IOException e) {
            throw new CannotKeepException("The folder " + folder + " cannot be read: " + e.getMessage() + ".", e);
        }
        return hashes;
    }

    private List<Path> list() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> there = Files.list(folder)) {
            return there.toList();
        }
    }
}
