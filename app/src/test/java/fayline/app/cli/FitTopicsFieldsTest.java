package fayline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of fit question, its printed example broken in one place at a time, however deep: a field that nobody knows, each
 * needed field missing, each field of the wrong kind. The command ends with 2 and names the field; nothing is written out.
 */
class FitTopicsFieldsTest {
    private static final Pattern BLOCK = Pattern.compile("```json\\n(.*?)```", Pattern.DOTALL);
    private static final String NOBODY = "nobodyKnows";

    private final Shell shell = new Shell();

    static Stream<CalcTopic> fitTopics() {
        return Topics.all().stream().filter(t -> t.name().startsWith("fit."));
    }

    /** The questions printed on the topic's page. */
    private static List<JsonNode> examples(CalcTopic topic) throws IOException {
        List<JsonNode> blocks = new ArrayList<>();
        Matcher m = BLOCK.matcher(Files.readString(Path.of("../docs/calc/" + topic.name() + ".md")));
        while (m.find()) {
            blocks.add(Json.read(m.group(1)));
        }
        List<JsonNode> asked = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i += 2) {
            asked.add(blocks.get(i));
        }
        return asked;
    }

    /** A place in a question where an object stands, and what its schema says of it. */
    private record Place(String pointer, String path, JsonNode schema) {}

    private static List<Place> places(JsonNode node, JsonNode schema, String pointer, String path) {
        List<Place> all = new ArrayList<>();
        if (node.isObject() && schema.has("properties")) {
            all.add(new Place(pointer, path, schema));
            node.properties()
                    .forEach(e -> all.addAll(places(
                            e.getValue(),
                            schema.path("properties").path(e.getKey()),
                            pointer + "/" + e.getKey(),
                            path.isEmpty() ? e.getKey() : path + "." + e.getKey())));
        } else if (node.isArray() && !node.isEmpty() && schema.path("items").isObject()) {
            // the last shows that more than the first is looked at
            int last = node.size() - 1;
            all.addAll(places(node.get(last), schema.path("items"), pointer + "/" + last, path + "[" + last + "]"));
        }
        return all;
    }

    private void isRefused(CalcTopic topic, JsonNode question, String path, String found) {
        int exit = shell.run(question.toString(), "calc", topic.name());
        assertThat(exit).as(topic.name() + " " + path + ": " + shell.err).isEqualTo(2);
        assertThat(shell.out).as(topic.name() + " " + path).isEmpty();
        assertThat(shell.err).as(topic.name()).contains(path + ": found " + found, "expected ");
    }

    private static ObjectNode at(JsonNode question, Place place) {
        return (ObjectNode) (place.pointer.isEmpty() ? question : question.at(place.pointer));
    }

    private static List<String> names(ObjectNode object) {
        return object.properties().stream().map(Map.Entry::getKey).toList();
    }

    private static String below(Place place, String field) {
        return place.path.isEmpty() ? field : place.path + "." + field;
    }

    @ParameterizedTest
    @MethodSource("fitTopics")
    void should_name_the_unknown_field_and_end_with_2_at_every_depth(CalcTopic topic) throws IOException {
        for (JsonNode example : examples(topic)) {
            List<Place> places = places(example, topic.schema(), "", "");
            assertThat(places).as(topic.name()).isNotEmpty();
            for (Place place : places) {
                JsonNode broken = example.deepCopy();
                at(broken, place).put(NOBODY, 1);
                isRefused(topic, broken, below(place, NOBODY), "an unknown field");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("fitTopics")
    void should_name_each_needed_field_in_turn_and_end_with_2_when_it_is_missing(CalcTopic topic) throws IOException {
        int tried = 0;
        for (JsonNode example : examples(topic)) {
            for (Place place : places(example, topic.schema(), "", "")) {
                for (JsonNode needed : place.schema.path("required")) {
                    JsonNode broken = example.deepCopy();
                    at(broken, place).remove(needed.asText());
                    isRefused(topic, broken, below(place, needed.asText()), "nothing");
                    tried++;
                }
            }
        }
        assertThat(tried).as(topic.name()).isPositive();
    }

    /** What only some questions need: the answer may do without, but never breaks, and a refusal is one line of plain words. */
    @ParameterizedTest
    @MethodSource("fitTopics")
    void should_answer_or_refuse_in_words_when_any_other_field_is_missing(CalcTopic topic) throws IOException {
        for (JsonNode example : examples(topic)) {
            for (Place place : places(example, topic.schema(), "", "")) {
                for (String field : names(at(example, place))) {
                    JsonNode broken = example.deepCopy();
                    at(broken, place).remove(field);
                    int exit = shell.run(broken.toString(), "calc", topic.name());
                    assertThat(exit)
                            .as(topic.name() + " without " + below(place, field) + ": " + shell.err)
                            .isBetween(0, 2);
                    if (exit == 2) {
                        assertThat(shell.err).contains("found ", "expected ").doesNotContain("Exception", "\tat ");
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("fitTopics")
    void should_name_the_field_when_something_of_another_kind_stands_in_it(CalcTopic topic) throws IOException {
        for (JsonNode example : examples(topic)) {
            for (Place place : places(example, topic.schema(), "", "")) {
                for (String field : names(at(example, place))) {
                    JsonNode wanted = place.schema.path("properties").path(field);
                    if (!wanted.has("type") && !wanted.has("enum") && !wanted.has("anyOf")) {
                        continue; // it explains and is not read
                    }
                    JsonNode broken = example.deepCopy();
                    ArrayNode odd = at(broken, place).putArray(field);
                    odd.addArray().addArray().addObject().put("odd", true);
                    int exit = shell.run(broken.toString(), "calc", topic.name());
                    assertThat(exit)
                            .as(topic.name() + " " + below(place, field))
                            .isEqualTo(2);
                    assertThat(shell.err).contains(below(place, field));
                }
            }
        }
    }
}
