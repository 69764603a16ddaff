package fayline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.app.usecase.calc.Json;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that work on folders, run as a shell runs them, on the demonstration. */
class FolderCommandsTest {
    @TempDir
    Path temp;

    private final Shell shell = new Shell();

    private static Path demo() {
        Path here = Path.of("").toAbsolutePath();
        return here.resolve(Files.exists(here.resolve("demo")) ? "." : "..")
                .resolve("demo/ousel")
                .normalize();
    }

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path p : walk.filter(Files::isRegularFile).toList()) {
                all.put(
                        folder.relativize(p).toString().replace('\\', '/'),
                        Files.readString(p, StandardCharsets.ISO_8859_1));
            }
        }
        return all;
    }

    private Path copyOfDemo() throws IOException {
        Path copy = temp.resolve("ousel");
        for (Map.Entry<String, String> f : files(demo()).entrySet()) {
            Path to = copy.resolve(f.getKey());
            Files.createDirectories(to.getParent());
            Files.writeString(to, f.getValue(), StandardCharsets.ISO_8859_1);
        }
        return copy;
    }

    @Test
    void should_verify_the_demonstration_without_a_problem() {
        assertThat(shell.run("", "verify", demo().toString())).as(shell.out).isZero();
        assertThat(shell.out).contains("no problems");
    }

    @Test
    void should_tell_every_problem_by_file_and_line_and_end_with_2() throws IOException {
        Files.writeString(temp.resolve("people.yaml"), "people:\n  - id: Ada Lovely\n    hours: often\n");
        assertThat(shell.run("", "verify", temp.toString())).isEqualTo(2);
        assertThat(shell.out).contains("people.yaml:2", "people.yaml:3", "problems");
    }

    @Test
    void should_forecast_as_a_spread_by_plan_and_history() {
        assertThat(shell.run("", "forecast", demo().toString(), "--trials", "3"))
                .as(shell.err)
                .isZero();
        assertThat(shell.out)
                .contains("3 trial plans", "Hull ready to close, due 2026-04-24", "rate factor", "Assumed:");
        assertThat(shell.run("", "forecast", demo().toString(), "--trials", "0"))
                .isEqualTo(2);
        assertThat(shell.err).contains("--trials: found 0, expected 1 to 10000");
        assertThat(shell.run("", "forecast", demo().toString(), "--trials", "many"))
                .isEqualTo(2);
        assertThat(shell.err).contains("'--trials'").contains("found \"many\", expected a whole number");
    }

    @Test
    void should_print_a_plan_that_the_auditor_finds_nothing_in() {
        assertThat(shell.run("", "plan", demo().toString(), "--json"))
                .as(shell.err)
                .isZero();
        String json = shell.out;
        assertThat(shell.run(json, "calc", "plan.audit")).as(shell.out).isZero();
        JsonNode audit = Json.read(shell.out).path("outputs");
        assertThat(audit.path("clean").asBoolean()).isTrue();
        assertThat(audit.path("planned").asInt()).isGreaterThan(150);
        assertThat(audit.path("unplanned").asInt()).isZero();
    }

    @Test
    void should_take_the_moment_asked_for_in_the_shops_zone() {
        assertThat(shell.run("", "plan", demo().toString(), "--csv", "--now", "2026-03-03T06:00"))
                .isBetween(0, 1);
        String later = shell.out;
        assertThat(shell.run("", "plan", demo().toString(), "--csv")).isZero();
        assertThat(shell.out).isNotEqualTo(later);
    }

    @Test
    void should_give_back_the_folder_when_it_is_imported_and_exported() throws IOException {
        String data = temp.resolve("data").toString();
        Path out = temp.resolve("out");
        assertThat(shell.run("", "import", demo().toString(), "--data", data))
                .as(shell.err)
                .isZero();
        assertThat(shell.out).contains("ousel");
        assertThat(shell.run("", "export", out.toString(), "--data", data))
                .as(shell.err)
                .isZero();
        assertThat(files(out)).isEqualTo(files(demo()));
        assertThat(shell.run("", "export", out.toString(), "--data", data)).isEqualTo(2);
        assertThat(shell.err).contains("not empty");
        assertThat(shell.run("", "export", temp.resolve("other").toString(), "--data", data, "--project", "none"))
                .isEqualTo(2);
        assertThat(shell.err).contains("none", "ousel");
        assertThat(shell.run("", "verify-record", "--data", data)).isZero();
        assertThat(shell.out).contains("all sound");
    }

    @Test
    void should_end_with_2_when_a_folder_is_not_there_or_an_option_is_wrong() {
        String nowhere = temp.resolve("nowhere").toString();
        for (String[] args : new String[][] {
            {"verify", nowhere},
            {"plan", nowhere},
            {"import", nowhere, "--data", temp.resolve("d").toString()},
            {"export", temp.resolve("e").toString(), "--data", nowhere},
            {"verify-record", "--data", nowhere},
            {"plan", demo().toString(), "--now", "soon"},
            {"plan", demo().toString(), "--json", "--csv"},
            {"plan"}
        }) {
            assertThat(shell.run("", args)).as(String.join(" ", args)).isEqualTo(2);
            assertThat(shell.err).isNotEmpty();
        }
    }

    @Test
    void should_name_what_stands_against_what_when_a_step_cannot_be_planned() throws IOException {
        Path copy = copyOfDemo();
        // Nobody may bag any more.
        Path people = copy.resolve("people.yaml");
        Files.writeString(people, Files.readString(people).replace("bag, ", "").replace(", bag]", "]"));
        assertThat(shell.run("", "plan", copy.toString())).isEqualTo(1);
        assertThat(shell.err).contains("conflict: ", "need the skill bag");
    }

    @Test
    void should_judge_lots_on_the_folders_own_day_when_something_else_in_it_is_wrong() throws IOException {
        Path copy = copyOfDemo();
        Path project = copy.resolve("project.yaml");
        Files.writeString(
                project,
                Files.readString(project)
                        .replace("  units: metric", "  units: metric\n  pace: [{from: soon, share: half, why: move}]"));
        assertThat(shell.run("", "verify", copy.toString())).isEqualTo(2);
        assertThat(shell.out)
                .contains("project.pace[0].from: found \"soon\", expected a date")
                .contains("project.pace[0].share: found \"half\", expected a fraction")
                .contains("2 problems")
                .doesNotContain("lots.yaml");
    }
}
