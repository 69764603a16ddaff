package fayline.app.pdf.fitcard;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.flow.result.fit.frame.WidthLesson;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a frame taught of a width, as its opposite hand reads it. */
class WidthWordsTest {
    private static String lesson(UnitSystem units, double clampedMm, double tookMm) {
        return new WidthWords(new QuantityFormat(units), id -> id)
                .lesson(new WidthLesson(
                        "rear", "Pane, left", 690, clampedMm, OptionalDouble.of(0.8), OptionalDouble.of(tookMm), 0.3));
    }

    @Test
    void should_say_by_how_much_and_which_way_when_the_sheet_springs_the_frame() {
        assertThat(lesson(UnitSystem.METRIC, 687.4, 0.2))
                .isEqualTo(
                        "Width rear: the sheet sprang the frame by 2.6 mm inwards at a bare width of 690.0 mm; the clamped width"
                                + " followed the bare one by 0.80 for 1; from the last trial to as bonded it changed by 0.2 mm outwards.");
        assertThat(lesson(UnitSystem.INCH, 687.4, 0.2)).contains("by 0.102 in inwards at a bare width of 27.165 in");
    }

    @Test
    void should_say_nothing_once_when_nothing_changed() {
        assertThat(lesson(UnitSystem.METRIC, 690, 0))
                .contains("sprang the frame by nothing at")
                .endsWith("changed by nothing.");
    }
}
