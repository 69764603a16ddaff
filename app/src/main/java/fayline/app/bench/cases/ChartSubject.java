package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.ChartTopic;
import fayline.basis.units.UnitOfMeasure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/** Readings over time and their statistics: the words of the tables, each put to the topic {@code chart}. */
final class ChartSubject implements Subject {
    /** Where the topic answers a word; {@code PART} is that of the drift where one is asked for, else of single readings. */
    private static final Map<String, String> PLACES = Map.ofEntries(
            Map.entry("centre", "/single/centre"),
            Map.entry("mean_moving_range", "/single/meanRange"),
            Map.entry("moving_ranges", "/single/ranges"),
            Map.entry("upper", "/PART/upper"),
            Map.entry("lower", "/PART/lower"),
            Map.entry("out_of_control", "/PART/beyond"),
            Map.entry("ewma", "/drift/averages"),
            Map.entry("R6", "/quantiles/six/0"),
            Map.entry("R7", "/quantiles/seven/0"),
            Map.entry("R8", "/quantiles/eight/0"),
            Map.entry("coefficients", "/trend/coefficients"),
            Map.entry("standard_errors", "/trend/standardErrors"),
            Map.entry("residual_sd", "/trend/residualDeviation"),
            Map.entry("r_squared", "/trend/explained"));

    @Override
    public boolean isOf(String fileName) {
        return List.of("control_charts", "statistics").contains(fileName);
    }

    @Override
    public Answer answer(Question question) {
        try {
            ObjectNode told = new ChartTopic().answer(inputs(question)).outputs();
            UnitOfMeasure unit = UnitOfMeasure.parse(question.given()
                            .getOrDefault("values", Json.object())
                            .path("u")
                            .asText())
                    .orElse(UnitOfMeasure.ONE);
            Map<String, Reckoned> values = new LinkedHashMap<>();
            for (String word : question.asked()) {
                Optional<JsonNode> found = found(told, word);
                if (found.isEmpty()) {
                    return Answer.notCovered("chart does not tell " + word);
                }
                values.put(word, new Reckoned(value(found.get(), unit), unit));
            }
            return new Answer(values, "");
        } catch (CalcInputException e) {
            return Answer.notCovered(String.valueOf(e.getMessage()));
        }
    }

    private static ObjectNode inputs(Question question) {
        ObjectNode in = Json.object();
        Map<String, JsonNode> given = question.given();
        set(in, "values", given.get("values"));
        set(in, "groups", given.get("subgroup_size"));
        if (given.containsKey("p")) {
            in.putArray("shares").add(given.getOrDefault("p", Json.object()).path("v"));
        }
        if (given.containsKey("weight")) {
            ObjectNode drift = in.putObject("drift");
            set(drift, "target", given.get("target"));
            set(drift, "sigma", given.get("sigma"));
            set(drift, "weight", given.get("weight"));
            set(drift, "width", given.get("limit_width"));
        }
        if (given.containsKey("rows_y_x1_to_x6")) {
            ArrayNode values = in.putArray("values");
            ArrayNode causes = in.putArray("causes");
            for (JsonNode row :
                    given.getOrDefault("rows_y_x1_to_x6", Json.object()).path("v")) {
                values.add(row.path(0));
                ArrayNode of = causes.addArray();
                for (int k = 1; k < row.size(); k++) {
                    of.add(row.path(k));
                }
            }
        }
        return in;
    }

    private static void set(ObjectNode in, String name, @Nullable JsonNode given) {
        if (given != null) {
            in.set(name, given.path("v"));
        }
    }

    private static Optional<JsonNode> found(ObjectNode told, String word) {
        String place = PLACES.getOrDefault(word, "").replace("PART", told.has("drift") ? "drift" : "single");
        JsonNode found = place.isEmpty() ? byGroup(told, word) : told.at(place);
        return found.isMissingNode() ? Optional.empty() : Optional.of(found);
    }

    private static JsonNode byGroup(ObjectNode told, String word) {
        ArrayNode all = Json.object().putArray("all");
        for (JsonNode group : told.path("factors")) {
            if (!group.has(word)) {
                return Json.object().path("none");
            }
            all.add(group.path(word));
        }
        return all.isEmpty() ? Json.object().path("none") : all;
    }

    private static Object value(JsonNode found, UnitOfMeasure unit) {
        if (found.isArray()) {
            return new ArrayList<>(StreamSupport.stream(found.spliterator(), false)
                    .map(n -> unit.toSi(n.asDouble()))
                    .toList());
        }
        return unit.toSi(found.asDouble());
    }
}
