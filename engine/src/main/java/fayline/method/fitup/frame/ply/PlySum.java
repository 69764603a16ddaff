package fayline.method.fitup.frame.ply;

import fayline.method.fitup.frame.BeamSection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * A laminate as the material of a beam: E·t and E·I summed over its plies. A ply's modulus along the beam is that of the laminate
 * free to contract across, Q̄11 − (A12/A22) Q̄12, so that the sum of E·t is A11 − A12²/A22 [jones1999]; exact for a balanced
 * laminate that is pulled, and for bending as far as it contracts across like one. Bending is about the section's own axis, the
 * middle weighed by E. Coupling of stretch and shear in laminates that are not balanced is left out.
 */
public final class PlySum {
    private final List<PlyLayer> plies;
    private final double ratio;

    /**
     * Takes the plies.
     *
     * @param plies one face to the other, at least one that carries
     * @throws IllegalArgumentException if none carries
     */
    public PlySum(List<PlyLayer> plies) {
        this.plies = List.copyOf(plies);
        if (!(sum(PlyLayer::q11) > 0)) {
            throw new IllegalArgumentException("no ply carries along the beam");
        }
        this.ratio = sum(PlyLayer::q12) / sum(PlyLayer::q22);
    }

    private double sum(ToDoubleFunction<PlyLayer> q) {
        return plies.stream()
                .mapToDouble(p -> q.applyAsDouble(p) * p.thicknessMm())
                .sum();
    }

    private double modulus(PlyLayer p) {
        return p.q11() - ratio * p.q12();
    }

    /** Thickness of all plies, mm. */
    public double thicknessMm() {
        return plies.stream().mapToDouble(PlyLayer::thicknessMm).sum();
    }

    /** Sum of E·t along the beam, N per mm of width. */
    public double stretchNPerMm() {
        return sum(this::modulus);
    }

    /** Sum of G·t in the plane, N per mm of width. */
    public double shearNPerMm() {
        return sum(PlyLayer::q66);
    }

    /** Sum of E·I for bending out of the laminate's plane, about its own axis, N mm² per mm of width. */
    public double bendingNMm2PerMm() {
        double at = 0;
        double first = 0;
        for (PlyLayer p : plies) {
            first += modulus(p) * p.thicknessMm() * (at + p.thicknessMm() / 2);
            at += p.thicknessMm();
        }
        double middle = first / stretchNPerMm();
        double low = -middle;
        double second = 0;
        for (PlyLayer p : plies) {
            double high = low + p.thicknessMm();
            second += modulus(p) * (high * high * high - low * low * low) / 3;
            low = high;
        }
        return second;
    }

    /** The modulus of a plain material of the same thickness, MPa. */
    public double evenModulusMpa() {
        return stretchNPerMm() / thicknessMm();
    }

    /**
     * A flat strip with the laminate's plane along y.
     *
     * @param widthMm its width; positive
     */
    public BeamSection strip(double widthMm) {
        double e = evenModulusMpa();
        double t = thicknessMm();
        double g = shearNPerMm() / t;
        BeamSection plain = BeamSection.rectangle(e, g, widthMm, t);
        return new BeamSection(
                e,
                g,
                plain.areaMm2(),
                bendingNMm2PerMm() * widthMm / e,
                plain.izMm4(),
                plain.jMm4(),
                OptionalDouble.of(widthMm / 2),
                OptionalDouble.of(t / 2));
    }

    /**
     * A closed box with a wall of this laminate all round, its fibre angles counted along the beam.
     *
     * @param alongYMm outer side along y; more than two walls
     * @param alongZMm outer side along z; more than two walls
     */
    public BeamSection box(double alongYMm, double alongZMm) {
        return BeamSection.box(evenModulusMpa(), shearNPerMm() / thicknessMm(), alongYMm, alongZMm, thicknessMm());
    }
}
