package fayline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.calc.Json;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Projects that nobody here wrote the program for, taken through every command from verifying to cards. */
class UnseenProjectCommandsTest {
    private static final Path PROJECTS = Path.of("src", "test", "resources", "projects");

    @TempDir
    Path temp;

    private final Shell shell = new Shell();

    @ParameterizedTest
    @ValueSource(strings = {"first", "second"})
    void should_verify_plan_and_audit_clean_when_never_seen(String name) {
        String folder = PROJECTS.resolve(name).toString();
        assertThat(shell.run("", "verify", folder)).as(shell.out).isZero();
        assertThat(shell.run("", "plan", folder, "--json")).as(shell.err).isZero();
        assertThat(shell.run(shell.out, "calc", "plan.audit")).as(shell.out).isZero();
        assertThat(Json.read(shell.out).path("outputs").path("rules").asInt()).isGreaterThan(35);
        assertThat(shell.run("", "plan", folder, "--csv")).isZero();
        assertThat(shell.out).startsWith("project,");
        assertThat(shell.run("", "plan", folder, "--ics")).isZero();
        assertThat(shell.out).startsWith("BEGIN:VCALENDAR");
    }

    @ParameterizedTest
    @CsvSource({"first,2026-05-04", "second,2026-10-15"})
    void should_print_cards_when_never_seen(String name, String day) throws IOException {
        Path pdf = temp.resolve("cards.pdf");
        assertThat(shell.run(
                        "",
                        "cards",
                        PROJECTS.resolve(name).toString(),
                        "--day",
                        day,
                        "--pdf",
                        pdf.toString(),
                        "--paper",
                        "letter"))
                .as(shell.err)
                .isZero();
        assertThat(new String(Files.readAllBytes(pdf), 0, 5, StandardCharsets.ISO_8859_1))
                .isEqualTo("%PDF-");
    }

    @ParameterizedTest
    @ValueSource(strings = {"first", "second"})
    void should_give_the_same_files_back_when_read_in_and_written_out(String name) throws IOException {
        String data = temp.resolve("data").toString();
        Path out = temp.resolve("out");
        assertThat(shell.run("", "import", PROJECTS.resolve(name).toString(), "--data", data))
                .as(shell.err)
                .isZero();
        assertThat(shell.run("", "export", out.toString(), "--data", data))
                .as(shell.err)
                .isZero();
        for (String file : new String[] {"parts.yaml", "shop.yaml", "climate.yaml"}) {
            assertThat(Files.readAllBytes(out.resolve(file)))
                    .as(file)
                    .isEqualTo(Files.readAllBytes(PROJECTS.resolve(name).resolve(file)));
        }
    }
}
