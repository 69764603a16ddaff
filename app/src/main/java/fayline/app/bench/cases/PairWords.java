package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import fayline.app.bench.cases.Subject.Answer;
import fayline.app.bench.cases.Subject.Reckoned;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.Reckoning;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.app.usecase.calc.topic.Topics;
import fayline.basis.units.UnitOfMeasure;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A subject of pairs answered by a topic of named terms.
 *
 * @param topic the topic
 * @param given the term of each given name; several parted by blanks
 * @param passedOver given names that say nothing to reckon with
 * @param asked the term of each asked name; a sign {@code =} parts a term from what is chosen because it is asked, as
 *     {@code pressure height=geometric}
 * @param titles what words of a title say, written {@code term=value}
 * @param values words of the tables that the topic says otherwise
 */
record PairWords(
        String topic,
        Map<String, String> given,
        Set<String> passedOver,
        Map<String, String> asked,
        Map<String, String> titles,
        Map<String, String> values)
        implements PairSubject {
    PairWords {
        given = Map.copyOf(given);
        passedOver = Set.copyOf(passedOver);
        asked = Map.copyOf(asked);
        titles = Map.copyOf(titles);
        values = Map.copyOf(values);
    }

    @Override
    public boolean knows(PairQuestion question) {
        Set<String> names = new LinkedHashSet<>(question.given().keySet());
        names.removeAll(passedOver);
        return given.keySet().containsAll(names) && asked.keySet().containsAll(question.asked());
    }

    @Override
    public Answer answer(PairQuestion question) {
        RelationTopic reckons = Topics.ofTerms(topic);
        Map<String, Reckoned> found = new LinkedHashMap<>();
        for (String name : question.asked()) {
            String[] parts = asked.getOrDefault(name, "").split(" ");
            ObjectNode inputs = inputs(question);
            for (int i = 1; i < parts.length; i++) {
                put(inputs, parts[i]);
            }
            try {
                Reckoning reckoning = reckons.reckon(inputs);
                Optional<Object> v = reckoning.value(parts[0]);
                if (v.isEmpty()) {
                    return Answer.notCovered(name + ": "
                            + reckoning.notCovered().getOrDefault(parts[0], "does not follow from what is given"));
                }
                Term term = reckons.terms().getOrDefault(parts[0], Term.text(parts[0], ""));
                found.put(name, new Reckoned(v.get(), term.units().isEmpty() ? UnitOfMeasure.ONE : term.unit()));
            } catch (CalcInputException e) {
                return Answer.notCovered(name + ": " + e.getMessage());
            }
        }
        return new Answer(found, "");
    }

    private ObjectNode inputs(PairQuestion question) {
        ObjectNode inputs = Json.object();
        titles.forEach((words, says) -> {
            if (question.title().toLowerCase(java.util.Locale.ROOT).contains(words)) {
                put(inputs, says);
            }
        });
        question.given().forEach((name, pair) -> {
            String term = given.get(name);
            if (term != null && !"-".equals(pair.text())) {
                JsonNode n = PairQuestion.node(pair);
                JsonNode said = n.isTextual() ? TextNode.valueOf(values.getOrDefault(n.asText(), n.asText())) : n;
                for (String one : term.split(" ")) {
                    inputs.set(one, said);
                }
            }
        });
        return inputs;
    }

    private static void put(ObjectNode inputs, String says) {
        String[] parts = says.split("=");
        inputs.put(parts[0], parts[1]);
    }
}
