package fayline.solver.shop;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import fayline.flow.plan.WorkStep;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScorer;
import fayline.flow.project.shop.PlanWeights;
import fayline.flow.record.PublishedPlan;
import fayline.solver.shop.ShopCase.Item;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The goal as far as a model can say it: dated goals, the end of all, ends of parts, missed windows, steps moved, and of idle
 * people and evenings what {@link ModelHours} says. A little for early starts breaks ties.
 */
final class ModelGoal {
    /** Parts of an hour's worth that are told apart. */
    private static final double SCALE = 100_000;

    private static final double HOURS = Slots.MIN / 60.0;
    private static final double EARLY = 0.004;

    private final ShopCase shop;
    private final Standing standing;
    private final CpModel model;
    private final boolean hinted;
    private final StepVars[] vars;
    private final LinearExprBuilder sum = LinearExpr.newBuilder();

    ModelGoal(ShopCase shop, Standing standing, CpModel model, boolean hinted, StepVars[] vars) {
        this.shop = shop;
        this.standing = standing;
        this.model = model;
        this.hinted = hinted;
        this.vars = vars;
    }

    void add() {
        PlanWeights w = shop.goal.weights();
        latest("finish", shop.items, shop.slots.last, 0, w.finish());
        Map<String, List<Item>> made = new LinkedHashMap<>();
        for (Item i : shop.items) {
            made.computeIfAbsent(i.step.project() + "/" + i.step.made(), m -> new ArrayList<>())
                    .add(i);
        }
        Map<String, Double> shares = PlanScorer.shares(shop.work);
        double all = made.keySet().stream()
                .mapToDouble(id -> shares.getOrDefault(id, 1.0))
                .sum();
        made.forEach(
                (id, items) -> latest(id, items, shop.slots.last, 0, w.parts() * shares.getOrDefault(id, 1.0) / all));
        for (PlanGoal.Dated d : shop.goal.dates()) {
            int due = Slots.down(shop.time.floor(d.due()));
            List<Item> items = shop.items.stream()
                    .filter(i -> d.steps().contains(i.step.id()))
                    .toList();
            if (due < shop.slots.last) {
                latest(d.id(), items, shop.slots.last, due, w.late());
            }
        }
        Map<String, PublishedPlan.Step> told = new LinkedHashMap<>();
        shop.goal.told().ifPresent(t -> t.steps().forEach(s -> told.put(s.step(), s)));
        ModelHours hours = new ModelHours(shop, standing, model, hinted, SCALE);
        for (StepVars v : vars) {
            if (v != null) {
                windows(v, w);
                hours.add(v, w, sum);
                sum.addTerm(v.start(), Math.max(1, Math.round(SCALE * HOURS * EARLY)));
                PublishedPlan.Step t = told.get(v.item().step.id());
                if (t != null) {
                    moved(v, t, w);
                }
            }
        }
        model.minimize(sum);
    }

    /** The last end of some steps, as far as it lies after a moment. */
    private void latest(String name, List<Item> items, int last, int from, double weight) {
        int fixed = from;
        int now = from;
        Set<Integer> mine = new HashSet<>();
        items.forEach(i -> mine.add(i.index));
        List<StepVars> free = new ArrayList<>();
        for (Item i : items) {
            now = Math.max(now, standing.end(i.index));
            StepVars v = vars[i.index];
            if (v == null) {
                fixed = Math.max(fixed, standing.end(i.index));
            } else if (i.next.stream().noneMatch(mine::contains)
                    || i.step.alone().minutes() > 0) {
                free.add(v);
            }
        }
        if (free.isEmpty() || fixed > last) {
            return;
        }
        IntVar latest = model.newIntVar(fixed, Math.max(last, now), name + " is over");
        if (hinted) {
            model.addHint(latest, now);
        }
        free.forEach(v -> model.addGreaterOrEqual(latest, v.end()));
        sum.addTerm(latest, Math.round(SCALE * HOURS * weight));
    }

    private void windows(StepVars v, PlanWeights w) {
        for (int i = 0; i < v.modes().size(); i++) {
            double hours = 0;
            for (WorkStep.Link link : v.item().step.after()) {
                if (v.modes().get(i).missed().contains(link.step())) {
                    hours += link.miss().map(WorkStep.Miss::personMinutes).orElse(0) / 60.0;
                }
            }
            if (hours > 0) {
                sum.addTerm(v.uses().get(i), Math.round(SCALE * w.window() * hours));
            }
        }
    }

    private void moved(StepVars v, PublishedPlan.Step told, PlanWeights w) {
        int at = shop.time.floor(told.start());
        int first = Slots.up(at - PlanScorer.NOTICED_MIN + 1);
        int last = Slots.down(at + PlanScorer.NOTICED_MIN - 1);
        if (last < first || w.moved() <= 0) {
            return;
        }
        BoolVar stays = model.newBoolVar(v.item().step.id() + " stays");
        int now = standing.start(v.item().index);
        if (hinted) {
            model.addHint(stays, now >= first && now <= last);
        }
        model.addLinearConstraint(v.start(), first, last).onlyEnforceIf(stays);
        sum.addTerm(stays, -Math.round(SCALE * w.moved()));
    }
}
