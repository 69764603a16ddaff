package fayline.flow.result.rate;

import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Made;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import fayline.flow.result.step.StepResult;
import fayline.method.rate.BookedWork;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The times of one project, booked against reckoned.
 *
 * @param estimatedMin person-minutes of all steps at the recipes' own rates
 * @param works finished steps, in the order in which they began
 * @param booked hours booked
 * @param repeats how often each sort of step was begun, by {@link #family}
 */
public record ProjectTimes(
        double estimatedMin, List<BookedWork> works, BookedHours booked, Map<String, Integer> repeats) {
    /** Copies the collections. */
    public ProjectTimes {
        works = List.copyOf(works);
        repeats = Map.copyOf(repeats);
    }

    /**
     * Takes a project's times.
     *
     * @param definition the definition
     * @param state what has happened
     * @param steps its steps at the recipes' own rates
     */
    public static ProjectTimes of(Definition definition, ShopState state, List<StepResult> steps) {
        BookedHours booked = BookedHours.of(definition.shop(), state);
        Map<String, Integer> repeats = new HashMap<>();
        List<BookedWork> works = new ArrayList<>();
        steps.stream()
                .filter(s -> state.steps().containsKey(s.local()))
                .sorted(Comparator.comparing((StepResult s) -> begun(state, s)).thenComparing(StepResult::local))
                .forEach(s -> {
                    int repeat = repeats.merge(family(definition, s), 1, Integer::sum);
                    StepFacts facts = state.steps().get(s.local());
                    double minutes = booked.minutes().getOrDefault(s.local(), 0.0);
                    double estimate =
                            estimate(s, facts == null ? 0 : facts.people().size());
                    if (facts != null && facts.handsEnded().isPresent() && minutes > 0 && estimate > 0) {
                        works.add(new BookedWork(s.id(), s.kind().key(), facts.people(), repeat, estimate, minutes));
                    }
                });
        double estimated = steps.stream().mapToDouble(StepResult::personMinutes).sum();
        return new ProjectTimes(estimated, works, booked, repeats);
    }

    private static java.time.Instant begun(ShopState state, StepResult s) {
        StepFacts facts = state.steps().get(s.local());
        return facts == null ? state.now() : facts.started();
    }

    /** Person-minutes by the recipe for the crew that did it, where the recipe foresees such a crew. */
    private static double estimate(StepResult s, int crew) {
        List<CrewTime> hands = s.work().hands();
        return hands.stream()
                .filter(h -> h.people() == crew && h.people() != hands.get(0).people())
                .mapToDouble(h -> (double) h.minutes() * h.people())
                .findFirst()
                .orElse(s.personMinutes());
    }

    /** What counts as the same work done again: one step of one recipe on the parts of one assembly. */
    static String family(Definition definition, StepResult s) {
        String in = Stream.<Made>concat(definition.parts().stream(), definition.joints().stream())
                .filter(m -> m.id().equals(s.made()))
                .map(Made::in)
                .findFirst()
                .orElse("");
        return in + "/" + s.recipe() + "/" + s.key();
    }
}
