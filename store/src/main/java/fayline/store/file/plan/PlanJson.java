package fayline.store.file.plan;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes and reads work and plan as JSON, whole in itself: what {@code plan --json} prints and {@code calc plan.audit} takes.
 * Times are ISO 8601 date-times with the offset of the shop's zone; spans are minutes. Described by
 * {@code schema/plan.schema.json} (JSON Schema 2020-12) and {@code docs/plan-format.md}.
 */
public final class PlanJson {
    private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

    private PlanJson() {}

    /**
     * The text of a plan file, ending in a line break; the same for the same values.
     *
     * @throws IllegalArgumentException where a span or rate is not a finite number
     */
    public static String write(Work work, Plan plan) {
        try {
            return MAPPER.writeValueAsString(node(work, plan)) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a plan could not be written as JSON", e);
        }
    }

    /** The same as a tree, for those who put it into a larger one. */
    public static JsonNode node(Work work, Plan plan) {
        return new PlanWriting(work).write(plan);
    }

    /**
     * Reads a plan file; never throws for what the text says. Unknown and missing fields, values of the wrong kind and times
     * without an offset are all reported at once.
     *
     * @param text the text
     * @param file the name by which problems call it; may be empty
     */
    public static PlanRead read(String text, String file) {
        JsonNode root;
        try {
            root = MAPPER.readTree(text);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
            String found = Optional.ofNullable(e.getOriginalMessage()).orElse("no JSON");
            return new PlanRead(
                    Optional.empty(),
                    List.of(new InputProblem(Severity.STOP, file, line, "", found, "one JSON object", "")));
        }
        return read(root, file);
    }

    /** Reads a plan from a tree. */
    public static PlanRead read(JsonNode root, String file) {
        List<InputProblem> problems = new ArrayList<>();
        PlanRead.WorkAndPlan whole = PlanReading.read(new JsonAt(root, "", file, problems));
        return new PlanRead(problems.isEmpty() ? Optional.of(whole) : Optional.empty(), problems);
    }
}
