package fayline.flow.result.expand;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.result.mix.StepMix;
import fayline.flow.result.quantity.Shape;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Looks at a recipe on a part for what should be there: a leak test before resin is mixed, a step that lays each stage, the
 * cautions that belong to what is used (common practice, no source).
 */
final class RecipeCheck {
    private static final Set<StepKind> IRREVERSIBLE =
            EnumSet.of(StepKind.CUT, StepKind.LAY_UP, StepKind.COAT, StepKind.TRIM, StepKind.BOND);

    /** What is missing. */
    List<Finding> check(MakeNode node, Shape shape) {
        List<Finding> findings = new ArrayList<>();
        Optional<RecipeStep> bag =
                node.steps().stream().filter(RecipeStep::bagged).findFirst();
        Optional<RecipeStep> mix =
                node.steps().stream().filter(s -> !s.mixes().isEmpty()).findFirst();
        if (bag.isPresent() && mix.isPresent()) {
            boolean tested =
                    node.steps().stream().takeWhile(s -> !s.equals(mix.get())).anyMatch(RecipeCheck::testsForLeaks);
            if (!tested) {
                findings.add(new Finding(
                        Severity.CAUTION,
                        node.made().id() + "/" + node.number(),
                        "Recipe " + node.recipe().name() + " mixes resin before any bag was tested for leaks: a leak is"
                                + " found when the clock already runs. Put a dry leak test before \""
                                + mix.get().title() + "\".",
                        "common practice, no source"));
            }
        }
        if (node.made() instanceof Part part && node.number() == part.make().size()) {
            findings.addAll(unlaid(node, shape));
        }
        return findings;
    }

    /** Stages of a part for which no make of it has a step; judged by the last make, whose own stages are known here. */
    private static List<Finding> unlaid(MakeNode node, Shape shape) {
        if (node.number() > 1) {
            return List.of();
        }
        Set<Integer> laid = new LinkedHashSet<>();
        node.steps().stream().filter(s -> !s.bagged()).forEach(s -> laid.add(node.stage(s)));
        return shape.plies(0).stream()
                .map(p -> p.stage())
                .distinct()
                .filter(s -> !laid.contains(s))
                .map(s -> new Finding(
                        Severity.CAUTION,
                        node.made().id(),
                        "Stage " + s + " of " + node.made().name() + " is drawn but no step of "
                                + node.recipe().name() + " lays it.",
                        "the definition"))
                .toList();
    }

    private static boolean testsForLeaks(RecipeStep step) {
        return Stream.of(List.of(step.id(), step.title()), step.say(), step.checks())
                .flatMap(List::stream)
                .anyMatch(t -> t.toLowerCase(Locale.ROOT).contains("leak"));
    }

    /** On a part with a hand, the first step that cannot be undone if it was done the wrong way round. */
    Optional<RecipeStep> firstIrreversible(MakeNode node) {
        boolean handed = node.made() instanceof Part p && p.hand() != Hand.NONE;
        return handed
                ? node.steps().stream()
                        .filter(s -> IRREVERSIBLE.contains(s.kind()))
                        .findFirst()
                : Optional.empty();
    }

    /** Keys of the cautions of a step: the recipe's own, then those of what it mixes and does. */
    List<String> cautions(Definition definition, RecipeStep step, StepAmounts amounts) {
        Set<String> keys = new LinkedHashSet<>(step.cautions());
        for (StepMix mix : amounts.mixes()) {
            definition.systems().find(mix.system()).ifPresent(s -> keys.addAll(s.hazards()));
        }
        if (step.bagged()) {
            keys.add("vacuum");
        }
        if (step.air() == RecipeStep.Air.DUST) {
            keys.add("dust");
        }
        if (step.kind() == StepKind.CLOSE_OUT) {
            keys.add("close-out");
        }
        return List.copyOf(keys);
    }
}
