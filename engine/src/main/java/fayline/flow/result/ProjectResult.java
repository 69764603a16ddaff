package fayline.flow.result;

import fayline.basis.finding.Finding;
import fayline.flow.plan.Work;
import fayline.flow.result.air.AirNow;
import fayline.flow.result.air.ShopAir;
import fayline.flow.result.quantity.JointResult;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.step.ClockRunning;
import fayline.flow.result.step.MouldUse;
import fayline.flow.result.step.OpenWindow;
import fayline.flow.result.step.StepResult;
import fayline.flow.result.stock.StoresResult;
import java.util.List;
import java.util.Optional;

/**
 * Everything that follows from a definition and what has happened, before anything is planned.
 *
 * @param definition hash of the definition it was made from
 * @param project the project
 * @param revision revision of the design
 * @param parts each part, in the order of the definition
 * @param joints each joint, in the order of the definition
 * @param steps every step, in the order of the definition: done, running and to do
 * @param needs what all steps together draw, done ones included, one entry for each thing
 * @param clocks cures that run or ran to a state within the last days, soonest state first
 * @param windows windows that count already, the one that shuts first leading
 * @param air the shop's air over time
 * @param airNow the shop's air as last read
 * @param stores the stores against the steps to do, in the order of the definition; with dates once there is a plan, see
 *     {@link fayline.flow.result.stock.StoresCheck}
 * @param moulds release state of every mould
 * @param work the work for the planner
 * @param findings what all of this says about the work, parts' and steps' own findings included
 */
public record ProjectResult(
        String definition,
        String project,
        String revision,
        List<PartResult> parts,
        List<JointResult> joints,
        List<StepResult> steps,
        List<Need> needs,
        List<ClockRunning> clocks,
        List<OpenWindow> windows,
        ShopAir air,
        AirNow airNow,
        StoresResult stores,
        List<MouldUse> moulds,
        Work work,
        List<Finding> findings) {
    /** Copies the lists. */
    public ProjectResult {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        steps = List.copyOf(steps);
        needs = List.copyOf(needs);
        clocks = List.copyOf(clocks);
        windows = List.copyOf(windows);
        moulds = List.copyOf(moulds);
        findings = List.copyOf(findings);
    }

    /** The step with an id, {@code project/made/make-number/key}. */
    public Optional<StepResult> step(String id) {
        return steps.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** The steps of a part or joint, in order. */
    public List<StepResult> stepsOf(String made) {
        return steps.stream().filter(s -> s.made().equals(made)).toList();
    }

    /** The quantities of a part. */
    public Optional<PartResult> part(String id) {
        return parts.stream().filter(p -> p.part().equals(id)).findFirst();
    }

    /** The quantities of a joint. */
    public Optional<JointResult> joint(String id) {
        return joints.stream().filter(j -> j.joint().equals(id)).findFirst();
    }
}
