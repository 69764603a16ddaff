package fayline.flow.result.expand;

import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.Definition;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.result.mix.MixJob;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.mix.MixPlanner;
import fayline.flow.result.quantity.Shape;
import fayline.flow.result.step.StepResult;
import java.util.List;
import java.util.Optional;

/** The scale lists of a step once it is known who mixes, when and how warm it will be: what stands on the card. */
public final class PlannedMixes {
    private final Definition definition;
    private final MakeTree tree;
    private final MixJobs jobs;
    private final MixPlanner mixer;

    /**
     * Prepares scale lists.
     *
     * @param definition the definition
     */
    public PlannedMixes(Definition definition) {
        Amounts amounts = new Amounts(definition);
        this.definition = definition;
        this.tree = new MakeTree(definition);
        this.jobs = new MixJobs(definition, amounts, new HandsOn(amounts));
        this.mixer = new MixPlanner(definition);
    }

    /**
     * The scale lists of a step.
     *
     * @param result the step
     * @param at the temperature expected where it is mixed and applied
     * @param people how many work on it
     * @param dayLeft how long the crew is still there from its start; empty for a whole day
     */
    public List<MixList> lists(StepResult result, Temperature at, int people, Optional<TimeSpan> dayLeft) {
        for (MakeNode node : tree.all()) {
            if (node.made().id().equals(result.made()) && node.number() == result.make()) {
                Optional<RecipeStep> step = node.step(result.key());
                Shape shape = Shape.of(definition, node.made());
                return step.stream()
                        .flatMap(s -> jobs.of(node, s, shape, result.mixes(), at, people, dayLeft).stream())
                        .map((MixJob j) -> mixer.list(j))
                        .toList();
            }
        }
        return List.of();
    }
}
