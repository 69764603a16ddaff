package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.bench.cases.PairLayout.Pair;
import fayline.app.bench.cases.Subject.Answer;
import fayline.app.bench.cases.Subject.Reckoned;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.Topics;
import fayline.basis.units.UnitOfMeasure;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A subject of pairs that asks a topic by a form: which words it knows, how a stack is written, how an answer is found. */
abstract class FormPairs implements PairSubject {
    private static final List<String> ELASTIC = List.of("E1", "E2", "G12", "nu12", "alpha1", "alpha2");
    private static final List<String> STRENGTHS = List.of("XT", "XC", "YT", "YC", "S");

    private final String topic;
    private final Pattern given;
    private final Pattern asked;

    FormPairs(String topic, String given, String asked) {
        this.topic = topic;
        this.given = Pattern.compile(given);
        this.asked = Pattern.compile(asked);
    }

    @Override
    public boolean knows(PairQuestion question) {
        return question.given().keySet().stream().allMatch(n -> given.matcher(n).matches())
                && question.asked().stream().allMatch(n -> asked.matcher(n).matches());
    }

    @Override
    public Answer answer(PairQuestion question) {
        Map<String, Reckoned> values = new LinkedHashMap<>();
        try {
            for (String name : question.asked()) {
                Optional<Reckoned> found = found(question, name);
                if (found.isEmpty()) {
                    return Answer.notCovered(topic + " does not tell " + name);
                }
                values.put(name, found.get());
            }
        } catch (CalcInputException e) {
            return Answer.notCovered(String.valueOf(e.getMessage()));
        }
        return new Answer(values, "");
    }

    /** What is asked by a name. */
    abstract Optional<Reckoned> found(PairQuestion question, String name);

    final JsonNode told(ObjectNode inputs) {
        return Topics.named(topic).answer(inputs).outputs();
    }

    /** Fields of an answer, in a unit. */
    static Optional<Reckoned> at(JsonNode told, String unit, String... paths) {
        UnitOfMeasure u = UnitOfMeasure.parse(unit).orElseThrow(() -> new IllegalArgumentException(unit));
        List<JsonNode> all = Stream.of(paths).map(told::at).toList();
        if (all.stream().anyMatch(JsonNode::isMissingNode)) {
            return Optional.empty();
        }
        List<Double> si = all.stream().map(n -> u.toSi(n.asDouble())).toList();
        return Optional.of(new Reckoned(si.size() == 1 ? si.get(0) : si, u));
    }

    /** Paths below a field. */
    static String[] below(String field, String words) {
        return Stream.of(words.trim().split(" ")).map(w -> field + "/" + w).toArray(String[]::new);
    }

    /** The materials and plies of a question, as the topics take them. */
    static ObjectNode stack(PairQuestion question) {
        ObjectNode in = Json.object();
        ObjectNode materials = in.putObject("materials");
        boolean several = question.given().containsKey("mat1.E1");
        for (int i = 1; several && question.given().containsKey("mat" + i + ".E1"); i++) {
            materials.set(String.valueOf(i), material(question, "mat" + i + "."));
        }
        if (!several) {
            materials.set("1", material(question, ""));
        }
        Pair angles = question.given().entrySet().stream()
                .filter(e -> e.getKey().startsWith("plies") || "theta".equals(e.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
        ArrayNode plies = in.putArray("plies");
        for (int k = 0; k < angles.numbers().size(); k++) {
            ObjectNode ply = plies.addObject();
            ply.put("material", several ? String.valueOf(Math.round(number(question, "ply material no.", k))) : "1");
            ply.set("angle", quantity(angles.numbers().get(k), "deg"));
            ply.set(
                    "thickness",
                    quantity(question.given().containsKey("ply t") ? number(question, "ply t", k) : 1, "mm"));
        }
        return in;
    }

    static double number(PairQuestion question, String name, int k) {
        List<Double> all = pair(question, name).numbers();
        return all.get(Math.min(k, all.size() - 1));
    }

    static Pair pair(PairQuestion question, String name) {
        return Optional.ofNullable(question.given().get(name)).orElseThrow();
    }

    static ObjectNode quantity(double v, String unit) {
        return Json.object().put("v", v).put("u", unit);
    }

    /** Takes a given pair over as a field. */
    static void take(PairQuestion question, String name, ObjectNode in, String field) {
        if (question.given().containsKey(name)) {
            in.set(field, PairQuestion.node(pair(question, name)));
        }
    }

    static ObjectNode material(PairQuestion question, String prefix) {
        ObjectNode m = Json.object();
        ELASTIC.forEach(n -> take(question, prefix + n, m, n));
        if (question.given().containsKey(prefix + "XT")) {
            ObjectNode s = m.putObject("strength");
            STRENGTHS.forEach(n -> take(question, prefix + n, s, n));
        }
        return m;
    }
}
