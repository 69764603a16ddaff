package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.method.uncertainty.ToleranceStack;
import fayline.method.uncertainty.ToleranceStackCalculator;
import fayline.method.uncertainty.ToleranceStackResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** What a stack of toleranced dimensions comes to. */
final class StackTopic {
    private static final Map<String, ToDoubleFunction<ToleranceStackResult>> FIGURES = figures();

    private StackTopic() {}

    private static Map<String, ToDoubleFunction<ToleranceStackResult>> figures() {
        Map<String, ToDoubleFunction<ToleranceStackResult>> f = new LinkedHashMap<>();
        f.put("nominal", ToleranceStackResult::nominal);
        f.put("mean", ToleranceStackResult::mean);
        f.put("lower", ToleranceStackResult::lower);
        f.put("upper", ToleranceStackResult::upper);
        f.put("worstCase", ToleranceStackResult::worstCase);
        f.put("rss", ToleranceStackResult::rss);
        f.put("inflatedRss", ToleranceStackResult::inflatedRss);
        return f;
    }

    static RelationTopic topic() {
        return new RelationTopic(
                "stack",
                "What a stack of toleranced dimensions comes to: worst case, root sum of squares, inflated for dimensions that"
                        + " are not centred.",
                List.of(
                        Term.rows(
                                "dimensions",
                                "-,mm,mm,mm",
                                "how much the stack grows with each dimension (1, -1, or the slant), its nominal, and the"
                                        + " deviations allowed up and down, with their signs"),
                        number("nominal", "mm", "sum of the nominals"),
                        number("mean", "mm", "sum of the middles of the tolerances"),
                        number("lower", "mm", "least, every dimension at its worst end"),
                        number("upper", "mm", "most, every dimension at its worst end"),
                        number("worstCase", "mm", "half of that range"),
                        number("rss", "mm", "root of the sum of the squares of the half tolerances"),
                        number("inflatedRss", "mm", "the same, widened for dimensions that are not centred"),
                        Term.list("shares", "-", "part of the variance that each dimension brings")),
                relations());
    }

    private static List<Relation> relations() {
        List<Relation> all = new ArrayList<>();
        FIGURES.forEach((name, f) -> all.add(giving(name, "dimensions", k -> f.applyAsDouble(result(k)))));
        all.add(giving("shares", "dimensions", k -> result(k).shares()));
        return all;
    }

    private static ToleranceStackResult result(Known k) {
        k.by("worst = sum t; rss = sqrt(sum t^2); inflated by 1 + (worst - rss)/(2 rss (sqrt n - 1))", "scholz1995");
        List<ToleranceStack.Dimension> dimensions = new ArrayList<>();
        for (List<Double> row : k.rows("dimensions")) {
            try {
                dimensions.add(new ToleranceStack.Dimension(
                        String.valueOf(dimensions.size() + 1), row.get(0), row.get(1), row.get(2), row.get(3)));
            } catch (IllegalArgumentException e) {
                throw CalcInputException.of(
                        "dimensions", String.valueOf(e.getMessage()), "the upper deviation before the lower one");
            }
        }
        return ToleranceStackCalculator.calculate(new ToleranceStack(dimensions));
    }
}
