package fayline.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.bench.cases.CheckFolder;
import fayline.app.bench.cases.Verdict;
import fayline.app.bench.cases.Verdict.Outcome;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rows of our own: other numbers, units and combinations, worked out by a second program (see make.py beside them). */
class OwnRowsTest {
    private static final CheckFolder.Report ALL = CheckFolder.run(tables(), List.of());

    private static Path tables() {
        try {
            return Path.of(Objects.requireNonNull(OwnRowsTest.class.getResource("/cases/crosscheck"))
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static Stream<Verdict> rows() {
        return ALL.verdicts().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void should_hold_when_numbers_units_and_combinations_are_others(Verdict v) {
        assertThat(v.outcome())
                .as(v.id() + " " + v.differences() + " " + v.why())
                .isEqualTo(Outcome.HOLDS);
    }

    @Test
    void should_read_all_of_them() {
        assertThat(ALL.unreadable()).isEmpty();
        assertThat(ALL.verdicts()).hasSize(55);
    }
}
