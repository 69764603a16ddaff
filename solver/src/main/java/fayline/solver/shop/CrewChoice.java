package fayline.solver.shop;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import fayline.flow.plan.OppositeHands.Follow;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Worker;
import fayline.solver.CpSatLibrary;
import fayline.solver.RunAnswer;
import fayline.solver.RunLimits;
import fayline.solver.RunWatch;
import fayline.solver.SolverRun;
import fayline.solver.shop.ShopModel.Spot;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Gives names to crews, their times being fixed: who is in, able and free, and as far as can be who it was before. */
final class CrewChoice {
    private static final double EFFORT = 0.1;
    private static final int KEEP = 20;

    private final ShopCase shop;
    private final Standing standing;
    private final CpModel model = new CpModel();
    private final LinearExprBuilder worth = LinearExpr.newBuilder();
    private final List<List<IntervalVar>> hands = new ArrayList<>();
    private final Map<Integer, List<BoolVar>> picks = new HashMap<>();
    private final Map<Integer, Integer> sizes = new HashMap<>();

    private CrewChoice(ShopCase shop, Standing standing) {
        this.shop = shop;
        this.standing = standing;
        shop.work.people().forEach(p -> hands.add(new ArrayList<>()));
    }

    /**
     * Chooses people for all spots.
     *
     * @param busy for each person, the slots at which steps that stay need the hands
     * @return the people of each step by its item; empty where no choice fits all
     */
    static Map<Integer, List<String>> of(
            CpSatLibrary library, ShopCase shop, Standing standing, Collection<Spot> spots, BitSet[] busy) {
        return new CrewChoice(shop, standing).choose(library, spots, busy);
    }

    private Map<Integer, List<String>> choose(CpSatLibrary library, Collection<Spot> spots, BitSet[] busy) {
        for (Spot spot : spots) {
            if (spot.mode().crew() > 0) {
                crew(spot, busy);
            }
        }
        for (Follow same : shop.work.hands().follows()) {
            practised(same);
        }
        hands.forEach(model::addNoOverlap);
        model.maximize(worth);
        RunAnswer answer = SolverRun.of(library, model, RunLimits.ofEffort(EFFORT), RunWatch.NOBODY);
        Map<Integer, List<String>> chosen = new HashMap<>();
        if (answer.found()) {
            picks.forEach((item, all) -> {
                List<String> people = new ArrayList<>();
                for (int p = 0; p < all.size(); p++) {
                    if (answer.value(all.get(p)) == 1) {
                        people.add(shop.work.people().get(p).id());
                    }
                }
                chosen.put(item, people);
            });
        }
        return chosen;
    }

    private void crew(Spot spot, BitSet[] busy) {
        List<BoolVar> all = new ArrayList<>();
        Map<String, List<LinearArgument>> skilled = new HashMap<>();
        List<String> before = standing.people(spot.item().index);
        for (int p = 0; p < shop.work.people().size(); p++) {
            Worker worker = shop.work.people().get(p);
            BoolVar pick = model.newBoolVar(spot.item().step.id() + " by " + worker.id());
            all.add(pick);
            if (!isAble(p, spot)
                    || busy[p].get(spot.start(), Math.max(spot.start(), spot.handsEnd()))
                                    .cardinality()
                            > 0) {
                model.addEquality(pick, 0);
            }
            if (spot.item().with.contains(p)) {
                model.addEquality(pick, 1);
            }
            hands.get(p)
                    .add(model.newOptionalFixedSizeIntervalVar(
                            LinearExpr.constant(spot.start()),
                            (long) spot.handsEnd() - spot.start(),
                            pick,
                            pick.getName()));
            for (String skill : worker.skills()) {
                skilled.computeIfAbsent(skill, s -> new ArrayList<>()).add(pick);
            }
            // Who has few skills goes first, so that rare ones stay free.
            worth.addTerm(
                    pick,
                    (before.contains(worker.id()) ? KEEP : 0) - worker.skills().size());
        }
        picks.put(spot.item().index, all);
        sizes.put(spot.item().index, spot.mode().crew());
        model.addEquality(
                LinearExpr.sum(all.toArray(LinearArgument[]::new)), spot.mode().crew());
        spot.item()
                .step
                .skills()
                .forEach((skill, least) -> model.addGreaterOrEqual(
                        LinearExpr.sum(skilled.getOrDefault(skill, List.of()).toArray(LinearArgument[]::new)), least));
    }

    /** Who did it on the first hand does it on the second, as many as that asks for. */
    private void practised(Follow same) {
        List<LinearArgument> second = picked(same.step());
        List<LinearArgument> first = picked(same.first());
        int n = crew(same.step());
        int m = crew(same.first());
        if (n == 0
                || m == 0
                || (picksOf(same.step()).isEmpty() && picksOf(same.first()).isEmpty())) {
            return;
        }
        LinearExprBuilder common = LinearExpr.newBuilder();
        for (int p = 0; p < second.size(); p++) {
            BoolVar both = model.newBoolVar(same.step() + " practised " + p);
            model.addLessOrEqual(both, second.get(p));
            model.addLessOrEqual(both, first.get(p));
            common.add(both);
        }
        model.addGreaterOrEqual(common.build(), same.crew().least(m, n));
    }

    private Optional<List<BoolVar>> picksOf(String step) {
        return shop.itemOf(step).flatMap(i -> Optional.ofNullable(picks.get(i)));
    }

    /** How many of those who do a step, as it is chosen or stands, are in the shop. */
    private int crew(String step) {
        Optional<Integer> chosen = shop.itemOf(step).flatMap(i -> Optional.ofNullable(sizes.get(i)));
        return chosen.orElseGet(() -> standingCrew(step).size());
    }

    private List<String> standingCrew(String step) {
        PlannedStep p = shop.itemOf(step).map(standing::of).orElse(shop.happened.get(step));
        List<String> all = shop.work.people().stream().map(Worker::id).toList();
        return p == null ? List.of() : p.people().stream().filter(all::contains).toList();
    }

    /** For each person, whether in the crew of a step. */
    private List<LinearArgument> picked(String step) {
        List<String> before = standingCrew(step);
        return picksOf(step)
                .<List<LinearArgument>>map(List::copyOf)
                .orElseGet(() -> shop.work.people().stream()
                        .<LinearArgument>map(w -> LinearExpr.constant(before.contains(w.id()) ? 1 : 0))
                        .toList());
    }

    private boolean isAble(int person, Spot spot) {
        if (spot.item().without.contains(person)) {
            return false;
        }
        if (!spot.item().step.interruptible()) {
            return shop.slots.isPresent(person, spot.start(), spot.mode().slots());
        }
        int works = 0;
        for (int t = spot.start(); t < spot.handsEnd(); t++) {
            works += shop.slots.isWorking(person, t) ? 1 : 0;
        }
        int needs = spot.item().step.hands().stream()
                .filter(h -> h.people() == spot.mode().crew())
                .mapToInt(h -> Slots.up(h.minutes()))
                .min()
                .orElse(1);
        return shop.slots.isWorking(person, spot.start()) && works >= needs;
    }
}
