package fayline.app.usecase.archive;

import fayline.flow.record.EntryLine;
import fayline.flow.record.payload.Value;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Archives altered by hand. */
final class Archives {
    private Archives() {}

    /** An archive with other entries; with the manifest altered to suit them, or as it was. */
    static void rewritten(Path from, Path to, String lines, boolean manifestToo) throws IOException {
        Map<String, byte[]> files = read(from);
        byte[] bytes = lines.getBytes(StandardCharsets.UTF_8);
        files.put("entries.jsonl", bytes);
        if (manifestToo) {
            files.put("manifest.json", suited(files, lines).getBytes(StandardCharsets.UTF_8));
        }
        write(to, files);
    }

    private static String suited(Map<String, byte[]> files, String lines) {
        Value.Fields manifest = (Value.Fields)
                Value.parse(new String(files.getOrDefault("manifest.json", new byte[0]), StandardCharsets.UTF_8));
        List<Value> listed = new ArrayList<>();
        for (Value v : manifest.items("files")) {
            Value.Fields f = (Value.Fields) v;
            byte[] content = files.getOrDefault(f.text("path"), new byte[0]);
            listed.add(f.with("bytes", content.length).with("sha256", sha256(content)));
        }
        String last = lines.strip().substring(lines.strip().lastIndexOf('\n') + 1);
        Value.Fields suited = manifest.with("files", new Value.Many(listed));
        return (last.equals("{}")
                        ? suited
                        : suited.with("head", EntryLine.read(last).head().toString()))
                .canonical();
    }

    /** An archive with one file put in or replaced, and the manifest as it was. */
    static void withFile(Path from, Path to, String name, String content) throws IOException {
        Map<String, byte[]> files = read(from);
        files.put(name, content.getBytes(StandardCharsets.UTF_8));
        write(to, files);
    }

    private static Map<String, byte[]> read(Path file) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry e : zip.stream().toList()) {
                files.put(e.getName(), zip.getInputStream(e).readAllBytes());
            }
        }
        return files;
    }

    private static void write(Path file, Map<String, byte[]> files) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> f : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(f.getKey()));
                zip.write(f.getValue());
                zip.closeEntry();
            }
        }
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
