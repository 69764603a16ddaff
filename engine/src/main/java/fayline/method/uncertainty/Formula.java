package fayline.method.uncertainty;

import java.util.List;

/**
 * How a result follows from named inputs, written as a formula: numbers and names with + - * / and brackets, and the functions
 * sin, cos, tan (of radians) and sqrt.
 */
public final class Formula {
    private final String text;
    private final List<String> names;
    private final Node root;

    private Formula(String text, List<String> names, Node root) {
        this.text = text;
        this.names = names;
        this.root = root;
    }

    /**
     * Reads a formula.
     *
     * @param text as {@code X1 + 2*X2 - X3}
     * @param names the inputs it may use, in the order in which their values will be given
     * @throws IllegalArgumentException saying at which character it cannot be read, or which name is unknown
     */
    public static Formula read(String text, List<String> names) {
        List<String> copy = List.copyOf(names);
        return new Formula(text, copy, new FormulaReader(text, copy).whole());
    }

    /** The sum of all inputs. */
    public static Formula sum(List<String> names) {
        return read(String.join(" + ", names), names);
    }

    /** As it was written. */
    public String text() {
        return text;
    }

    /** The inputs it may use. */
    public List<String> names() {
        return names;
    }

    /**
     * The result.
     *
     * @param values of the inputs, in the order of the names
     * @throws IllegalArgumentException if there are not as many values as names
     */
    public double at(List<Double> values) {
        if (values.size() != names.size()) {
            throw new IllegalArgumentException(values.size() + " values for " + names.size() + " names");
        }
        return at(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    double at(double[] values) {
        return root.at(values);
    }

    /** Part of a formula. */
    @FunctionalInterface
    interface Node {
        double at(double[] values);
    }
}
