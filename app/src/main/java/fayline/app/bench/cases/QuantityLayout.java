package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.cases.RawFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Comma-separated tables whose cells {@code inputs}, {@code expected} and {@code tolerance} are JSON objects of named
 * quantities {@code {"v": value, "u": unit}}. A text value {@code as ID} refers to the inputs of another case of the file.
 */
final class QuantityLayout implements Layout {
    private static final List<String> COLUMNS = List.of("case_id", "topic", "inputs", "expected", "tolerance");
    private static final Pattern REFERENCE = Pattern.compile("as (\\S+)");

    @Override
    public Optional<CaseFile> read(RawFile file) {
        Optional<CaseRows> found = CaseRows.of(file, COLUMNS);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        CaseRows rows = found.get();
        Map<String, Map<String, JsonNode>> inputs = new LinkedHashMap<>();
        for (CaseRows.Row row : rows.rows()) {
            inputs.put(row.id(), quantities(row, "inputs"));
        }
        List<CheckCase> cases = new ArrayList<>();
        for (CaseRows.Row row : rows.rows()) {
            cases.add(oneCase(row, inputs));
        }
        return Optional.of(new CaseFile(file.path(), file.name(), cases));
    }

    private static CheckCase oneCase(CaseRows.Row row, Map<String, Map<String, JsonNode>> inputs) {
        String id = row.id();
        Map<String, JsonNode> given = new LinkedHashMap<>(inputs.getOrDefault(id, Map.of()));
        Map<String, JsonNode> borrowed = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> e : List.copyOf(given.entrySet())) {
            Matcher m = REFERENCE.matcher(e.getValue().path("v").asText(""));
            if (e.getValue().path("v").isTextual() && m.matches()) {
                Map<String, JsonNode> other = inputs.get(m.group(1));
                if (other == null) {
                    throw new UnreadableCasesException("case " + id + ": " + e.getKey() + " refers to case "
                            + m.group(1) + ", which is not in the file");
                }
                given.remove(e.getKey());
                borrowed.putAll(other);
            }
        }
        borrowed.keySet().removeAll(given.keySet());
        Map<String, JsonNode> tolerance = object(row, "tolerance");
        List<Expectation> expectations = new ArrayList<>();
        quantities(row, "expected").forEach((name, value) -> expectations.add(expectation(id, name, value, tolerance)));
        return new QuantityCase(
                id,
                new Question(
                        given,
                        borrowed,
                        expectations.stream().map(Expectation::name).toList()),
                expectations);
    }

    private static Expectation expectation(String id, String name, JsonNode value, Map<String, JsonNode> tolerance) {
        JsonNode t = tolerance.get(name);
        if (t == null) {
            throw new UnreadableCasesException("case " + id + ": no tolerance for " + name);
        }
        return new Expectation(
                name, value.path("v"), value.path("u").asText("-"), Tolerance.read("case " + id + ", " + name, t));
    }

    private static Map<String, JsonNode> quantities(CaseRows.Row row, String column) {
        Map<String, JsonNode> all = object(row, column);
        all.forEach((name, q) -> {
            if (!q.isObject() || !q.has("v") || !q.path("u").isTextual() || q.size() != 2) {
                throw new UnreadableCasesException("case " + row.id() + ", " + column + ", " + name + ": found "
                        + Json.shown(q) + ", expected {\"v\": value, \"u\": \"unit\"}");
            }
        });
        return all;
    }

    private static Map<String, JsonNode> object(CaseRows.Row row, String column) {
        JsonNode n;
        try {
            n = Json.read(row.cell(column));
        } catch (CalcInputException e) {
            throw new UnreadableCasesException("case " + row.id() + ", " + column + ": " + e.getMessage(), e);
        }
        if (!n.isObject()) {
            throw new UnreadableCasesException(
                    "case " + row.id() + ", " + column + ": found " + Json.shown(n) + ", expected a JSON object");
        }
        Map<String, JsonNode> all = new LinkedHashMap<>();
        n.properties().forEach(e -> all.put(e.getKey(), e.getValue()));
        return all;
    }
}
