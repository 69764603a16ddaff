package fayline.app.usecase.calc.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
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

/** Outline, readings, trim, shims and the opposite hand as a script asks them. */
class TrimTopicsTest {
    private static JsonNode read(String name) {
        try (InputStream in = Objects.requireNonNull(
                TrimTopicsTest.class.getResourceAsStream("/cases/checks/fitup/" + name + ".json"))) {
            return Json.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ObjectNode inputs(String name) {
        return (ObjectNode) read(name).path("inputs");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "F16-outline-normals",
                "F17-trim-hand",
                "F18-trim-taper",
                "F19-trim-infeasible-too-loose",
                "F20-shims-three-points",
                "F21-shims-from-stock",
                "F33-reading-models",
                "F35-mirror-opposite-hand",
                "F39-build-up"
            })
    void should_answer_as_expected_when_a_case_is_asked(String name) {
        JsonNode c = read(name);
        CalcTopic topic = Topics.named("fit." + c.path("kind").asText());
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(topic.schema())
                        .validate(c.path("inputs")))
                .isEmpty();
        holds(c, "", c.path("expected"), topic.answer(c.path("inputs")).outputs(), name);
    }

    private static void holds(JsonNode c, String field, JsonNode wanted, JsonNode found, String where) {
        if (field.equals("candidateRule")) {
            return;
        }
        if (wanted.isObject()) {
            wanted.properties()
                    .forEach(e -> holds(c, e.getKey(), e.getValue(), found.path(e.getKey()), where + "." + e.getKey()));
        } else if (wanted.isArray()) {
            assertThat(found.size()).as(where).isEqualTo(wanted.size());
            for (int i = 0; i < wanted.size(); i++) {
                holds(c, field, wanted.get(i), found.get(i), where + "[" + i + "]");
            }
        } else if (wanted.isNumber()) {
            JsonNode t = c.path("tolerance").path(field);
            assertThat(found.isNumber()).as(where).isTrue();
            assertThat(found.doubleValue())
                    .as(where)
                    .isCloseTo(wanted.doubleValue(), within(t.isMissingNode() ? 1e-6 : t.doubleValue()));
        } else {
            assertThat(found).as(where).isEqualTo(wanted);
        }
    }

    private static void refuses(String topic, JsonNode inputs, String... words) {
        assertThatThrownBy(() -> Topics.named(topic).answer(inputs))
                .isInstanceOf(CalcInputException.class)
                .hasMessageContainingAll(words);
    }

    @Test
    void should_name_the_field_when_one_is_unknown_or_missing_or_cannot_be() {
        ObjectNode trim = inputs("F17-trim-hand");
        trim.put("colour", "red").remove("trimmableEdges");
        refuses("fit.trim", trim, "colour", "trimmableEdges");
        ObjectNode pairs = inputs("F18-trim-taper");
        pairs.putArray("adjacent").addArray().add("S6").add("S99").add(161);
        refuses("fit.trim", pairs, "adjacent[0]");
        ObjectNode twice = inputs("F17-trim-hand");
        ((ObjectNode) twice.path("stations").get(1)).put("id", "S1");
        refuses("fit.trim", twice, "S1 stands twice");
        ObjectNode radii = inputs("F16-outline-normals");
        radii.putArray("radii").add(1).add(1).add(1);
        refuses("fit.outline", radii, "radii", "one for each of 4 corners");
        ObjectNode reading = inputs("F33-reading-models");
        ((ObjectNode) reading.path("readings").get(0)).put("tiltDeg", 3);
        refuses("fit.reading", reading, "readings[0].tiltDeg");
        ObjectNode swapped = inputs("F33-reading-models");
        ((ObjectNode) swapped.path("readings").get(0)).put("go", 3.2);
        refuses("fit.reading", swapped, "readings[0]", "cannot both be right");
        ObjectNode wide = inputs("F33-reading-models");
        ((ObjectNode) wide.path("readings").get(2)).remove("gaugeWidth");
        refuses("fit.reading", wide, "both or neither");
        ObjectNode shim = inputs("F21-shims-from-stock");
        ((ObjectNode) shim.path("indexPoints").get(0)).put("nx", 0).put("ny", 0);
        refuses("fit.shim", shim, "no direction");
    }

    @Test
    void should_say_no_and_name_the_corner_when_a_blend_is_too_large() {
        ObjectNode in = inputs("F16-outline-normals");
        in.putArray("radii").add(70).add(60).add(560).add(90);
        CalcAnswer a = Topics.named("fit.outline").answer(in);
        assertThat(a.saysNo()).isTrue();
        assertThat(a.outputs().path("status").asText()).isEqualTo("BLEND_TOO_LARGE");
        assertThat(a.outputs().path("corner").intValue()).isEqualTo(3);
    }

    @Test
    void should_warn_when_a_place_is_a_sharp_corner() {
        ObjectNode in = inputs("F16-outline-normals");
        in.putArray("radii").add(0).add(60).add(80).add(90);
        CalcAnswer a = Topics.named("fit.outline").answer(in);
        assertThat(a.outputs().path("points").get(0).path("status").asText()).isEqualTo("NORMAL_UNDEFINED");
        assertThat(a.outputs().path("points").get(1).has("status")).isFalse();
        assertThat(a.cautions().get(0)).contains("sharp corner");
    }

    @Test
    void should_read_castings_and_touching_edges() {
        JsonNode out = Topics.named("fit.reading")
                .answer(Json.read("{\"readings\": [{\"method\": \"testCasting\", \"reading\": 2.3, \"film\": 0.05},"
                        + " {\"method\": \"touches\", \"thinnest\": 0.05}]}"))
                .outputs()
                .path("results");
        assertThat(out.get(0).path("gap").doubleValue()).isCloseTo(2.35, within(1e-12));
        assertThat(out.get(1).path("gap").doubleValue()).isZero();
        assertThat(out.get(1).path("oneSided").booleanValue()).isTrue();
    }

    @Test
    void should_spare_edges_when_asked_and_say_no_when_nothing_may_be_cut() {
        ObjectNode in = inputs("F17-trim-hand");
        in.put("goal", "fewestEdges");
        CalcAnswer a = Topics.named("fit.trim").answer(in);
        assertThat(a.outputs().path("edges")).hasSize(1);
        assertThat(a.saysNo()).isFalse();
        in.putArray("trimmableEdges");
        CalcAnswer none = Topics.named("fit.trim").answer(in);
        assertThat(none.saysNo()).isTrue();
        assertThat(none.outputs().path("trimAreaWithEveryEdgeFree").doubleValue())
                .isCloseTo(320, within(1e-3));
    }

    @Test
    void should_say_no_when_points_leave_the_part_free() {
        ObjectNode in = inputs("F21-shims-from-stock");
        ((ArrayNode) in.path("indexPoints")).remove(2);
        CalcAnswer a = Topics.named("fit.shim").answer(in);
        assertThat(a.saysNo()).isTrue();
        assertThat(a.outputs().path("flags").get(0).asText()).isEqualTo("INDEX_UNDETERMINED");
        assertThat(a.outputs().has("freeMotion")).isTrue();
        assertThat(a.outputs().has("discrete")).isFalse();
    }
}
