package fayline.flow.project.local;

import fayline.basis.units.Fraction;
import java.util.List;
import java.util.Optional;

/**
 * What the local authority asks, as far as the project's file says it.
 *
 * @param authority who it is, in the shop's words; empty where nothing is said
 * @param paid people whose work does not count as the builder's own
 * @param leastShare the share that the builder must have made, where one is asked for
 * @param tasks the list by which the share is counted
 * @param stages the stages at which somebody looks
 */
public record LocalRules(
        String authority,
        List<String> paid,
        Optional<Fraction> leastShare,
        List<LocalTask> tasks,
        List<LocalStage> stages) {
    /** Nothing is asked. */
    public static final LocalRules NONE = new LocalRules("", List.of(), Optional.empty(), List.of(), List.of());

    /** Copies the lists. */
    public LocalRules {
        paid = List.copyOf(paid);
        tasks = List.copyOf(tasks);
        stages = List.copyOf(stages);
    }

    /** A stage by its id. */
    public Optional<LocalStage> stage(String id) {
        return stages.stream().filter(s -> s.id().equals(id)).findFirst();
    }
}
