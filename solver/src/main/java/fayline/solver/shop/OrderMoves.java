package fayline.solver.shop;

import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.planner.serial.WishedSchedule;
import fayline.flow.planner.serial.WishedSchedule.Sooner;
import fayline.flow.planner.serial.WishedSchedule.Wish;
import fayline.solver.shop.ShopCase.Item;
import fayline.solver.shop.ShopCase.Tie;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Small changes of the order in which a plan is put together: a part or a step sooner, a part later, other crews, another order
 * of some days. What the model cannot see (air, cures to the minute, idle people) is in the plan that is made of it.
 */
final class OrderMoves {
    private static final int DAY = 24 * 60;
    private static final double FARTHEST_DAYS = 14;

    private final ShopCase shop;
    private final WishedSchedule schedule;
    private final Function<Plan, List<Wish>> wishesOf;
    private final SplittableRandom random;
    private final List<String> made;
    private final List<Item> byTies;

    OrderMoves(ShopCase shop, WishedSchedule schedule, Function<Plan, List<Wish>> wishesOf, int seed) {
        this.shop = shop;
        this.schedule = schedule;
        this.wishesOf = wishesOf;
        random = new SplittableRandom(seed);
        made = shop.items.stream().map(OrderMoves::made).distinct().toList();
        byTies = tiesFirst(shop);
    }

    /** A plan with one change; empty where the change leads nowhere. */
    Optional<Plan> next(Plan from) {
        Wish[] was = new Wish[shop.items.size()];
        wishesOf.apply(from).forEach(w -> was[shop.itemOf(w.step()).orElseThrow()] = w);
        Wish[] of = was.clone();
        change(of);
        inOrder(of);
        for (int i = 0; i < of.length; i++) {
            of[i] = was[i].stays() ? was[i] : of[i];
        }
        return schedule.planOnce(List.of(of), random.nextBoolean() ? Sooner.BY_ANYBODY : Sooner.BY_THE_SAME);
    }

    private void change(Wish[] of) {
        Set<String> parts = new HashSet<>();
        for (int i = 0; i <= random.nextInt(2); i++) {
            parts.add(made.get(random.nextInt(made.size())));
        }
        int one = random.nextInt(of.length);
        int by = by();
        switch (random.nextInt(8)) {
            case 0, 1 -> each(of, parts, w -> moved(w, -by));
            case 2 ->
                each(of, parts, w -> new Wish(w.step(), w.start() + by, w.crew(), w.people(), w.places(), w.missed()));
            case 3, 4 -> {
                each(of, parts, w -> random.nextInt(3) == 0 ? otherCrew(w) : w);
                of[one] = otherCrew(of[one]);
            }
            case 5 -> shuffle(of, of[one].start());
            default -> of[one] = moved(of[one], -by / 3);
        }
    }

    /** Mostly hours, seldom weeks. */
    private int by() {
        double part = random.nextDouble();
        return 60 + (int) (part * part * FARTHEST_DAYS * DAY);
    }

    private void each(Wish[] of, Set<String> parts, UnaryOperator<Wish> change) {
        for (Item item : shop.items) {
            if (parts.contains(made(item))) {
                of[item.index] = change.apply(of[item.index]);
            }
        }
    }

    private static Wish moved(Wish w, int by) {
        return new Wish(w.step(), w.start() + by, w.crew(), List.of(), List.of(), List.of());
    }

    private Wish otherCrew(Wish w) {
        List<CrewTime> hands =
                shop.items.get(shop.itemOf(w.step()).orElseThrow()).step.hands();
        if (hands.isEmpty()) {
            return w;
        }
        int crew = hands.get(random.nextInt(hands.size())).people();
        return new Wish(w.step(), w.start(), crew, List.of(), w.places(), List.of());
    }

    private void shuffle(Wish[] of, int from) {
        int to = from + (1 + random.nextInt(4)) * DAY;
        for (int i = 0; i < of.length; i++) {
            Wish w = of[i];
            if (w.start() >= from && w.start() < to) {
                int by = random.nextInt(2 * DAY) - DAY;
                of[i] = new Wish(w.step(), w.start() + by, w.crew(), List.of(), w.places(), w.missed());
            }
        }
    }

    /** No step is wished for before those that it waits for. */
    private void inOrder(Wish[] of) {
        for (Item item : byTies) {
            int from = of[item.index].start();
            for (Tie tie : item.ties) {
                from = Math.max(from, tie.item().map(i -> of[i].start()).orElse(from));
            }
            Wish w = of[item.index];
            of[item.index] = new Wish(w.step(), from, w.crew(), w.people(), w.places(), w.missed());
        }
    }

    private static List<Item> tiesFirst(ShopCase shop) {
        int[] depth = new int[shop.items.size()];
        boolean deeper = true;
        while (deeper) {
            deeper = false;
            for (Item item : shop.items) {
                for (Tie tie : item.ties) {
                    int least = tie.item().map(i -> depth[i] + 1).orElse(0);
                    deeper |= depth[item.index] < least;
                    depth[item.index] = Math.max(depth[item.index], least);
                }
            }
        }
        return shop.items.stream()
                .sorted(Comparator.comparingInt((Item i) -> depth[i.index]).thenComparingInt(i -> i.index))
                .toList();
    }

    private static String made(Item i) {
        return i.step.project() + "/" + i.step.made();
    }
}
