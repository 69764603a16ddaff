package fayline.app.usecase.calc.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.Topics;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Questions of locating, trials, as-built and uncertainty that are not in order, and what they are told. */
class LocatingTopicsTest {
    private static final String STATION =
            "{\"id\": \"S1\", \"x\": 0, \"y\": 200, \"nx\": 0, \"ny\": 1, \"predicted\": 3, \"lower\": 2.5, \"upper\": 3.5,"
                    + " \"uReading\": 0.06}";

    private static CalcAnswer ask(String topic, String inputs) {
        return Topics.named(topic).answer(Json.read(inputs));
    }

    private static JsonNode inputsOf(String file) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(LocatingTopicsTest.class.getResourceAsStream("/cases/checks/fitup/" + file))) {
            return Json.read(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .path("inputs");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fit.montecarlo|{'model': 'X1 + Y', 'inputs': [{'distribution': 'normal', 'mean': 0, 'std': 1}]}|Y",
                "fit.montecarlo|{'model': 'X1', 'inputs': [{'distribution': 'normal', 'mean': 0, 'halfWidth': 1}]}|std",
                "fit.montecarlo|{'model': 'X1', 'inputs': [{'distribution': 'normal', 'mean': 0, 'std': 1}],"
                        + " 'coverage': 1}|coverage",
                "fit.montecarlo|{'model': 'X1', 'inputs': [{'distribution': 'normal', 'mean': 0, 'std': 1}],"
                        + " 'significantDigits': 3}|digits",
                "uncertainty|{'inputs': [{'name': 'a', 'value': 1}], 'results': [{'name': 'y', 'formula': 'b'}]}|b",
                "uncertainty|{'inputs': [{'name': 'a', 'value': 0}], 'results': [{'name': 'y', 'formula': '1/a'}]}|value",
                "stack|{'dimensions': {'v': [[1, 4, -0.1, 0.1]], 'u': '-, mm, mm, mm'}}|upper",
                "fit.chain|{'links': [], 'stations': []}|links"
            })
    void should_say_what_is_wrong_when_a_question_is_not_in_order(String topic, String inputs, String said) {
        assertThatThrownBy(() -> ask(topic, inputs.replace('\'', '"')))
                .isInstanceOf(CalcInputException.class)
                .hasMessageContaining(said);
    }

    @Test
    void should_say_what_is_wrong_when_scheme_and_index_points_differ() throws IOException {
        ObjectNode in = inputsOf("F22-index-covariance-hand.json").deepCopy();
        ((ObjectNode) in.path("schemes").path("equal"))
                .putArray("stdPerIndexPoint")
                .add(0.1);
        assertThatThrownBy(() -> Topics.named("fit.index.uncertainty").answer(in))
                .isInstanceOf(CalcInputException.class)
                .hasMessageContaining("schemes.equal.stdPerIndexPoint");
        ObjectNode correlated = inputsOf("F42-fixture-block-correlated.json").deepCopy();
        correlated.putArray("covariance").addArray().add(1).add(2);
        assertThatThrownBy(() -> Topics.named("fit.index.correlated").answer(correlated))
                .isInstanceOf(CalcInputException.class)
                .hasMessageContaining("covariance");
    }

    @Test
    void should_answer_no_when_stops_do_not_hold_the_part() {
        CalcAnswer a = ask(
                "fit.index.uncertainty",
                "{\"stations\": [" + STATION + "], \"uCommonReading\": 0, \"indexPoints\": [{\"id\": \"J1\", \"x\": 0,"
                        + " \"y\": -200, \"nx\": 0, \"ny\": -1}], \"schemes\": {\"one\": {\"distribution\": \"normal\","
                        + " \"stdPerIndexPoint\": [0.1]}}}");
        assertThat(a.saysNo()).isTrue();
        assertThat(a.cautions()).anyMatch(c -> c.startsWith("INDEX_UNDETERMINED"));
        assertThat(a.outputs().path("one").has("jointProbability")).isFalse();
    }

    @Test
    void should_name_what_is_missing_when_a_chain_has_readings_without_uncertainty() {
        CalcAnswer a = ask(
                "fit.chain",
                "{\"links\": [{\"name\": \"bond\", \"part\": \"pane\", \"carrier\": \"frame\", \"open\": true,"
                        + " \"indexPoints\": [{\"id\": \"J1\", \"x\": -100, \"y\": -200, \"nx\": 0, \"ny\": -1, \"std\":"
                        + " 0.1}, {\"id\": \"J2\", \"x\": 100, \"y\": -200, \"nx\": 0, \"ny\": -1, \"std\": 0.1},"
                        + " {\"id\": \"J3\", \"x\": -200, \"y\": 0, \"nx\": -1, \"ny\": 0, \"std\": 0.1}]}],"
                        + " \"stations\": [{\"id\": \"A\", \"x\": 200, \"y\": 0, \"nx\": 1, \"ny\": 0, \"gap\": 3.4,"
                        + " \"nominal\": 3, \"tolMinus\": 0.5, \"tolPlus\": 0.5, \"on\": \"pane\", \"against\":"
                        + " \"frame\"}]}");
        assertThat(a.outputs().has("jointProbability")).isFalse();
        assertThat(a.outputs().path("missing")).hasSize(2);
        assertThat(a.outputs().path("missing").get(0).path("couldBeAssumed").asText())
                .contains("0.06 mm");
        // The correction needs no chance: 0.4 mm aft.
        assertThat(a.outputs()
                        .path("corrections")
                        .get(0)
                        .path("moves")
                        .path("bond")
                        .path("dx")
                        .doubleValue())
                .isCloseTo(0.4, org.assertj.core.api.Assertions.within(1e-6));
    }
}
