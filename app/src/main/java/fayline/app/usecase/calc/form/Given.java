package fayline.app.usecase.calc.form;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** One object that a {@link Form} found to be in order, ready to be read. */
public final class Given {
    private final JsonNode node;

    Given(JsonNode node) {
        this.node = node;
    }

    /** Whether a field is there and not null. */
    public boolean has(String name) {
        return node.hasNonNull(name);
    }

    /** A number. */
    public double number(String name) {
        return node.path(name).doubleValue();
    }

    /** A number, or another where it is not given. */
    public double number(String name, double otherwise) {
        return has(name) ? number(name) : otherwise;
    }

    /** A number where it is given. */
    public OptionalDouble maybe(String name) {
        return has(name) ? OptionalDouble.of(number(name)) : OptionalDouble.empty();
    }

    /** A quantity in SI, of a field read as {@link Kind#quantity}. */
    public double si(String name, String unit) {
        return Quantities.si(node.path(name), unit)
                .orElseThrow(() -> new IllegalArgumentException(name + " is no quantity in " + unit));
    }

    /** A quantity in SI, or another where it is not given. */
    public double si(String name, String unit, double otherwise) {
        return has(name) ? si(name, unit) : otherwise;
    }

    /** Quantities in SI, of a field read as {@link Kind#quantities}; none where it is not given. */
    public List<Double> siList(String name, String unit) {
        return has(name) ? Quantities.list(node.path(name), unit).orElse(List.of()) : List.of();
    }

    /** A whole number. */
    public int whole(String name) {
        return node.path(name).intValue();
    }

    /** A text. */
    public String text(String name) {
        return node.path(name).asText();
    }

    /** A text, or another where it is not given. */
    public String text(String name, String otherwise) {
        return has(name) ? text(name) : otherwise;
    }

    /** True only where it is given and true. */
    public boolean isTrue(String name) {
        return node.path(name).booleanValue();
    }

    /** Numbers; none where the field is not given. */
    public List<Double> numbers(String name) {
        List<Double> all = new ArrayList<>();
        node.path(name).forEach(n -> all.add(n.doubleValue()));
        return List.copyOf(all);
    }

    /** Rows of numbers; none where the field is not given. */
    public List<List<Double>> rows(String name) {
        List<List<Double>> all = new ArrayList<>();
        node.path(name).forEach(row -> {
            List<Double> one = new ArrayList<>();
            row.forEach(n -> one.add(n.doubleValue()));
            all.add(List.copyOf(one));
        });
        return List.copyOf(all);
    }

    /** Texts; none where the field is not given. */
    public List<String> texts(String name) {
        List<String> all = new ArrayList<>();
        node.path(name).forEach(n -> all.add(n.asText()));
        return List.copyOf(all);
    }

    /** An object. */
    public Given object(String name) {
        return new Given(node.path(name));
    }

    /** An object where it is given. */
    public Optional<Given> maybeObject(String name) {
        return has(name) ? Optional.of(object(name)) : Optional.empty();
    }

    /** Objects; none where the field is not given. */
    public List<Given> objects(String name) {
        List<Given> all = new ArrayList<>();
        node.path(name).forEach(n -> all.add(new Given(n)));
        return List.copyOf(all);
    }

    /** The objects of a field whose keys are the asker's own, in their order. */
    public Map<String, Given> named(String name) {
        Map<String, Given> all = new LinkedHashMap<>();
        node.path(name).properties().forEach(e -> all.put(e.getKey(), new Given(e.getValue())));
        return all;
    }

    /** The JSON of a field, for what no other method here reads. */
    public JsonNode json(String name) {
        return node.path(name);
    }
}
