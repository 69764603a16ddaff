package fayline.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.shop.RecordedState;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.MemoryLog;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.change.ReachCalculator;
import fayline.flow.result.change.Touch;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Whatever names an altered thing in the demonstration's own files is among what the change touches. The files are read here as plain
 * text, by other means than the program's.
 */
class ReachOfDemoTest {
    /** Keys by which one thing names another, with the sorts that they name. */
    private static final Map<String, Set<Touch.Sort>> KEYS = Map.ofEntries(
            Map.entry("mould", Set.of(Touch.Sort.MOULD)),
            Map.entry("laminate", Set.of(Touch.Sort.LAMINATE)),
            Map.entry("recipe", Set.of(Touch.Sort.RECIPE)),
            Map.entry("adhesive", Set.of(Touch.Sort.SYSTEM)),
            Map.entry("resin", Set.of(Touch.Sort.SYSTEM)),
            Map.entry("of", Set.of(Touch.Sort.MATERIAL)),
            Map.entry("what", Set.of(Touch.Sort.MATERIAL, Touch.Sort.SYSTEM, Touch.Sort.PART)),
            Map.entry("needed", Set.of(Touch.Sort.PART, Touch.Sort.JOINT)),
            Map.entry("between", Set.of(Touch.Sort.PART)),
            Map.entry("opposite", Set.of(Touch.Sort.PART)),
            Map.entry("after", Set.of(Touch.Sort.PART, Touch.Sort.JOINT)),
            Map.entry("part", Set.of(Touch.Sort.PART)),
            Map.entry("joint", Set.of(Touch.Sort.JOINT)),
            Map.entry("against", Set.of(Touch.Sort.PART)));

    private static final Pattern ITEM = Pattern.compile("  - (?:\\{)?id: ([a-z0-9-]+).*");
    private static final Pattern PAIR = Pattern.compile("([a-z-]+): (\\[[^\\]]*\\]|[^,}\\n]+)");

    /** One thing written in the files: its id and its own lines. */
    private record Written(String file, String id, String text) {
        List<String> named(Touch.Sort sort) {
            List<String> ids = new ArrayList<>();
            Matcher m = PAIR.matcher(text);
            while (m.find()) {
                if (KEYS.getOrDefault(m.group(1), Set.of()).contains(sort)) {
                    for (String word : m.group(2).replaceAll("[\\[\\]\"]", "").split(",")) {
                        ids.add(word.strip().split("/")[0]);
                    }
                }
            }
            return ids;
        }
    }

    private static List<Written> written() throws IOException {
        Path demo = Teasel.root().resolve("demo/ousel");
        List<Path> files;
        try (Stream<Path> all = Files.walk(demo)) {
            files = all.filter(p -> p.toString().matches(".*(parts/[a-z]+|joints|laminates|fits|deliveries)\\.yaml"))
                    .sorted()
                    .toList();
        }
        List<Written> written = new ArrayList<>();
        for (Path file : files) {
            String id = "";
            StringBuilder text = new StringBuilder();
            for (String line : Files.readAllLines(file)) {
                Matcher item = ITEM.matcher(line);
                if (item.matches()) {
                    written.add(new Written(file.getFileName().toString(), id, text.toString()));
                    id = item.group(1);
                    text.setLength(0);
                }
                text.append(line).append('\n');
            }
            written.add(new Written(file.getFileName().toString(), id, text.toString()));
        }
        return written.stream().filter(w -> !w.id().isEmpty()).toList();
    }

    @Test
    void should_find_whatever_names_the_altered_thing() throws IOException {
        ShopRecord shop =
                new ShopRecord(new MemoryLog(), Clock.fixed(Instant.parse("2026-03-03T06:05:00Z"), ZoneOffset.UTC));
        assertThat(new ImportFolder(shop)
                        .from(Teasel.root().resolve("demo/ousel"), false)
                        .taken())
                .isTrue();
        Definition d = shop.readDefinition("ousel-1");
        ShopState state = RecordedState.of(shop.state(), "ousel-1", shop.now());
        List<StepResult> steps = ProjectCalculator.calculate(d, state).steps();
        List<Written> written = written();
        int pairs = 0;
        for (Touch.Sort sort : Touch.Sort.values()) {
            for (Touch.Item item : sort.items(d)) {
                Set<String> reached =
                        ReachCalculator.calculate(d, List.of(new Touch(sort, item.id())), steps, state)
                                .reached()
                                .stream()
                                .map(r -> r.id().substring(r.id().lastIndexOf('/') + 1))
                                .collect(Collectors.toCollection(TreeSet::new));
                List<Written> naming = written.stream()
                        .filter(w -> w.named(sort).contains(item.id()) && isNow(d, w))
                        .filter(w -> !w.file().equals("laminates.yaml") || isUsed(d, w.id()))
                        .toList();
                for (Written w : naming) {
                    pairs++;
                    String used = w.file().equals("laminates.yaml") ? usedBy(d, w.id()) : w.id();
                    assertThat(reached)
                            .as("%s %s alters what %s in %s names", sort, item.id(), w.id(), w.file())
                            .contains(used);
                }
            }
        }
        assertThat(pairs).isGreaterThan(200);
    }

    /** A part that is made in sets is read under the ids of its sets; those are tested by themselves. */
    private static boolean isNow(Definition d, Written w) {
        return !w.file().matches("bulkheads\\.yaml");
    }

    private static boolean isUsed(Definition d, String laminate) {
        return !usedBy(d, laminate).isEmpty();
    }

    /** A part of a laminate: a laminate itself is no line, but what is made of it is. */
    private static String usedBy(Definition d, String laminate) {
        return d.parts().stream()
                .filter(p -> p.zones().stream().anyMatch(z -> z.laminate().equals(laminate)))
                .map(p -> p.id())
                .findFirst()
                .orElse("");
    }
}
