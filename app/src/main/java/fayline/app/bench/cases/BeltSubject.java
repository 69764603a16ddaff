package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.app.usecase.calc.Json;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Belt drives; where a table asks what changes between two driven pulleys, they are the old one and the new one. */
final class BeltSubject implements Subject {
    private static final String CHANGE = "change";
    private static final String DRIVEN = "driven_teeth";
    private final TopicSubject topic;

    BeltSubject(TopicSubject topic) {
        this.topic = topic;
    }

    @Override
    public boolean isOf(String fileName) {
        return topic.isOf(fileName);
    }

    @Override
    public Answer answer(Question question) {
        JsonNode teeth = question.given().getOrDefault(DRIVEN, Json.object()).path("v");
        if (!question.asked().contains(CHANGE) || teeth.size() != 2) {
            return topic.answer(question);
        }
        List<String> others =
                question.asked().stream().filter(w -> !w.equals(CHANGE)).toList();
        Answer each = topic.answer(new Question(question.given(), question.borrowed(), others));
        Map<String, JsonNode> pair = new LinkedHashMap<>(question.given());
        pair.remove(DRIVEN);
        pair.put("driven_old", Json.object().put("u", "-").set("v", teeth.get(0)));
        pair.put("driven_new", Json.object().put("u", "-").set("v", teeth.get(1)));
        Answer change = topic.answer(new Question(pair, question.borrowed(), List.of(CHANGE)));
        if (!each.why().isEmpty() || !change.why().isEmpty()) {
            return Answer.notCovered(each.why().isEmpty() ? change.why() : each.why());
        }
        Map<String, Reckoned> values = new LinkedHashMap<>(each.values());
        values.putAll(change.values());
        return new Answer(values, "");
    }
}
