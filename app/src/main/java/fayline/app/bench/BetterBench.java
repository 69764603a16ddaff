package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.better.MeasurePlanning;
import fayline.app.usecase.better.MeasurePlanning.Moment;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.open.UsualPlace;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.goal.PlanGoal;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

/** How plans get better over processor time: with our start and search, and with the solver's model alone. */
final class BetterBench {
    static final long SEED = 1;
    private static final List<Integer> INVENTED_STEPS = List.of(150, 300);
    /** Processor seconds that the model alone gets for its first plan, where it needs more than it has. */
    private static final double PATIENCE_S = 90;

    private final PrintStream out;
    private final MeasurePlanning measure;

    BetterBench(PrintStream out) {
        this.out = out;
        measure = new MeasurePlanning(UsualPlace.libraries());
    }

    /** The invented shops. */
    void invented(int seconds, boolean json) {
        for (int steps : INVENTED_STEPS) {
            Work work = InventedShop.of(SEED, steps);
            work(name(steps), work, new SerialPlanner().plan(work), seconds, json);
        }
    }

    static String name(int steps) {
        return "invented-" + steps;
    }

    static int broken(Work work, Plan plan) {
        return new PlanAuditor().audit(work, plan).size();
    }

    /** One work, from a plan of it. */
    void work(String name, Work work, Plan base, int seconds, boolean json) {
        List<Moment> bettered = measure.bettered(work, base, PlanGoal.USUAL, seconds);
        List<Moment> alone = measure.alone(work, base, PlanGoal.USUAL, seconds, PATIENCE_S);
        tell(name, "from our plan", bettered, json);
        tell(name, "model alone", alone, json);
        List<Moment> inTime = alone.stream().filter(m -> m.cpuS() <= seconds).toList();
        if (!inTime.isEmpty()) {
            ratio(name, last(bettered), last(inTime), json);
        } else if (!alone.isEmpty()) {
            ratio(name, last(bettered), alone.get(0), json);
        }
    }

    private void ratio(String name, Moment ours, Moment alone, boolean json) {
        double ratio = ours.objective() / alone.objective();
        if (json) {
            ObjectNode n = Json.object();
            n.put("work", name).put("ofTheModelsAlone", Math.round(ratio * 100) / 100.0);
            n.put("cpuS", Math.round(alone.cpuS() * 10) / 10.0);
            out.println(Json.line(n));
        } else {
            out.println(String.format(
                    Locale.ROOT,
                    "%-14s  objective %.2f of the model's alone, which that had after %.1f s",
                    name,
                    ratio,
                    alone.cpuS()));
        }
    }

    private static Moment last(List<Moment> moments) {
        return moments.get(moments.size() - 1);
    }

    private void tell(String name, String way, List<Moment> moments, boolean json) {
        for (Moment m : moments) {
            String finish = m.finish().map(Object::toString).orElse("");
            if (json) {
                ObjectNode n = Json.object();
                n.put("work", name).put("way", way).put("cpuS", Math.round(m.cpuS() * 1000) / 1000.0);
                n.put("objective", Math.round(m.objective() * 10) / 10.0).put("finish", finish);
                out.println(Json.line(n));
            } else {
                out.println(String.format(
                        Locale.ROOT, "%-14s  %-13s  %7.2f s  %10.1f  %s", name, way, m.cpuS(), m.objective(), finish));
            }
        }
        if (moments.isEmpty() && !json) {
            out.println(String.format(Locale.ROOT, "%-14s  %-13s  no plan found in %.0f s", name, way, PATIENCE_S));
        }
    }
}
