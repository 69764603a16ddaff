package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.frame.FrameAdhesive;
import fayline.flow.project.fit.frame.FrameBeams;
import fayline.flow.project.fit.frame.FrameFitting;
import fayline.flow.project.fit.frame.FrameFitting.Body;
import fayline.flow.project.fit.frame.FramePlace;
import fayline.flow.project.fit.frame.FrameWidth;
import fayline.flow.result.fit.frame.SprungShape.BondPull;
import fayline.flow.result.fit.frame.SprungShape.ClampPull;
import fayline.flow.result.fit.frame.SprungShape.Fitted;
import fayline.flow.result.fit.frame.SprungShape.Moved;
import fayline.flow.result.fit.frame.SprungShape.Strain;
import fayline.flow.result.fit.frame.SprungShape.WidthChange;
import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.BeamStrain;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.bond.BondForce;
import fayline.method.fitup.frame.pin.LatchPin;
import fayline.method.fitup.frame.pin.PinCalculator;
import fayline.method.fitup.frame.pin.PinPlace;
import fayline.method.fitup.frame.pin.PinRelief;
import fayline.method.fitup.frame.pin.PinReliefCalculator;
import fayline.method.fitup.frame.pin.PinShift;
import fayline.method.fitup.frame.spring.ClampForce;
import fayline.method.fitup.frame.spring.SpringBack;
import fayline.method.fitup.frame.spring.SpringBackShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Tells the solution of the beams in places. */
final class SprungShapes {
    private static final double LEAST_LATERAL_MM = 1e-6;

    private final SprungQuestion asked;
    private final FrameBeams beams;
    private final SprungNodes nodes;
    private final SpringBack question;
    private final SpringBackShape solved;
    private final List<Pull> pulls;

    SprungShapes(
            SprungQuestion asked,
            FrameBeams beams,
            SprungNodes nodes,
            SpringBack question,
            SpringBackShape solved,
            List<Pull> pulls) {
        this.asked = asked;
        this.beams = beams;
        this.nodes = nodes;
        this.question = question;
        this.solved = solved;
        this.pulls = pulls;
    }

    SprungShape shape() {
        List<BondPull> bonds = bonds();
        return new SprungShape(
                beams.places().stream().map(this::moved).toList(),
                clamps(),
                bonds,
                BondStrength.of(beams.adhesive(), bonds),
                fittings(),
                widths(),
                strains());
    }

    private Moved moved(FramePlace p) {
        Optional<Integer> part = nodes.part(p.id());
        return new Moved(
                p,
                part.map(n -> at(solved.free().plus(solved.clamped()), n)),
                part.map(n -> at(solved.clamped(), n)),
                part.map(n -> at(solved.part(), n)),
                nodes.carrier(p.id()).map(n -> at(solved.structure(), n)));
    }

    private static FramePoint at(NodalField field, int node) {
        return field.at(node).shift();
    }

    private List<ClampPull> clamps() {
        List<ClampPull> all = new ArrayList<>();
        for (int i = 0; i < pulls.size(); i++) {
            ClampForce f = solved.clampForces().get(i);
            all.add(new ClampPull(pulls.get(i), f.forceN(), f.beyondHand(), f.wrongWay()));
        }
        return all;
    }

    private List<BondPull> bonds() {
        List<BondPull> all = new ArrayList<>();
        for (BondForce b : solved.bonds()) {
            FramePlace place = beams.place(nodes.node(b.partNode())).orElseThrow();
            double run = beams.adhesive().isPresent()
                    ? b.runMm()
                    : place.runMm().orElse(question.structure().tributaryMm(b.structureNode()));
            FramePoint force = b.force().shift();
            double peel = beams.adhesive()
                    .map(a -> force.along(a.opens().axis()) / run)
                    .orElse(0.0);
            double shear = Math.sqrt(Math.max(0, force.lengthMm() * force.lengthMm() / (run * run) - peel * peel));
            all.add(new BondPull(place, run, peel, shear, b.openingMm(), b.overlaps(), stress(peel), stress(shear)));
        }
        return all;
    }

    private OptionalDouble stress(double nPerMm) {
        return beams.adhesive()
                .map(FrameAdhesive::widthMm)
                .map(w -> OptionalDouble.of(nPerMm / w))
                .orElse(OptionalDouble.empty());
    }

    private List<Fitted> fittings() {
        List<LatchPin> pins = beams.fittings().stream().map(this::pin).toList();
        List<PinShift> shifts = PinCalculator.calculate(pins, solved, question.deviationCovariance())
                .pins();
        List<Fitted> all = new ArrayList<>();
        for (int i = 0; i < pins.size(); i++) {
            PinShift s = shifts.get(i);
            Optional<PinRelief> relief = s.lateralMm() > LEAST_LATERAL_MM
                    ? PinReliefCalculator.calculate(pins.get(i), s, question.clamps(), solved).stream()
                            .findFirst()
                    : Optional.empty();
            all.add(new Fitted(
                    beams.fittings().get(i),
                    s.displacement(),
                    s.lateralMm(),
                    s.clearanceLeftMm(),
                    s.lateralStdMm(),
                    relief));
        }
        return all;
    }

    private LatchPin pin(FrameFitting f) {
        Optional<PinPlace> hole = f.hole() == Body.STILL
                ? Optional.empty()
                : Optional.of(new PinPlace(node(f, f.hole()), f.arm(), f.hole() == Body.PART));
        return new LatchPin(
                f.id(),
                new PinPlace(node(f, f.on()), f.arm(), f.on() == Body.PART),
                f.axis().axis(),
                f.clearanceMm(),
                hole);
    }

    private int node(FrameFitting f, Body body) {
        return (body == Body.PART ? nodes.part(f.at()) : nodes.carrier(f.at()))
                .orElseThrow(() -> new IllegalArgumentException(
                        "Fitting " + f.id() + " is at " + f.at() + ", where what it is fixed to has no beam"));
    }

    private List<WidthChange> widths() {
        List<WidthChange> all = new ArrayList<>();
        for (WidthAnswer w : asked.widths().widths()) {
            change(w.width()).ifPresent(c -> all.add(new WidthChange(w.width().id(), c, read(w))));
        }
        return all;
    }

    private static OptionalDouble read(WidthAnswer w) {
        return w.trials().stream()
                .filter(WidthAnswer.MadeTrial::whole)
                .reduce((a, b) -> b)
                .map(t -> OptionalDouble.of(
                        t.clampedMm().getAsDouble() - t.bareMm().getAsDouble()))
                .orElse(OptionalDouble.empty());
    }

    private Optional<Double> change(FrameWidth w) {
        if (w.between().size() != 2) {
            return Optional.empty();
        }
        Optional<Integer> a = nodes.carrier(w.between().get(0));
        Optional<Integer> b = nodes.carrier(w.between().get(1));
        if (a.isEmpty() || b.isEmpty()) {
            return Optional.empty();
        }
        FramePoint arm = question.structure()
                .nodes()
                .get(b.get())
                .from(question.structure().nodes().get(a.get()));
        FramePoint apart = at(solved.structure(), b.get()).from(at(solved.structure(), a.get()));
        return Optional.of(apart.along(Axis.of(arm)));
    }

    private List<Strain> strains() {
        List<Strain> all = new ArrayList<>();
        solved.bendingClamped().ifPresent(s -> all.add(strain("under the clamps", s)));
        solved.bendingReleased().ifPresent(s -> all.add(strain("after release", s)));
        return all;
    }

    private Strain strain(String when, BeamStrain s) {
        return new Strain(
                when,
                nodes.node(s.i()),
                nodes.node(s.j()),
                s.strain(),
                s.strain() > question.limits().bendingStrain());
    }
}
