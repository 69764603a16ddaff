package fayline.app.usecase.calc;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;

/**
 * What a topic answers.
 *
 * @param outputs the outputs by name
 * @param units the unit of each output whose name does not carry it
 * @param method how it was reckoned
 * @param source where the method comes from
 * @param cautions what limits the answer
 * @param saysNo whether the answer is no: not feasible, not allowed, a rule broken
 */
public record CalcAnswer(
        ObjectNode outputs,
        Map<String, String> units,
        List<String> method,
        List<String> source,
        List<String> cautions,
        boolean saysNo) {
    /** Copies the lists. */
    public CalcAnswer {
        method = List.copyOf(method);
        source = List.copyOf(source);
        cautions = List.copyOf(cautions);
    }

    /** The answer as the command line writes it. */
    public ObjectNode toJson(String topic) {
        ObjectNode n = Json.object();
        n.put("topic", topic);
        n.set("outputs", outputs);
        ObjectNode u = n.putObject("units");
        units.forEach(u::put);
        n.put("method", String.join("; ", method));
        n.put("source", String.join("; ", source));
        cautions.forEach(n.putArray("cautions")::add);
        return n;
    }
}
