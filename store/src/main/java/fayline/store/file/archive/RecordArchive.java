package fayline.store.file.archive;

import fayline.flow.record.Entry;
import fayline.flow.record.EntryLine;
import fayline.flow.record.Head;
import fayline.flow.record.KeptFile;
import fayline.flow.record.TreeHead;
import fayline.flow.record.payload.Value;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes an archive of a record: whole under its name, or not at all. The same record at the same time gives the same bytes. */
public final class RecordArchive {
    static final String FORM = "fayline-record-1";
    static final String MANIFEST = "manifest.json";
    static final String ENTRIES = "entries.jsonl";
    static final String PEOPLE = "people.json";
    static final String FILES = "files/";
    static final String TABLES = "tables/";
    static final String DEFINITION = "definition/";
    private static final String READ_ME = "README.txt";

    /** The earliest time that a ZIP can hold; no file in it tells when it was made but the manifest. */
    private static final long NO_TIME_MS = 315_532_800_000L;

    private final ZipOutputStream zip;
    private final List<Value> listed = new ArrayList<>();

    private RecordArchive(ZipOutputStream zip) {
        this.zip = zip;
    }

    /** Where the files that belong to entries are found. */
    @FunctionalInterface
    public interface Attached {
        /**
         * A file by its hash.
         *
         * @throws IOException if it is not there or cannot be read
         */
        InputStream open(String sha256) throws IOException;
    }

    /**
     * What goes into an archive.
     *
     * @param entries a sound record, in order
     * @param head where its chain ends
     * @param tree the same as a head of the tree
     * @param people who may enter, as canonical JSON; empty to leave them out
     * @param tables tables for reading by file name, as {@code steps.csv}
     * @param definitions each project's definition now, its files by path, for reading
     * @param written when
     * @param program the version that writes
     */
    public record Contents(
            List<Entry> entries,
            Head head,
            TreeHead tree,
            String people,
            Map<String, String> tables,
            Map<String, SortedMap<String, KeptFile>> definitions,
            Instant written,
            String program) {
        /** Copies list and maps. */
        public Contents {
            entries = List.copyOf(entries);
            tables = Map.copyOf(tables);
            definitions = Map.copyOf(definitions);
        }
    }

    /**
     * Writes an archive.
     *
     * @param file its name; what is there is replaced once the archive is whole
     * @param contents what goes in
     * @param attached where files of entries are found
     * @throws IOException if it cannot be written, or a file of an entry is missing or not what its hash says
     */
    public static void write(Path file, Contents contents, Attached attached) throws IOException {
        Path whole = file.toAbsolutePath();
        Path part = whole.resolveSibling(whole.getFileName() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(
                            part,
                            StandardOpenOption.CREATE,
                            StandardOpenOption.TRUNCATE_EXISTING,
                            StandardOpenOption.WRITE);
                    ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(out))) {
                new RecordArchive(zip).write(contents, attached);
            }
            sync(part);
            move(part, whole);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void sync(Path file) throws IOException {
        try (var channel = java.nio.channels.FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private void write(Contents c, Attached attached) throws IOException {
        put(READ_ME, readMe(c));
        StringBuilder lines = new StringBuilder();
        TreeSet<String> hashes = new TreeSet<>();
        for (Entry e : c.entries()) {
            lines.append(EntryLine.of(e)).append('\n');
            hashes.addAll(e.filesBeside());
        }
        put(ENTRIES, lines.toString());
        if (!c.people().isEmpty()) {
            put(PEOPLE, c.people());
        }
        for (Map.Entry<String, String> t : new TreeMap<>(c.tables()).entrySet()) {
            put(TABLES + t.getKey(), t.getValue());
        }
        for (Map.Entry<String, SortedMap<String, KeptFile>> d : new TreeMap<>(c.definitions()).entrySet()) {
            for (KeptFile f : d.getValue().values()) {
                copy(DEFINITION + d.getKey() + "/" + f.path(), new ByteArrayInputStream(f.bytes()));
            }
        }
        for (String hash : hashes) {
            try (InputStream in = attached.open(hash)) {
                String found = copy(FILES + hash, in);
                if (!found.equals(hash)) {
                    throw new IOException("the file " + hash + " is not what its name says: its hash is " + found);
                }
            }
        }
        begin(MANIFEST);
        zip.write(manifest(c).canonical().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private Value.Fields manifest(Contents c) {
        return Value.Fields.NONE
                .with("form", FORM)
                .with("program", c.program())
                .with("written", c.written().toString())
                .with("entries", c.entries().size())
                .with("head", c.head().toString())
                .with("root", c.tree().root())
                .with("files", new Value.Many(listed));
    }

    private void put(String name, String text) throws IOException {
        copy(name, new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private String copy(String name, InputStream in) throws IOException {
        begin(name);
        DigestOutputStream out = new DigestOutputStream(zip, sha256());
        long bytes = in.transferTo(out);
        zip.closeEntry();
        String hash = HexFormat.of().formatHex(out.getMessageDigest().digest());
        listed.add(Value.Fields.NONE.with("path", name).with("bytes", bytes).with("sha256", hash));
        return hash;
    }

    private void begin(String name) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(NO_TIME_MS);
        zip.putNextEntry(entry);
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static String readMe(Contents c) {
        return """
                The record of a shop, written by Fayline %s.

                entries.jsonl  every entry in order, one line each, as JSON: what happened, who, when
                files/         photos and other files that belong to entries, each under the SHA-256 of its bytes;
                               tables/files.csv says what each is: put .jpg or .png behind the name to look at a photo
                tables/        what the entries amount to, as tables for reading (CSV, UTF-8)
                definition/    each project as it is defined now, as the folder of YAML that it came from
                people.json    only in a backup: who may enter, with hashes of their passwords and PINs
                manifest.json  every file here with its size and SHA-256, and the head of the record

                The record ends at %s.
                As a head of the tree: %s

                To check it, compare each file with the manifest, then walk entries.jsonl: seq is one more than before, previous
                is the hash before, payload_hash is the SHA-256 of the payload as canonical JSON (RFC 8785), hash is that of the
                fields version, seq, client, by, phone, at, project, kind, payload (its hash), files and previous.
                "fayline verify-record THIS-FILE" does all of that, and "fayline restore THIS-FILE" makes a shop of it again.
                """.formatted(c.program(), c.head(), c.tree().paper());
    }
}
