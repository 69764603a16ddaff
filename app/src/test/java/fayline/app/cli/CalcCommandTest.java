package fayline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.app.usecase.calc.Json;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalcCommandTest {
    private static final String AIR = "{\"air\": \"20 degC\", \"rh\": \"60 %\"}";

    private final Shell shell = new Shell();

    @Test
    void should_write_one_object_and_end_with_0_when_it_can_answer() {
        assertThat(shell.run(AIR, "calc", "climate")).isZero();
        JsonNode a = Json.read(shell.out);
        assertThat(a.path("topic").asText()).isEqualTo("climate");
        // Magnus with the coefficients of [wmo8]; the same row stands in the reference tables.
        assertThat(a.path("outputs").path("dewPoint").doubleValue()).isCloseTo(11.99545, within(1e-4));
        assertThat(a.path("units").path("dewPoint").asText()).isEqualTo("degC");
        assertThat(a.path("method").asText()).isNotEmpty();
        assertThat(a.path("source").asText()).contains("wmo8");
        assertThat(a.path("cautions").isArray()).isTrue();
    }

    @Test
    void should_take_both_ways_of_writing_a_quantity() {
        shell.run(AIR, "calc", "climate");
        String first = shell.out;
        shell.run("{\"air\": {\"v\": 68, \"u\": \"degF\"}, \"rh\": {\"v\": 0.6, \"u\": \"-\"}}", "calc", "climate");
        assertThat(Json.read(shell.out).path("outputs").path("dewPoint").doubleValue())
                .isCloseTo(Json.read(first).path("outputs").path("dewPoint").doubleValue(), within(1e-9));
    }

    @Test
    void should_end_with_1_when_the_answer_is_no() {
        assertThat(shell.run(
                        "{\"air\": \"17 degC\", \"rh\": \"78 %\", \"surface\": \"15.2 degC\", \"requiredMargin\": \"3 K\"}",
                        "calc", "climate"))
                .isEqualTo(1);
        assertThat(Json.read(shell.out).path("outputs").path("ok").asBoolean(true))
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "{\"air\": \"20 degC\", \"rh\": \"60 %\", \"wind\": \"3 m/s\"}|wind|unknown field|air, rh",
                "{\"air\": \"20 kg\", \"rh\": \"60 %\"}|air|\"kg\"|degC",
                "{\"air\": 20, \"rh\": \"60 %\"}|air|plain number 20|20 degC",
                "{\"air\": \"20 degC\", \"rh\": 60}|rh|plain number 60|percent",
                "{\"air\": \"warm\", \"rh\": \"60 %\"}|air|\"warm\"|20 degC",
                "{\"air\": \"20 degC\", \"rh\": [\"60 %\", \"damp\"]}|rh|damp|percent",
                "{\"air\": [\"20 degC\", \"21 degC\"], \"rh\": [\"1 %\", \"2 %\", \"3 %\"]}|rh|a list of|as long as the others",
                "{\"rh\": \"60 %\"}|inputs|only rh|dewPoint from air, rh",
                "{}|inputs|no fields|dewPoint from air, rh",
                "[1]|inputs|[1]|one JSON object",
                "{\"air\": \"20 degC\"|line 1|Unexpected|JSON",
                "{\"air\": \"20 degC\", \"air\": \"21 degC\"}|line 1|Duplicate|JSON",
                "~~|found|nothing|one JSON object"
            })
    void should_name_field_found_and_expected_and_end_with_2_when_the_input_is_bad(
            String input, String field, String found, String expected) {
        assertThat(shell.run(input, "calc", "climate")).isEqualTo(2);
        assertThat(shell.out).isEmpty();
        assertThat(shell.err).contains(field, found, expected);
    }

    @Test
    void should_name_every_bad_field_at_once() {
        assertThat(shell.run("{\"air\": \"x\", \"rh\": \"y\", \"wind\": 1}", "calc", "climate"))
                .isEqualTo(2);
        assertThat(shell.err).contains("air: ", "rh: ", "wind: ");
    }

    @Test
    void should_answer_lines_in_order_and_end_with_0_when_some_are_bad() {
        String lines = "{\"topic\": \"climate\", \"inputs\": " + AIR + "}\n"
                + "{\"topic\": \"weather\", \"inputs\": {}}\n"
                + "\n"
                + "not json\n"
                + "{\"topic\": \"units\", \"inputs\": {\"unit\": \"ft\", \"to\": \"m\"}, \"more\": 1}\n"
                + "{\"topic\": \"units\"}\n"
                + "{\"topic\": \"units\", \"inputs\": {\"unit\": \"ft\", \"to\": \"m\"}}";
        assertThat(shell.run(lines, "calc", "--lines")).isZero();
        List<String> answers = shell.out.lines().toList();
        assertThat(answers).hasSize(6).allMatch(a -> a.startsWith("{"));
        assertThat(Json.read(answers.get(0)).path("outputs").has("dewPoint")).isTrue();
        assertThat(Json.read(answers.get(1)).path("topic").asText()).isEqualTo("weather");
        assertThat(Json.read(answers.get(1)).path("error").asText()).contains("weather", "climate");
        assertThat(Json.read(answers.get(2)).path("error").asText()).contains("line 1");
        assertThat(Json.read(answers.get(3)).path("error").asText()).contains("more");
        assertThat(Json.read(answers.get(4)).path("error").asText()).contains("inputs");
        assertThat(Json.read(answers.get(5)).path("outputs").path("factor").doubleValue())
                .isCloseTo(0.3048, within(1e-15));
    }

    @Test
    void should_say_what_a_method_does_not_cover_and_answer_the_rest() {
        assertThat(shell.run(
                        "{\"mass1\": \"150 g\", \"potLife1\": \"90 min\", \"mass2\": \"500 g\", \"potLife2\": \"45 min\","
                                + " \"temperature\": \"25 degC\", \"mixedMass\": \"900 g\"}",
                        "calc",
                        "potlife"))
                .isZero();
        JsonNode a = Json.read(shell.out);
        assertThat(a.path("outputs").has("exponent")).isTrue();
        assertThat(a.path("outputs").has("potLife")).isFalse();
        assertThat(a.path("cautions").toString()).contains("potLife is not covered");
    }

    @Test
    void should_list_topics_one_a_line() {
        assertThat(shell.run("", "calc", "--list")).isZero();
        assertThat(shell.out.lines())
                .contains("cure", "potlife", "climate", "quantities", "mix", "bag", "vacuum", "airfoil", "plan.audit");
    }

    @Test
    void should_end_with_2_when_topic_or_option_is_unknown_or_missing() {
        assertThat(shell.run("{}", "calc", "weather")).isEqualTo(2);
        assertThat(shell.err).contains("weather", "climate");
        assertThat(shell.run("{}", "calc")).isEqualTo(2);
        assertThat(shell.run("{}", "calc", "climate", "--loud")).isEqualTo(2);
        assertThat(shell.run("{}", "calk")).isEqualTo(2);
        assertThat(shell.run("{}")).isEqualTo(2);
        assertThat(shell.run("", "bench", "weather")).isEqualTo(2);
        assertThat(shell.run("", "bench", "checks", "no/such/folder")).isEqualTo(2);
    }

    @Test
    void should_show_help_and_version_and_end_with_0() {
        assertThat(shell.run("", "--help")).isZero();
        assertThat(shell.out).contains("calc").doesNotContain("bench");
        assertThat(shell.run("", "--version")).isZero();
        assertThat(shell.out).startsWith("fayline ");
        assertThat(shell.run("", "calc", "--help")).isZero();
    }
}
