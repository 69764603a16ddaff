package fayline.method.fitup.frame.pin;

import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.spring.Clamp;
import fayline.method.fitup.frame.spring.SpringBackShape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * At which clamp the part is best relieved so that a pin meets its hole: the shift across the pin's axis is linear in the
 * deviations, d + g·x; x = −d·g/g·g leaves the least of it [liu-hu1997].
 */
public final class PinReliefCalculator {
    private static final double NO_EFFECT = 1e-9;

    private PinReliefCalculator() {}

    /**
     * Answers for one pin.
     *
     * @param pin the pin
     * @param shift how it moves
     * @param clamps the clamps, in the order of the shape
     * @param shape the frame after release
     * @return one for each clamp that moves the pin at all, what leaves least first, of equals the smallest change
     */
    public static List<PinRelief> calculate(LatchPin pin, PinShift shift, List<Clamp> clamps, SpringBackShape shape) {
        FramePoint d = across(shift.displacement(), pin.axis());
        List<PinRelief> all = new ArrayList<>();
        for (int j = 0; j < clamps.size(); j++) {
            NodalField unit = shape.perDeviation().get(j);
            FramePoint g = unit.at(pin.place().node()).at(pin.place().arm());
            if (pin.striker().isPresent()) {
                PinPlace hole = pin.striker().get();
                g = g.from(unit.at(hole.node()).at(hole.arm()));
            }
            g = across(g, pin.axis());
            double square = dot(g, g);
            if (square > NO_EFFECT * NO_EFFECT) {
                double x = 0 - dot(d, g) / square;
                FramePoint left = new FramePoint(d.xMm() + x * g.xMm(), d.yMm() + x * g.yMm(), d.zMm() + x * g.zMm());
                all.add(new PinRelief(clamps.get(j).id(), x, left.lengthMm()));
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(PinRelief::lateralMm)
                        .thenComparingDouble(r -> Math.abs(r.changeMm())))
                .toList();
    }

    private static FramePoint across(FramePoint d, Axis axis) {
        double along = d.along(axis);
        return d.from(new FramePoint(along * axis.x(), along * axis.y(), along * axis.z()));
    }

    private static double dot(FramePoint a, FramePoint b) {
        return a.xMm() * b.xMm() + a.yMm() * b.yMm() + a.zMm() * b.zMm();
    }
}
