package fayline.solver.net;

import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.Net.Activity;
import fayline.flow.plan.net.Net.Lag;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Nets drawn by a seed. */
final class InventedNets {
    private static final int CAPACITY = 10;

    private InventedNets() {}

    /** Every activity after one or two earlier ones, two resources. */
    static Net plain(int activities, long seed) {
        Random random = new Random(seed);
        List<Activity> all = new ArrayList<>();
        List<Lag> lags = new ArrayList<>();
        for (int i = 0; i < activities; i++) {
            all.add(new Activity("a" + i, random.nextInt(8), List.of(1 + random.nextInt(6), random.nextInt(7))));
            for (int x = 0; i > 1 && x < 2; x++) {
                int from = random.nextInt(i);
                lags.add(new Lag(from, i, all.get(from).duration()));
            }
        }
        return new Net(all, lags, List.of(CAPACITY, CAPACITY));
    }

    /** The same with a maximum lag on some of the pairs; a schedule need not exist. */
    static Net lagged(int activities, long seed) {
        Net plain = plain(activities, seed);
        Random random = new Random(seed + 1);
        List<Lag> lags = new ArrayList<>(plain.lags());
        for (Lag l : plain.lags()) {
            if (random.nextInt(3) == 0) {
                lags.add(new Lag(l.to(), l.from(), -l.least() - random.nextInt(6)));
            }
        }
        return new Net(plain.activities(), lags, plain.capacities());
    }

    /** One more resource, of which every third activity takes more than half. */
    static Net withOneMoreResource(Net net) {
        List<Activity> all = new ArrayList<>();
        for (Activity a : net.activities()) {
            List<Integer> demands = new ArrayList<>(a.demands());
            demands.add(all.size() % 3 == 0 ? CAPACITY / 2 + 1 : 0);
            all.add(new Activity(a.name(), a.duration(), demands));
        }
        List<Integer> capacities = new ArrayList<>(net.capacities());
        capacities.add(CAPACITY);
        return new Net(all, net.lags(), capacities);
    }

    /** More of each resource. */
    static Net withMoreOfEach(Net net) {
        return new Net(
                net.activities(),
                net.lags(),
                net.capacities().stream().map(c -> c + 2).toList());
    }

    /** Every duration and lag so many times as long. */
    static Net scaled(Net net, int factor) {
        return new Net(
                net.activities().stream()
                        .map(a -> new Activity(a.name(), a.duration() * factor, a.demands()))
                        .toList(),
                net.lags().stream()
                        .map(l -> new Lag(l.from(), l.to(), l.least() * factor))
                        .toList(),
                net.capacities());
    }

    /** Nothing between activities but resources, so that a shortest schedule can be told by hand: all alike, two at a time. */
    static Net twoAtATime(int activities, int duration) {
        return new Net(
                Collections.nCopies(activities, new Activity("x", duration, List.of(5))), List.of(), List.of(CAPACITY));
    }
}
