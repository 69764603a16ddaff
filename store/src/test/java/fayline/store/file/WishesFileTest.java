package fayline.store.file;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.flow.project.shop.LeadWish;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@code wishes.yaml} beside the demonstration: what is read of it, and what is said of what cannot be. */
class WishesFileTest {
    private static final String STEP = "step: ousel-1/tip-pod-right/1/lay-up-1";

    private static DefinitionRead read(String wishes) throws Exception {
        return DefinitionReader.read(
                DefinitionFolder.from(Path.of("..", "demo", "ousel")).with("wishes.yaml", "wishes:\n" + wishes));
    }

    private static List<String> sentences(String wishes) throws Exception {
        return read(wishes).problems().stream()
                .filter(p -> p.file().equals("wishes.yaml"))
                .map(InputProblem::sentence)
                .toList();
    }

    @Test
    void should_read_each_wish_with_who_when_and_why() throws Exception {
        DefinitionRead read =
                read("  - {id: a, " + STEP + ", with: tove, by: runa, said: 2026-03-02T19:00, why: She did the left.}\n"
                        + "  - {id: b, " + STEP + ", from: 2026-03-05T07:00, before: 2026-03-05T12:00, together: a}\n"
                        + "  - {id: c, " + STEP + ", away-from: bench-1}\n");
        assertThat(read.stops()).isEmpty();
        List<LeadWish> wishes =
                read.definition().orElseThrow().shop().wishes().stream().toList();
        assertThat(wishes)
                .extracting(LeadWish::kind)
                .containsExactly(LeadWish.Kind.WITH, LeadWish.Kind.START, LeadWish.Kind.AWAY);
        assertThat(wishes.get(0).on()).isEqualTo("tove");
        assertThat(wishes.get(0).by()).isEqualTo("runa");
        assertThat(wishes.get(0).why()).isEqualTo("She did the left.");
        assertThat(wishes.get(0).said()).contains(LocalDateTime.parse("2026-03-02T19:00"));
        assertThat(wishes.get(1).before()).contains(LocalDateTime.parse("2026-03-05T12:00"));
        assertThat(wishes.get(1).together()).isEqualTo("a");
        assertThat(wishes.get(2).on()).isEqualTo("bench-1");
        assertThat(wishes.get(2).project()).isEqualTo("ousel-1");
    }

    @Test
    void should_refuse_a_wish_for_nothing_or_for_two_things_with_its_line() throws Exception {
        assertThat(sentences("  - {id: a, " + STEP + "}\n"))
                .singleElement()
                .asString()
                .contains("wishes.yaml:2", "a wish for nothing", "expected one of with, without, at, away-from");
        assertThat(sentences("  - {id: a, " + STEP + ", with: tove, at: bench-1}\n"))
                .singleElement()
                .asString()
                .contains("a wish for 2 things at once");
    }

    @Test
    void should_refuse_people_and_places_that_are_not_there_and_times_that_end_before_they_begin() throws Exception {
        assertThat(sentences("  - {id: a, " + STEP + ", with: tova}\n"))
                .singleElement()
                .asString()
                .contains("\"tova\"", "a person that exists", "tove");
        assertThat(sentences("  - {id: a, " + STEP + ", at: bench-9}\n"))
                .singleElement()
                .asString()
                .contains("\"bench-9\"", "a mould, stand or port that exists");
        assertThat(sentences("  - {id: a, " + STEP + ", from: 2026-03-05T12:00, before: 2026-03-05T12:00}\n"))
                .singleElement()
                .asString()
                .contains("later than from");
        assertThat(sentences("  - {id: a, " + STEP + ", with: tove, together: z}\n"))
                .singleElement()
                .asString()
                .contains("a wish that exists");
    }

    @Test
    void should_tell_a_step_that_is_gone_without_refusing_the_definition_and_leave_other_projects_alone()
            throws Exception {
        DefinitionRead read = read("""
                  - {id: a, step: ousel-1/tip-pod-right/1/lay-upp-1, with: tove}
                  - {id: b, step: ousel-1/tip-pot-right/1/lay-up-1, with: tove}
                  - {id: c, step: teal-2/pod/1/lay-up-1, with: tove}
                """);
        assertThat(read.stops()).isEmpty();
        assertThat(read.problems())
                .filteredOn(p -> p.file().equals("wishes.yaml"))
                .hasSize(2)
                .allSatisfy(p -> {
                    assertThat(p.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(p.sentence()).contains("not there any more");
                });
    }
}
