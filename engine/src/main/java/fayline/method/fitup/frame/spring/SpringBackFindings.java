package fayline.method.fitup.frame.spring;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.method.fitup.frame.BeamStrain;
import fayline.method.fitup.frame.bond.BondForce;
import fayline.method.fitup.frame.bond.BondSpring;
import fayline.method.fitup.frame.bond.ClearanceLeft;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** What must be said about a spring-back that could be reckoned. */
final class SpringBackFindings {
    private static final String PRACTICE = "common practice, no source";
    private static final String METHOD = "[liu-hu1997]";
    private static final double LEAST_OPENING_MM = 0.01;
    private static final double TOO_STIFF = 1e6;
    private static final double PERCENT = 100;

    private final SpringBack question;
    private final SpringBackShape shape;
    private final List<Finding> findings = new ArrayList<>();

    SpringBackFindings(SpringBack question, SpringBackShape shape) {
        this.question = question;
        this.shape = shape;
    }

    List<Finding> all() {
        shape.clampForces().forEach(this::clamp);
        strain(shape.bendingClamped(), "while it is clamped");
        strain(shape.bendingReleased(), "after release");
        bond();
        shape.clearances().forEach(this::clearance);
        if (question.creeps()) {
            add(
                    Severity.CAUTION,
                    "part",
                    "Acrylic creeps: under the load that stays in it the released shape drifts back with time,"
                            + " faster when warm. Read the gaps again after a week.",
                    PRACTICE);
        }
        return findings;
    }

    private void clamp(ClampForce force) {
        String id = force.clamp().id();
        if (force.beyondHand()) {
            add(
                    Severity.CAUTION,
                    "clamp " + id,
                    Phrase.of(
                            "Clamp %s takes %s, above the hand limit of %s: do not pull it in; correct the part.",
                            id,
                            Amount.newtons(Math.abs(force.forceN()), 0),
                            Amount.newtons(question.limits().handN(), 0)),
                    PRACTICE);
        }
        if (force.wrongWay()) {
            boolean along = force.clamp().way() == Clamp.Way.ALONG_ONLY;
            add(
                    Severity.STOP,
                    "clamp " + id,
                    Phrase.of(
                            "Clamp %s can only force the part %s %s, but must act the other way with %s:"
                                    + " turn it round or leave it out and reckon again.",
                            id,
                            along ? "along" : "against",
                            force.clamp().at().freedom().symbol(),
                            Amount.newtons(Math.abs(force.forceN()), 0)),
                    METHOD);
        }
    }

    private void strain(Optional<BeamStrain> highest, String when) {
        highest.filter(s -> s.strain() > question.limits().bendingStrain())
                .ifPresent(s -> add(
                        Severity.CAUTION,
                        "bending",
                        String.format(
                                Locale.ROOT,
                                "Beam %d to %d bends to %.2f %% strain %s, above %.2f %%: do not pull it in;"
                                        + " correct the part.",
                                s.i(),
                                s.j(),
                                s.strain() * PERCENT,
                                when,
                                question.limits().bendingStrain() * PERCENT),
                        PRACTICE));
    }

    private void bond() {
        if (shape.bonds().isEmpty()) {
            add(Severity.STOP, "bond", "Nothing joins the part to the structure: share a node or give a bond.", METHOD);
        }
        for (BondForce b : shape.bonds()) {
            String where = "between node " + b.partNode() + " and node " + b.structureNode();
            if (b.overlaps()) {
                add(
                        Severity.STOP,
                        "bond",
                        Phrase.of(
                                "The bond %s would have to close by %s, more than its thickness: part and structure"
                                        + " would overlap, which this reckoning does not prevent.",
                                where, Amount.mm(Math.abs(b.openingMm().orElse(0)), 2)),
                        METHOD);
            } else if (b.openingMm().orElse(0) > LEAST_OPENING_MM) {
                add(
                        Severity.CAUTION,
                        "bond",
                        Phrase.of(
                                "On release the bond %s is pulled open by %s, %s of bond line.",
                                where,
                                Amount.mm(b.openingMm().orElse(0), 2),
                                Amount.newtonsPerMm(b.peelNPerMm().orElse(0), 2)),
                        METHOD);
            }
        }
        stiffest();
    }

    private void stiffest() {
        double frame = shape.clampForces().stream()
                .mapToDouble(f -> Math.abs(f.forceN()) / pulled(f.clamp()))
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        OptionalDouble spring = question.bonds().stream()
                .flatMapToDouble(SpringBackFindings::stiffnesses)
                .max();
        if (frame > 0 && spring.orElse(0) > TOO_STIFF * frame) {
            add(
                    Severity.NOTE,
                    "bond",
                    String.format(
                            Locale.ROOT,
                            "A bond of %.1e N/mm is more than a million times as stiff as the part: digits are lost;"
                                    + " share the node instead.",
                            spring.orElse(0)),
                    METHOD);
        }
    }

    private static double pulled(Clamp clamp) {
        return Math.abs(clamp.deviationMm() - clamp.positionMm());
    }

    private static DoubleStream stiffnesses(BondSpring b) {
        return DoubleStream.of(b.kxNPerMm(), b.kyNPerMm(), b.kzNPerMm());
    }

    private void clearance(ClearanceLeft left) {
        if (left.overlaps()) {
            add(
                    Severity.STOP,
                    "gap " + left.clearance().id(),
                    Phrase.of(
                            "Gap %s of %s would close to %s on release: part and structure would overlap,"
                                    + " which this reckoning does not prevent.",
                            left.clearance().id(), Amount.mm(left.clearance().gapMm(), 2), Amount.mm(left.gapMm(), 2)),
                    METHOD);
        }
    }

    private void add(Severity severity, String about, String sentence, String source) {
        add(severity, about, Phrase.plain(sentence), source);
    }

    private void add(Severity severity, String about, Phrase phrase, String source) {
        findings.add(new Finding(severity, about, phrase, source));
    }
}
