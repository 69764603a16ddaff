package fayline.store.file;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.store.file.kind.Kind;
import fayline.store.file.yaml.Problems;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The files of a definition by path, sorted, byte for byte as they came in. Immutable. */
public final class DefinitionFolder {
    /** The largest file, in bytes. */
    public static final int MAX_FILE_BYTES = 2_000_000;

    private static final int MAX_FILES = 5_000;
    private static final int MAX_DEPTH = 8;
    private static final Pattern PATH =
            Pattern.compile("[^/\\\\\\p{Cntrl}.][^/\\\\\\p{Cntrl}]*(?:/[^/\\\\\\p{Cntrl}.][^/\\\\\\p{Cntrl}]*)*");

    private final SortedMap<String, byte[]> files;
    private final List<InputProblem> faults;

    private DefinitionFolder(SortedMap<String, byte[]> files, List<InputProblem> faults) {
        this.files = files;
        this.faults = List.copyOf(faults);
    }

    /**
     * A folder of texts.
     *
     * @param texts text by path, with {@code /} between folders
     */
    public static DefinitionFolder of(Map<String, String> texts) {
        SortedMap<String, byte[]> bytes = new TreeMap<>();
        texts.forEach((path, text) -> bytes.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return ofBytes(bytes);
    }

    /**
     * A folder of files.
     *
     * @param files content by path; what may not be is left out and told as a fault
     */
    public static DefinitionFolder ofBytes(Map<String, byte[]> files) {
        SortedMap<String, byte[]> kept = new TreeMap<>();
        List<InputProblem> faults = new ArrayList<>();
        new TreeMap<>(files).forEach((path, content) -> {
            Optional<String> fault = fault(path, content.length);
            fault.ifPresent(f -> faults.add(fault(path, f)));
            if (fault.isEmpty()) {
                kept.put(path, content.clone());
            }
        });
        return new DefinitionFolder(kept, faults);
    }

    /**
     * Reads a folder. Hidden files, links and the photos of notes are passed over; what is too large is told as a fault.
     *
     * @param folder the folder
     * @throws IOException if it cannot be read
     */
    public static DefinitionFolder from(Path folder) throws IOException {
        SortedMap<String, byte[]> kept = new TreeMap<>();
        List<InputProblem> faults = new ArrayList<>();
        List<Path> found;
        try (Stream<Path> walk = Files.walk(folder, MAX_DEPTH)) {
            Path photos = folder.resolve(HistoryPhoto.FOLDER);
            found = walk.filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS) && !p.startsWith(photos))
                    .limit(MAX_FILES + 1L)
                    .sorted()
                    .toList();
        }
        if (found.size() > MAX_FILES) {
            faults.add(fault("", "more than " + MAX_FILES + " files"));
            found = List.of();
        }
        for (Path p : found) {
            String path = folder.relativize(p).toString().replace('\\', '/');
            if (path.startsWith(".") || path.contains("/.")) {
                continue;
            }
            Optional<String> fault = fault(path, Files.size(p));
            fault.ifPresent(f -> faults.add(fault(path, f)));
            if (fault.isEmpty()) {
                kept.put(path, Files.readAllBytes(p));
            }
        }
        return new DefinitionFolder(kept, faults);
    }

    private static Optional<String> fault(String path, long size) {
        if (path.length() > 200 || !PATH.matcher(path).matches()) {
            return Optional.of("the path " + Problems.quote(path));
        }
        return size > MAX_FILE_BYTES ? Optional.of("a file of " + size + " bytes") : Optional.empty();
    }

    private static InputProblem fault(String path, String found) {
        return new InputProblem(
                Severity.STOP,
                path,
                0,
                "",
                found,
                "at most " + MAX_FILES + " files of at most 2 MB with plain names",
                "");
    }

    /** The paths in order. */
    public SortedSet<String> paths() {
        return new TreeSet<>(files.keySet());
    }

    /** What was left out and why. */
    public List<InputProblem> faults() {
        return faults;
    }

    /** The content of a file. */
    public Optional<byte[]> bytes(String path) {
        return Optional.ofNullable(files.get(path)).map(byte[]::clone);
    }

    /** The text of a file; empty if there is none or it is not UTF-8. */
    public Optional<String> text(String path) {
        byte[] content = files.get(path);
        if (content == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(content))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    /** The same folder with one file added or replaced. */
    public DefinitionFolder with(String path, String text) {
        SortedMap<String, byte[]> more = new TreeMap<>(files);
        more.put(path, text.getBytes(StandardCharsets.UTF_8));
        return ofBytes(more);
    }

    /** The same folder without a file. */
    public DefinitionFolder without(String path) {
        SortedMap<String, byte[]> fewer = new TreeMap<>(files);
        fewer.remove(path);
        return ofBytes(fewer);
    }

    /**
     * Writes every file as it is.
     *
     * @param folder where to; made if it is not there
     * @throws IOException if it cannot be written
     */
    public void writeTo(Path folder) throws IOException {
        for (Map.Entry<String, byte[]> e : files.entrySet()) {
            Path target = folder.resolve(e.getKey());
            Files.createDirectories(Optional.ofNullable(target.getParent()).orElse(folder));
            Files.write(target, e.getValue());
        }
    }

    /**
     * The definition's version: SHA-256, in hexadecimal, over the lines {@code SHA-256-of-file, two blanks, path, newline} in
     * the order of paths. What has happened ({@code history}) is not part of what was decided and does not count.
     */
    public String hash() {
        SortedMap<String, String> hashes = new TreeMap<>();
        files.forEach((path, content) -> hashes.put(path, hash(content)));
        return hashOf(hashes);
    }

    /** The same of files of which only the hashes are at hand, by path. */
    public static String hashOf(SortedMap<String, String> hashes) {
        MessageDigest all = sha256();
        hashes.forEach((path, hash) -> {
            if (Kind.ofPath(path).filter(k -> k == Kind.HISTORY).isEmpty()) {
                all.update((hash + "  " + path + "\n").getBytes(StandardCharsets.UTF_8));
            }
        });
        return HexFormat.of().formatHex(all.digest());
    }

    /** SHA-256 of a file's content, in hexadecimal. */
    public static String hash(byte[] content) {
        return HexFormat.of().formatHex(sha256().digest(content));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
