package fayline.solver.shop;

import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkWish;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.serial.TimeLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The steps to be planned anew, by number, with what binds them; the same for every model of one improvement. */
final class ShopCase {
    final Work work;
    final PlanGoal goal;
    final TimeLine time;
    final Slots slots;
    final List<Item> items = new ArrayList<>();
    final List<Stay> stays = new ArrayList<>();
    final Map<String, Place> places = new HashMap<>();
    /** Done and running steps, by id. */
    final Map<String, PlannedStep> happened = new HashMap<>();

    private final Map<String, Integer> itemOf = new HashMap<>();

    /** One step to do. */
    static final class Item {
        final int index;
        final WorkStep step;
        final int earliestMin;
        /** Latest start that the lead wishes. */
        final int latestMin;
        /** Whom the lead wants in its crew, by index. */
        final Set<Integer> with;
        /** Whom not. */
        final Set<Integer> without;

        final List<Tie> ties = new ArrayList<>();
        /** Items with a tie to this one. */
        final List<Integer> next = new ArrayList<>();

        final List<Stay> stays = new ArrayList<>();
        List<Mode> modes = List.of();

        Item(int index, WorkStep step, int earliestMin, Wished wished) {
            this.index = index;
            this.step = step;
            this.earliestMin = Math.max(earliestMin, wished.firstMin(step));
            latestMin = wished.lastMin(step);
            with = wished.people(step, WorkWish.Kind.WITH);
            without = wished.people(step, WorkWish.Kind.WITHOUT);
        }

        boolean hasHands() {
            return !step.hands().isEmpty();
        }

        boolean is(String air) {
            return step.air().equals(air);
        }
    }

    /** A link to an earlier item, or to what has happened. */
    record Tie(Link link, Optional<Integer> item, Optional<PlannedStep> happened) {
        boolean isSoft(Item later) {
            return link.shuts().isPresent() && link.miss().isPresent() && later.hasHands();
        }
    }

    /** A hold: its items, whether it has begun, and whether a step of it is left out for good. */
    record Stay(int index, Hold hold, List<Integer> items, boolean begun, boolean endless) {}

    ShopCase(Work work, Plan base, PlanGoal goal) {
        this.work = work;
        this.goal = goal;
        time = new TimeLine(work);
        int finish = base.finish().map(time::ceil).orElse(time.ceil(work.now()));
        slots = new Slots(work, time, Slots.up(finish) * Slots.MIN);
        work.places().forEach(p -> places.putIfAbsent(p.id(), p));
        Wished wished = new Wished(work, time);
        Map<String, WorkStep> steps = new HashMap<>();
        work.steps().forEach(s -> steps.put(s.id(), s));
        for (PlannedStep p : base.steps()) {
            WorkStep step = steps.get(p.step());
            if (step != null && step.state() == WorkStep.State.TODO) {
                itemOf.put(step.id(), items.size());
                items.add(new Item(items.size(), step, earliest(step), wished));
            } else {
                happened.put(p.step(), p);
            }
        }
        items.forEach(this::tie);
        work.holds().forEach(h -> stay(h, wished));
        items.forEach(i -> i.modes = Modes.of(this, i));
    }

    private int earliest(WorkStep step) {
        int earliest =
                Math.max(time.ceil(work.now()), step.notBefore().map(time::ceil).orElse(-TimeLine.FOREVER));
        for (Work.Awaited d : work.deliveries()) {
            earliest = step.awaits().contains(d.id()) ? Math.max(earliest, time.ceil(d.expected())) : earliest;
        }
        return earliest;
    }

    private void tie(Item item) {
        for (Link link : item.step.after()) {
            Optional<Integer> earlier = Optional.ofNullable(itemOf.get(link.step()));
            Optional<PlannedStep> past = Optional.ofNullable(happened.get(link.step()));
            if (earlier.isPresent() || past.isPresent()) {
                item.ties.add(new Tie(link, earlier, past));
                earlier.ifPresent(e -> items.get(e).next.add(item.index));
            }
        }
    }

    private void stay(Hold hold, Wished wished) {
        List<Integer> mine = new ArrayList<>();
        boolean begun = false;
        boolean endless = false;
        for (String id : hold.steps()) {
            Integer item = itemOf.get(id);
            if (item != null) {
                mine.add(item);
            } else {
                begun |= happened.containsKey(id);
                endless |= !happened.containsKey(id);
            }
        }
        if (!mine.isEmpty() || begun) {
            Stay stay = new Stay(stays.size(), begun ? hold : wished.among(hold), List.copyOf(mine), begun, endless);
            stays.add(stay);
            mine.forEach(i -> items.get(i).stays.add(stay));
        }
    }

    Optional<Integer> itemOf(String step) {
        return Optional.ofNullable(itemOf.get(step));
    }

    /** The moment of what has happened from which a link counts, in minutes. */
    int moment(Link link, PlannedStep p) {
        return time.floor(
                switch (link.from()) {
                    case "start" -> p.start();
                    case "hands-end" -> p.handsEnd();
                    default -> p.end();
                });
    }
}
