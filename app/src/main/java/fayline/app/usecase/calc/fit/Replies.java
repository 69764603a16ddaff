package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import java.util.List;
import java.util.Map;

/** Answers put together alike: what the engine warns of is told as cautions. */
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
}
