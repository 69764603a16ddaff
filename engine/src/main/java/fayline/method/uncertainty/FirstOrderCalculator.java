package fayline.method.uncertainty;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.method.uncertainty.FirstOrder.Input;
import fayline.method.uncertainty.FirstOrderResult.Component;
import fayline.method.uncertainty.FirstOrderResult.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The law of propagation of uncertainty with correlations [jcgm100], 5.1.2 and 5.2.2, sensitivities from the change over plus
 * and minus one standard uncertainty (5.1.3, note 2).
 */
public final class FirstOrderCalculator {
    /** Bend over one standard uncertainty, as a share of the result's, above which first order is in doubt. */
    private static final double MUCH_BEND = 0.1;

    private FirstOrderCalculator() {}

    /**
     * Propagates.
     *
     * @throws IllegalArgumentException if a formula has no value at the inputs
     */
    public static FirstOrderResult calculate(FirstOrder question) {
        double[][] r = correlations(question);
        List<Outcome> outcomes = new ArrayList<>();
        List<double[]> parts = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (FirstOrder.Result asked : question.results()) {
            double[] signed = new double[question.inputs().size()];
            outcomes.add(outcome(question.inputs(), asked, signed, r, findings));
            parts.add(signed);
        }
        List<List<Double>> rows = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            List<Double> row = new ArrayList<>();
            for (int j = 0; j < parts.size(); j++) {
                double both =
                        outcomes.get(i).standardUncertainty() * outcomes.get(j).standardUncertainty();
                row.add(i == j ? 1.0 : both > 0 ? product(parts.get(i), r, parts.get(j)) / both : 0.0);
            }
            rows.add(row);
        }
        return new FirstOrderResult(outcomes, rows, findings);
    }

    private static Outcome outcome(
            List<Input> inputs, FirstOrder.Result asked, double[] signed, double[][] r, List<Finding> findings) {
        double[] x = inputs.stream().mapToDouble(Input::value).toArray();
        double value = asked.formula().at(x);
        List<Component> components = new ArrayList<>();
        double mostBend = 0;
        for (int k = 0; k < x.length; k++) {
            double u = inputs.get(k).standardUncertainty();
            double middle = x[k];
            x[k] = middle + u;
            double up = asked.formula().at(x);
            x[k] = middle - u;
            double down = asked.formula().at(x);
            x[k] = middle;
            signed[k] = u > 0 ? (up - down) / 2 : 0;
            mostBend = Math.max(mostBend, Math.abs(up + down - 2 * value) / 2);
            components.add(new Component(inputs.get(k).name(), u > 0 ? signed[k] / u : 0, Math.abs(signed[k])));
        }
        double u = Math.sqrt(Math.max(0, product(signed, r, signed)));
        if (!Double.isFinite(value) || !Double.isFinite(u)) {
            throw new IllegalArgumentException("formula \"" + asked.formula().text() + "\" has no value here");
        }
        if (mostBend > MUCH_BEND * u && mostBend > 1e-12 * Math.abs(value)) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    asked.name(),
                    String.format(
                            Locale.ROOT,
                            "%s bends by %.2g over one standard uncertainty of %.2g: first order is in doubt, draw"
                                    + " trials.",
                            asked.name(),
                            mostBend,
                            u),
                    "[jcgm100] 5.1.2"));
        }
        return new Outcome(asked.name(), value, u, components);
    }

    private static double[][] correlations(FirstOrder question) {
        List<String> names = question.inputs().stream().map(Input::name).toList();
        double[][] r = new double[names.size()][names.size()];
        for (int i = 0; i < r.length; i++) {
            r[i][i] = 1;
        }
        for (FirstOrder.Correlation c : question.correlations()) {
            int i = names.indexOf(c.one());
            int j = names.indexOf(c.other());
            r[i][j] = c.coefficient();
            r[j][i] = c.coefficient();
        }
        return r;
    }

    private static double product(double[] a, double[][] r, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < b.length; j++) {
                sum += a[i] * r[i][j] * b[j];
            }
        }
        return sum;
    }
}
