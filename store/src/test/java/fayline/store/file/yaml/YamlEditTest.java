package fayline.store.file.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.store.file.DefinitionFolder;
import fayline.store.file.Teasel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

class YamlEditTest {
    private static final String PEOPLE = """
            # crew
            people:
              # first
              - id: ada   # lead
                name: Ada
                skills: [laminate, bag]
                absences:
                  - {from: 2026-03-16, to: 2026-03-17, why: away}  # trade fair
                  - from: 2026-04-01
                    to: 2026-04-02
              - {id: bo, name: Bo, absences: []}   # afternoons
              - id: cy
                name: |
                  Cy
                hours:
            # the end
            """;

    private static List<String> lines(String text) {
        return List.of(text.split("\n", -1));
    }

    /** The lines that differ when one line was changed in place. */
    private static List<Integer> changedLines(String a, String b) {
        List<String> x = lines(a);
        List<String> y = lines(b);
        assertThat(y).hasSameSizeAs(x);
        List<Integer> changed = new ArrayList<>();
        for (int i = 0; i < x.size(); i++) {
            if (!x.get(i).equals(y.get(i))) {
                changed.add(i + 1);
            }
        }
        return changed;
    }

    @Test
    void should_change_its_own_line_alone_when_a_value_is_set() {
        YamlEdit e = YamlEdit.of("people.yaml", PEOPLE);
        String after = e.set("people[ada].absences[0].to", "2026-03-20").text();
        assertThat(after).contains("      - {from: 2026-03-16, to: 2026-03-20, why: away}  # trade fair\n");
        assertThat(changedLines(PEOPLE, after)).containsExactly(8);
        assertThat(changedLines(PEOPLE, e.set("people[ada].id", "ada-2").text()))
                .containsExactly(4);
    }

    @Test
    void should_add_one_line_when_an_item_is_appended_to_a_block_list() {
        String after = YamlEdit.of("people.yaml", PEOPLE)
                .append("people[ada].absences", fields("from", "2026-05-01", "to", "2026-05-02", "why", "at: sea"))
                .text();
        assertThat(after)
                .isEqualTo(PEOPLE.replace(
                        "        to: 2026-04-02\n",
                        "        to: 2026-04-02\n      - {from: 2026-05-01, to: 2026-05-02, why: \"at: sea\"}\n"));
    }

    @Test
    void should_stay_in_brackets_when_a_list_is_written_so() {
        YamlEdit e = YamlEdit.of("people.yaml", PEOPLE);
        assertThat(e.append("people[bo].absences", fields("from", "2026-05-01", "to", "2026-05-02"))
                        .text())
                .contains("absences: [{from: 2026-05-01, to: 2026-05-02}]}   # afternoons");
        assertThat(e.append("people[ada].skills", "sand").text()).contains("    skills: [laminate, bag, sand]\n");
        assertThat(e.remove("people[ada].skills[1]").text()).contains("    skills: [laminate]\n");
        assertThat(e.remove("people[ada].skills[0]").text()).contains("    skills: [bag]\n");
        assertThat(e.set("people[bo].volunteer", "yes").text()).contains("absences: [], volunteer: yes}   # after");
    }

    @Test
    void should_make_the_key_when_it_is_not_there() {
        YamlEdit e = YamlEdit.of("people.yaml", PEOPLE);
        assertThat(e.set("people[ada].volunteer", "no").text())
                .contains("        to: 2026-04-02\n    volunteer: no\n  - {id: bo");
        assertThat(e.append("people[cy].absences", fields("from", "2026-05-01", "to", "2026-05-02"))
                        .text())
                .contains("    hours:\n    absences: [{from: 2026-05-01, to: 2026-05-02}]\n# the end\n");
        assertThat(e.set("people[cy].hours", "none").text()).contains("    hours: none\n# the end\n");
    }

    @Test
    void should_remove_the_lines_of_an_item_and_leave_an_empty_list_when_it_was_the_last() {
        YamlEdit e = YamlEdit.of("people.yaml", PEOPLE);
        YamlEdit one = e.remove("people[ada].absences[1]");
        assertThat(one.text()).isEqualTo(PEOPLE.replace("      - from: 2026-04-01\n        to: 2026-04-02\n", ""));
        assertThat(one.remove("people[ada].absences[0]").text()).contains("    absences: []\n  - {id: bo");
    }

    @Test
    void should_replace_a_block_text_when_it_is_set() {
        assertThat(YamlEdit.of("people.yaml", PEOPLE)
                        .set("people[cy].name", "Cy, the second")
                        .text())
                .contains("    name: \"Cy, the second\"\n    hours:\n");
    }

    @Test
    void should_refuse_when_the_place_is_not_there() {
        YamlEdit e = YamlEdit.of("people.yaml", PEOPLE);
        assertThatThrownBy(() -> e.set("people[zoe].name", "Zoe")).isInstanceOf(UneditableException.class);
        assertThatThrownBy(() -> e.set("people[ada].absences", "none")).isInstanceOf(UneditableException.class);
        assertThatThrownBy(() -> YamlEdit.of("people.yaml", "a: [")).isInstanceOf(UneditableException.class);
    }

    @Test
    void should_keep_line_ends_and_marks_when_a_file_comes_from_another_system() {
        String text = "\uFEFFpeople:\r\n  - id: ada\r\n    name: \"\uD83D\uDE00 Ada\" # x\r\n";
        String after = YamlEdit.of("people.yaml", text)
                .set("people[0].name", "Zoë")
                .set("people[0].volunteer", "yes")
                .text();
        assertThat(after).isEqualTo("\uFEFFpeople:\r\n  - id: ada\r\n    name: \"Zoë\" # x\r\n    volunteer: yes\r\n");
    }

    private static Map<String, String> fields(String... pairs) {
        Map<String, String> m = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            m.put(pairs[i], pairs[i + 1]);
        }
        return m;
    }

    private static void scalars(Tree t, List<Tree> into) {
        if (t.form() == Tree.Form.SCALAR) {
            into.add(t);
        }
        t.entries().values().forEach(c -> scalars(c, into));
        t.items().forEach(c -> scalars(c, into));
    }

    private static String awkward(Random random) {
        List<String> bits = List.of(
                "a",
                "7",
                " ",
                ":",
                ": ",
                " #",
                "#",
                "'",
                "\"",
                "\\",
                "-",
                "{",
                "]",
                ",",
                "\n",
                "é",
                "\uD83D\uDE00",
                "%",
                "&",
                "*",
                "!",
                "|",
                ">",
                "@",
                "`",
                "?",
                "~",
                "null",
                "yes",
                "\t",
                "\u0001",
                "\u200e");
        StringBuilder b = new StringBuilder();
        int n = random.nextInt(6);
        for (int i = 0; i <= n; i++) {
            b.append(bits.get(random.nextInt(bits.size())));
        }
        return b.toString();
    }

    @Test
    void should_read_back_what_was_set_and_leave_every_other_line_when_any_value_of_any_file_is_changed() {
        Random random = new Random(20260301);
        DefinitionFolder folder = Teasel.folder();
        int edits = 0;
        for (String path : folder.paths()) {
            if (!path.endsWith(".yaml")) {
                continue;
            }
            String text = folder.text(path).orElseThrow();
            List<Tree> all = new ArrayList<>();
            scalars(YamlDoor.read(path, text, new Problems()).orElseThrow(), all);
            for (Tree t : all) {
                String value = awkward(random);
                YamlEdit after = YamlEdit.of(path, text).set(t.path(), value);
                assertThat(after.value(t.path())).contains(value);
                assertThat(changedLines(text, after.text())).isSubsetOf(List.of(t.line()));
                edits++;
            }
        }
        assertThat(edits).isGreaterThan(500);
    }

    @Test
    void should_be_as_before_when_an_item_is_appended_and_removed_again() {
        DefinitionFolder folder = Teasel.folder();
        for (String[] list : new String[][] {
            {"people.yaml", "people[ada].absences"},
            {"lots.yaml", "lots"},
            {"deliveries.yaml", "deliveries"},
            {"climate.yaml", "climate.readings"},
            {"climate.yaml", "climate.forecast"}
        }) {
            String text = folder.text(list[0]).orElseThrow();
            YamlEdit e = YamlEdit.of(list[0], text);
            YamlEdit more = e.append(list[1], fields("id", "x-1", "air", "19 degC"));
            assertThat(more.size(list[1])).isEqualTo(e.size(list[1]) + 1);
            assertThat(more.remove(list[1] + "[" + e.size(list[1]) + "]").text())
                    .isEqualTo(text);
        }
    }

    private static DefinitionFolder demo() throws IOException {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("demo/ousel"))) {
            at = Objects.requireNonNull(at.getParent());
        }
        return DefinitionFolder.from(at.resolve("demo/ousel"));
    }

    /** What the forms of the shop change every week, on the files of the demonstration. */
    @Test
    void should_change_the_lines_of_its_value_alone_when_what_changes_weekly_is_changed_in_the_demo()
            throws IOException {
        DefinitionFolder folder = demo();
        Random random = new Random(20260302);
        int edits = 0;
        for (String path : List.of("people.yaml", "lots.yaml", "deliveries.yaml", "climate.yaml", "project.yaml")) {
            String text = folder.text(path).orElseThrow();
            List<Tree> all = new ArrayList<>();
            scalars(YamlDoor.read(path, text, new Problems()).orElseThrow(), all);
            for (Tree t : all) {
                String value = random.nextBoolean() ? awkward(random) : "2026-04-0" + (1 + random.nextInt(9));
                YamlEdit after = YamlEdit.of(path, text).set(t.path(), value);
                assertThat(after.value(t.path())).contains(value);
                List<String> x = lines(text);
                List<String> y = lines(after.text());
                int lost = x.size() - y.size();
                // A text folded over several lines becomes one line; above and below it nothing moves.
                assertThat(lost).isBetween(0, 2);
                assertThat(y.subList(0, t.line() - 1)).isEqualTo(x.subList(0, t.line() - 1));
                assertThat(y.subList(t.line(), y.size())).isEqualTo(x.subList(t.line() + lost, x.size()));
                edits++;
            }
        }
        assertThat(edits).isGreaterThan(300);
    }

    /** Above and below the lines that went, nothing moved; at most one line came in their place. */
    private static void assertOnePlaceChanged(List<String> before, List<String> after) {
        int head = 0;
        while (head < after.size() && before.get(head).equals(after.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < after.size() - head
                && before.get(before.size() - 1 - tail).equals(after.get(after.size() - 1 - tail))) {
            tail++;
        }
        assertThat(after.size() - head - tail).isLessThanOrEqualTo(1);
        assertThat(before.size() - head - tail).isBetween(1, 9);
    }

    @Test
    void should_read_as_before_when_items_and_keys_are_added_to_the_demo_and_taken_out_again() throws IOException {
        DefinitionFolder folder = demo();
        Random random = new Random(20260304);
        String[][] lists = {
            {"people.yaml", "people[bram].absences"},
            {"people.yaml", "people[bram].skills"},
            {"people.yaml", "people[kit].hours"},
            {"people.yaml", "people"},
            {"lots.yaml", "lots"},
            {"deliveries.yaml", "deliveries"},
            {"deliveries.yaml", "deliveries[d-gear].needed"},
            {"climate.yaml", "climate.readings"},
            {"climate.yaml", "climate.forecast"},
            {"project.yaml", "project.milestones"}
        };
        for (String[] list : lists) {
            String text = folder.text(list[0]).orElseThrow();
            YamlEdit e = YamlEdit.of(list[0], text);
            int size = e.size(list[1]);
            assertThat(size).as(list[1]).isPositive();
            YamlEdit more = e.append(list[1], fields("id", "x-1", "why", awkward(random)));
            assertThat(more.size(list[1])).isEqualTo(size + 1);
            assertThat(more.remove(list[1] + "[" + size + "]").text())
                    .as(list[1])
                    .isEqualTo(text);
            for (int gone = 0; gone < size; gone++) {
                YamlEdit less = e.remove(list[1] + "[" + gone + "]");
                assertThat(less.size(list[1])).isEqualTo(size - 1);
                assertOnePlaceChanged(lines(text), lines(less.text()));
            }
        }
        for (String id : List.of("d-resin", "d-belt")) {
            String text = folder.text("deliveries.yaml").orElseThrow();
            YamlEdit e = YamlEdit.of("deliveries.yaml", text);
            String arrived = "deliveries[" + id + "].arrived";
            assertThat(e.set(arrived, "2026-03-12").remove(arrived).text()).isEqualTo(text);
        }
        String people = folder.text("people.yaml").orElseThrow();
        assertThat(YamlEdit.of("people.yaml", people)
                        .append("people[runa].absences", fields("from", "2026-03-10", "to", "2026-03-10"))
                        .remove("people[runa].absences")
                        .text())
                .isEqualTo(people);
    }
}
