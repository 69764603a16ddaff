package fayline.app.usecase.calc.topic;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.flow.audit.BrokenRule;
import fayline.flow.audit.PlanAuditor;
import fayline.store.file.plan.PlanJson;
import fayline.store.file.plan.PlanRead;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Every rule that a plan breaks, judged by the auditor, who knows nothing of how plans are made. */
final class PlanAuditTopic implements CalcTopic {
    private static final String SCHEMA = "/schema/plan.schema.json";

    @Override
    public String name() {
        return "plan.audit";
    }

    @Override
    public String about() {
        return "Every rule that a plan breaks; takes what fayline plan --json prints.";
    }

    @Override
    public ObjectNode schema() {
        try (InputStream in = PlanJson.class.getResourceAsStream(SCHEMA)) {
            if (in == null) {
                throw new IllegalStateException(SCHEMA + " is not in the program");
            }
            return (ObjectNode) Json.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        PlanRead read = PlanJson.read(inputs, "");
        PlanRead.WorkAndPlan whole = read.whole().orElseThrow(() -> new CalcInputException(read.problems()));
        List<BrokenRule> broken = new PlanAuditor().audit(whole.work(), whole.plan());
        ObjectNode outputs = Json.object();
        outputs.put("clean", broken.isEmpty());
        outputs.put("rules", PlanAuditor.ruleNames().size());
        outputs.put("planned", whole.plan().steps().size());
        outputs.put("unplanned", whole.plan().unplanned().size());
        ArrayNode list = outputs.putArray("broken");
        for (BrokenRule b : broken) {
            ObjectNode one = list.addObject();
            one.put("rule", b.rule());
            b.steps().forEach(one.putArray("steps")::add);
            one.put("sentence", b.sentence());
            one.put("admitted", b.admitted());
        }
        return new CalcAnswer(
                outputs,
                Map.of(),
                List.of("each rule judged alone on the whole plan"),
                List.of("the rules of the program, common practice, no source"),
                List.of("A plan without a broken rule can be done; it need not be the best."),
                !broken.isEmpty());
    }
}
