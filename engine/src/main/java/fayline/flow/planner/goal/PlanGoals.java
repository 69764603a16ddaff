package fayline.flow.planner.goal;

import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.planner.goal.PlanGoal.Dated;
import fayline.flow.project.Definition;
import fayline.flow.project.ProjectFacts.Milestone;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Part;
import fayline.flow.project.shop.PlanWeights;
import fayline.flow.record.PublishedPlan;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads out of definitions what their shop wants of a plan. */
public final class PlanGoals {
    private PlanGoals() {}

    /**
     * The goal of a shop.
     *
     * @param projects its projects; the weights are those of the first, since the shop is one
     * @param work the work of all
     * @param told the plan that the crew was told last
     * @return weights, dated goals, and what was told
     */
    public static PlanGoal of(List<Definition> projects, Work work, Optional<PublishedPlan> told) {
        PlanWeights weights =
                projects.stream().findFirst().map(d -> d.shop().weights()).orElse(PlanWeights.USUAL);
        List<Dated> dates = projects.stream()
                .flatMap(d -> d.facts().milestones().stream().map(m -> dated(d, m, work)))
                .filter(d -> !d.steps().isEmpty())
                .toList();
        return new PlanGoal(weights, dates, told);
    }

    private static Dated dated(Definition d, Milestone m, Work work) {
        Set<String> made = new HashSet<>(madeFor(d, m.after()));
        // In whichever sets: a goal on some of a part's pieces is one on all of them.
        for (Work w : work.divisions()) {
            for (PieceGroup g : w.sets().groups()) {
                boolean mine = work.sets().groups().stream()
                        .filter(x -> x.id().equals(g.id()))
                        .flatMap(x -> x.sets().stream())
                        .anyMatch(x -> made.contains(x.made()));
                if (mine && g.project().equals(d.facts().id())) {
                    g.sets().forEach(x -> made.add(x.made()));
                }
            }
        }
        Set<String> steps = work.divisions().stream()
                .flatMap(w -> w.steps().stream())
                .filter(s -> s.project().equals(d.facts().id()) && made.contains(s.made()))
                .map(WorkStep::id)
                .collect(Collectors.toSet());
        return new Dated(
                d.facts().id() + "/" + m.id(),
                m.name(),
                m.due().plusDays(1).atStartOfDay(d.shop().zone()).toInstant(),
                steps);
    }

    /**
     * What a dated goal is about.
     *
     * @param definition the project
     * @param id an assembly, part or joint
     * @return the part or joint itself, or all that belongs to the assembly and to those within it
     */
    public static Set<String> madeFor(Definition definition, String id) {
        if (definition.parts().find(id).isPresent()
                || definition.joints().find(id).isPresent()) {
            return Set.of(id);
        }
        Set<String> sets = definition.parts().stream()
                .filter(p -> p.pieces().filter(x -> x.of().id().equals(id)).isPresent())
                .map(Part::id)
                .collect(Collectors.toUnmodifiableSet());
        if (!sets.isEmpty()) {
            return sets;
        }
        Set<String> tree = new HashSet<>(Set.of(id));
        boolean grows = true;
        while (grows) {
            grows = definition.assemblies().stream()
                    .filter(a -> a.in().filter(tree::contains).isPresent())
                    .map(Assembly::id)
                    .toList()
                    .stream()
                    .anyMatch(tree::add);
        }
        return Stream.<Made>concat(definition.parts().stream(), definition.joints().stream())
                .filter(x -> tree.contains(x.in()))
                .map(Made::id)
                .collect(Collectors.toUnmodifiableSet());
    }
}
