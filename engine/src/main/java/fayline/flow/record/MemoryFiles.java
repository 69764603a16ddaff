package fayline.flow.record;

import fayline.flow.record.payload.CanonicalText;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Files that last as long as the program: for reading a bare folder, and for trying entries before they are kept. */
public final class MemoryFiles implements EntryFiles {
    private final SortedMap<String, byte[]> files = new TreeMap<>();

    /** No files. */
    public MemoryFiles() {}

    @Override
    public synchronized String put(byte[] content) {
        String hash = CanonicalText.sha256(content);
        files.putIfAbsent(hash, content.clone());
        return hash;
    }

    @Override
    public synchronized Optional<byte[]> get(String sha256) {
        return Optional.ofNullable(files.get(sha256)).map(byte[]::clone);
    }

    @Override
    public synchronized void remove(String sha256) {
        files.remove(sha256);
    }

    @Override
    public synchronized SortedSet<String> hashes() {
        return new TreeSet<>(files.keySet());
    }
}
