package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.DenseMatrix;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Answers from figures and findings; the answer is no where a finding stops the work. */
final class FitAnswers {
    private FitAnswers() {}

    /** An answer; units of outputs that are not there are left out. */
    static CalcAnswer of(ObjectNode out, Map<String, String> units, List<Figure> figures, List<Finding> findings) {
        Map<String, String> there = new TreeMap<>(units);
        there.keySet().removeIf(name -> !out.has(name));
        return new CalcAnswer(
                out,
                there,
                figures.stream().map(Figure::formula).distinct().toList(),
                figures.stream().map(Figure::source).distinct().toList(),
                findings.stream().map(Finding::sentence).toList(),
                findings.stream().anyMatch(f -> f.severity() == Severity.STOP));
    }

    /** Turns what the engine refuses into a fault of the inputs. */
    static CalcAnswer refusing(Supplier<CalcAnswer> answer) {
        try {
            return answer.get();
        } catch (CalcInputException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw CalcInputException.of("inputs", String.valueOf(e.getMessage()), "inputs that can be reckoned with");
        }
    }

    static ArrayNode rows(DenseMatrix m, ArrayNode into) {
        for (int i = 0; i < m.rows(); i++) {
            ArrayNode row = into.addArray();
            for (double v : m.row(i)) {
                row.add(v);
            }
        }
        return into;
    }

    static void add(ArrayNode to, OptionalDouble value) {
        if (value.isPresent()) {
            to.add(value.getAsDouble());
        } else {
            to.addNull();
        }
    }
}
