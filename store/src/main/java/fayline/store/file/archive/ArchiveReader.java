package fayline.store.file.archive;

import fayline.flow.record.Entry;
import fayline.flow.record.EntryLine;
import fayline.flow.record.payload.NotCanonicalException;
import fayline.flow.record.payload.Value;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Reads an archive of a record. No name in it reaches the disk; every file must stand in the manifest with its size and hash,
 * and none is read further than the manifest says.
 */
public final class ArchiveReader implements AutoCloseable {
    private static final int MOST_FILES = 200_000;
    private static final int LONGEST_MANIFEST = 40_000_000;

    /** Longest line of an entry, in characters: a definition file of the largest size as text with every sign escaped. */
    private static final int LONGEST_LINE = 16_000_000;

    private static final Pattern NAMES =
            Pattern.compile("README\\.txt|entries\\.jsonl|people\\.json|tables/[a-z-]{1,40}\\.csv|files/[0-9a-f]{64}"
                    + "|definition/[a-z0-9-]{1,80}/(?!.*\\.\\.)[^\\\\\\p{Cntrl}]{1,400}");

    private final Path file;
    private final ZipFile zip;
    private final SortedMap<String, Listed> listed;
    private final Value.Fields manifest;

    private ArchiveReader(Path file, ZipFile zip) throws IOException {
        this.file = file;
        this.zip = zip;
        this.manifest = readManifest();
        this.listed = readList();
        compareNames();
    }

    private record Listed(long bytes, String sha256) {}

    /**
     * Opens an archive and compares its names with its manifest.
     *
     * @throws DamagedArchiveException if it is none
     * @throws IOException if it cannot be read
     */
    public static ArchiveReader open(Path file) throws IOException {
        ZipFile zip;
        try {
            zip = new ZipFile(file.toFile());
        } catch (ZipException e) {
            throw new DamagedArchiveException(file + " is no archive of a record: " + e.getMessage() + ".", e);
        }
        try {
            return new ArchiveReader(file, zip);
        } catch (IOException | RuntimeException e) {
            zip.close();
            throw e;
        }
    }

    private Value.Fields readManifest() throws IOException {
        ZipEntry entry = zip.getEntry(RecordArchive.MANIFEST);
        if (entry == null) {
            throw damaged("found no " + RecordArchive.MANIFEST + " in it");
        }
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] bytes = in.readNBytes(LONGEST_MANIFEST + 1);
            if (bytes.length > LONGEST_MANIFEST) {
                throw damaged(RecordArchive.MANIFEST + " is longer than " + LONGEST_MANIFEST + " bytes");
            }
            if (Value.parse(new String(bytes, StandardCharsets.UTF_8)) instanceof Value.Fields f
                    && f.text("form").equals(RecordArchive.FORM)) {
                return f;
            }
            throw damaged(RecordArchive.MANIFEST + ": expected the form " + RecordArchive.FORM);
        } catch (NotCanonicalException | ZipException e) {
            throw new DamagedArchiveException(file + ": " + RecordArchive.MANIFEST + ": " + e.getMessage() + ".", e);
        }
    }

    private SortedMap<String, Listed> readList() {
        SortedMap<String, Listed> all = new TreeMap<>();
        for (Value v : manifest.items("files")) {
            Value.Fields f = v instanceof Value.Fields fields ? fields : Value.Fields.NONE;
            String path = f.text("path");
            if (!NAMES.matcher(path).matches()) {
                throw damaged("found \"" + path + "\" in " + RecordArchive.MANIFEST + ", which no archive holds");
            }
            if (all.put(path, new Listed(f.whole("bytes").orElse(-1L), f.text("sha256"))) != null) {
                throw damaged(path + " stands twice in " + RecordArchive.MANIFEST);
            }
        }
        return Collections.unmodifiableSortedMap(all);
    }

    private void compareNames() {
        if (zip.size() > MOST_FILES) {
            throw damaged("found " + zip.size() + " files in it, expected at most " + MOST_FILES);
        }
        Set<String> there = new TreeSet<>();
        zip.stream().map(ZipEntry::getName).forEach(name -> {
            if (!there.add(name)) {
                throw damaged(name + " is in it twice");
            }
        });
        there.remove(RecordArchive.MANIFEST);
        for (String name : there) {
            if (!listed.containsKey(name)) {
                throw damaged("found \"" + name + "\" in it, which its manifest does not name");
            }
        }
        for (String name : listed.keySet()) {
            if (!there.contains(name)) {
                throw damaged(name + " is missing, which its manifest names");
            }
        }
    }

    /** Where the manifest says that the record ends. */
    public String head() {
        return manifest.text("head");
    }

    /** When the manifest says that the archive was written. */
    public String written() {
        return manifest.text("written");
    }

    /** Who may enter, as canonical JSON; empty where the archive leaves them out. */
    public String people() throws IOException {
        if (!listed.containsKey(RecordArchive.PEOPLE)) {
            return "";
        }
        StringBuilder text = new StringBuilder();
        read(RecordArchive.PEOPLE, in -> text.append(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        return text.toString();
    }

    /**
     * Gives every entry in order as it stands there.
     *
     * @throws DamagedArchiveException if a line is none of an entry, or the file is not what the manifest says
     */
    public void entries(Consumer<Entry> taker) throws IOException {
        if (!listed.containsKey(RecordArchive.ENTRIES)) {
            throw damaged("found no " + RecordArchive.ENTRIES + " in it");
        }
        read(RecordArchive.ENTRIES, in -> {
            BufferedReader text = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            StringBuilder line = new StringBuilder();
            int number = 1;
            for (int c = text.read(); c >= 0; c = text.read()) {
                if (c == '\n') {
                    taker.accept(entry(line.toString(), number++));
                    line.setLength(0);
                } else if (line.append((char) c).length() > LONGEST_LINE) {
                    throw damaged(RecordArchive.ENTRIES + ", line " + number + ": longer than " + LONGEST_LINE);
                }
            }
            if (!line.isEmpty()) {
                throw damaged(RecordArchive.ENTRIES + ", line " + number + ": the line does not end");
            }
        });
    }

    private Entry entry(String line, int number) {
        try {
            return EntryLine.read(line);
        } catch (NotCanonicalException e) {
            throw new DamagedArchiveException(
                    file + ": " + RecordArchive.ENTRIES + ", line " + number + ": " + e.getMessage() + ".", e, true);
        }
    }

    /**
     * Reads every file to its end and compares it with the manifest.
     *
     * @throws DamagedArchiveException naming the first that is not as it was written
     */
    public void compareFiles() throws IOException {
        for (Map.Entry<String, Listed> l : listed.entrySet()) {
            String name = l.getKey();
            if (name.startsWith(RecordArchive.FILES)
                    && !name.endsWith(l.getValue().sha256())) {
                throw damaged(name + " is not what its name says: its hash is another one");
            }
            read(name, in -> in.transferTo(java.io.OutputStream.nullOutputStream()));
        }
    }

    /**
     * Gives every file that belongs to entries.
     *
     * @throws DamagedArchiveException if one is not as it was written
     */
    public void attached(Consumer<byte[]> taker) throws IOException {
        for (String hash : attached()) {
            read(RecordArchive.FILES + hash, in -> taker.accept(in.readAllBytes()));
        }
    }

    /** The hashes of the files that belong to entries. */
    public List<String> attached() {
        List<String> hashes = new ArrayList<>();
        for (Map.Entry<String, Listed> e : listed.entrySet()) {
            if (e.getKey().startsWith(RecordArchive.FILES)) {
                hashes.add(e.getKey().substring(RecordArchive.FILES.length()));
            }
        }
        return List.copyOf(hashes);
    }

    /** What is done with the bytes of one file. */
    @FunctionalInterface
    private interface Use {
        void of(InputStream in) throws IOException;
    }

    private void read(String name, Use use) throws IOException {
        Listed l = listed.get(name);
        ZipEntry entry = zip.getEntry(name);
        if (l == null || entry == null) {
            throw damaged(name + " is missing");
        }
        try (InputStream raw = zip.getInputStream(entry);
                CountedStream in = new CountedStream(raw, l.bytes())) {
            use.of(in);
            in.transferTo(java.io.OutputStream.nullOutputStream());
            if (in.count() != l.bytes()) {
                throw damaged(name + " has " + (in.isOver() ? "more than " + l.bytes() : String.valueOf(in.count()))
                        + " bytes, its manifest says " + l.bytes());
            }
            if (!HexFormat.of().formatHex(in.digest()).equals(l.sha256())) {
                throw damaged(name + " is not as it was written: its hash is another one");
            }
        } catch (ZipException | java.io.EOFException e) {
            throw new DamagedArchiveException(file + ": " + name + " cannot be unpacked: " + e.getMessage() + ".", e);
        }
    }

    private DamagedArchiveException damaged(String what) {
        return new DamagedArchiveException(file + ": " + what + ".");
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
