package fayline.store.file;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.basis.finding.InputProblem;
import fayline.flow.project.local.LocalRules;
import fayline.flow.project.recipe.StepKind;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@code local.yaml} beside the demonstration: what is read of it, and what is said of what cannot be. */
class LocalFileTest {
    private static DefinitionRead read(String local) throws Exception {
        return DefinitionReader.read(
                DefinitionFolder.from(Path.of("..", "demo", "ousel")).with("local.yaml", "local:\n" + local));
    }

    private static List<String> sentences(String local) throws Exception {
        return read(local).problems().stream()
                .filter(p -> p.file().equals("local.yaml"))
                .map(InputProblem::sentence)
                .toList();
    }

    @Test
    void should_read_who_counts_tasks_and_stages() throws Exception {
        LocalRules r = read("""
                  authority: Somebody
                  paid: [tove]
                  least-share: 51 %
                  tasks:
                    - {id: t, name: Hull, of: [hull], kinds: [lay-up, bag], points: 3, bought: 20 %}
                  stages:
                    - {id: s, name: Before closing, of: [hull], before: [deck-to-hull/1/list], look-at: [Bonds.], photos: 2}
                """).definition().orElseThrow().local();

        assertThat(r.paid()).containsExactly("tove");
        assertThat(r.leastShare().orElseThrow().percent()).isEqualTo(51);
        assertThat(r.tasks().get(0).kinds()).containsExactly(StepKind.LAY_UP, StepKind.BAG);
        assertThat(r.tasks().get(0).points()).isEqualTo(3);
        assertThat(r.stage("s").orElseThrow().before()).containsExactly("deck-to-hull/1/list");
        assertThat(r.stage("s").orElseThrow().photos()).isEqualTo(2);
    }

    @Test
    void should_name_who_and_what_does_not_exist_and_what_stands_twice() throws Exception {
        assertThat(sentences("""
                  authority: Somebody
                  paid: [nobody-known]
                  tasks:
                    - {id: t, name: Hull, of: [hulk]}
                    - {id: t, name: Wing, of: [wing]}
                  stages:
                    - {id: s, name: Before closing, of: [hull], before: [deck-to-hull/1/lists]}
                """))
                .anyMatch(s -> s.contains("nobody-known") && s.contains("a person that exists"))
                .anyMatch(s -> s.contains("hulk") && s.contains("an assembly, part or joint that exists"))
                .anyMatch(s -> s.contains("\"t\" a second time"))
                .anyMatch(s -> s.contains("deck-to-hull/1/lists"));
    }

    @Test
    void should_ask_for_nothing_where_there_is_no_file() throws Exception {
        Path teasel = Path.of("src", "test", "resources", "definition", "teasel");
        assertThat(DefinitionReader.read(DefinitionFolder.from(teasel))
                        .definition()
                        .orElseThrow()
                        .local())
                .isEqualTo(LocalRules.NONE);
    }
}
