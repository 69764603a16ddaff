package fayline.app.usecase.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import fayline.basis.finding.InputProblem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** A topic made of terms and the relations between them: it answers whatever follows from what is given. */
public final class RelationTopic implements CalcTopic {
    private final String name;
    private final String about;
    private final Map<String, Term> terms = new LinkedHashMap<>();
    private final List<Relation> relations;

    /**
     * Makes a topic.
     *
     * @param name its name
     * @param about what it answers, in one sentence
     * @param terms every term of its relations
     * @param relations the relations, the better way to a term before the coarser one
     */
    public RelationTopic(String name, String about, List<Term> terms, List<Relation> relations) {
        this.name = name;
        this.about = about;
        this.relations = List.copyOf(relations);
        terms.forEach(t -> this.terms.putIfAbsent(t.name(), t));
        for (Relation r : relations) {
            Set<String> names = new LinkedHashSet<>(r.needs());
            names.addAll(r.uses());
            names.add(r.gives());
            names.removeAll(this.terms.keySet());
            if (!names.isEmpty()) {
                throw new IllegalArgumentException(name + " has no terms " + names);
            }
        }
    }

    /** One topic with the terms and relations of several; a term that two have is that of the first. */
    public static RelationTopic joined(String name, List<RelationTopic> topics) {
        return new RelationTopic(
                name,
                "",
                topics.stream().flatMap(t -> t.terms.values().stream()).toList(),
                topics.stream().flatMap(t -> t.relations.stream()).toList());
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String about() {
        return about;
    }

    /** The terms by name, in the topic's order. */
    public Map<String, Term> terms() {
        return Collections.unmodifiableMap(terms);
    }

    @Override
    public ObjectNode schema() {
        return new TopicSchema(name, about, inputTerms(), relations).toJson();
    }

    private List<Term> inputTerms() {
        Set<String> inputs = new LinkedHashSet<>();
        relations.forEach(r -> {
            inputs.addAll(r.needs());
            inputs.addAll(r.uses());
        });
        return terms.values().stream().filter(t -> inputs.contains(t.name())).toList();
    }

    /**
     * Begins a reckoning.
     *
     * @param inputs the given terms as JSON
     * @return the reckoning, ready to be asked for terms
     * @throws CalcInputException if a field is unknown or cannot be read
     */
    public Reckoning reckon(JsonNode inputs) {
        if (!inputs.isObject()) {
            throw CalcInputException.of("inputs", Json.shown(inputs), "one JSON object");
        }
        List<InputProblem> problems = new ArrayList<>();
        TermReader reader = new TermReader(problems);
        Map<String, Object> given = new LinkedHashMap<>();
        Set<String> fields =
                new LinkedHashSet<>(inputTerms().stream().map(Term::name).toList());
        for (Map.Entry<String, JsonNode> e : inputs.properties()) {
            Term term = terms.get(e.getKey());
            if (term == null || !fields.contains(e.getKey())) {
                problems.add(CalcInputException.problem(
                        e.getKey(), "an unknown field", "one of " + String.join(", ", fields), ""));
            } else {
                reader.read(term, e.getValue()).ifPresent(v -> given.put(e.getKey(), v));
            }
        }
        if (!problems.isEmpty()) {
            throw new CalcInputException(problems);
        }
        return new Reckoning(terms, relations, given);
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        Reckoning reckoning = reckon(inputs);
        ObjectNode outputs = Json.object();
        Map<String, String> units = new TreeMap<>();
        boolean saysNo = false;
        Set<String> outs =
                new LinkedHashSet<>(relations.stream().map(Relation::gives).toList());
        for (String out : outs) {
            if (inputs.has(out)) {
                continue;
            }
            Optional<Object> v = reckoning.value(out);
            if (v.isPresent()) {
                Term t = terms.getOrDefault(out, Term.text(out, ""));
                saysNo |= write(outputs, units, t, v.get());
            }
        }
        if (outputs.isEmpty()) {
            throw nothingFollows(reckoning, inputs);
        }
        List<String> cautions = new ArrayList<>(reckoning.cautions());
        new TreeMap<>(reckoning.notCovered()).forEach((term, why) -> cautions.add(term + " is not covered: " + why));
        reckoning.unused().forEach(u -> cautions.add(u + " was given and is not used"));
        return new CalcAnswer(outputs, units, reckoning.methods(), reckoning.sources(), cautions, saysNo);
    }

    /** Writes one output; returns whether it says no. */
    private static boolean write(ObjectNode outputs, Map<String, String> units, Term t, Object v) {
        if (!t.units().isEmpty() && !t.isPlain()) {
            units.put(t.name(), t.unit().text());
        }
        outputs.set(t.name(), node(t, v, 0));
        return v instanceof List<?> items ? items.contains(false) : Boolean.FALSE.equals(v);
    }

    private static JsonNode node(Term t, Object v, int column) {
        if (v instanceof List<?> items) {
            ArrayNode array = Json.array();
            for (int i = 0; i < items.size(); i++) {
                array.add(node(t, items.get(i), Math.min(i, t.units().size() - 1)));
            }
            return array;
        }
        if (v instanceof Boolean truth) {
            return BooleanNode.valueOf(truth);
        }
        if (v instanceof String word) {
            return TextNode.valueOf(word);
        }
        return t.shape() == Term.Shape.COUNT
                ? LongNode.valueOf(Math.round((Double) v))
                : DoubleNode.valueOf(t.units().get(Math.max(0, column)).fromSi((Double) v));
    }

    private CalcInputException nothingFollows(Reckoning reckoning, JsonNode inputs) {
        if (!reckoning.notCovered().isEmpty()) {
            List<InputProblem> problems = new ArrayList<>();
            new TreeMap<>(reckoning.notCovered())
                    .forEach((term, why) ->
                            problems.add(CalcInputException.problem(term, why, "inputs the method covers", "")));
            return new CalcInputException(problems);
        }
        List<String> ways = new ArrayList<>();
        for (Relation r : relations) {
            ways.add(r.gives() + " from " + String.join(", ", r.needs()));
        }
        return CalcInputException.of(
                "inputs",
                inputs.isEmpty() ? "no fields" : "only " + String.join(", ", (Iterable<String>) inputs::fieldNames),
                "enough for one of: " + String.join("; ", ways));
    }
}
