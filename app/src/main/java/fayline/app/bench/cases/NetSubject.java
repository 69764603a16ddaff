package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.NetTopic;
import fayline.basis.units.UnitOfMeasure;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Projects with limited resources, given as lists by job: put as a net to the topic {@code net}. Only proven answers count. */
final class NetSubject implements Subject {
    @Override
    public boolean isOf(String fileName) {
        return "scheduling".equals(fileName);
    }

    @Override
    public Answer answer(Question question) {
        Optional<UnitOfMeasure> unit = UnitOfMeasure.parse(question.given()
                .getOrDefault("durations", Json.object())
                .path("u")
                .asText());
        if (unit.isEmpty() || !question.asked().equals(List.of("makespan"))) {
            return Answer.notCovered("only a makespan from durations in a unit of time is told");
        }
        try {
            ObjectNode out = new NetTopic().answer(net(question)).outputs();
            if (!out.path("proven").asBoolean() || !out.has("makespan")) {
                return Answer.notCovered("not proven");
            }
            double makespan = unit.get().toSi(out.path("makespan").asDouble());
            return new Answer(Map.of("makespan", new Reckoned(makespan, unit.get())), "");
        } catch (CalcInputException e) {
            return Answer.notCovered(String.valueOf(e.getMessage()));
        }
    }

    private static ObjectNode net(Question question) {
        ObjectNode net = Json.object();
        JsonNode durations = given(question, "durations");
        JsonNode use = given(question, "use");
        ArrayNode activities = net.putArray("activities");
        for (int i = 0; i < durations.size(); i++) {
            ObjectNode activity = activities.addObject();
            activity.put("name", Integer.toString(i));
            activity.set("duration", durations.get(i));
            activity.set("demands", use.path(i));
        }
        ArrayNode lags = net.putArray("lags");
        for (JsonNode pair : given(question, "precedence")) {
            lags.addObject()
                    .put("from", pair.path(0).asText())
                    .put("to", pair.path(1).asText());
        }
        net.set("capacities", given(question, "capacity"));
        return net;
    }

    private static JsonNode given(Question question, String name) {
        return question.given().getOrDefault(name, Json.object()).path("v");
    }
}
