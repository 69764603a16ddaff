package fayline.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.bench.cases.CheckFolder;
import fayline.app.bench.cases.Verdict;
import fayline.app.bench.cases.Verdict.Outcome;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The reference tables, whole and as they came; the source of each number stands in its row. Copies of one shop's and one
 * publisher's tables lie in the test resources with their README files.
 */
class ReferenceTablesTest {
    private static final CheckFolder.Report ALL = CheckFolder.run(tables(), List.of());

    /** Every table of today's subjects: all of it must hold. */
    private static final Map<String, Integer> WHOLE = Map.ofEntries(
            Map.entry("cure.csv", 11),
            Map.entry("climate.csv", 6),
            Map.entry("mixes.csv", 10),
            Map.entry("bagging.csv", 7),
            Map.entry("vacuum.csv", 7),
            Map.entry("units.csv", 1),
            Map.entry("tolerance_factors.csv", 4),
            Map.entry("tube.csv", 10),
            Map.entry("belt.csv", 6),
            Map.entry("scheduling.csv", 1),
            Map.entry("learning_curve.csv", 2),
            Map.entry("uncertainty.csv", 2),
            Map.entry("tolerance_stack.csv", 1),
            Map.entry("control_charts.csv", 3),
            Map.entry("merkle.csv", 3),
            Map.entry("statistics.csv", 2));

    /** Rows of the mixed table that are of today's subjects. */
    private static final List<String> PUBLISHED = List.of("PUB-04", "PUB-05", "PUB-06");

    static Path tables() {
        try {
            return Path.of(Objects.requireNonNull(ReferenceTablesTest.class.getResource("/cases/checks"))
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static Stream<Verdict> covered() {
        return ALL.verdicts().stream()
                .filter(v -> WHOLE.containsKey(v.file().substring(v.file().lastIndexOf('/') + 1))
                        || PUBLISHED.contains(v.id()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("covered")
    void should_hold_when_a_row_is_of_a_subject_of_today(Verdict v) {
        assertThat(v.outcome())
                .as(v.id() + " " + v.differences() + " " + v.why())
                .isEqualTo(Outcome.HOLDS);
    }

    @Test
    void should_find_every_row_of_the_covered_tables() {
        Map<String, Long> rows = covered()
                .filter(v -> !v.id().startsWith("PUB"))
                .collect(Collectors.groupingBy(
                        v -> v.file().substring(v.file().lastIndexOf('/') + 1), Collectors.counting()));
        WHOLE.forEach((file, n) -> assertThat(rows.get(file)).as(file).isEqualTo(n.longValue()));
        assertThat(covered().filter(v -> v.id().startsWith("PUB"))).hasSize(PUBLISHED.size());
    }

    @Test
    void should_read_every_layout_and_pass_over_what_is_none() {
        assertThat(ALL.unreadable()).isEmpty();
        assertThat(ALL.verdicts().stream().map(v -> v.file().split("/")[1]).distinct())
                .containsExactlyInAnyOrder("shop", "other", "mechanics", "fitup", "nesting");
        assertThat(ALL.verdicts()).hasSize(93 + 19 + 111 + 45 + 20);
    }

    @Test
    void should_count_what_holds_and_what_is_not_covered() {
        assertThat(ALL.count(Outcome.DIFFERS)).isZero();
        assertThat(ALL.verdicts().stream()
                        .filter(v -> !v.file().contains("/mechanics/"))
                        .filter(v -> v.outcome() == Outcome.HOLDS))
                .as("the rows of mechanics are counted in MechanicsTablesTest")
                .hasSize(93 + 16 + 3 + 8 + 4);
        assertThat(ALL.count(Outcome.HOLDS) + ALL.count(Outcome.NOT_COVERED))
                .isEqualTo(ALL.verdicts().size());
    }

    @Test
    void should_keep_to_files_and_folders_when_they_are_named() {
        assertThat(CheckFolder.run(tables(), List.of("cure", "other")).verdicts().stream()
                        .map(Verdict::file)
                        .distinct())
                .contains("checks/shop/cure.csv", "checks/other/units.csv")
                .noneMatch(f -> f.contains("mechanics"));
        assertThat(CheckFolder.run(tables(), List.of("cure", "nowhere")).missing())
                .containsExactly("nowhere");
    }
}
