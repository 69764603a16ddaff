package fayline.method.fitup.frame.load;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.method.fitup.frame.FrameStiffness;
import fayline.method.fitup.frame.Mechanism;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.NodeFreedom;
import java.util.List;
import java.util.Optional;

/** Motions and reactions of a frame of straight beams on supports, small motions [przemieniecki1968]. */
public final class FrameCalculator {
    private FrameCalculator() {}

    /**
     * Answers the question.
     *
     * @throws IllegalArgumentException if a support or a load is where nothing moves
     */
    public static FrameResult calculate(FrameCase question) {
        FrameStiffness stiffness = FrameStiffness.of(question.frame());
        FrameStiffness.Held held = stiffness.held(question.supports());
        Optional<Mechanism> mechanism = held.mechanism();
        if (mechanism.isPresent()) {
            List<Finding> findings = mechanism.get().words().stream()
                    .map(w -> new Finding(
                            Severity.STOP,
                            "supports",
                            "MECHANISM: the frame is not held: " + w + ". Hold it.",
                            "[przemieniecki1968]"))
                    .toList();
            return new FrameResult(Optional.empty(), Optional.empty(), mechanism, findings);
        }
        NodalField forces = NodalField.zero(question.frame().nodes().size());
        for (FrameLoad load : question.loads()) {
            if (!stiffness.has(load.at())) {
                throw new IllegalArgumentException(load.at().words() + " cannot be loaded: nothing moves there");
            }
            forces = forces.with(load.at(), forces.get(load.at()) + load.value());
        }
        NodalField motion = held.solve(forces);
        NodalField reactions = NodalField.zero(forces.nodes());
        NodalField rest = stiffness.times(motion).minus(forces);
        for (NodeFreedom s : question.supports()) {
            reactions = reactions.with(s, rest.get(s));
        }
        return new FrameResult(Optional.of(motion), Optional.of(reactions), Optional.empty(), List.of());
    }
}
