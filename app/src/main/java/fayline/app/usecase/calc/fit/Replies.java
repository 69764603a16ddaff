package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Answers put together alike: what the engine warns of is told as cautions, what it refuses as a fault of the inputs. */
final class Replies {
    private Replies() {}

    static CalcAnswer of(ObjectNode outputs, String method, String source, List<Finding> findings, boolean saysNo) {
        return new CalcAnswer(
                outputs,
                Map.of(),
                List.of(method),
                List.of(source),
                findings.stream()
                        .filter(f -> f.severity() != Severity.NOTE)
                        .map(Finding::sentence)
                        .distinct()
                        .toList(),
                saysNo);
    }

    static CalcAnswer refusing(Supplier<CalcAnswer> answer) {
        try {
            return answer.get();
        } catch (IllegalArgumentException e) {
            throw CalcInputException.of("inputs", String.valueOf(e.getMessage()), "inputs that can be reckoned with");
        }
    }
}
