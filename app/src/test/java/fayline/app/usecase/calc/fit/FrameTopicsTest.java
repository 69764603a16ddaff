package fayline.app.usecase.calc.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.Topics;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Heat, frames and beams as a script asks: every case's inputs in, fields named as expected out, strict about the rest. */
class FrameTopicsTest {
    private static JsonNode read(String name) {
        try (InputStream in = Objects.requireNonNull(
                FrameTopicsTest.class.getResourceAsStream("/cases/checks/fitup/" + name + ".json"))) {
            return Json.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "F26-thermal-acrylic-in-carbon",
                "F27-thermal-anchored-one-edge",
                "F28-beam-tables",
                "F29-offset-beams-equal",
                "F30-offset-beams-stiff-part",
                "F31-canopy-frame-feet",
                "F32-door-frame-latch-pins",
                "F44-stepped-bulkhead-three-clamps",
                "F45-curved-hatch-ring",
                "F46-strip-on-three-soft-bonds"
            })
    void should_answer_as_expected_when_a_case_is_asked(String name) {
        JsonNode c = read(name);
        CalcTopic topic = Topics.named("fit." + c.path("kind").asText());
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(topic.schema())
                        .validate(c.path("inputs")))
                .isEmpty();
        holds(c, "", c.path("expected"), topic.answer(c.path("inputs")).outputs(), "expected");
    }

    private static void holds(JsonNode c, String field, JsonNode wanted, JsonNode found, String where) {
        if (wanted.isObject()) {
            wanted.properties().forEach(e -> {
                assertThat(found.has(e.getKey())).as(where + "." + e.getKey()).isTrue();
                // A list under a pin's own name keeps the tolerance of the field that holds it.
                String name = "sensitivityPins".equals(field) ? field : e.getKey();
                holds(c, name, e.getValue(), found.path(e.getKey()), where + "." + e.getKey());
            });
        } else if (wanted.isArray()) {
            assertThat(found.size()).as(where).isEqualTo(wanted.size());
            for (int i = 0; i < wanted.size(); i++) {
                holds(c, field, wanted.get(i), found.get(i), where + "[" + i + "]");
            }
        } else if (wanted.isNumber()) {
            JsonNode t = c.path("tolerance").path(field);
            double allowed = t.isMissingNode()
                    ? 1e-6
                    : t.isObject() ? t.path("rel").doubleValue() * Math.abs(wanted.doubleValue()) : t.doubleValue();
            assertThat(found.doubleValue()).as(where).isCloseTo(wanted.doubleValue(), within(Math.max(allowed, 1e-12)));
        } else {
            assertThat(found).as(where).isEqualTo(wanted);
        }
    }

    @Test
    void should_name_the_field_when_one_is_unknown_missing_or_does_not_fit() {
        CalcTopic topic = Topics.named("fit.springback.2d");
        ObjectNode in = (ObjectNode) read("F31-canopy-frame-feet").path("inputs");
        in.put("colour", "red").remove("watch");
        assertThatThrownBy(() -> topic.answer(in))
                .isInstanceOf(CalcInputException.class)
                .hasMessageContaining("colour")
                .hasMessageContaining("watch");
        ObjectNode few = (ObjectNode) read("F31-canopy-frame-feet").path("inputs");
        few.putArray("deviation").add(1);
        assertThatThrownBy(() -> topic.answer(few))
                .isInstanceOf(CalcInputException.class)
                .hasMessageContaining("one for each of 2 clamps");
        ObjectNode far = (ObjectNode) read("F31-canopy-frame-feet").path("inputs");
        ((ObjectNode) far.path("partElements").get(0)).put("j", 99);
        assertThatThrownBy(() -> topic.answer(far))
                .isInstanceOf(CalcInputException.class)
                .hasMessageContaining("beam 0 (0 to 99)");
    }

    @Test
    void should_say_no_and_show_the_mode_when_the_part_is_not_held() {
        ObjectNode in = (ObjectNode) read("F31-canopy-frame-feet").path("inputs");
        in.putArray("partSupports");
        CalcAnswer answer = Topics.named("fit.springback.2d").answer(in);
        assertThat(answer.saysNo()).isTrue();
        assertThat(answer.outputs().path("status").asText()).isEqualTo("MECHANISM");
        assertThat(answer.outputs().path("modes")).hasSize(3);
        assertThat(answer.outputs().has("clampForces")).isFalse();
    }

    @Test
    void should_say_no_when_a_latch_pin_binds() {
        ObjectNode in = (ObjectNode) read("F32-door-frame-latch-pins").path("inputs");
        ((ObjectNode) in.path("pins").get(0)).put("radialClearance", 0.2);
        CalcAnswer answer = Topics.named("fit.springback.3d").answer(in);
        assertThat(answer.outputs().path("pins").path("L1").path("status").asText())
                .isEqualTo("BINDS");
        assertThat(answer.saysNo()).isTrue();
    }

    @Test
    void should_give_standard_deviations_when_the_deviations_have_a_covariance() {
        ObjectNode in = (ObjectNode) read("F29-offset-beams-equal").path("inputs");
        in.putArray("deviationCovariance").addArray().add(0.04);
        in.putArray("clampPosition").add(0.2);
        JsonNode out = Topics.named("fit.springback.2d").answer(in).outputs();
        assertThat(out.path("releasedStd").get(0).doubleValue()).isCloseTo(0.1, within(1e-4));
        assertThat(out.path("releasedDisplacement").get(0).doubleValue()).isCloseTo(0.6, within(1e-4));
        assertThat(out.path("releasedDisplacement").get(1).doubleValue()).isCloseTo(0.4, within(1e-4));
        assertThat(out.path("clampForces").get(0).doubleValue()).isCloseTo(-10, within(1e-6));
    }

    @Test
    void should_ask_for_a_second_trial_when_only_one_was_made() {
        CalcAnswer answer = Topics.named("fit.trial")
                .answer(Json.read("{\"trials\": [{\"bare\": 900, \"clamped\": 910}], \"wanted\": 900,"
                        + " \"tolerance\": 1, \"uReading\": 0.5}"));
        assertThat(answer.outputs().path("verdict").asText()).isEqualTo("TRY_AGAIN");
        assertThat(answer.outputs().path("bareWidth").doubleValue()).isCloseTo(890, within(1e-9));
        assertThat(answer.cautions().get(0)).contains("before any adhesive");
    }

    @Test
    void should_give_shear_and_no_gap_when_the_sheet_is_bonded_all_round() {
        JsonNode out = Topics.named("fit.thermal.bonded")
                .answer(Json.read("{\"middle\": [0, 0], \"alphaPart\": [70e-6, 70e-6], \"alphaSurround\": [2e-6, 2e-6],"
                        + " \"setTemperature\": 25, \"temperatures\": [65], \"bondThickness\": 3, \"stations\":"
                        + " [{\"id\": \"A\", \"x\": 450, \"y\": 0, \"nx\": 1, \"ny\": 0}]}"))
                .outputs();
        assertThat(out.path("byTemperature")
                        .path("65.0")
                        .path("shearStrain")
                        .get(0)
                        .doubleValue())
                .isCloseTo(0.408, within(1e-9));
        assertThat(out.toString()).doesNotContain("gap");
    }
}
