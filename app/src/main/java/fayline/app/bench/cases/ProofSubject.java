package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.ProofTopic;
import fayline.basis.units.UnitOfMeasure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Trees of hashes: the words of the tables put to the topic {@code proof}. */
final class ProofSubject implements Subject {
    @Override
    public boolean isOf(String fileName) {
        return "merkle".equals(fileName);
    }

    @Override
    public Answer answer(Question question) {
        ObjectNode in = Json.object();
        in.set("leaves", given(question, "leaves_hex"));
        if (question.given().containsKey("sizes")) {
            in.set("sizes", given(question, "sizes"));
        }
        if (question.given().containsKey("leaf_from_zero")) {
            ArrayNode pairs = in.putArray("inclusion");
            for (int i = 0; i < given(question, "size").size(); i++) {
                ObjectNode pair = pairs.addObject();
                pair.set("leaf", given(question, "leaf_from_zero").path(i));
                pair.set("size", given(question, "size").path(i));
            }
        }
        if (question.given().containsKey("second")) {
            ObjectNode growth = in.putArray("consistency").addObject();
            growth.set("first", given(question, "first"));
            growth.set("second", given(question, "second"));
        }
        try {
            return told(new ProofTopic().answer(in).outputs(), question);
        } catch (CalcInputException e) {
            return Answer.notCovered(String.valueOf(e.getMessage()));
        }
    }

    private static Answer told(ObjectNode out, Question question) {
        Map<String, Reckoned> values = new LinkedHashMap<>();
        for (String word : question.asked()) {
            JsonNode found = switch (word) {
                case "roots" -> out.path("roots");
                case "proofs" -> out.path("inclusion");
                case "proof" -> out.path("consistency").path(0);
                default -> out.path("none");
            };
            if (!found.isArray()) {
                return Answer.notCovered("proof does not tell " + word);
            }
            values.put(word, new Reckoned(texts(found), UnitOfMeasure.ONE));
        }
        return new Answer(values, "");
    }

    private static JsonNode given(Question question, String name) {
        return question.given().getOrDefault(name, Json.object()).path("v");
    }

    private static List<Object> texts(JsonNode list) {
        List<Object> all = new ArrayList<>();
        list.forEach(n -> all.add(n.isArray() ? texts(n) : n.asText()));
        return all;
    }
}
