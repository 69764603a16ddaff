package fayline.flow.result.rate;

import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Made;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The times of one project, booked against reckoned.
 *
 * @param estimatedMin person-minutes of all steps at the recipes' own rates
 * @param begun every step that was begun, in the order of the definition
 * @param booked hours booked
 */
public record ProjectTimes(double estimatedMin, List<Begun> begun, BookedHours booked) {
    /** Copies the list. */
    public ProjectTimes {
        begun = List.copyOf(begun);
    }

    /**
     * A step that was begun.
     *
     * @param at when
     * @param family what counts as the same work: one step of one recipe on the parts of one assembly
     * @param id the step
     * @param kind its kind
     * @param people who worked
     * @param estimatedMin person-minutes by the recipe for the crew that did it; 0 where it gives no rate
     * @param bookedMin person-minutes booked; 0 while it is not finished
     */
    record Begun(
            Instant at,
            String family,
            String id,
            String kind,
            List<String> people,
            double estimatedMin,
            double bookedMin) {}

    /**
     * Takes a project's times.
     *
     * @param definition the definition
     * @param state what has happened
     * @param steps its steps at the recipes' own rates
     */
    public static ProjectTimes of(Definition definition, ShopState state, List<StepResult> steps) {
        BookedHours booked = BookedHours.of(definition.shop(), state);
        List<Begun> begun = new ArrayList<>();
        double estimated = 0;
        for (StepResult s : steps) {
            estimated += s.personMinutes();
            StepFacts facts = state.steps().get(s.local());
            if (facts != null) {
                begun.add(new Begun(
                        facts.started(),
                        family(definition, s),
                        s.id(),
                        s.kind().key(),
                        facts.people(),
                        estimate(s, facts.people().size()),
                        facts.handsEnded().isPresent() ? booked.minutes().getOrDefault(s.local(), 0.0) : 0));
            }
        }
        return new ProjectTimes(estimated, begun, booked);
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
