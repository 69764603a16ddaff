package fayline.method.laminate.strength;

import fayline.method.laminate.PlyStress;

/**
 * One way in which a ply fails: where a quadratic of its stresses reaches 1. All criteria here are made of such.
 *
 * @param name in words; "-" where the criterion tells no mode
 * @param kind what fails with it
 * @param when for which signs of the stresses it is asked
 * @param c1 per s1, 1/Pa
 * @param c2 per s2, 1/Pa
 * @param c11 per s1^2, 1/Pa^2
 * @param c22 per s2^2, 1/Pa^2
 * @param c66 per t12^2, 1/Pa^2
 * @param c12 per s1 s2, 1/Pa^2
 */
record FailureMode(
        String name, Kind kind, Signs when, double c1, double c2, double c11, double c22, double c66, double c12) {
    /** What fails. */
    enum Kind {
        /** Fibres. */
        FIBRE,
        /** Resin or its bond to the fibres. */
        MATRIX,
        /** The criterion does not tell; the larger share of it does. */
        BY_SHARE
    }

    /**
     * For which signs a mode is asked: 1 not negative, -1 negative, 0 any.
     *
     * @param s1 of the stress along
     * @param s2 of the stress across
     */
    record Signs(int s1, int s2) {
        static final Signs ANY = new Signs(0, 0);
    }

    static FailureMode linear(String name, Kind kind, double c1, double c2) {
        return new FailureMode(name, kind, Signs.ANY, c1, c2, 0, 0, 0, 0);
    }

    static FailureMode shear(double s) {
        return new FailureMode("shear", Kind.MATRIX, Signs.ANY, 0, 0, 0, 0, 1 / (s * s), 0);
    }

    /** The value that reaches 1 at failure. */
    double index(PlyStress s) {
        return c1 * s.s1Pa()
                + c2 * s.s2Pa()
                + c11 * s.s1Pa() * s.s1Pa()
                + c22 * s.s2Pa() * s.s2Pa()
                + c66 * s.t12Pa() * s.t12Pa()
                + c12 * s.s1Pa() * s.s2Pa();
    }

    /** Whether it is asked at these stresses. */
    boolean isAsked(PlyStress s) {
        return (when.s1() == 0 || (when.s1() > 0) == (s.s1Pa() >= 0))
                && (when.s2() == 0 || (when.s2() > 0) == (s.s2Pa() >= 0));
    }

    /**
     * The least R not negative at which stress r + R m meets this mode; infinite if none does.
     *
     * @param m stress of forces and moments
     * @param r stress that stays
     */
    double ratio(PlyStress m, PlyStress r) {
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        if (when.s1() != 0) {
            low = Math.max(low, from(when.s1() * r.s1Pa(), when.s1() * m.s1Pa()));
            high = Math.min(high, to(when.s1() * r.s1Pa(), when.s1() * m.s1Pa()));
        }
        if (when.s2() != 0) {
            low = Math.max(low, from(when.s2() * r.s2Pa(), when.s2() * m.s2Pa()));
            high = Math.min(high, to(when.s2() * r.s2Pa(), when.s2() * m.s2Pa()));
        }
        if (low > high || low == Double.POSITIVE_INFINITY) {
            return Double.POSITIVE_INFINITY;
        }
        double a = c11 * m.s1Pa() * m.s1Pa()
                + c22 * m.s2Pa() * m.s2Pa()
                + c66 * m.t12Pa() * m.t12Pa()
                + c12 * m.s1Pa() * m.s2Pa();
        double b = c1 * m.s1Pa()
                + c2 * m.s2Pa()
                + 2 * (c11 * r.s1Pa() * m.s1Pa() + c22 * r.s2Pa() * m.s2Pa() + c66 * r.t12Pa() * m.t12Pa())
                + c12 * (r.s1Pa() * m.s2Pa() + r.s2Pa() * m.s1Pa());
        double c = index(r) - 1;
        if (a * low * low + b * low + c >= 0) {
            // Met already where it is first asked: a mode that begins at a change of sign may begin beyond its limit.
            return low;
        }
        double root = root(a, b, c, low);
        return root <= high ? root : Double.POSITIVE_INFINITY;
    }

    /** From which R on r + R m is not negative. */
    private static double from(double r, double m) {
        return r >= 0 ? 0 : m > 0 ? -r / m : Double.POSITIVE_INFINITY;
    }

    /** Up to which R r + R m is not negative. */
    private static double to(double r, double m) {
        return m >= 0 ? Double.POSITIVE_INFINITY : Math.max(0, -r / m);
    }

    /** The least root above a place at which the quadratic is still negative. */
    private static double root(double a, double b, double c, double low) {
        if (a == 0) {
            return b > 0 ? -c / b : Double.POSITIVE_INFINITY;
        }
        double under = b * b - 4 * a * c;
        if (under < 0) {
            return Double.POSITIVE_INFINITY;
        }
        double q = -(b + Math.copySign(Math.sqrt(under), b)) / 2;
        double one = q / a;
        double two = q == 0 ? one : c / q;
        double least = Math.min(one, two);
        double most = Math.max(one, two);
        return least > low ? least : most > low ? most : Double.POSITIVE_INFINITY;
    }
}
