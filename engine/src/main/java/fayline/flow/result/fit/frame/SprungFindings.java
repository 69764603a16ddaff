package fayline.flow.result.fit.frame;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.frame.FrameBeams;
import fayline.flow.result.fit.frame.SprungShape.BondPull;
import fayline.flow.result.fit.frame.SprungShape.ClampPull;
import fayline.flow.result.fit.frame.SprungShape.Fitted;
import fayline.flow.result.fit.frame.SprungShape.Judged;
import fayline.flow.result.fit.frame.SprungShape.Strain;
import fayline.method.fitup.frame.spring.ClampLimits;
import fayline.method.fitup.frame.spring.SpringBackResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What must be said of a frame that was reckoned, in places. Lengths stand in the tables beside, in the reader's units. */
final class SprungFindings {
    private static final String PRACTICE = "common practice, no source";
    private static final String METHOD = "[liu-hu1997]";
    private static final String FRAME = "frame";
    private static final String BOND = "bond";

    private final List<Finding> all = new ArrayList<>();

    private SprungFindings() {}

    static List<Finding> of(FrameBeams beams, SprungShape shape, SpringBackResult result) {
        SprungFindings f = new SprungFindings();
        shape.clamps().forEach(f::clamp);
        result.findings().stream().filter(x -> x.about().equals("clamps")).forEach(f.all::add);
        shape.strains().stream().filter(Strain::beyond).forEach(f::strain);
        f.bond(shape);
        f.strength(shape);
        shape.fittings().forEach(f::fitting);
        if (beams.creeps()) {
            f.add(
                    Severity.CAUTION,
                    FRAME,
                    "The part creeps: under the load that stays in it the released shape drifts back with time, faster when"
                            + " warm. Read the gaps again after a week.",
                    PRACTICE);
        }
        return f.all.stream()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
    }

    private void add(Severity severity, String about, String sentence, String source) {
        add(severity, about, Phrase.plain(sentence), source);
    }

    private void add(Severity severity, String about, Phrase sentence, String source) {
        all.add(new Finding(severity, about, sentence, source));
    }

    private void clamp(ClampPull c) {
        String id = c.pull().clamp().id();
        if (c.beyondHand()) {
            add(
                    Severity.CAUTION,
                    FRAME,
                    Phrase.of(
                            "Clamp %s takes %s, above the hand limit of %s: do not pull it in, correct the part.",
                            id, Amount.newtons(Math.abs(c.forceN()), 0), Amount.newtons(ClampLimits.USUAL.handN(), 0)),
                    PRACTICE);
        }
        if (c.wrongWay()) {
            add(
                    Severity.STOP,
                    FRAME,
                    Phrase.of(
                            "Clamp %s can act one way only, and must act the other with %s: turn it round, or leave it out"
                                    + " and reckon again.",
                            id, Amount.newtons(Math.abs(c.forceN()), 0)),
                    METHOD);
        }
    }

    private void strain(Strain s) {
        add(
                Severity.CAUTION,
                FRAME,
                String.format(
                        Locale.ROOT,
                        "From %s to %s it bends to %.2f %% strain %s, above %.1f %%: do not pull it in, correct the part.",
                        s.from(),
                        s.to(),
                        100 * s.strain(),
                        s.when(),
                        100 * ClampLimits.USUAL.bendingStrain()),
                PRACTICE);
    }

    private void bond(SprungShape shape) {
        if (shape.bonds().isEmpty()) {
            add(
                    Severity.STOP,
                    BOND,
                    "Nothing joins part and carrier: let beams of both go through the places at which they are bonded.",
                    "the definition");
        }
        List<Phrase> open = shape.bonds().stream()
                .filter(BondPull::pulledOpen)
                .map(b -> Phrase.of("%s (%s)", b.place().id(), Amount.newtonsPerMm(b.peelNPerMm(), 2)))
                .toList();
        if (!open.isEmpty()) {
            add(
                    Severity.CAUTION,
                    BOND,
                    Phrase.of(
                            "When the clamps come off the bond is pulled open at %s. Peel lets go first and without a sign: leave"
                                    + " the clamps on until full cure, or relieve the part there.",
                            Phrase.joined(", ", open)),
                    METHOD);
        }
        String over = shape.bonds().stream()
                .filter(BondPull::overlaps)
                .map(BondPull::place)
                .map(p -> p.id())
                .collect(Collectors.joining(", "));
        if (!over.isEmpty()) {
            add(
                    Severity.STOP,
                    BOND,
                    "The bond would have to close by more than its thickness at " + over
                            + ": part and carrier would overlap, which this reckoning does not prevent.",
                    METHOD);
        }
    }

    private void strength(SprungShape shape) {
        Judged judged = shape.strength().judged();
        switch (judged) {
            case NOT_GIVEN ->
                add(
                        Severity.NOTE,
                        BOND,
                        "No strength of the bond is entered, so nothing is said of its margin.",
                        "the definition");
            case ASSUMED ->
                add(
                        Severity.NOTE,
                        BOND,
                        "The strength of the bond is assumed: its margin is no verdict. Test a sample of what is bonded.",
                        "the definition");
            case PARTLY ->
                add(
                        Severity.NOTE,
                        BOND,
                        "Of shear and peel only one strength is entered: its margin is no verdict.",
                        "the definition");
            case WITHIN -> {}
            case ABOVE ->
                add(
                        Severity.STOP,
                        BOND,
                        "The bond carries more than its entered strength at "
                                + shape.strength().at() + ": correct the part before any adhesive.",
                        "the definition");
        }
    }

    private void fitting(Fitted f) {
        String name = f.fitting().name();
        String relief = f.relief()
                .map(r -> " It is best cured at clamp " + r.clamp() + ", see the table.")
                .orElse("");
        if (f.binds()) {
            add(
                    Severity.STOP,
                    "fitting " + f.fitting().id(),
                    name
                            + " no longer meets its hole when the clamps come off: relieve or shim before adhesive, or drill the"
                            + " hole after release." + relief,
                    METHOD);
        } else if (f.inDoubt()) {
            add(
                    Severity.CAUTION,
                    "fitting " + f.fitting().id(),
                    name + " has less clearance left than twice its standard uncertainty: it may bind." + relief,
                    METHOD);
        }
    }
}
