package fayline.flow.audit;

import fayline.flow.plan.Place;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Finds places of one kind that two holds take at the same moment. Holds that both had begun are left in peace. */
final class TakenPlaces {
    private TakenPlaces() {}

    static List<BrokenRule> twice(Audited audited, Place.Kind kind, PlanRule rule) {
        Map<String, List<Occupation>> byPlace = audited.occupations().stream()
                .filter(o ->
                        audited.place(o.place()).filter(p -> p.kind() == kind).isPresent())
                .sorted(Comparator.comparing(Occupation::from)
                        .thenComparing(o -> o.hold().id()))
                .collect(Collectors.groupingBy(Occupation::place, TreeMap::new, Collectors.toList()));
        List<BrokenRule> found = new ArrayList<>();
        byPlace.forEach((place, taken) -> {
            for (int i = 0; i < taken.size(); i++) {
                for (int j = i + 1; j < taken.size(); j++) {
                    Occupation one = taken.get(i);
                    Occupation other = taken.get(j);
                    if (one.overlaps(other) && !(one.begun() && other.begun())) {
                        found.add(rule.broken(other.first(), one.first(), sentence(audited, place, one, other)));
                    }
                }
            }
        });
        return found;
    }

    private static String sentence(Audited audited, String place, Occupation one, Occupation other) {
        return place + " is taken from " + audited.tell(other.from()) + " on by " + other.first() + " (hold "
                + other.hold().id() + "), while " + one.first() + " (hold "
                + one.hold().id() + ") has it from "
                + audited.tell(one.from()) + " " + until(audited, one.to()) + "; expected one at a time";
    }

    private static String until(Audited audited, Instant to) {
        return to.equals(Instant.MAX) ? "for good, because a step of it is not planned" : "to " + audited.tell(to);
    }
}
