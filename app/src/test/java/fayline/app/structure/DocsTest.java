package fayline.app.structure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages lead somewhere, and what cites a source cites one that is listed. */
class DocsTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)(#[^)]*)?\\)");
    private static final Pattern KEY = Pattern.compile("\\[([a-z]+(?:[0-9]|-[a-z0-9])[a-z0-9-]*)\\]");
    private static final Pattern JAVADOC = Pattern.compile("/\\*\\*.*?\\*/", Pattern.DOTALL);

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        return Files.exists(here.resolve("docs")) ? here : here.getParent();
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> s = Files.walk(folder)) {
            return s.filter(p -> p.toString().endsWith(ending))
                    .filter(p -> !p.toString().contains("/target/"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void should_have_a_file_behind_every_link() throws IOException {
        List<Path> pages = new ArrayList<>(files(root().resolve("docs"), ".md"));
        for (String name : List.of("README.md", "CONTRIBUTING.md", "CHANGELOG.md")) {
            pages.add(root().resolve(name));
        }
        List<String> dead = new ArrayList<>();
        for (Path page : pages) {
            Matcher m = LINK.matcher(Files.readString(page, StandardCharsets.UTF_8));
            while (m.find()) {
                if (!Files.exists(page.getParent().resolve(m.group(1)).normalize())) {
                    dead.add(root().relativize(page) + " -> " + m.group(1));
                }
            }
        }
        assertThat(pages).hasSizeGreaterThan(15);
        assertThat(dead).isEmpty();
    }

    @Test
    void should_list_every_source_that_a_class_cites() throws IOException {
        String sources = Files.readString(root().resolve("docs/sources.md"), StandardCharsets.UTF_8);
        Set<String> missing = new TreeSet<>();
        int cited = 0;
        for (Path file : files(root().resolve("engine/src/main/java"), ".java")) {
            Matcher doc = JAVADOC.matcher(Files.readString(file, StandardCharsets.UTF_8));
            while (doc.find()) {
                Matcher key = KEY.matcher(doc.group());
                while (key.find()) {
                    cited++;
                    if (!sources.contains(key.group(1))) {
                        missing.add(file.getFileName() + ": " + key.group(1));
                    }
                }
            }
        }
        assertThat(cited).isGreaterThan(10);
        assertThat(missing).isEmpty();
    }

    @Test
    void should_cite_a_source_in_every_method_package() throws IOException {
        Set<String> silent = new TreeSet<>();
        Path methods = root().resolve("engine/src/main/java/fayline/method");
        for (Path page : files(methods, "package-info.java")) {
            StringBuilder all = new StringBuilder();
            for (Path file : files(page.getParent(), ".java")) {
                all.append(Files.readString(file, StandardCharsets.UTF_8));
            }
            if (!KEY.matcher(all).find()) {
                silent.add(methods.relativize(page.getParent()).toString());
            }
        }
        assertThat(silent).isEmpty();
    }
}
