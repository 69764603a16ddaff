package fayline.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.usecase.fit.FitSight;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.folder.Imported;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitStation;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.TakenReading;
import fayline.flow.result.fit.StateReadings;
import fayline.method.fitup.Spot;
import fayline.method.fitup.outline.OutlineCalculator;
import fayline.method.fitup.outline.PartOutline;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The demo's canopy, read in as on the first start. */
class DemoFitTest {
    private static Definition definition;
    private static List<TakenReading> readings;

    @BeforeAll
    static void readIn() throws IOException {
        ShopRecord shop =
                new ShopRecord(new MemoryLog(), Clock.fixed(Instant.parse("2026-03-03T07:05:00Z"), ZoneOffset.UTC));
        Imported imported = new ImportFolder(shop).from(Teasel.root().resolve("demo/ousel"), false);
        assertThat(imported.problems()).isEmpty();
        definition = shop.readDefinition("ousel-1");
        readings = shop.state().readings("ousel-1");
    }

    private static FitSight sight(String fit) {
        return LookAtFits.sight(
                definition, readings, definition.fits().find(fit).orElseThrow(), false);
    }

    @Test
    void should_carry_readings_in_the_states_of_the_left_half_and_its_comparison_after_the_bond() {
        FitSight left = sight("canopy-left");
        assertThat(left.result().states())
                .extracting(s -> s.state().id())
                .containsExactly("trimmed", "bonded", "hung", "latched", "struts");
        StateReadings hung = left.result().states().get(2);
        assertThat(hung.since().orElseThrow().move().orElseThrow().inPlane().dxMm())
                .isEqualTo(-0.4, within(0.15));
        assertThat(left.result().after()).isPresent();
        assertThat(left.result().after().orElseThrow().result()).isPresent();
        assertThat(sight("pane-left").result().after().orElseThrow().result()).isPresent();
    }

    @Test
    void should_teach_the_right_half_and_recommend_it_a_scheme_before_any_reading() {
        FitSight right = sight("canopy-right");
        assertThat(right.result().states()).isEmpty();
        assertThat(right.result().beforehand().orElseThrow().schemes()).hasSize(3);
        assertThat(right.result().later())
                .filteredOn(l -> l.learned())
                .extracting(l -> l.state().id())
                .containsExactly("hung", "latched", "struts");
        assertThat(right.result().later().stream()
                        .filter(l -> l.state().id().equals("hung"))
                        .findFirst()
                        .orElseThrow()
                        .move()
                        .inPlane()
                        .dxMm())
                .isEqualTo(0.4, within(0.15));
    }

    @Test
    void should_draw_the_right_hand_as_the_left_in_the_mirror() {
        for (String name : List.of("canopy", "pane")) {
            Fit left = definition.fits().find(name + "-left").orElseThrow();
            Fit right = definition.fits().find(name + "-right").orElseThrow();
            PartOutline l = OutlineCalculator.calculate(left.outline().orElseThrow())
                    .outline()
                    .orElseThrow();
            assertThat(OutlineCalculator.mirrored(l).shape())
                    .isEqualTo(right.outline().orElseThrow());
            for (FitStation s : left.stations()) {
                Spot at = s.at().orElseThrow();
                assertThat(right.station(s.id()).orElseThrow().at()).contains(new Spot(0 - at.xMm(), at.yMm()));
                assertThat(l.nearest(at).at().distanceMm(at)).isLessThan(0.1);
            }
        }
    }

    @Test
    void should_keep_the_wrong_reading_and_count_the_one_that_was_read_again() {
        assertThat(readings)
                .filteredOn(r -> r.of().equals("canopy-left")
                        && r.station().equals("R2")
                        && r.state().equals("struts")
                        && r.kind().equals("gap"))
                .singleElement()
                .satisfies(r -> assertThat(r.value()).isEqualTo("3.8 mm"));
        assertThat(readings).filteredOn(r -> r.kind().equals("casting")).hasSize(3);
    }
}
