package fayline.flow.planner;

import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Works with one thing changed. */
final class Works {
    private Works() {}

    static Work withPeople(Work w, List<Worker> people) {
        return make(w, people, w.places(), w.steps(), w.holds());
    }

    /** Also takes the places that are gone out of the holds. */
    static Work withPlaces(Work w, List<Place> places) {
        Set<String> ids = places.stream().map(Place::id).collect(Collectors.toSet());
        List<Hold> holds = w.holds().stream()
                .map(h -> new Hold(
                        h.id(),
                        h.kind(),
                        h.candidates().stream().filter(ids::contains).toList(),
                        Math.min(h.count(), (int)
                                h.candidates().stream().filter(ids::contains).count()),
                        h.steps()))
                .toList();
        return make(w, w.people(), places, w.steps(), holds);
    }

    static Work withSteps(Work w, List<WorkStep> steps) {
        return make(w, w.people(), w.places(), steps, w.holds());
    }

    private static Work make(Work w, List<Worker> people, List<Place> places, List<WorkStep> steps, List<Hold> holds) {
        return new Work(
                w.version(),
                w.definition(),
                w.revision(),
                w.now(),
                w.zone(),
                w.horizon(),
                w.dustSettlesMin(),
                people,
                places,
                w.clocks(),
                w.deliveries(),
                steps,
                holds);
    }
}
