package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of one table and the terms they stand for.
 *
 * @param file the name of the table's file
 * @param terms words whose term is not just the word with capitals for underscores
 * @param passedOver words that name or describe and say nothing to reckon with
 * @param patterns asked words that carry a number in their name, as {@code time_at_alpha_0p3}
 * @param choices what is chosen because a word is asked
 * @param overTime words whose unit says over what time they hold ({@code inHg in 5 min}), and the word of that time: where the
 *     one is left out the other tells it
 */
record Vocabulary(
        String file,
        Map<String, String> terms,
        Set<String> passedOver,
        Map<Pattern, NumberInName> patterns,
        Map<String, Choice> choices,
        Map<String, String> overTime) {
    Vocabulary {
        terms = Map.copyOf(terms);
        passedOver = Set.copyOf(passedOver);
        patterns = Map.copyOf(patterns);
        choices = Map.copyOf(choices);
        overTime = Map.copyOf(overTime);
    }

    /** The term of a given word; empty if the word is passed over. */
    Optional<String> given(String word) {
        return passedOver.contains(word) ? Optional.empty() : Optional.of(terms.getOrDefault(word, capitals(word)));
    }

    /** The term of an asked word. */
    Asked asked(String word) {
        for (Map.Entry<Pattern, NumberInName> p : patterns.entrySet()) {
            Matcher m = p.getKey().matcher(word);
            if (m.matches()) {
                double number = Double.parseDouble(m.group(1).replace('p', '.'));
                JsonNode value = fayline.app.usecase.calc.Json.object()
                        .put("v", number)
                        .put("u", p.getValue().unit());
                return new Asked(p.getValue().term(), Map.of(p.getValue().field(), value));
            }
        }
        return new Asked(terms.getOrDefault(word, capitals(word)), Map.of());
    }

    private static String capitals(String word) {
        StringBuilder s = new StringBuilder();
        for (String part : word.split("_")) {
            s.append(
                    s.length() == 0 || part.isEmpty()
                            ? part
                            : part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1));
        }
        return s.toString();
    }

    /**
     * An asked word as a topic understands it.
     *
     * @param term the term
     * @param further inputs that the word itself carries
     */
    record Asked(String term, Map<String, JsonNode> further) {
        Asked {
            further = Map.copyOf(further);
        }
    }

    /**
     * A number that stands in a word.
     *
     * @param term the term asked
     * @param field the input that the number is
     * @param unit its unit
     */
    record NumberInName(String term, String field, String unit) {}

    /**
     * An input chosen because something is asked.
     *
     * @param term the input
     * @param value its value
     */
    record Choice(String term, JsonNode value) {}
}
