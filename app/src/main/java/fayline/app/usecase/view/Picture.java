package fayline.app.usecase.view;

import fayline.app.usecase.shop.RecordedState;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.audit.BrokenRule;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.PieceGroup.PieceSet;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanSolver;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.StayingPlan;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanGoals;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import fayline.flow.record.RecordState;
import fayline.flow.result.Expanded;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.ShopWork;
import fayline.flow.result.rate.LearnedRates;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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
    /** A project; {@code whole} is its definition with its pieces undivided. */
    record Seen(Definition whole, Definition definition, ShopState state, ProjectResult result) {
        /** The same in the sets of some work. */
        private Seen in(Work work, LearnedRates rates) {
            List<String> sets = sets(work);
            boolean same = definition.parts().stream()
                    .filter(p -> p.pieces().isPresent())
                    .map(Part::id)
                    .toList()
                    .equals(sets);
            if (same) {
                return this;
            }
            Expanded other = ProjectCalculator.expand(whole, state, sets);
            return new Seen(whole, other.definition(), state, ProjectCalculator.calculate(other, rates));
        }

        /** The sets of this project in some work, as ids of what is made. */
        List<String> sets(Work work) {
            String project = whole.facts().id();
            return work.sets().groups().stream()
                    .filter(g -> g.project().equals(project))
                    .flatMap(g -> g.sets().stream())
                    .map(PieceSet::made)
                    .toList();
        }
    }

    /**
     * Computes and audits; empty where no project can be read.
     *
     * @param kept a better plan that was searched for before, to be kept to as far as it still can be
     */
    static Optional<Picture> of(ShopRecord shop, Instant now, PlanSolver planner, Optional<Plan> kept) {
        return unaudited(shop, now, planner).map(p -> p.following(p.candidates(kept)));
    }

    /** Plans that could be followed: those that keep to the kept plan's sets too, where they are others. */
    private List<Plan> candidates(Optional<Plan> kept) {
        List<Plan> plans = new ArrayList<>(StayingPlan.of(work, plan, goal, kept));
        Work before = kept.map(work::inSetsOf).orElse(work);
        if (!before.equals(work)) {
            Plan fresh = new SerialPlanner().plan(before);
            plans.addAll(0, StayingPlan.of(before, fresh, goal, kept));
        }
        return plans;
    }

    /** The first plan that keeps the rules; the fresh one, whatever it breaks, where none does. */
    Picture following(List<Plan> plans) {
        PlanAuditor auditor = new PlanAuditor();
        for (Plan p : plans) {
            List<BrokenRule> broken = auditor.audit(work, p);
            if (broken.stream().allMatch(BrokenRule::admitted)) {
                return inSetsOf(p, broken);
            }
        }
        return inSetsOf(plan, auditor.audit(work, plan));
    }

    /** The same with a plan, every project computed in the sets that the plan has. */
    private Picture inSetsOf(Plan p, List<BrokenRule> broken) {
        Work own = work.inSetsOf(p);
        List<Seen> seen = projects.stream().map(s -> s.in(own, rates)).toList();
        return new Picture(now, record, seen, rates, own, goal, p, broken);
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
                .map(p -> new Seen(p.whole(), p.definition(), p.state(), ProjectCalculator.calculate(p, rates)))
                .toList();
        Work work = ShopWork.combine(seen.stream().map(Seen::result).toList());
        PlanGoal goal = PlanGoals.of(seen.stream().map(Seen::definition).toList(), work, record.published());
        Plan plan = planner.plan(work, goal);
        return Optional.of(
                new Picture(now, record, seen, rates, work, goal, plan, List.of()).inSetsOf(plan, List.of()));
    }

    /**
     * The same with entries that came since, where nothing that is computed hangs on them: notes where there were some before,
     * readings of fits, what the bench tells of plies and mixes (what is left of lots is reckoned where it is shown).
     *
     * @param later the record with them
     * @param at the moment now
     * @return empty where it must be computed anew
     */
    Optional<Picture> withEntries(RecordState later, Instant at) {
        boolean sameFiles = record.shopFiles().equals(later.shopFiles())
                && record.projectFiles().equals(later.projectFiles())
                && record.projects().equals(later.projects())
                && record.published().equals(later.published());
        if (!sameFiles) {
            return Optional.empty();
        }
        List<Seen> told = new ArrayList<>();
        for (Seen s : projects) {
            ShopState state = RecordedState.of(later, s.whole().facts().id(), at);
            boolean same = state.withNow(s.state().now())
                            .withNotes(s.state().notes())
                            .withStores(s.state().made(), state.stock())
                            .equals(s.state())
                    && noted(state).equals(noted(s.state()));
            if (!same) {
                return Optional.empty();
            }
            told.add(new Seen(s.whole(), s.definition(), state, s.result()));
        }
        return Optional.of(new Picture(now, later, List.copyOf(told), rates, work, goal, plan, audit));
    }

    /** Parts and joints on which something was noted: the second hand of a part may wait for that. */
    private static Set<String> noted(ShopState state) {
        return state.notes().stream().map(n -> n.step().split("/", -1)[0]).collect(Collectors.toSet());
    }

    Optional<Seen> project(String id) {
        return projects.stream()
                .filter(s -> id.isEmpty() || s.definition().facts().id().equals(id))
                .findFirst();
    }
}
