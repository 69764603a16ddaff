package fayline.store.file;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import fayline.store.file.yaml.YamlDoor;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Spoils the correct project in one place at a time and looks for exactly the promised messages. */
class BrokenDefinitionsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 3);

    private static List<InputProblem> verify(DefinitionFolder folder) {
        return DefinitionVerifier.verify(folder, TODAY);
    }

    private static List<String> sentences(DefinitionFolder folder) {
        return verify(folder).stream().map(InputProblem::sentence).toList();
    }

    static List<Tree> cases() {
        try (InputStream in =
                Objects.requireNonNull(BrokenDefinitionsTest.class.getResourceAsStream("/definition/broken.yaml"))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return YamlDoor.read("broken.yaml", text, new Problems())
                    .orElseThrow()
                    .down("broken")
                    .items();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @TestFactory
    Stream<DynamicTest> should_tell_place_found_expected_and_a_way_out_when_one_thing_is_broken() {
        return cases().stream()
                .map(c -> DynamicTest.dynamicTest(c.down("what").text(), () -> {
                    DefinitionFolder broken = Teasel.changed(
                            c.down("file").text(),
                            c.down("from").text(),
                            c.down("to").text());
                    assertThat(sentences(broken))
                            .containsExactlyElementsOf(c.down("says").items().stream()
                                    .map(Tree::text)
                                    .toList());
                }));
    }

    @Test
    void should_be_many_when_broken_definitions_are_counted() {
        assertThat(cases()).hasSizeGreaterThan(50);
    }

    @Test
    void should_have_no_problem_when_the_project_is_correct() {
        assertThat(sentences(Teasel.folder())).isEmpty();
    }

    @Test
    void should_fill_the_adhesive_from_the_joint_when_the_recipe_asks_for_it() {
        DefinitionFolder asks = Teasel.changed(
                        "recipes/bond.yaml",
                        "parameters:\n",
                        "parameters:\n      - {id: adhesive, about: the adhesive}\n")
                .with(
                        "recipes/bond.yaml",
                        Teasel.folder()
                                .text("recipes/bond.yaml")
                                .orElseThrow()
                                .replace("parameters:\n", "parameters:\n      - {id: adhesive, about: the adhesive}\n")
                                .replace("system: paste", "system: with.adhesive"));
        assertThat(sentences(asks)).isEmpty();

        String seat = asks.text("parts/seat.yaml").orElseThrow();
        DefinitionFolder onPart = asks.with(
                "parts/seat.yaml", seat.replace("    lessons:", "      - {recipe: bond-rigid}\n    lessons:"));
        assertThat(sentences(onPart))
                .containsExactly(
                        "parts/seat.yaml:20: parts[0].make[1].recipe: found no size \"clamps\", by which the recipe"
                                + " bond-rigid counts, expected \"sizes: {clamps: ...}\" on seat",
                        "parts/seat.yaml:20: parts[0].make[1].recipe: found no value for adhesive (the adhesive),"
                                + " expected every parameter without a usual value under \"with:\"; add adhesive:");
    }

    @Test
    void should_pass_with_cautions_alone_when_a_stack_is_uneven_and_be_silent_when_it_is_meant() {
        DefinitionFolder uneven = Teasel.changed("laminates.yaml", "stage: 2, count: 2}", "stage: 2, count: 1}");
        assertThat(verify(uneven))
                .singleElement()
                .satisfies(p -> assertThat(p.severity()).isEqualTo(Severity.CAUTION));
        String text = uneven.text("laminates.yaml").orElseThrow();
        assertThat(sentences(uneven.with(
                        "laminates.yaml",
                        text.replace("    name: Seat skin\n", "    name: Seat skin\n    uneven: yes\n"))))
                .isEmpty();
    }

    @Test
    void should_tell_every_problem_when_several_files_are_broken() {
        List<Tree> several = cases().stream()
                .filter(c -> List.of(
                                "a unit of the wrong kind",
                                "a missing key",
                                "an unknown time zone",
                                "a milestone after nothing",
                                "a joint to an unknown part")
                        .contains(c.down("what").text()))
                .toList();
        DefinitionFolder folder = Teasel.folder();
        List<String> expected = new ArrayList<>();
        for (Tree c : several) {
            String file = c.down("file").text();
            String text = folder.text(file).orElseThrow();
            folder = folder.with(
                    file, text.replace(c.down("from").text(), c.down("to").text()));
            c.down("says").items().forEach(s -> expected.add(s.text()));
        }
        assertThat(several).hasSize(5);
        assertThat(sentences(folder)).containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void should_say_what_is_missing_when_a_file_is_not_there() {
        assertThat(sentences(Teasel.folder().without("climate.yaml")))
                .containsExactly(
                        "climate.yaml: found no such file, expected readings and forecast of the shop's air; add climate.yaml");
    }

    @Test
    void should_refuse_with_a_message_when_a_file_is_hostile() {
        Map<String, String> hostile = Map.of(
                "fits: " + "[".repeat(5000),
                "fits.yaml:1: found more than 24 levels, expected fewer levels",
                "fits: " + "{a: ".repeat(50) + "1" + "}".repeat(50),
                "fits.yaml:1: found more than 24 levels, expected fewer levels",
                "fits:\n  - {id: a\0b}\n",
                "fits.yaml:2: found a control character, expected YAML that can be read; remove it",
                "a: &a [x,x]\nb: &b [*a,*a]\nfits: [*b,*b]\n",
                "fits.yaml:1: found an anchor (&), expected a plain value; remove the anchor",
                "# " + "x".repeat(2_000_001),
                "fits.yaml: found a file of 2000003 bytes, expected at most 5000 files of at most 2 MB with plain names",
                "fits: []\n---\nfits: []\n",
                "fits.yaml:2: found a second document, expected one document in a file; remove the line \"---\"",
                "fits:\n  - {<<: {a: 1}}\n",
                "fits.yaml:2: found a merge key \"<<\", expected every value written out",
                "",
                "fits.yaml:1: found an empty file, expected one key with its list below; remove the file or fill it");
        hostile.forEach((text, message) ->
                assertThat(sentences(Teasel.folder().with("fits.yaml", text))).containsExactly(message));
        assertThat(sentences(
                        DefinitionFolder.ofBytes(Map.of("fits.yaml", new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1}))))
                .contains("fits.yaml: found bytes that are no UTF-8 text, expected UTF-8; save it again as UTF-8");
    }

    @Test
    void should_answer_with_problems_and_never_fail_when_lines_are_lost_doubled_or_garbled() {
        Random random = new Random(20260303);
        List<String> paths = Teasel.folder().paths().stream()
                .filter(p -> p.endsWith(".yaml"))
                .toList();
        for (int i = 0; i < 400; i++) {
            String path = paths.get(random.nextInt(paths.size()));
            List<String> lines = new ArrayList<>(
                    List.of(Teasel.folder().text(path).orElseThrow().split("\n", -1)));
            int at = random.nextInt(lines.size());
            String line = lines.get(at);
            switch (random.nextInt(4)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, line);
                case 2 -> lines.set(at, line.substring(random.nextInt(line.length() + 1)));
                default -> lines.set(at, line.replace(':', random.nextBoolean() ? '[' : ','));
            }
            assertThat(verify(Teasel.folder().with(path, String.join("\n", lines))))
                    .isNotNull();
        }
    }
}
