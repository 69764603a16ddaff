package fayline.method.joint;

import java.util.List;

/**
 * What two beams on a layer of adhesive do: one value for each element, from the left end of the overlap to the right.
 *
 * @param xM middles of the elements
 * @param shearPa shear stress of the adhesive; positive where it pulls beam 1 to the right
 * @param peelPa peel stress of the adhesive
 * @param pullNPerM pull in each beam
 * @param momentN moment in each beam
 * @param endMomentN largest moment of a beam where the overlap begins, without sign
 * @param endsM displacement along the joint of beam 1 and 2 at the left end, then at the right end
 * @param bowM deflection of the middle of beam 2 from the line through its ends
 * @param loadNPerM the load it was solved for
 */
public record BeamAnswer(
        List<Double> xM,
        List<Double> shearPa,
        List<Double> peelPa,
        List<List<Double>> pullNPerM,
        List<List<Double>> momentN,
        double endMomentN,
        List<Double> endsM,
        double bowM,
        double loadNPerM) {
    /** Copies the lists. */
    public BeamAnswer {
        xM = List.copyOf(xM);
        shearPa = List.copyOf(shearPa);
        peelPa = List.copyOf(peelPa);
        pullNPerM = pullNPerM.stream().map(List::copyOf).toList();
        momentN = momentN.stream().map(List::copyOf).toList();
        endsM = List.copyOf(endsM);
    }

    /** Shear stress at the left end, drawn on from the two elements next to it, in pascals. */
    public double leftShearPa() {
        return drawnOn(shearPa, 0, 1, 0);
    }

    /** Shear stress at the right end, likewise, in pascals. */
    public double rightShearPa() {
        int n = xM.size();
        return drawnOn(shearPa, n - 1, n - 2, xM.get(n - 1) + xM.get(0));
    }

    /** The largest shear stress anywhere, without sign, in pascals. */
    public double highestShearPa() {
        return Math.max(Math.max(Math.abs(leftShearPa()), Math.abs(rightShearPa())), highest(shearPa));
    }

    /** The largest peel stress that opens the bond, in pascals; 0 where none does. */
    public double highestPeelPa() {
        int n = xM.size();
        return Math.max(
                0,
                Math.max(
                        peelPa.stream().mapToDouble(p -> p).max().orElse(0),
                        Math.max(drawnOn(peelPa, 0, 1, 0), drawnOn(peelPa, n - 1, n - 2, xM.get(n - 1) + xM.get(0)))));
    }

    private static double highest(List<Double> of) {
        return of.stream().mapToDouble(Math::abs).max().orElse(0);
    }

    private double drawnOn(List<Double> of, int near, int next, double at) {
        double slope = (of.get(near) - of.get(next)) / (xM.get(near) - xM.get(next));
        return of.get(near) + slope * (at - xM.get(near));
    }
}
