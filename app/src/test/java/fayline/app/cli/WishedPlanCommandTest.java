package fayline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bare folder with the lead's wishes, planned from the command line. */
class WishedPlanCommandTest {
    private static final String STEP = "ousel-1/chine-doubler-left/1/prepare";

    @TempDir
    Path folder;

    @BeforeEach
    void copy() throws IOException {
        Path here = Path.of("").toAbsolutePath();
        Path demo =
                here.resolve(Files.exists(here.resolve("demo")) ? "." : "..").resolve("demo/ousel");
        try (Stream<Path> all = Files.walk(demo)) {
            for (Path p : all.filter(Files::isRegularFile).toList()) {
                Path to = folder.resolve(demo.relativize(p).toString());
                Files.createDirectories(to.getParent());
                Files.copy(p, to);
            }
        }
    }

    private Shell plan(int exit, String wishes, String... more) throws IOException {
        Files.writeString(folder.resolve("wishes.yaml"), "wishes:\n" + wishes);
        Shell shell = new Shell();
        String[] args = Stream.concat(Stream.of("plan", folder.toString()), Stream.of(more))
                .toArray(String[]::new);
        assertThat(shell.run("", args)).as(shell.err).isEqualTo(exit);
        return shell;
    }

    @Test
    void should_plan_as_wished_and_tell_the_wishes_in_force_and_those_that_bind_nobody() throws IOException {
        Shell shell = plan(
                0,
                "  - {id: a, step: " + STEP + ", with: ilse, by: runa, why: she knows it}\n"
                        + "  - {id: b, step: " + STEP + ", from: 2026-03-04T12:00, before: 2026-03-05T00:00}\n"
                        + "  - {id: c, step: ousel-1/no-such/1/step, with: tove}\n");
        String line = shell.out
                .lines()
                .filter(l -> l.contains("(" + STEP + ")"))
                .findFirst()
                .orElseThrow();
        assertThat(line).contains("Ilse");
        String day = shell.out.substring(0, shell.out.indexOf(line));
        assertThat(day.substring(day.lastIndexOf("March 2026") - 20)).contains("Wednesday 4 March 2026");
        assertThat(shell.out)
                .contains(
                        "Wishes",
                        STEP + "): Runa wants Ilse on it (she knows it)",
                        STEP + "): it to begin in the afternoon of Wed 4 Mar",
                        "no-such/1/step: Tove on it; binds nobody: there is no such step any more");
    }

    @Test
    void should_carry_wishes_in_the_plan_format_for_whoever_judges_it() throws IOException {
        Shell shell = plan(0, "  - {id: a, step: " + STEP + ", without: tove}\n", "--json");
        assertThat(shell.out).contains("\"wishes\"");
        Shell auditor = new Shell();
        assertThat(auditor.run(shell.out, "calc", "plan.audit"))
                .as(auditor.out + auditor.err)
                .isZero();
        Shell spoilt = new Shell();
        assertThat(spoilt.run(shell.out.replace("\"without\"", "\"with\""), "calc", "plan.audit"))
                .isEqualTo(1);
        assertThat(spoilt.out).contains("WishesAreKept");
    }

    @Test
    void should_end_with_1_and_name_wish_and_cause_when_no_plan_can_keep_it() throws IOException {
        Shell shell = plan(1, "  - {id: a, step: " + STEP + ", at: port-1, by: runa}\n");
        assertThat(shell.err)
                .contains("not planned: " + STEP, "Runa wants it at Port 1, but ")
                .contains("conflict: " + STEP, "What stands in the way: Runa wants it at Port 1.");
        assertThat(shell.out)
                .contains("Runa wants it at Port 1; not planned", "All planned work ends ")
                .doesNotContain("All done");
    }

    @Test
    void should_refuse_a_wish_that_names_nobody_with_file_and_line() throws IOException {
        Shell shell = plan(2, "  - {id: a, step: " + STEP + ", with: nobody}\n");
        assertThat(shell.err + shell.out).contains("wishes.yaml:2", "a person that exists");
    }
}
