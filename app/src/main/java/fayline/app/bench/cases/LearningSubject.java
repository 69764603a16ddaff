package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.LearningTopic;
import fayline.basis.units.UnitOfMeasure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Repeated work: factors by count for several rates at once ({@code factor_80}), or a total after so many, each put to the topic
 * {@code learning}. Where a table does not say of what its rate speaks, it is the single one.
 */
final class LearningSubject implements Subject {
    private static final Pattern FACTOR = Pattern.compile("factor_(\\d+)");
    private static final double IN_100 = 100;

    @Override
    public boolean isOf(String fileName) {
        return "learning_curve".equals(fileName);
    }

    @Override
    public Answer answer(Question question) {
        Map<String, Reckoned> values = new LinkedHashMap<>();
        try {
            for (String word : question.asked()) {
                Optional<Reckoned> r = found(question, word);
                if (r.isEmpty()) {
                    return Answer.notCovered("learning does not tell " + word);
                }
                values.put(word, r.get());
            }
        } catch (CalcInputException e) {
            return Answer.notCovered(String.valueOf(e.getMessage()));
        }
        return new Answer(values, "");
    }

    private static Optional<Reckoned> found(Question question, String word) {
        Matcher m = FACTOR.matcher(word);
        if (m.matches()) {
            JsonNode factors = told(question, Integer.parseInt(m.group(1)) / IN_100, given(question, "unit"), 1)
                    .path("unit");
            return Optional.of(new Reckoned(numbers(factors), UnitOfMeasure.ONE));
        }
        String output = switch (word) {
            case "total" -> "total";
            case "average" -> "average";
            case "last_unit", "unit_time" -> "unit";
            default -> "";
        };
        JsonNode first = question.given().getOrDefault("first_unit", Json.object());
        Optional<UnitOfMeasure> unit = UnitOfMeasure.parse(first.path("u").asText());
        if (output.isEmpty() || unit.isEmpty()) {
            return Optional.empty();
        }
        JsonNode told = told(
                question,
                given(question, "rate").asDouble(),
                given(question, "units"),
                first.path("v").asDouble());
        return Optional.of(
                new Reckoned(unit.get().toSi(told.path(output).path(0).asDouble()), unit.get()));
    }

    private static JsonNode given(Question question, String name) {
        return question.given().getOrDefault(name, Json.object()).path("v");
    }

    private static ObjectNode told(Question question, double rate, JsonNode counts, double first) {
        String form = given(question, "model").asText("unit");
        ObjectNode in = Json.object().put("rate", rate).put("first", first);
        in.put("of", form.contains("average") ? "average" : "unit");
        if (counts.isArray()) {
            in.set("counts", counts);
        } else {
            in.putArray("counts").add(counts);
        }
        return new LearningTopic().answer(in).outputs();
    }

    private static List<Double> numbers(JsonNode list) {
        List<Double> all = new ArrayList<>();
        list.forEach(n -> all.add(n.asDouble()));
        return all;
    }
}
