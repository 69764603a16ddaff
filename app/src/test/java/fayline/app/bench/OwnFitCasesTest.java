package fayline.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.bench.cases.CheckFolder;
import fayline.app.bench.cases.Verdict;
import fayline.app.bench.cases.Verdict.Outcome;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Our own cases of the fit, asked as a script asks: by hand or by other programs; each says which (make_own.py beside them). */
class OwnFitCasesTest {
    /** The engine's own files, so that both are judged by the same. */
    private static final Path CASES =
            Path.of("..", "engine", "src", "test", "resources", "cases", "crosscheck", "fitup");

    private static final CheckFolder.Report ALL = CheckFolder.run(CASES, List.of());

    static Stream<Verdict> cases() {
        return ALL.verdicts().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void should_hold_when_asked_from_the_command_line(Verdict v) {
        assertThat(v.outcome())
                .as(v.id() + " " + v.differences() + " " + v.why())
                .isEqualTo(Outcome.HOLDS);
    }

    @Test
    void should_read_all_of_them() {
        assertThat(ALL.unreadable()).isEmpty();
        assertThat(ALL.verdicts()).hasSize(11);
    }
}
