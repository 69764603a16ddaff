package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.app.usecase.calc.Json;
import java.util.LinkedHashMap;
import java.util.Map;

/** Rigid lines; a tube's number comes with the words {@code sixteenths inch}, which say what it counts. */
final class TubeSubject implements Subject {
    private static final String NUMBER = "dash_number";
    private final TopicSubject topic;

    TubeSubject(TopicSubject topic) {
        this.topic = topic;
    }

    @Override
    public boolean isOf(String fileName) {
        return topic.isOf(fileName);
    }

    @Override
    public Answer answer(Question question) {
        Map<String, JsonNode> given = new LinkedHashMap<>(question.given());
        if (given.containsKey(NUMBER)) {
            JsonNode plain =
                    Json.object().put("u", "-").set("v", given.get(NUMBER).path("v"));
            given.put(NUMBER, plain);
        }
        return topic.answer(new Question(given, question.borrowed(), question.asked()));
    }
}
