package fayline.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every source that a class or a method page names is in the bibliography, and every method package names one. */
class SourceKeysTest {
    private static final Path MAIN = Path.of("src/main/java/fayline");
    private static final Path DOCS = Path.of("../docs");
    private static final Pattern KEY = Pattern.compile("\\[([a-z]+[a-z0-9]*(?:-[a-z0-9]+)*\\d[a-z0-9-]*)\\](?!\\()");

    @Test
    void should_be_listed_when_a_source_is_named() throws IOException {
        Set<String> listed = new TreeSet<>();
        Matcher rows = Pattern.compile("(?m)^\\| `([^`]+)` \\|").matcher(Files.readString(DOCS.resolve("sources.md")));
        while (rows.find()) {
            listed.add(rows.group(1));
        }
        Set<String> named = new TreeSet<>();
        for (Path p : files(MAIN, ".java")) {
            named.addAll(keys(p));
        }
        for (Path p : files(DOCS.resolve("methods"), ".md")) {
            named.addAll(keys(p));
        }
        assertTrue(named.size() >= 15, "keys found: " + named);
        Set<String> missing = new TreeSet<>(named);
        missing.removeAll(listed);
        assertEquals(Set.of(), missing, "named but not in docs/sources.md");
    }

    @Test
    void should_name_a_source_when_it_is_a_method_package() throws IOException {
        List<Path> packages = files(MAIN.resolve("method"), "package-info.java");
        assertTrue(packages.size() >= 6);
        for (Path p : packages) {
            assertTrue(!keys(p).isEmpty(), p + " names no source");
        }
    }

    private static List<Path> files(Path root, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(p -> p.toString().endsWith(ending)).sorted().toList();
        }
    }

    private static Set<String> keys(Path file) throws IOException {
        Set<String> keys = new TreeSet<>();
        Matcher m = KEY.matcher(Files.readString(file));
        while (m.find()) {
            // Character classes of patterns, as a-z0-9, look like keys.
            if (!m.group(1).startsWith("a-z")) {
                keys.add(m.group(1));
            }
        }
        return keys;
    }
}
