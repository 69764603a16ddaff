package fayline.method.fitup.frame.spring;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.frame.FrameStiffness;
import fayline.method.fitup.frame.Mechanism;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.NodeNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Clamp, bond, release by influence coefficients [liu-hu1997]: unit forces at the clamps give C; the clamps put −C⁻¹ V on the
 * part; the bond sets free of stress; on release f = K_part u₀ acts on the assembly, with the reactions of the fixture supports
 * that are let go, and U = K_assembly⁻¹ f.
 */
public final class SpringBackCalculator {
    private static final String SOURCE = "[liu-hu1997]";

    private SpringBackCalculator() {}

    /**
     * Answers the question; nodes are told by their numbers.
     *
     * @throws IllegalArgumentException if a support holds what is not there
     */
    public static SpringBackResult calculate(SpringBack question) {
        return calculate(question, NodeNames.NUMBERED);
    }

    /**
     * Answers the question.
     *
     * @param question the question
     * @param names what nodes are called where it cannot be answered
     * @throws IllegalArgumentException if a support holds what is not there
     */
    public static SpringBackResult calculate(SpringBack question, NodeNames names) {
        List<Finding> findings = new ArrayList<>();
        FrameStiffness part = FrameStiffness.of(question.part());
        FrameStiffness.Held fixture = part.held(question.partSupports());
        FrameStiffness assembly = question.bondLine().assembly();
        FrameStiffness.Held released = assembly.held(question.assemblySupports());
        Optional<Mechanism> loose = fixture.mechanism();
        loose.ifPresent(m -> say(m.words(names), "the part in its fixture", findings));
        Optional<Mechanism> adrift = released.mechanism();
        adrift.ifPresent(m -> say(m.words(names), "the bonded assembly", findings));
        if (loose.isPresent() || adrift.isPresent()) {
            return refused(SpringBackResult.Status.MECHANISM, loose.isPresent() ? loose : adrift, findings);
        }
        for (Clamp clamp : question.clamps()) {
            if (!part.has(clamp.at())) {
                throw new IllegalArgumentException("clamp " + clamp.id() + ": nothing moves at "
                        + clamp.at().words(names));
            }
            if (question.partSupports().contains(clamp.at())) {
                findings.add(new Finding(
                        Severity.STOP,
                        "clamp " + clamp.id(),
                        "Clamp " + clamp.id() + " pulls at " + clamp.at().words(names)
                                + ", which the fixture holds already: take away one of the two.",
                        SOURCE));
            }
        }
        if (!findings.isEmpty()) {
            return refused(SpringBackResult.Status.CLAMP_ON_SUPPORT, Optional.empty(), findings);
        }
        Influence influence = new Influence(fixture, question.part().nodes().size(), question.clamps());
        if (influence.dependent()) {
            findings.add(alike(
                    influence,
                    Severity.STOP,
                    "hold one and the same motion: their forces cannot be told."
                            + " Take one away or set them apart."));
            return refused(SpringBackResult.Status.CLAMPS_NOT_INDEPENDENT, Optional.empty(), findings);
        }
        if (influence.nearlyDependent()) {
            findings.add(alike(
                    influence,
                    Severity.CAUTION,
                    "hold nearly the same motion: small errors of the readings make"
                            + " large forces. Set them apart."));
        }
        DenseMatrix kc = influence.stiffness();
        List<NodalField> shapes = influence.shapes(kc);
        List<NodalField> moved = shapes.stream()
                .map(s -> released.solve(influence.forces(part, s, question.partSupports())))
                .toList();
        SpringBackShape shape = new Release(question, part, assembly, kc, shapes, moved).shape();
        findings.addAll(new SpringBackFindings(question, shape).all());
        return new SpringBackResult(
                SpringBackResult.Status.OK,
                Optional.of(shape),
                Optional.empty(),
                SpringBackFigures.of(question, shape),
                findings);
    }

    private static void say(List<String> motions, String what, List<Finding> findings) {
        for (String words : motions) {
            findings.add(new Finding(
                    Severity.STOP,
                    "supports",
                    "MECHANISM: nothing holds " + what + ": " + words + ". Hold it.",
                    SOURCE));
        }
    }

    private static Finding alike(Influence influence, Severity severity, String rest) {
        List<Clamp> two = influence.mostAlike();
        return new Finding(
                severity,
                "clamps",
                "Clamps " + two.get(0).id() + " and " + two.get(1).id() + " " + rest,
                SOURCE);
    }

    private static SpringBackResult refused(
            SpringBackResult.Status status, Optional<Mechanism> mechanism, List<Finding> findings) {
        return new SpringBackResult(status, Optional.empty(), mechanism, List.of(), findings);
    }
}
