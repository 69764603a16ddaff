package fayline.store.file;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.project.design.Part;
import fayline.flow.project.piece.Divided;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sets of pieces and hands that follow their opposite, in the demonstration's own files altered. */
class PieceRulesTest {
    private static final Path DEMO = Path.of("..", "demo", "ousel");
    private static final String BULKHEADS = "parts/bulkheads.yaml";
    private static final String CANOPY = "parts/canopy.yaml";

    private static DefinitionRead read(String file, String found, String instead) throws Exception {
        String text = Files.readString(DEMO.resolve(file), StandardCharsets.UTF_8);
        assertThat(text).contains(found);
        return DefinitionReader.read(DefinitionFolder.from(DEMO).with(file, text.replace(found, instead)));
    }

    private static void refused(String file, String found, String instead, String... words) throws Exception {
        List<String> stops = read(file, found, instead).problems().stream()
                .map(p -> p.sentence())
                .toList();
        assertThat(stops).anySatisfy(s -> assertThat(s).contains(words));
    }

    @Test
    void should_read_the_demonstration_with_its_sets_undivided() throws Exception {
        DefinitionRead read = DefinitionReader.read(DefinitionFolder.from(DEMO));
        assertThat(read.problems()).isEmpty();
        assertThat(Divided.isWhole(read.definition().orElseThrow())).isTrue();
        Part right = read.definition().orElseThrow().parts().get("canopy-frame-right");
        assertThat(right.afterOpposite().orElseThrow().lessonsOf()).contains("canopy-hang-left");
        List<String> sets =
                Divided.of(read.definition().get(), List.of("bulkhead-moulds-1-6"), List.of()).parts().stream()
                        .filter(p -> p.pieces().isPresent())
                        .map(Part::id)
                        .toList();
        assertThat(sets).contains("bulkhead-moulds-1-6", "bulkhead-moulds-7-12", "bulkhead-13-18");
    }

    @Test
    void should_refuse_sets_that_make_no_sense() throws Exception {
        refused(BULKHEADS, "least: 3, most: 6", "least: 7, most: 6", "7, more than most: 6");
        refused(BULKHEADS, "most: 6", "most: 19", "19 of 18 pieces");
        refused(BULKHEADS, "{as: bulkhead-moulds}", "{as: canopy-frame-left}", "which states no pieces");
        refused(BULKHEADS, "{as: bulkhead-moulds}", "{as: bulkhead-moulds, most: 3}", "most beside as");
        refused(BULKHEADS, "{as: bulkhead-moulds}", "{as: bulkhead-mould}", "bulkhead-moulds");
        refused(BULKHEADS, "{as: bulkhead-moulds}", "{pieces: 18, as: bulkhead-moulds}", "exactly one of pieces, as");
        refused(
                BULKHEADS,
                "  - id: bulkhead\n",
                "  - id: bulkhead-moulds-1-6\n",
                "the name of a set of bulkhead-moulds");
    }

    @Test
    void should_refuse_a_mould_for_each_piece_that_whole_parts_take() throws Exception {
        refused(
                "moulds.yaml",
                "full-every: 12}\n  - {id: m-hull-deck",
                "full-every: 12, for-each-piece: yes}\n  - {id: m-hull-deck",
                "hull-bottom");
    }

    @Test
    void should_refuse_an_after_opposite_that_asks_for_nothing_or_half_a_thing() throws Exception {
        String asks = "{lessons-of: canopy-hang-left, lessons-before: [bond], crew: one, steps: [lay-up, bond]}";
        refused(CANOPY, asks, "{steps: [bond]}", "nothing that is asked for");
        refused(CANOPY, asks, "{lessons-of: canopy-hang-left, crew: one}", "only one of lessons-of and lessons-before");
        refused(CANOPY, asks, "{lessons-of: canopy-hung, lessons-before: [bond]}", "canopy-hung");
        refused(
                CANOPY,
                "    opposite: canopy-frame-right\n",
                "    opposite: canopy-frame-right\n    after-opposite: {crew: one}\n",
                "one of both hands to be the first");
    }

    @Test
    void should_name_the_circle_when_lessons_wait_for_what_waits_for_them() throws Exception {
        // The right frame's pane is bonded in after the lessons of a joint that needs the bonded frame.
        refused(
                CANOPY,
                "lessons-of: canopy-hang-left",
                "lessons-of: canopy-hang-right",
                "canopy.yaml:39: parts[2].after-opposite.lessons-of: found a circle: ",
                "canopy-hang-right",
                "take \"after-opposite:\" or one \"after:\" away");
    }

    @Test
    void should_name_the_circle_when_the_first_hand_waits_for_the_hand_that_follows_it() throws Exception {
        refused(
                CANOPY,
                "recipe: panel-one-stage\n        with: {resin: er-slow}\n    lessons",
                "recipe: panel-one-stage\n        with: {resin: er-slow}\n        after: [canopy-frame-right]\n    lessons",
                "found a circle: ",
                "canopy-frame-left/1",
                "canopy-frame-right/1");
    }
}
