package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.better.MeasurePlanning;
import fayline.app.usecase.better.MeasurePlanning.Moment;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.open.UsualPlace;
import fayline.app.usecase.view.ShopView;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.goal.PlanGoal;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

/** How plans get better over processor time: with our start and search, and with the solver's model alone. */
final class BetterBench {
    private static final long SEED = 1;
    private static final List<Integer> INVENTED_STEPS = List.of(150, 300);

    private final PrintStream out;
    private final MeasurePlanning measure;

    BetterBench(PrintStream out) {
        this.out = out;
        measure = new MeasurePlanning(UsualPlace.libraries());
    }

    void run(ShopView view, int seconds, boolean json) {
        work(view.project(), view.work(), view.plan(), seconds, json);
        for (int steps : INVENTED_STEPS) {
            Work work = InventedShop.of(SEED, steps);
            work("invented-" + steps, work, new SerialPlanner().plan(work), seconds, json);
        }
    }

    private void work(String name, Work work, Plan base, int seconds, boolean json) {
        List<Moment> bettered = measure.bettered(work, base, PlanGoal.USUAL, seconds);
        List<Moment> alone = measure.alone(work, base, PlanGoal.USUAL, seconds);
        tell(name, "from our plan", bettered, json);
        tell(name, "model alone", alone, json);
        if (!json && !alone.isEmpty()) {
            out.println(String.format(
                    Locale.ROOT, "%-14s  objective %.2f of the model's alone", name, last(bettered) / last(alone)));
        }
    }

    private static double last(List<Moment> moments) {
        return moments.get(moments.size() - 1).objective();
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
            out.println(String.format(Locale.ROOT, "%-14s  %-13s  no plan found", name, way));
        }
    }
}
