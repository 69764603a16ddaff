package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.UncertaintyTopic;
import fayline.basis.units.UnitOfMeasure;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Measurements with their uncertainties: the words of a table are put as a budget to the topic {@code uncertainty}. A table names
 * its parts by words and leaves the model of the measurement to its source; the models that are known stand here.
 */
final class BudgetSubject implements Subject {
    private static final List<Measurement> KNOWN = List.of(
            // A gauge compared with a standard of known length; both grow with the temperature (JCGM 100, H.1).
            new Measurement(
                    "standard_length",
                    Map.of("length", "l", "u", "u(l)"),
                    Map.of("component_temperature_difference", "dt", "component_expansion_difference", "da"),
                    Map.of("l", "ls + d - ls*(da*theta + alpha*dt)"),
                    Map.of(
                            "ls",
                            "standard_length",
                            "d",
                            "difference",
                            "alpha",
                            "expansion",
                            "theta",
                            "mean_temperature_deviation"),
                    List.of("da", "dt"),
                    List.of(
                            new Part("ls", "u_standard", "normal"),
                            new Part("d", "u_difference_repeat", "normal"),
                            new Part("d", "u_difference_random", "normal"),
                            new Part("d", "u_difference_systematic", "normal"),
                            new Part("alpha", "expansion_half_width_rectangular", "rectangular"),
                            new Part("da", "expansion_difference_half_width_rectangular", "rectangular"),
                            new Part("dt", "temperature_difference_half_width_rectangular", "rectangular"),
                            new Part("theta", "u_mean_temperature", "normal"),
                            new Part("theta", "cyclic_amplitude_arcsine", "arcsine")),
                    Map.of(),
                    Map.of("l", "m"),
                    Map.of()),
            // A resistance and a reactance from voltage, current and phase (JCGM 100, H.2).
            new Measurement(
                    "phi",
                    Map.of("R", "R", "X", "X", "Z", "Z", "u_R", "u(R)", "u_X", "u(X)", "u_Z", "u(Z)"),
                    Map.of(),
                    Map.of("R", "V*cos(phi)/I", "X", "V*sin(phi)/I", "Z", "V/I"),
                    Map.of("V", "V", "I", "I", "phi", "phi"),
                    List.of(),
                    List.of(
                            new Part("V", "u_V", "normal"),
                            new Part("I", "u_I", "normal"),
                            new Part("phi", "u_phi", "normal")),
                    Map.of("r_V_I", List.of("V", "I"), "r_V_phi", List.of("V", "phi"), "r_I_phi", List.of("I", "phi")),
                    Map.of("R", "ohm", "X", "ohm", "Z", "ohm"),
                    Map.of("r_R_X", List.of("R", "X"), "r_R_Z", List.of("R", "Z"), "r_X_Z", List.of("X", "Z"))));

    @Override
    public boolean isOf(String fileName) {
        return "uncertainty".equals(fileName);
    }

    @Override
    public Answer answer(Question question) {
        for (Measurement m : KNOWN) {
            if (question.given().containsKey(m.mark())) {
                try {
                    return m.answer(question);
                } catch (CalcInputException e) {
                    return Answer.notCovered(String.valueOf(e.getMessage()));
                }
            }
        }
        return Answer.notCovered("no measurement here has these parts");
    }

    /** A part of an input's uncertainty: the input, the table's word, how it is spread. */
    private record Part(String input, String word, String distribution) {}

    /**
     * A measurement.
     *
     * @param mark the word by which it is known
     * @param asked words for results: a name, or u(name)
     * @param components words for what an input brings to the first result
     * @param formulas of the results
     * @param values the words of the inputs' values
     * @param zeros inputs whose best value is zero
     * @param parts of the inputs' uncertainties
     * @param together words for correlations of inputs
     * @param units of the results
     * @param going words for correlations of results
     */
    private record Measurement(
            String mark,
            Map<String, String> asked,
            Map<String, String> components,
            Map<String, String> formulas,
            Map<String, String> values,
            List<String> zeros,
            List<Part> parts,
            Map<String, List<String>> together,
            Map<String, String> units,
            Map<String, List<String>> going) {
        Answer answer(Question question) {
            List<String> results = formulas.keySet().stream().sorted().toList();
            ObjectNode out =
                    new UncertaintyTopic().answer(inputs(question, results)).outputs();
            Map<String, Reckoned> values = new LinkedHashMap<>();
            for (String word : question.asked()) {
                Optional<Reckoned> r = found(word, out, results);
                if (r.isEmpty()) {
                    return Answer.notCovered("this measurement does not tell " + word);
                }
                values.put(word, r.get());
            }
            return new Answer(values, "");
        }

        private Optional<Reckoned> found(String word, ObjectNode out, List<String> results) {
            if (going.containsKey(word)) {
                List<Integer> at = going.getOrDefault(word, List.of()).stream()
                        .map(results::indexOf)
                        .toList();
                double r =
                        out.path("correlations").path(at.get(0)).path(at.get(1)).doubleValue();
                return Optional.of(new Reckoned(r, UnitOfMeasure.ONE));
            }
            if (components.containsKey(word)) {
                JsonNode first = out.path("results").path(0);
                return Optional.of(new Reckoned(
                        first.path("components")
                                .path(components.getOrDefault(word, ""))
                                .doubleValue(),
                        unit(results.get(0))));
            }
            String name = asked.getOrDefault(word, "");
            boolean u = name.startsWith("u(");
            String result = u ? name.substring(2, name.length() - 1) : name;
            if (!results.contains(result)) {
                return Optional.empty();
            }
            JsonNode n = out.path("results").path(results.indexOf(result));
            return Optional.of(
                    new Reckoned(n.path(u ? "standardUncertainty" : "value").doubleValue(), unit(result)));
        }

        private UnitOfMeasure unit(String result) {
            return UnitOfMeasure.parse(units.getOrDefault(result, "-")).orElse(UnitOfMeasure.ONE);
        }

        private ObjectNode inputs(Question question, List<String> results) {
            ObjectNode in = Json.object();
            ArrayNode inputs = in.putArray("inputs");
            values.keySet().stream()
                    .sorted()
                    .forEach(name -> input(inputs, question, name, number(question, values.getOrDefault(name, ""))));
            zeros.forEach(name -> input(inputs, question, name, 0));
            ArrayNode correlations = in.putArray("correlations");
            together.forEach((word, pair) -> {
                if (question.given().containsKey(word)) {
                    correlations
                            .addObject()
                            .put("one", pair.get(0))
                            .put("other", pair.get(1))
                            .put("coefficient", number(question, word));
                }
            });
            ArrayNode asks = in.putArray("results");
            results.forEach(r -> asks.addObject().put("name", r).put("formula", formulas.get(r)));
            return in;
        }

        private void input(ArrayNode inputs, Question question, String name, double value) {
            ObjectNode n = inputs.addObject().put("name", name).put("value", value);
            ArrayNode list = n.putArray("parts");
            for (Part p : parts) {
                if (p.input().equals(name) && question.given().containsKey(p.word())) {
                    list.addObject()
                            .put("distribution", p.distribution())
                            .put("normal".equals(p.distribution()) ? "std" : "halfWidth", number(question, p.word()));
                }
            }
        }

        private static double number(Question question, String word) {
            JsonNode q = question.given().getOrDefault(word, Json.object());
            Optional<UnitOfMeasure> unit = UnitOfMeasure.parse(q.path("u").asText("-"));
            if (!q.path("v").isNumber() || unit.isEmpty()) {
                throw CalcInputException.of(word, Json.shown(q), "a number with a unit");
            }
            // Temperatures here are differences; none of the units has a zero of its own that matters.
            return unit.get().ofDifferences().toSi(q.path("v").doubleValue());
        }
    }
}
