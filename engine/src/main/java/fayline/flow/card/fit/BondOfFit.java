package fayline.flow.card.fit;

import fayline.flow.card.CardMaker;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Joint;
import fayline.flow.project.fit.Fit;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.expand.Names;
import fayline.flow.result.step.ClockRunning;
import fayline.flow.result.step.StepResult;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which joint bonds the part of a fit, and what its results say. */
final class BondOfFit {
    private final Definition definition;
    private final ProjectResult result;
    private final Plan plan;

    BondOfFit(Definition definition, ProjectResult result, Plan plan) {
        this.definition = definition;
        this.result = result;
        this.plan = plan;
    }

    /** The joint that bonds a fit; empty where none is known. */
    Optional<FitBond> of(Fit fit) {
        List<Joint> joints = new FitWork(definition, result).joints(fit);
        return joints.stream().findFirst().flatMap(j -> bond(j, joints));
    }

    private Optional<FitBond> bond(Joint joint, List<Joint> all) {
        Names names = new Names(definition);
        Optional<StepResult> step = wetStep(joint);
        return result.joint(joint.id())
                .map(amounts -> new FitBond(
                        joint,
                        amounts,
                        names.of(joint.adhesive()),
                        all.stream()
                                .filter(j -> !j.equals(joint))
                                .map(Joint::name)
                                .toList(),
                        step.map(s -> CardMaker.make(definition, result, plan, s.id())),
                        step.map(s -> running(s.id())).orElse(List.of())));
    }

    /** The step that mixes most of the adhesive, not the one of a fillet; of equals one at work, then the first to do. */
    private Optional<StepResult> wetStep(Joint joint) {
        return result.stepsOf(joint.id()).stream()
                .filter(s -> mixedKg(s, joint) > 0)
                .min(Comparator.comparingDouble((StepResult s) -> -mixedKg(s, joint))
                        .thenComparingInt(s -> turn(s.work().state())));
    }

    private static double mixedKg(StepResult step, Joint joint) {
        return step.mixes().stream()
                .filter(m -> m.system().equals(joint.adhesive()))
                .mapToDouble(m -> m.toMix().kilograms())
                .sum();
    }

    private static int turn(WorkStep.State state) {
        return switch (state) {
            case RUNNING -> 0;
            case TODO -> 1;
            case DONE -> 2;
        };
    }

    private List<ClockRunning> running(String step) {
        return result.clocks().stream()
                .filter(c -> c.step().equals(step) && c.state().runsOut())
                .toList();
    }
}
