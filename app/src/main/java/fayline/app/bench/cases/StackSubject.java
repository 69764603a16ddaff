package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Stacks of dimensions: the names in the rows of the table are passed over, the rest goes to the topic {@code stack}. */
final class StackSubject implements Subject {
    private static final String FILE = "tolerance_stack";
    private static final Pattern COLUMNS = Pattern.compile("name, sign, nominal, upper, lower \\((.+)\\)");

    private final TopicSubject stack;

    StackSubject(TopicSubject stack) {
        this.stack = stack;
    }

    @Override
    public boolean isOf(String fileName) {
        return FILE.equals(fileName);
    }

    @Override
    public Answer answer(Question question) {
        Map<String, JsonNode> given = new LinkedHashMap<>(question.given());
        JsonNode dimensions = given.getOrDefault("dimensions", Json.object());
        Matcher columns = COLUMNS.matcher(dimensions.path("u").asText());
        if (!columns.matches()) {
            return Answer.notCovered("dimensions are not given by name, sign, nominal, upper, lower");
        }
        ObjectNode plain = Json.object();
        ArrayNode rows = plain.putArray("v");
        for (JsonNode row : dimensions.path("v")) {
            ArrayNode one = rows.addArray();
            for (int k = 1; k < row.size(); k++) {
                one.add(row.get(k));
            }
        }
        String unit = columns.group(1);
        plain.put("u", "-," + unit + "," + unit + "," + unit);
        given.put("dimensions", plain);
        return stack.answer(new Question(given, question.borrowed(), question.asked()));
    }
}
