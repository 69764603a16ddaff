package fayline.app.usecase.calc.topic;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.app.usecase.net.ScheduleNet;
import fayline.app.usecase.open.UsualPlace;
import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.Net.Activity;
import fayline.flow.plan.net.Net.Lag;
import fayline.flow.plan.net.NetAnswer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How short the schedule of a net of activities can be. */
public final class NetTopic implements CalcTopic {
    private static final double USUAL_EFFORT_S = 2;
    private static final double MOST_EFFORT_S = 600;
    private static final Form FORM = form();

    private static Form form() {
        Form activity = Form.empty()
                .needs("name", Kind.text(), "as lags call it")
                .needs("duration", Kind.whole(0), "in whole units of time")
                .takes("demands", Kind.list(Kind.whole(0), 0), "how much of each resource it takes; nothing otherwise");
        Form lag = Form.empty()
                .needs("from", Kind.text(), "an activity")
                .needs("to", Kind.text(), "another")
                .takes(
                        "least",
                        Kind.whole(-Net.MOST),
                        "least time from start to start, below 0 a most the other way round; from the end of the first otherwise");
        return Form.empty()
                .needs("activities", Kind.list(activity.asKind(), 0), "what is to be done")
                .takes("lags", Kind.list(lag.asKind(), 0), "what must keep its distance")
                .takes("capacities", Kind.list(Kind.whole(0), 0), "how much of each resource there is")
                .takes("effort", Kind.positive(), "limit in deterministic seconds, 2 otherwise, at most 600");
    }

    @Override
    public String name() {
        return "net";
    }

    @Override
    public String about() {
        return "How short the schedule of a net of activities with lags and resources can be, with a bound that none beats.";
    }

    @Override
    public ObjectNode schema() {
        return FORM.schema(name(), about());
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        Given in = FORM.read(inputs);
        double effortS = in.number("effort", USUAL_EFFORT_S);
        if (effortS > MOST_EFFORT_S) {
            throw CalcInputException.of("effort", Json.shown(in.json("effort")), "at most " + (int) MOST_EFFORT_S);
        }
        Net net = net(in);
        ScheduleNet schedule = new ScheduleNet(UsualPlace.libraries());
        NetAnswer found = schedule.byEffort(net, effortS);
        ObjectNode out = Json.object();
        found.makespan().ifPresent(m -> out.put("makespan", m));
        out.put("bound", found.bound()).put("proven", found.proven()).put("feasible", !found.infeasible());
        found.starts().ifPresent(starts -> {
            ArrayNode all = out.putArray("starts");
            starts.forEach(all::add);
        });
        List<String> cautions = found.proven()
                ? List.of()
                : List.of("Not proven: a shorter schedule, down to the bound, may exist. A larger effort may find it.");
        return new CalcAnswer(
                out,
                Map.of(),
                List.of("population of orders, double justification, constraint programming; checked against the net"),
                List.of("kolisch1996", "valls2005", "hartmann1998", "godard2005"),
                cautions,
                found.infeasible());
    }

    private static Net net(Given in) {
        List<Integer> capacities = whole(in, "capacities");
        List<Activity> activities = new ArrayList<>();
        Map<String, Integer> places = new HashMap<>();
        try {
            for (Given g : in.objects("activities")) {
                String name = g.text("name");
                if (places.put(name, activities.size()) != null) {
                    throw CalcInputException.of("activities.name", '"' + name + "\" again", "each name once");
                }
                List<Integer> demands = g.has("demands")
                        ? whole(g, "demands")
                        : capacities.stream().map(c -> 0).toList();
                activities.add(new Activity(name, g.whole("duration"), demands));
            }
            List<Lag> lags = new ArrayList<>();
            for (Given g : in.objects("lags")) {
                int from = place(places, g.text("from"));
                int least =
                        g.has("least") ? g.whole("least") : activities.get(from).duration();
                lags.add(new Lag(from, place(places, g.text("to")), least));
            }
            return new Net(activities, lags, capacities);
        } catch (IllegalArgumentException e) {
            throw CalcInputException.of(
                    "activities", String.valueOf(e.getMessage()), "a demand per capacity, numbers up to " + Net.MOST);
        }
    }

    private static int place(Map<String, Integer> places, String name) {
        Integer place = places.get(name);
        if (place == null) {
            throw CalcInputException.of("lags", '"' + name + '"', "the name of an activity");
        }
        return place;
    }

    private static List<Integer> whole(Given g, String name) {
        return g.has(name) ? g.numbers(name).stream().map(Double::intValue).toList() : List.of();
    }
}
