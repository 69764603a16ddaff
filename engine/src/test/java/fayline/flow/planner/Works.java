package fayline.flow.planner;

import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Work;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Works with one thing changed. */
final class Works {
    private Works() {}

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
        return w.withPlaces(places, holds);
    }
}
