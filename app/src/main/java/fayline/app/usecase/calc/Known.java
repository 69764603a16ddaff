package fayline.app.usecase.calc;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** The inputs of one relation, in SI, and the place where it leaves method, source and cautions. */
public final class Known {
    private final Map<String, Object> values;
    private final Trace trace;

    Known(Map<String, Object> values, Trace trace) {
        this.values = Map.copyOf(values);
        this.trace = trace;
    }

    /** Says by what method and from what source the value comes. */
    public void by(String method, String source) {
        trace.method(method, source);
    }

    /** Takes method, source and cautions from the figure of a result. */
    public void by(Figure figure) {
        trace.method(figure.formula(), figure.source());
        figure.cautions().forEach(trace::caution);
    }

    /**
     * Takes what a result says of itself: cautions are passed on, a stop ends the reckoning of this term.
     *
     * @throws NotCoveredException if a finding is a stop
     */
    public void heed(Collection<Finding> findings) {
        for (Finding f : findings) {
            if (f.severity() == Severity.STOP) {
                throw new NotCoveredException(f.sentence());
            }
            trace.caution(f.sentence());
        }
    }

    /**
     * Takes a value from a result: where it is there, whatever the result says of itself is a caution (a stop beside a value is
     * the answer no); where it is not, the reason is the result's stop.
     *
     * @throws NotCoveredException if the value is not there
     */
    public <V> V take(Optional<V> value, Collection<Finding> findings) {
        if (value.isEmpty()) {
            throw new NotCoveredException(findings.stream()
                    .filter(f -> f.severity() == Severity.STOP)
                    .map(Finding::sentence)
                    .findFirst()
                    .orElse("the method gives no answer for these inputs"));
        }
        findings.forEach(f -> trace.caution(f.sentence()));
        return value.get();
    }

    /** Passes a caution on. */
    public void caution(String sentence) {
        trace.caution(sentence);
    }

    /** A quantity where it is known. */
    public <Q> Optional<Q> maybe(String name, DoubleFunction<Q> maker) {
        return has(name) ? Optional.of(as(name, maker)) : Optional.empty();
    }

    /** Whether an optional input is known. */
    public boolean has(String name) {
        return values.containsKey(name);
    }

    /** A number in SI. */
    public double si(String name) {
        return (Double) value(name);
    }

    /** A number in SI, or another where it is not known. */
    public double si(String name, double otherwise) {
        return has(name) ? si(name) : otherwise;
    }

    /** A number as a quantity, as {@code known.as("air", Temperature::new)}. */
    public <Q> Q as(String name, DoubleFunction<Q> maker) {
        return maker.apply(si(name));
    }

    /** A whole number. */
    public int count(String name) {
        return Math.toIntExact(Math.round(si(name)));
    }

    /** True or false. */
    public boolean isTrue(String name) {
        return (Boolean) value(name);
    }

    /** A word. */
    public String text(String name) {
        return (String) value(name);
    }

    /** Numbers in SI. */
    public List<Double> list(String name) {
        return ((List<?>) value(name)).stream().map(Double.class::cast).toList();
    }

    /** Rows of numbers in SI. */
    public List<List<Double>> rows(String name) {
        return ((List<?>) value(name))
                .stream()
                        .map(r -> ((List<?>) r).stream().map(Double.class::cast).toList())
                        .toList();
    }

    private Object value(String name) {
        Object v = values.get(name);
        if (v == null) {
            throw new IllegalArgumentException(name + " is neither needed nor used by this relation");
        }
        return v;
    }
}
