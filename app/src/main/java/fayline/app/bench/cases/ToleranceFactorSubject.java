package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.topic.Topics;
import fayline.basis.units.UnitOfMeasure;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tolerance factors and the bounds that follow; bounds come in the unit of the sample, which the topic reckons without. */
final class ToleranceFactorSubject implements Subject {
    private static final Pattern AT_PERCENT = Pattern.compile("k_(\\d+)");

    @Override
    public boolean isOf(String fileName) {
        return "tolerance_factors".equals(fileName);
    }

    @Override
    public Answer answer(Question question) {
        RelationTopic topic = Topics.ofTerms("allowable");
        Map<String, Reckoned> found = new LinkedHashMap<>();
        for (String word : question.asked()) {
            ObjectNode in = Json.object();
            for (String same : new String[] {"n", "proportion", "confidence", "sides"}) {
                Optional.ofNullable(question.given().get(same)).ifPresent(q -> in.set(same, q.path("v")));
            }
            JsonNode mean = question.given().getOrDefault("mean", Json.object());
            if (mean.has("v")) {
                in.set("mid", mean.path("v"));
                in.set(
                        "spread",
                        question.given().getOrDefault("sd", Json.object()).path("v"));
            }
            try {
                String term = term(word, in);
                Optional<Object> v = topic.reckon(in).value(term);
                if (v.isEmpty()) {
                    return Answer.notCovered(word + " does not follow from what is given");
                }
                found.put(
                        word,
                        inUnit(
                                v.get(),
                                word.startsWith("k") ? "-" : mean.path("u").asText("-")));
            } catch (CalcInputException e) {
                return Answer.notCovered(word + ": " + e.getMessage());
            }
        }
        return new Answer(found, "");
    }

    private static Reckoned inUnit(Object value, String unit) {
        UnitOfMeasure u = UnitOfMeasure.parse(unit).orElse(UnitOfMeasure.ONE);
        return new Reckoned(value instanceof Double number ? (Object) u.toSi(number) : value, u);
    }

    /** The term of a word; what the word says besides goes into the inputs. */
    private static String term(String word, ObjectNode in) {
        Matcher m = AT_PERCENT.matcher(word);
        if (m.matches()) {
            in.put("proportion", Integer.parseInt(m.group(1)) / 100.0);
            return "factor";
        }
        return switch (word) {
            case "k" -> "factor";
            case "k1_natrella" -> "factorNatrella";
            case "k2_howe" -> "factorHowe";
            case "upper", "upper_one_sided" -> "upper";
            // The handbook's printed two-sided bounds are those of its approximation; the exact ones lie 0.0002 farther
            // out.
            case "lower_two_sided" -> "lowerHowe";
            case "upper_two_sided" -> "upperHowe";
            default -> word;
        };
    }
}
