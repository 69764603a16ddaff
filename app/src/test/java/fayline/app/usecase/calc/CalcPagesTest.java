package fayline.app.usecase.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import fayline.app.usecase.calc.topic.Topics;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pages of docs/calc are true: every topic has one, its schema is the one printed, its examples answer as printed. */
class CalcPagesTest {
    private static final Pattern BLOCK = Pattern.compile("```json\n(.*?)\n```", Pattern.DOTALL);

    private static Path docs() {
        Path here = Path.of("").toAbsolutePath();
        return here.resolve(Files.exists(here.resolve("docs")) ? "." : "..")
                .resolve("docs/calc")
                .normalize();
    }

    private static String read(String file) throws IOException {
        return Files.readString(docs().resolve(file), StandardCharsets.UTF_8);
    }

    static Stream<CalcTopic> topics() {
        return Topics.all().stream();
    }

    static Stream<CalcTopic> topicsWithExamplesOnThePage() {
        return topics().filter(t -> !"plan.audit".equals(t.name()));
    }

    @ParameterizedTest
    @MethodSource("topicsWithExamplesOnThePage")
    void should_print_the_schema_that_the_topic_has(CalcTopic topic) throws IOException {
        assertThat(Json.read(read(topic.name() + ".schema.json"))).isEqualTo(topic.schema());
    }

    @ParameterizedTest
    @MethodSource("topicsWithExamplesOnThePage")
    void should_answer_the_examples_as_printed(CalcTopic topic) throws IOException {
        List<JsonNode> blocks = new ArrayList<>();
        Matcher m = BLOCK.matcher(read(topic.name() + ".md"));
        while (m.find()) {
            blocks.add(Json.read(m.group(1)));
        }
        assertThat(blocks)
                .hasSizeGreaterThanOrEqualTo(4)
                .satisfies(b -> assertThat(b.size() % 2).isZero());
        for (int i = 0; i < blocks.size(); i += 2) {
            assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                            .getSchema(topic.schema())
                            .validate(blocks.get(i)))
                    .isEmpty();
            same(blocks.get(i + 1), topic.answer(blocks.get(i)).toJson(topic.name()), topic.name() + " " + i);
        }
    }

    @Test
    void should_find_nothing_broken_in_the_example_plan_and_something_in_a_worse_one() throws IOException {
        CalcTopic audit = Topics.named("plan.audit");
        String plan = read("plan.audit.example.json");
        CalcAnswer clean = audit.answer(Json.read(plan));
        assertThat(clean.saysNo()).isFalse();
        Matcher m = BLOCK.matcher(read("plan.audit.md"));
        assertThat(m.find()).isTrue();
        same(Json.read(m.group(1)), clean.toJson("plan.audit"), "plan.audit");
        CalcAnswer worse = audit.answer(Json.read(plan.replace("\"people\" : [ \"ada\" ]", "\"people\" : [ ]")));
        assertThat(worse.saysNo()).isTrue();
        assertThat(worse.outputs().path("broken")).isNotEmpty();
    }

    @Test
    void should_name_every_topic_on_the_first_page() throws IOException {
        String page = read("README.md");
        topics().forEach(t -> assertThat(page).contains("[`" + t.name() + "`](" + t.name() + ".md)"));
    }

    private static void same(JsonNode printed, JsonNode found, String where) {
        if (printed.isNumber()) {
            double p = printed.doubleValue();
            assertThat(found.isNumber()).as(where).isTrue();
            assertThat(found.doubleValue()).as(where).isCloseTo(p, within(Math.max(1e-12, Math.abs(p) * 1e-8)));
        } else if (printed.isContainerNode()) {
            assertThat(found.size()).as(where + " " + found).isEqualTo(printed.size());
            for (int i = 0; printed.isArray() && i < printed.size(); i++) {
                same(printed.get(i), found.get(i), where + "[" + i + "]");
            }
            printed.properties().forEach(e -> {
                assertThat(found.has(e.getKey())).as(where + "." + e.getKey()).isTrue();
                same(e.getValue(), found.path(e.getKey()), where + "." + e.getKey());
            });
        } else {
            assertThat(found).as(where).isEqualTo(printed);
        }
    }
}
