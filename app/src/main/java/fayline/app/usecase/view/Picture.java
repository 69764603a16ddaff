package fayline.app.usecase.view;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.audit.BrokenRule;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanSolver;
import fayline.flow.planner.StayingPlan;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanGoals;
import fayline.flow.project.Definition;
import fayline.flow.record.RecordState;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.ShopWork;
import fayline.flow.result.rate.LearnedRates;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Everything computed of a shop at a moment, all projects at once.
 *
 * @param now the moment
 * @param record what the entries amount to
 * @param projects each project that can be read
 * @param rates what finished steps of all teach
 * @param work the work of all
 * @param goal what the shop wants of a plan
 * @param plan the plan of all
 * @param audit what the plan breaks
 */
record Picture(
        Instant now,
        RecordState record,
        List<Seen> projects,
        LearnedRates rates,
        Work work,
        PlanGoal goal,
        Plan plan,
        List<BrokenRule> audit) {
    record Seen(Definition definition, ShopState state, ProjectResult result) {}

    /**
     * Computes and audits; empty where no project can be read.
     *
     * @param kept a better plan that was searched for before, to be kept to as far as it still can be
     */
    static Optional<Picture> of(ShopRecord shop, Instant now, PlanSolver planner, Optional<Plan> kept) {
        return unaudited(shop, now, planner).map(p -> p.following(StayingPlan.of(p.work, p.plan, p.goal, kept)));
    }

    /** The first plan that keeps the rules; the fresh one, whatever it breaks, where none does. */
    Picture following(List<Plan> plans) {
        PlanAuditor auditor = new PlanAuditor();
        for (Plan p : plans) {
            List<BrokenRule> broken = auditor.audit(work, p);
            if (broken.stream().allMatch(BrokenRule::admitted)) {
                return new Picture(now, record, projects, rates, work, goal, p, broken);
            }
        }
        return new Picture(now, record, projects, rates, work, goal, plan, auditor.audit(work, plan));
    }

    /** Computes what is only compared with and never shown. */
    static Optional<Picture> unaudited(ShopRecord shop, Instant now, PlanSolver planner) {
        RecordState record = shop.state();
        Projects projects = Projects.of(shop, record, now);
        if (projects.all().isEmpty()) {
            return Optional.empty();
        }
        LearnedRates rates = projects.rates();
        List<Seen> seen = projects.all().stream()
                .map(p -> new Seen(p.definition(), p.state(), ProjectCalculator.calculate(p, rates)))
                .toList();
        Work work = ShopWork.combine(seen.stream().map(Seen::result).toList());
        PlanGoal goal = PlanGoals.of(seen.stream().map(Seen::definition).toList(), work, record.published());
        return Optional.of(new Picture(now, record, seen, rates, work, goal, planner.plan(work), List.of()));
    }

    Optional<Seen> project(String id) {
        return projects.stream()
                .filter(s -> id.isEmpty() || s.definition().facts().id().equals(id))
                .findFirst();
    }
}
