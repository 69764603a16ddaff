package fayline.method.laminate.strength;

import fayline.method.laminate.EngineeringConstants;
import fayline.method.laminate.Laminate;
import fayline.method.laminate.SectionLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Stiffness and strength all round: the laminate is turned under its axes and asked again, by lamination theory [jones1999]. */
public final class PolarCalculator {
    private static final double ROUND = 360;

    private PolarCalculator() {}

    /**
     * Reckons from 0 up to 360 degrees, without the last.
     *
     * @param plies layers from z = -h/2
     * @param criterion when a ply fails; empty for stiffness alone
     * @param changeK temperature less stress-free temperature, K
     * @param stepDeg from one direction to the next, 1 to 90 degrees
     * @throws IllegalArgumentException if the step is outside
     */
    public static List<PolarPoint> calculate(
            List<StrongPly> plies, Optional<Criterion> criterion, double changeK, double stepDeg) {
        if (!(stepDeg >= 1 && stepDeg <= 90)) {
            throw new IllegalArgumentException("step: found " + stepDeg + " deg, expected 1 to 90");
        }
        List<PolarPoint> points = new ArrayList<>();
        int n = (int) Math.ceil(ROUND / stepDeg - 1e-9);
        for (int i = 0; i < n; i++) {
            points.add(at(plies, criterion, changeK, i * stepDeg));
        }
        return points;
    }

    private static PolarPoint at(
            List<StrongPly> plies, Optional<Criterion> criterion, double changeK, double angleDeg) {
        List<StrongPly> turned = plies.stream()
                .map(p -> new StrongPly(p.ply().turned(-angleDeg), p.strength(), p.limits()))
                .toList();
        Laminate l = Laminate.of(turned.stream().map(StrongPly::ply).toList());
        EngineeringConstants c = l.constants();
        return new PolarPoint(
                angleDeg,
                c.exPa(),
                c.gxyPa(),
                c.nuXy(),
                l.expansionPerK().epsX(),
                strength(turned, criterion, changeK, l.thicknessM()),
                strength(turned, criterion, changeK, -l.thicknessM()));
    }

    private static OptionalDouble strength(
            List<StrongPly> turned, Optional<Criterion> criterion, double changeK, double onePascal) {
        if (criterion.isEmpty() || turned.stream().allMatch(p -> p.strength().isEmpty())) {
            return OptionalDouble.empty();
        }
        Optional<PlyFailure> f = FirstPlyCalculator.calculate(new Strength(
                        turned, SectionLoad.inPlane(onePascal, 0, 0).at(changeK), criterion.get()))
                .first();
        return f.isPresent() ? OptionalDouble.of(f.get().ratio()) : OptionalDouble.empty();
    }
}
