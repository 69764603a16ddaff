package fayline.method.tube;

import java.util.ArrayList;
import java.util.List;

/**
 * What a bender is set by, in working order.
 *
 * @param straightsM straight lengths between bends and at both ends, one more than there are bends; negative where bends would
 *     overlap
 * @param rotationsRad turn of the tube before each bend, -pi excluded to pi; the first is nought
 * @param anglesRad angle of each bend, 0 to pi, both excluded
 * @param radiusM radius of the bends at the centreline; positive
 */
public record BendTable(List<Double> straightsM, List<Double> rotationsRad, List<Double> anglesRad, double radiusM) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException naming the rule that is broken
     */
    public BendTable {
        straightsM = List.copyOf(straightsM);
        rotationsRad = List.copyOf(rotationsRad);
        anglesRad = List.copyOf(anglesRad);
        if (anglesRad.size() != rotationsRad.size() || straightsM.size() != anglesRad.size() + 1) {
            throw new IllegalArgumentException(
                    "bends need one rotation and one angle each and one straight more, found "
                            + straightsM.size() + " straights, " + rotationsRad.size() + " rotations, "
                            + anglesRad.size()
                            + " angles");
        }
        if (!(radiusM > 0 && Double.isFinite(radiusM))) {
            throw new IllegalArgumentException("a bend has a radius above nought, found " + radiusM + " m");
        }
        for (double a : anglesRad) {
            if (!(a > 0 && a < Math.PI)) {
                throw new IllegalArgumentException(
                        "a bend lies between 0 and 180 deg, found " + Math.toDegrees(a) + " deg; make it of two bends");
            }
        }
        for (double s : straightsM) {
            if (!Double.isFinite(s)) {
                throw new IllegalArgumentException("a straight has a finite length, found " + s + " m");
            }
        }
    }

    /** How many bends. */
    public int bends() {
        return anglesRad.size();
    }

    /** Length along the centreline, in metres. */
    public double developedM() {
        return developedM(radiusM);
    }

    /**
     * Length of tube that the line takes, in metres.
     *
     * @param neutralRadiusM radius at which the tube keeps its length in a bend, from {@link TubeSection#neutralRadiusM}
     */
    public double developedM(double neutralRadiusM) {
        double sum = 0;
        for (double s : straightsM) {
            sum += s;
        }
        for (double a : anglesRad) {
            sum += a * neutralRadiusM;
        }
        return sum;
    }

    /** Where each bend begins, from the first end along the tube as it is cut, in metres. */
    public List<Double> marksM(double neutralRadiusM) {
        List<Double> marks = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < bends(); i++) {
            at += straightsM.get(i);
            marks.add(at);
            at += anglesRad.get(i) * neutralRadiusM;
        }
        return List.copyOf(marks);
    }

    /** The line of the other hand: every rotation the other way. */
    public BendTable mirrored() {
        return new BendTable(
                straightsM,
                rotationsRad.stream().map(r -> r == Math.PI || r == 0 ? r : -r).toList(),
                anglesRad,
                radiusM);
    }

    /** The same line bent from its other end. */
    public BendTable fromOtherEnd() {
        List<Double> straights = new ArrayList<>();
        List<Double> rotations = new ArrayList<>();
        List<Double> angles = new ArrayList<>();
        for (int i = bends(); i >= 0; i--) {
            straights.add(straightsM.get(i));
        }
        for (int i = bends() - 1; i >= 0; i--) {
            angles.add(anglesRad.get(i));
            rotations.add(i == bends() - 1 ? 0.0 : rotationsRad.get(i + 1));
        }
        return new BendTable(straights, rotations, angles, radiusM);
    }
}
