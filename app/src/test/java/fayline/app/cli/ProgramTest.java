package fayline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import org.junit.jupiter.api.Test;

class ProgramTest {
    @Test
    void should_end_with_3_and_say_so_when_a_native_library_cannot_be_loaded() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream errStream = new PrintStream(err, true, StandardCharsets.UTF_8);
        Surroundings s = new Surroundings(
                InputStream.nullInputStream(),
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                errStream,
                Clock.systemUTC(),
                (options, x, y) -> {
                    throw new UnsatisfiedLinkError("wrong machine");
                },
                (options, surroundings) -> 0);
        assertThat(Program.run(new String[] {"bench", "plan"}, s)).isEqualTo(ExitCode.FAULT);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualTo("fayline: the solver's library cannot be loaded on this machine: wrong machine"
                        + System.lineSeparator());
    }
}
