package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.basis.units.Mass;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A slip of a key is asked about where it was made; the reading is kept as typed all the same. Limits: common practice. */
class DoubtsTest {
    private final Teasel teasel = Teasel.readIn();

    private Outcome take(Sent sent, String kind, String of, String station, Map<String, String> values) {
        String state = station.isEmpty() ? "" : "dry";
        Measured m = new Measured(kind, of, station, state, values, Optional.empty());
        return new TakeReading(teasel.shop).take(sent, Teasel.PROJECT, m, Optional.of(Mass.ofKilograms(1.2)));
    }

    private record Row(String kind, String station, String typed, boolean doubted) {}

    @TestFactory
    Stream<DynamicTest> should_ask_about_what_lies_far_beyond_what_such_a_thing_can_be() {
        return Stream.of(
                        new Row("gap", "A", "3.50 mm", false),
                        new Row("gap", "A", "27.9 mm", false),
                        new Row("gap", "A", "35 mm", true),
                        new Row("gap", "A", "350 mm", true),
                        new Row("gap", "A", "3.50 in", true),
                        new Row("gap", "A", "touches", false),
                        new Row("flush", "A", "-0.4 mm", false),
                        new Row("flush", "A", "-40 mm", true),
                        new Row("vacuum", "", "0.82 bar", false),
                        new Row("vacuum", "", "8.2 bar", true),
                        new Row("vacuum", "", "0.082 bar", true),
                        new Row("vacuum", "", "24 inHg", false),
                        new Row("temperature", "", "60 degC", false),
                        new Row("temperature", "", "600 degC", true),
                        new Row("mass", "", "1.3 kg", false),
                        new Row("mass", "", "13 kg", true),
                        new Row("mass", "", "130 g", true),
                        new Row("mix", "", "1200 g", false),
                        new Row("mix", "", "12.00 kg", true))
                .map(r -> DynamicTest.dynamicTest(r.kind() + " " + r.typed(), () -> {
                    String of = r.station().isEmpty() ? "seat/1/bag-1" : "fairing-edge";
                    Outcome outcome = take(by("bo"), r.kind(), of, r.station(), Map.of("value", r.typed()));
                    assertThat(outcome.stands())
                            .as(outcome.problems().toString())
                            .isTrue();
                    assertThat(outcome.cautions()).hasSize(r.doubted() ? 1 : 0);
                    assertThat(outcome.cautions())
                            .allMatch(c -> c.sentence().contains("\"" + r.typed() + "\"")
                                    && c.sentence().contains("Look at the point and the unit"));
                    assertThat(teasel.shop.state().readings(Teasel.PROJECT))
                            .anyMatch(x -> x.value().equals(r.typed()));
                }));
    }

    @Test
    void should_ask_about_each_doubtful_value_of_the_air() {
        Outcome odd =
                take(by("bo"), "climate", "", "", Map.of("air", "195 degC", "surface", "17 degC", "humidity", "5.8 %"));
        assertThat(odd.stands()).isTrue();
        assertThat(odd.cautions()).extracting(c -> c.sentence().substring(0, 5)).containsExactly("\"195 ", "\"5.8 ");
        Outcome usual =
                take(by("bo"), "climate", "", "", Map.of("air", "19.5 degC", "surface", "17 degC", "humidity", "58 %"));
        assertThat(usual.cautions()).isEmpty();
    }

    @Test
    void should_not_ask_about_what_a_history_tells() {
        Sent told = new Sent(Sent.freshId(), "bo", false);
        Measured m =
                new Measured("gap", "fairing-edge", "A", "dry", Map.of("value", "350 mm"), Optional.of(Teasel.START));
        assertThat(new TakeReading(teasel.shop).take(told, Teasel.PROJECT, m).cautions())
                .isEmpty();
    }
}
