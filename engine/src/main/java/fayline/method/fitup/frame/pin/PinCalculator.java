package fayline.method.fitup.frame.pin;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.DenseMatrix;
import fayline.basis.units.Amount;
import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.NodeMotion;
import fayline.method.fitup.frame.spring.SpringBackShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Pins on rigid arms: d = u + φ × o against the same of the striker; what lies across the axis takes up the clearance. */
public final class PinCalculator {
    private static final String SOURCE = "[liu-hu1997]";
    private static final int WAYS = 6;
    private static final double CLOSE = 2;

    private PinCalculator() {}

    /**
     * Answers the question.
     *
     * @param pins the pins
     * @param shape the frame after release
     * @param deviationCovariance covariance of the deviations at the clamps, where it is known
     * @throws IllegalArgumentException if a pin's node is not there
     */
    public static PinResult calculate(
            List<LatchPin> pins, SpringBackShape shape, Optional<DenseMatrix> deviationCovariance) {
        List<PinShift> shifts =
                pins.stream().map(p -> shift(p, shape, deviationCovariance)).toList();
        List<Finding> findings = new ArrayList<>();
        shifts.forEach(s -> judge(s).ifPresent(findings::add));
        return new PinResult(shifts, findings);
    }

    private static PinShift shift(LatchPin pin, SpringBackShape shape, Optional<DenseMatrix> covariance) {
        requireNode(pin, pin.place(), shape);
        pin.striker().ifPresent(s -> requireNode(pin, s, shape));
        FramePoint d = move(pin.place(), shape);
        NodeMotion turn = motion(pin.place(), shape);
        FramePoint lean = new FramePoint(turn.rx(), turn.ry(), turn.rz());
        if (pin.striker().isPresent()) {
            PinPlace striker = pin.striker().get();
            d = d.from(move(striker, shape));
            NodeMotion other = motion(striker, shape);
            lean = lean.from(new FramePoint(other.rx(), other.ry(), other.rz()));
        }
        FramePoint lateral = across(d, pin.axis());
        return new PinShift(
                pin,
                d,
                lateral.lengthMm(),
                d.along(pin.axis()),
                pin.radialClearanceMm() - lateral.lengthMm(),
                across(lean, pin.axis()).lengthMm(),
                std(pin, shape, lateral, covariance),
                sensitivity(pin, shape));
    }

    private static FramePoint across(FramePoint d, Axis axis) {
        double along = d.along(axis);
        return d.from(new FramePoint(along * axis.x(), along * axis.y(), along * axis.z()));
    }

    private static NodeMotion motion(PinPlace place, SpringBackShape shape) {
        return (place.ofPart() ? shape.part() : shape.structure()).at(place.node());
    }

    private static FramePoint move(PinPlace place, SpringBackShape shape) {
        return motion(place, shape).at(place.arm());
    }

    private static OptionalDouble std(
            LatchPin pin, SpringBackShape shape, FramePoint lateral, Optional<DenseMatrix> covariance) {
        if (covariance.isEmpty() || !(lateral.lengthMm() > 0)) {
            return OptionalDouble.empty();
        }
        Axis way = Axis.of(lateral);
        double[] row = new double[shape.perDeviation().size()];
        for (int j = 0; j < row.length; j++) {
            NodalField unit = shape.perDeviation().get(j);
            FramePoint d = unit.at(pin.place().node()).at(pin.place().arm());
            if (pin.striker().isPresent()) {
                PinPlace striker = pin.striker().get();
                d = d.from(unit.at(striker.node()).at(striker.arm()));
            }
            row[j] = d.along(way);
        }
        DenseMatrix s = DenseMatrix.of(new double[][] {row});
        double variance = s.times(covariance.get()).times(s.transposed()).get(0, 0);
        return OptionalDouble.of(Math.sqrt(Math.max(0, variance)));
    }

    private static DenseMatrix sensitivity(LatchPin pin, SpringBackShape shape) {
        double[][] rows = new double[WAYS][shape.perDeviation().size()];
        for (int j = 0; j < shape.perDeviation().size(); j++) {
            NodeMotion m = shape.perDeviation().get(j).at(pin.place().node());
            double[] six = {m.ux(), m.uy(), m.uz(), m.rx(), m.ry(), m.rz()};
            for (int k = 0; k < WAYS; k++) {
                rows[k][j] = six[k];
            }
        }
        return DenseMatrix.of(rows);
    }

    private static void requireNode(LatchPin pin, PinPlace place, SpringBackShape shape) {
        if (place.node() < 0 || place.node() >= shape.part().nodes()) {
            throw new IllegalArgumentException("pin " + pin.id() + " is at node " + place.node() + "; there are "
                    + shape.part().nodes());
        }
    }

    private static Optional<Finding> judge(PinShift s) {
        String about = "pin " + s.pin().id();
        if (s.binds()) {
            return Optional.of(new Finding(
                    Severity.STOP,
                    about,
                    Phrase.of(
                            "BINDS: pin %s goes %s off its axis, its clearance is %s: shim or relieve before"
                                    + " adhesive, or drill its hole after release.",
                            s.pin().id(),
                            Amount.mm(s.lateralMm(), 2),
                            Amount.mm(s.pin().radialClearanceMm(), 2)),
                    SOURCE));
        }
        double std = s.lateralStdMm().orElse(0);
        if (std > 0 && s.clearanceLeftMm() < CLOSE * std) {
            return Optional.of(new Finding(
                    Severity.CAUTION,
                    about,
                    Phrase.of(
                            "Pin %s has %s of clearance left, less than two standard deviations of %s: it may bind.",
                            s.pin().id(), Amount.mm(s.clearanceLeftMm(), 2), Amount.mm(std, 2)),
                    SOURCE));
        }
        return Optional.empty();
    }
}
