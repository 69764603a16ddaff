package fayline.method.fitup.frame;

import java.util.OptionalDouble;

/**
 * What a beam is made of and how stiff its section is, in the beam's own axes: x along it, z as its reference says, y = z × x.
 *
 * @param eMpa modulus along the beam; positive
 * @param gMpa shear modulus, for twist; not negative, without meaning in a plane frame
 * @param areaMm2 area; positive
 * @param iyMm4 second moment for bending in the x-z plane; not negative, without meaning in a plane frame
 * @param izMm4 second moment for bending in the x-y plane, the one of a plane frame; positive
 * @param jMm4 torsion constant; not negative, without meaning in a plane frame
 * @param fibreYMm farthest fibre from the middle along y, where it is known: it makes bending strain out of bending
 * @param fibreZMm farthest fibre along z, where it is known
 */
public record BeamSection(
        double eMpa,
        double gMpa,
        double areaMm2,
        double iyMm4,
        double izMm4,
        double jMm4,
        OptionalDouble fibreYMm,
        OptionalDouble fibreZMm) {
    /**
     * Checks the signs.
     *
     * @throws IllegalArgumentException naming the value
     */
    public BeamSection {
        above("E", eMpa, false);
        above("G", gMpa, true);
        above("A", areaMm2, false);
        above("Iy", iyMm4, true);
        above("Iz", izMm4, false);
        above("J", jMm4, true);
        fibreYMm.ifPresent(c -> above("the farthest fibre along y", c, false));
        fibreZMm.ifPresent(c -> above("the farthest fibre along z", c, false));
    }

    /**
     * A section of a plane frame, with entered stiffness.
     *
     * @param eMpa modulus
     * @param areaMm2 area
     * @param iMm4 second moment
     */
    public static BeamSection plane(double eMpa, double areaMm2, double iMm4) {
        return entered(eMpa, 0, areaMm2, 0, iMm4, 0);
    }

    /** A section in space with entered stiffness and no known depth; see the record for the meaning. */
    public static BeamSection entered(
            double eMpa, double gMpa, double areaMm2, double iyMm4, double izMm4, double jMm4) {
        return new BeamSection(eMpa, gMpa, areaMm2, iyMm4, izMm4, jMm4, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * A solid rectangle. Its torsion constant is a b³ (1/3 − 0.21 (b/a)(1 − b⁴/12a⁴)), a the longer side [roark1989].
     *
     * @param eMpa modulus
     * @param gMpa shear modulus
     * @param alongYMm side along y; positive
     * @param alongZMm side along z; positive
     */
    public static BeamSection rectangle(double eMpa, double gMpa, double alongYMm, double alongZMm) {
        above("side", alongYMm, false);
        above("side", alongZMm, false);
        double a = Math.max(alongYMm, alongZMm);
        double b = Math.min(alongYMm, alongZMm);
        double ratio = b / a;
        double j = a * b * b * b * (1.0 / 3 - 0.21 * ratio * (1 - ratio * ratio * ratio * ratio / 12));
        return new BeamSection(
                eMpa,
                gMpa,
                alongYMm * alongZMm,
                alongYMm * alongZMm * alongZMm * alongZMm / 12,
                alongZMm * alongYMm * alongYMm * alongYMm / 12,
                j,
                OptionalDouble.of(alongYMm / 2),
                OptionalDouble.of(alongZMm / 2));
    }

    /**
     * A round tube.
     *
     * @param eMpa modulus
     * @param gMpa shear modulus
     * @param outerMm outer diameter; positive
     * @param wallMm wall; positive, at most half the diameter
     */
    public static BeamSection tube(double eMpa, double gMpa, double outerMm, double wallMm) {
        above("outer diameter", outerMm, false);
        above("wall", wallMm, false);
        if (wallMm > outerMm / 2) {
            throw new IllegalArgumentException("a wall of " + wallMm + " mm does not go into " + outerMm + " mm");
        }
        double inner = outerMm - 2 * wallMm;
        double i = Math.PI / 64 * (Math.pow(outerMm, 4) - Math.pow(inner, 4));
        return new BeamSection(
                eMpa,
                gMpa,
                Math.PI / 4 * (outerMm * outerMm - inner * inner),
                i,
                i,
                2 * i,
                OptionalDouble.of(outerMm / 2),
                OptionalDouble.of(outerMm / 2));
    }

    /**
     * A closed box of one wall all round. Torsion after Bredt, 4 A² t / perimeter of the wall's middle line [roark1989].
     *
     * @param eMpa modulus along the beam
     * @param gMpa shear modulus of the wall in its plane
     * @param alongYMm outer side along y; positive
     * @param alongZMm outer side along z; positive
     * @param wallMm wall; positive, less than half the shorter side
     */
    public static BeamSection box(double eMpa, double gMpa, double alongYMm, double alongZMm, double wallMm) {
        above("wall", wallMm, false);
        double y = alongYMm - 2 * wallMm;
        double z = alongZMm - 2 * wallMm;
        if (!(y > 0) || !(z > 0)) {
            throw new IllegalArgumentException(
                    "a wall of " + wallMm + " mm fills a box of " + alongYMm + " by " + alongZMm + " mm");
        }
        double middleY = alongYMm - wallMm;
        double middleZ = alongZMm - wallMm;
        return new BeamSection(
                eMpa,
                gMpa,
                alongYMm * alongZMm - y * z,
                (alongYMm * Math.pow(alongZMm, 3) - y * Math.pow(z, 3)) / 12,
                (alongZMm * Math.pow(alongYMm, 3) - z * Math.pow(y, 3)) / 12,
                2 * wallMm * Math.pow(middleY * middleZ, 2) / (middleY + middleZ),
                OptionalDouble.of(alongYMm / 2),
                OptionalDouble.of(alongZMm / 2));
    }

    /** This section with known depths, in mm from the middle to the farthest fibre. */
    public BeamSection withFibres(double yMm, double zMm) {
        return new BeamSection(eMpa, gMpa, areaMm2, iyMm4, izMm4, jMm4, OptionalDouble.of(yMm), OptionalDouble.of(zMm));
    }

    private static void above(String name, double value, boolean zeroToo) {
        if (!(value > 0 || (zeroToo && value == 0)) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " must be " + (zeroToo ? "zero or more" : "above zero") + ", found " + value);
        }
    }
}
