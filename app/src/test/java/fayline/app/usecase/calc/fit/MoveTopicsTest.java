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
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moves as a script asks them. */
class MoveTopicsTest {
    private static final double NOT_UNIQUE = 2e-3;

    private static JsonNode read(String name) {
        try (InputStream in = Objects.requireNonNull(
                MoveTopicsTest.class.getResourceAsStream("/cases/checks/fitup/" + name + ".json"))) {
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
                "F01-gap-forward-rectangle",
                "F02-rectangle-uniform-offset",
                "F03-rectangle-pure-rotation",
                "F04-oversize-part",
                "F05-window-16-stations",
                "F06-bounds-active",
                "F07-minimum-gap-one-sided",
                "F08-weighted-by-tolerance",
                "F09-max-margin-asymmetric",
                "F10-degenerate-one-edge",
                "F11-degenerate-round-hatch",
                "F12-infeasible-hard",
                "F14-flush-plane",
                "F15-flush-hand",
                "F36-least-move-hand",
                "F37-least-move-16",
                "F38-relaxation",
                "F41-bulged-canopy-six-unknowns",
                "F43-kernel-norris"
            })
    void should_answer_as_expected_when_a_case_is_asked(String name) {
        JsonNode c = read(name);
        CalcTopic topic = Topics.named("fit." + c.path("kind").asText());
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(topic.schema())
                        .validate(c.path("inputs")))
                .isEmpty();
        CalcAnswer a = topic.answer(c.path("inputs"));
        holds(c, "", c.path("expected"), a.outputs(), name, 0);
        String status = c.path("expected").path("status").asText("OK");
        boolean unknown = c.path("kind").asText().equals("move.degenerate");
        assertThat(a.saysNo()).isEqualTo(unknown || !status.equals("OK"));
    }

    private static void holds(JsonNode c, String field, JsonNode wanted, JsonNode found, String where, double loose) {
        if (List.of("moveRule", "meaning").contains(field)) {
            return;
        }
        if (wanted.isObject()) {
            boolean free =
                    wanted.has("optimumUnique") && !wanted.path("optimumUnique").booleanValue();
            wanted.properties()
                    .forEach(e -> holds(
                            c,
                            e.getKey(),
                            e.getValue(),
                            found.path(e.getKey()),
                            where + "." + e.getKey(),
                            free ? NOT_UNIQUE : loose));
        } else if (wanted.isArray()) {
            assertThat(found.size()).as(where).isEqualTo(wanted.size());
            for (int i = 0; i < wanted.size(); i++) {
                holds(c, field, wanted.get(i), found.get(i), where + "[" + i + "]", loose);
            }
        } else if (wanted.isNumber()) {
            double t = c.path("tolerance").path(field).asDouble(1e-6);
            boolean eased = List.of("dx", "dy", "thetaDeg", "gaps").contains(field);
            assertThat(found.isNumber()).as(where).isTrue();
            assertThat(found.doubleValue())
                    .as(where)
                    .isCloseTo(wanted.doubleValue(), within(eased ? Math.max(t, loose) : t));
        } else {
            assertThat(found).as(where).isEqualTo(wanted);
        }
    }

    private static void refuses(String topic, JsonNode inputs, String... words) {
        assertThatThrownBy(() -> Topics.named(topic).answer(inputs))
                .isInstanceOf(CalcInputException.class)
                .hasMessageContainingAll(words);
    }

    private static ObjectNode station(ObjectNode inputs, int i) {
        return (ObjectNode) inputs.path("stations").get(i);
    }

    @Test
    void should_name_the_field_when_one_is_unknown_or_missing_or_cannot_be() {
        ObjectNode unknown = inputs("F02-rectangle-uniform-offset");
        station(unknown, 3).put("colour", "red").remove("gap");
        refuses("fit.move", unknown, "stations[3].colour", "stations[3].gap");
        ObjectNode bare = inputs("F02-rectangle-uniform-offset");
        station(bare, 2).remove("nominal");
        refuses("fit.move", bare, "stations[2].nominal");
        ObjectNode open = inputs("F02-rectangle-uniform-offset");
        station(open, 1).remove("tolPlus");
        refuses("fit.move", open, "stations[1].tolPlus");
        ObjectNode some = inputs("F02-rectangle-uniform-offset");
        station(some, 0).put("uReading", 0.1);
        refuses("fit.move", some, "stations[1].uReading");
        ObjectNode twice = inputs("F02-rectangle-uniform-offset");
        station(twice, 1).put("id", "S1");
        refuses("fit.move", twice, "share a name");
        ObjectNode none = inputs("F09-max-margin-asymmetric");
        station(none, 0).remove("upper");
        refuses("fit.move.maxMargin", none, "stations[0].nominal");
        ObjectNode swapped = inputs("F09-max-margin-asymmetric");
        station(swapped, 0).put("upper", 1);
        refuses("fit.move.maxMargin", swapped, "wrong way round");
        ObjectNode flat = inputs("F41-bulged-canopy-six-unknowns");
        station(flat, 4).putArray("gapNormal").add(0).add(0).add(0);
        refuses("fit.move.3d", flat, "S5 has no direction");
        ObjectNode uneven = inputs("F43-kernel-norris");
        uneven.putArray("x").add(1).add(2).add(3);
        refuses("fit.kernel.line", uneven, "3 x and 36 y");
        ObjectNode still = inputs("F01-gap-forward-rectangle");
        still.remove("move");
        refuses("fit.gap.forward", still, "move");
    }

    @Test
    void should_tell_the_move_in_the_words_of_its_side_when_the_side_is_given() {
        ObjectNode in = inputs("F02-rectangle-uniform-offset");
        in.put("side", "left");
        assertThat(Topics.named("fit.move").answer(in).outputs().path("words").asText())
                .isEqualTo("0.6 mm aft, about the pivot");
        in.put("side", "right");
        assertThat(Topics.named("fit.move").answer(in).outputs().path("words").asText())
                .isEqualTo("0.6 mm forward, about the pivot");
        in.put("side", "top");
        refuses("fit.move", in, "side");
    }

    @Test
    void should_refuse_the_move_when_the_part_lies_far_off() {
        ObjectNode in = inputs("F02-rectangle-uniform-offset");
        in.remove("moveLimits");
        for (JsonNode s : in.path("stations")) {
            ((ObjectNode) s).put("gap", 3 + 14 * s.path("nx").doubleValue());
        }
        CalcAnswer a = Topics.named("fit.move").answer(in);
        assertThat(a.outputs().path("status").asText()).isEqualTo("MOVE_TOO_LARGE");
        assertThat(a.outputs().has("minimax")).isFalse();
        assertThat(a.saysNo()).isTrue();
        assertThat(a.cautions().get(0)).contains("read it again");
    }

    @Test
    void should_give_standard_errors_when_readings_have_uncertainties() {
        ObjectNode in = inputs("F02-rectangle-uniform-offset");
        for (JsonNode s : in.path("stations")) {
            ((ObjectNode) s).put("uReading", 0.1);
        }
        JsonNode e = Topics.named("fit.move")
                .answer(in)
                .outputs()
                .path("leastSquares")
                .path("standardError");
        // Four stations face fore and aft, four up and down: u / 2 each.
        assertThat(e.path("dx").doubleValue()).isCloseTo(0.05, within(1e-9));
        assertThat(e.path("dy").doubleValue()).isCloseTo(0.05, within(1e-9));
    }
}
