package fayline.store.file.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import fayline.basis.finding.InputProblem;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The plan format: round trip, agreement with its schema, and messages for what is wrong. */
class PlanJsonTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Set<String> OPTIONAL =
            Set.of("not-before", "shuts", "miss", "clock", "started", "hands-ended", "ended", "finish");

    private static JsonSchema schema() throws IOException {
        String text = Files.readString(Path.of("..", "schema", "plan.schema.json"), StandardCharsets.UTF_8);
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
    }

    @Test
    void should_give_back_the_same_values_when_written_and_read() throws IOException {
        JsonSchema schema = schema();
        for (int seed = 0; seed < 300; seed++) {
            SeededPlans seeded = new SeededPlans(seed);
            Work work = seeded.work();
            Plan plan = seeded.plan();
            String text = PlanJson.write(work, plan);
            PlanRead read = PlanJson.read(text, "p.json");
            assertThat(read.problems()).as("seed %d", seed).isEmpty();
            PlanRead.WorkAndPlan whole = read.whole().orElseThrow();
            assertThat(whole.work()).isEqualTo(work);
            assertThat(whole.plan()).isEqualTo(plan);
            assertThat(PlanJson.write(whole.work(), whole.plan())).isEqualTo(text);
            assertThat(schema.validate(MAPPER.readTree(text)))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }

    @Test
    void should_refuse_with_its_path_as_the_schema_does_when_a_field_is_missing() throws IOException {
        JsonSchema schema = schema();
        int refused = 0;
        for (int seed = 0; seed < 20; seed++) {
            SeededPlans seeded = new SeededPlans(seed);
            JsonNode whole = PlanJson.node(seeded.work(), seeded.plan());
            List<String> paths = new ArrayList<>();
            fields(whole, "", paths);
            for (String path : paths) {
                String name = path.substring(path.lastIndexOf('/') + 1);
                if (path.contains("/skills/")) {
                    continue;
                }
                JsonNode less = whole.deepCopy();
                ((ObjectNode) less.at(path.substring(0, path.lastIndexOf('/')))).remove(name);
                PlanRead read = PlanJson.read(less, "p.json");
                boolean fine = OPTIONAL.contains(name)
                        || path.matches("/work/(hands|groups|wishes(/\\d+/(on|from|before|by|why))?)");
                assertThat(read.problems().isEmpty()).as(path).isEqualTo(fine);
                assertThat(schema.validate(less).isEmpty()).as(path).isEqualTo(fine);
                if (!fine) {
                    assertThat(read.problems()).extracting(InputProblem::key).contains(key(path));
                    refused++;
                }
            }
        }
        assertThat(refused).isGreaterThan(200);
    }

    @Test
    void should_refuse_as_the_schema_does_when_a_field_is_unknown_or_of_the_wrong_kind() throws IOException {
        JsonSchema schema = schema();
        for (int seed = 0; seed < 8; seed++) {
            SeededPlans seeded = new SeededPlans(seed);
            JsonNode whole = PlanJson.node(seeded.work(), seeded.plan());
            List<String> paths = new ArrayList<>();
            fields(whole, "", paths);
            for (String path : paths) {
                String name = path.substring(path.lastIndexOf('/') + 1);
                JsonNode wrong = whole.deepCopy();
                ObjectNode parent = (ObjectNode) wrong.at(path.substring(0, path.lastIndexOf('/')));
                parent.putNull(name);
                assertThat(PlanJson.read(wrong, "").problems()).as(path).isNotEmpty();
                assertThat(schema.validate(wrong)).as(path).isNotEmpty();
                if (!path.contains("/skills/")) {
                    JsonNode more = whole.deepCopy();
                    ((ObjectNode) more.at(path.substring(0, path.lastIndexOf('/')))).put("colour", "red");
                    assertThat(PlanJson.read(more, "").problems())
                            .as(path)
                            .anySatisfy(p -> assertThat(p.found()).isEqualTo("an unknown field"));
                    assertThat(schema.validate(more)).as(path).isNotEmpty();
                }
            }
        }
    }

    @Test
    void should_say_where_and_what_when_values_are_wrong() {
        ObjectNode root = (ObjectNode) PlanJson.node(new SeededPlans(3).work(), new SeededPlans(3).plan());
        ObjectNode work = (ObjectNode) root.get("work");
        work.put("now", "2026-03-02T07:30");
        work.put("zone", "Mars/Olympus");
        work.put("dust-settles-min", 1.5);
        PlanRead read = PlanJson.read(root, "p.json");
        assertThat(read.whole()).isEmpty();
        assertThat(read.problems())
                .extracting(InputProblem::sentence)
                .containsExactlyInAnyOrder(
                        "p.json: work.now: found \"2026-03-02T07:30\", expected a date-time with offset such as"
                                + " 2026-03-02T07:30:00+01:00, between the years 1900 and 2200",
                        "p.json: work.zone: found 'Mars/Olympus', expected a time zone such as Europe/Vienna",
                        "p.json: work.dust-settles-min: found 1.5, expected a whole number");
    }

    @Test
    void should_name_the_line_when_it_is_no_json() {
        PlanRead read = PlanJson.read("{\n \"version\": 1,\n \"version\": 2}", "p.json");
        assertThat(read.problems()).singleElement().satisfies(p -> {
            assertThat(p.line()).isEqualTo(3);
            assertThat(p.found()).contains("version");
        });
        assertThat(PlanJson.read("", "p.json").problems()).isNotEmpty();
        assertThat(PlanJson.read("[]", "p.json").problems()).isNotEmpty();
        assertThat(PlanJson.read("{} {}", "p.json").problems()).isNotEmpty();
    }

    private static void fields(JsonNode node, String path, List<String> paths) {
        if (node instanceof ObjectNode object) {
            object.properties().forEach(e -> {
                paths.add(path + "/" + e.getKey());
                fields(e.getValue(), path + "/" + e.getKey(), paths);
            });
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                fields(array.get(i), path + "/" + i, paths);
            }
        }
    }

    /** A JSON pointer as a key path: {@code /work/steps/0/alone} as {@code work.steps[0].alone}. */
    private static String key(String pointer) {
        return pointer.substring(1).replaceAll("/([0-9]+)", "[$1]").replace('/', '.');
    }
}
