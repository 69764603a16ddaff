package fayline.flow.card.fit;

import fayline.flow.plan.WorkStep;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Joint;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.step.StepResult;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which work a fit belongs to: the joints that bond its part, and the steps at which it is read or set. */
public final class FitWork {
    private final Definition definition;
    private final ProjectResult result;

    /** In a project. */
    public FitWork(Definition definition, ProjectResult result) {
        this.definition = definition;
        this.result = result;
    }

    /**
     * The joints of a fit's part, the one that bonds this fit at their head: the joint that the fit names; where it names none,
     * of those that take adhesive one with a neighbour of the fit before one of the part alone, which bonds it to what it lies
     * against, before any other; of equals one with work to do.
     */
    public List<Joint> joints(Fit fit) {
        return definition.joints().stream()
                .filter(j -> isNamed(fit, j)
                        || (isGlued(j)
                                && fit.part().filter(j.between()::contains).isPresent()))
                .sorted(Comparator.comparing((Joint j) -> !isNamed(fit, j))
                        .thenComparingInt(j -> farness(j, fit))
                        .thenComparing(this::isDone))
                .toList();
    }

    /** The fits that are read dry or set at a step: those bonded by its joint, and those of its part where it is a dry fit. */
    public List<Fit> at(StepResult step) {
        if (step.kind() != StepKind.DRY_FIT && step.kind() != StepKind.BOND) {
            return List.of();
        }
        return definition.fits().stream()
                .filter(f -> bonds(f, step.made())
                        || (step.kind() == StepKind.DRY_FIT && f.part().equals(Optional.of(step.made()))))
                .toList();
    }

    private boolean bonds(Fit fit, String joint) {
        return joints(fit).stream()
                .findFirst()
                .filter(j -> j.id().equals(joint))
                .isPresent();
    }

    private static boolean isNamed(Fit fit, Joint joint) {
        return fit.joint().equals(Optional.of(joint.id()));
    }

    private static int farness(Joint joint, Fit fit) {
        if (joint.between().stream().anyMatch(fit.against()::contains)) {
            return 0;
        }
        return joint.between().size() == 1 ? 1 : 2;
    }

    private boolean isGlued(Joint joint) {
        return result.joint(joint.id())
                .filter(r -> r.adhesive().kilograms() > 0)
                .isPresent();
    }

    private boolean isDone(Joint joint) {
        return result.stepsOf(joint.id()).stream().allMatch(s -> s.work().state() == WorkStep.State.DONE);
    }
}
