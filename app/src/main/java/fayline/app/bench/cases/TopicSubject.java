package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.Reckoning;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.UnitOfMeasure;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A subject answered by topics of named terms. A word of the tables is a term of the topic written with capitals instead of
 * underscores, unless the {@link Vocabulary} says otherwise.
 */
final class TopicSubject implements Subject {
    private static final Pattern OVER_TIME = Pattern.compile(".* in (\\d+(?:\\.\\d+)?) (\\S+)");

    /** A pressure has the second to the power -2; a pressure over a time has -3. */
    private static final int PRESSURE_TIME = -2;

    private final Vocabulary words;
    private final RelationTopic topic;

    TopicSubject(Vocabulary words, List<RelationTopic> topics) {
        this.words = words;
        this.topic = RelationTopic.joined(words.file(), topics);
    }

    @Override
    public boolean isOf(String fileName) {
        return words.file().equals(fileName);
    }

    /** Whether every word given and asked is one of this subject's. */
    boolean knows(Question question) {
        return question.given().keySet().stream()
                        .allMatch(w ->
                                words.given(w).map(topic.terms()::containsKey).orElse(true))
                && question.asked().stream()
                        .allMatch(w -> topic.terms().containsKey(words.asked(w).term()));
    }

    @Override
    public Answer answer(Question question) {
        Map<String, Reckoned> values = new LinkedHashMap<>();
        for (String asked : question.asked()) {
            Vocabulary.Asked a = words.asked(asked);
            Term term = topic.terms().get(a.term());
            if (term == null) {
                return Answer.notCovered("no topic answers " + asked);
            }
            try {
                Optional<Object> v = reckon(question, a);
                if (v.isEmpty()) {
                    return Answer.notCovered(asked + " does not follow from what is given");
                }
                values.put(asked, new Reckoned(v.get(), term.units().isEmpty() ? UnitOfMeasure.ONE : term.unit()));
            } catch (CalcInputException e) {
                return Answer.notCovered(String.valueOf(e.getMessage()));
            }
        }
        return new Answer(values, "");
    }

    /** A limit over a time is given as a rate; a test that names no time of its own takes the limit's. */
    private void overTime(ObjectNode inputs, String limitWord, String timeWord) {
        String limit = words.given(limitWord).orElse(limitWord);
        String time = words.given(timeWord).orElse(timeWord);
        if (!inputs.has(limit)) {
            return;
        }
        String unit = inputs.path(limit).path("u").asText("");
        Matcher m = OVER_TIME.matcher(unit);
        if (m.matches() && !inputs.has(time)) {
            inputs.putObject(time).put("v", Double.parseDouble(m.group(1))).put("u", m.group(2));
        } else if (!m.matches() && inputs.path(time).path("v").isNumber() && !isRate(unit)) {
            JsonNode span = inputs.path(time);
            ObjectNode rate = Json.object();
            rate.set("v", inputs.path(limit).path("v"));
            rate.put(
                    "u",
                    unit + "/(" + span.path("v").asText() + " " + span.path("u").asText() + ")");
            inputs.set(limit, rate);
        }
    }

    private static boolean isRate(String unit) {
        return UnitOfMeasure.parse(unit)
                .map(u -> u.dimension().time() != PRESSURE_TIME)
                .orElse(true);
    }

    private Optional<Object> reckon(Question question, Vocabulary.Asked asked) {
        ObjectNode inputs = Json.object();
        Map<String, String> taken = new HashMap<>();
        for (Map<String, JsonNode> source : List.of(question.given(), question.borrowed())) {
            for (Map.Entry<String, JsonNode> e : source.entrySet()) {
                Optional<String> term = words.given(e.getKey());
                if (term.isPresent()) {
                    String earlier = taken.putIfAbsent(term.get(), e.getKey());
                    if (earlier == null) {
                        inputs.set(term.get(), e.getValue());
                    }
                }
            }
        }
        words.overTime().forEach((limit, time) -> overTime(inputs, limit, time));
        Set<String> together = Set.copyOf(question.asked());
        words.choices().forEach((word, choice) -> {
            if (together.contains(word)) {
                inputs.set(choice.term(), choice.value());
            }
        });
        // What is asked must be reckoned, never be handed back.
        inputs.remove(asked.term());
        asked.further().forEach(inputs::set);
        Reckoning reckoning = topic.reckon(inputs);
        Optional<Object> v = reckoning.value(asked.term());
        if (v.isEmpty() && reckoning.notCovered().containsKey(asked.term())) {
            throw CalcInputException.of(
                    asked.term(), reckoning.notCovered().getOrDefault(asked.term(), ""), "inputs the method covers");
        }
        return v;
    }
}
