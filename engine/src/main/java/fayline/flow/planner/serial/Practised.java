package fayline.flow.planner.serial;

import fayline.flow.plan.OppositeHands.Crew;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Those who did the same step of the first hand, as far as they are still in the shop: whom a crew must take in. */
final class Practised {
    private final List<Known> all = new ArrayList<>();

    private record Known(Set<Integer> crew, Crew wanted) {
        boolean fits(List<Person> chosen) {
            long common = chosen.stream().filter(p -> crew.contains(p.index)).count();
            return common >= wanted.least(crew.size(), chosen.size());
        }

        /** Whether nobody else than these can be in a crew of a size. */
        boolean only(int size) {
            return wanted == Crew.SAME && crew.size() >= size;
        }
    }

    /** Of a step whose first hands are placed as far as they are planned. */
    Practised(Net.Task task, Scene scene) {
        for (Net.Mate mate : task.mates) {
            if (mate.crew() != Crew.ANY && scene.isPlaced(mate.task())) {
                Set<Integer> crew = new HashSet<>(scene.placed(mate.task()).people());
                if (!crew.isEmpty()) {
                    all.add(new Known(crew, mate.crew()));
                }
            }
        }
    }

    boolean fits(List<Person> chosen) {
        return all.stream().allMatch(k -> k.fits(chosen));
    }

    /** Those who can be in a crew of a size at all, the practised first. */
    List<Person> among(List<Person> able, int size) {
        if (all.isEmpty()) {
            return able;
        }
        List<Person> first = new ArrayList<>();
        List<Person> others = new ArrayList<>();
        for (Person p : able) {
            if (all.stream().allMatch(k -> k.crew.contains(p.index))) {
                first.add(p);
            } else if (all.stream().noneMatch(k -> k.only(size) && !k.crew.contains(p.index))) {
                others.add(p);
            }
        }
        first.addAll(others);
        return first;
    }
}
