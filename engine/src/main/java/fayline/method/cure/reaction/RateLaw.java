package fayline.method.cure.reaction;

import fayline.method.cure.Kinetics;
import fayline.method.cure.RateRule;
import java.util.OptionalDouble;

/** The speed at which the degree of cure grows, from the degree of cure and the temperature. */
public sealed interface RateLaw permits RateLaw.NthOrder, RateLaw.Autocatalytic, RateLaw.TwoBranch {
    /**
     * The speed in 1/s.
     *
     * @param degree degree of cure, 0 to 1
     * @param kelvins temperature
     */
    double perSecond(double degree, double kelvins);

    /** The degree of cure at which the law jumps; the integration stops there exactly. */
    default OptionalDouble jump() {
        return OptionalDouble.empty();
    }

    /** The law in symbols. */
    String symbols();

    private static double arrhenius(double a, double e, double kelvins) {
        return a * Math.exp(-e / (RateRule.GAS_CONSTANT * kelvins));
    }

    private static double unit(double degree) {
        return Math.min(1, Math.max(0, degree));
    }

    /**
     * A exp(-E/RT) (1 - alpha)^n.
     *
     * @param aPerS A in 1/s
     * @param eJPerMol E in J/mol
     * @param n the order
     */
    record NthOrder(double aPerS, double eJPerMol, double n) implements RateLaw {
        @Override
        public double perSecond(double degree, double kelvins) {
            return arrhenius(aPerS, eJPerMol, kelvins) * Math.pow(1 - unit(degree), n);
        }

        @Override
        public String symbols() {
            return "da/dt = A exp(-E/RT) (1 - a)^n";
        }
    }

    /**
     * Kamal and Sourour: (A1 exp(-E1/RT) + A2 exp(-E2/RT) alpha^m)(1 - alpha)^n [kamal-sourour1973]. With A1 = 0 it is the
     * plain autocatalytic law, with A2 = 0 the n-th order law, with E = 0 it takes rate constants of one temperature.
     *
     * @param constants the constants
     */
    record Autocatalytic(Kinetics constants) implements RateLaw {
        @Override
        public double perSecond(double degree, double kelvins) {
            double a = unit(degree);
            double k1 = arrhenius(constants.a1PerS(), constants.e1JPerMol(), kelvins);
            double k2 = arrhenius(constants.a2PerS(), constants.e2JPerMol(), kelvins);
            return (k1 + k2 * Math.pow(a, constants.m())) * Math.pow(1 - a, constants.n());
        }

        @Override
        public String symbols() {
            return "da/dt = (A1 exp(-E1/RT) + A2 exp(-E2/RT) a^m) (1 - a)^n";
        }
    }

    /**
     * Two branches that meet with a jump [lee-loos-springer1982]: up to the jump (K1 + K2 alpha)(1 - alpha)(B - alpha), above
     * it K3 (1 - alpha), K = A exp(-E/RT). Made for a hot-curing prepreg resin; never for one that cures at room temperature.
     *
     * @param a1PerS A1 in 1/s
     * @param e1JPerMol E1 in J/mol
     * @param a2PerS A2 in 1/s; may be negative
     * @param e2JPerMol E2 in J/mol
     * @param a3PerS A3 in 1/s
     * @param e3JPerMol E3 in J/mol
     * @param b the constant B
     * @param jumpAt the degree of cure at the jump, 0.3 in the paper
     */
    record TwoBranch(
            double a1PerS,
            double e1JPerMol,
            double a2PerS,
            double e2JPerMol,
            double a3PerS,
            double e3JPerMol,
            double b,
            double jumpAt)
            implements RateLaw {
        @Override
        public double perSecond(double degree, double kelvins) {
            return degree <= jumpAt ? below(degree, kelvins) : above(degree, kelvins);
        }

        /** The lower branch, also a little beyond the jump, where the integrator looks before it stops. */
        double below(double degree, double kelvins) {
            return (arrhenius(a1PerS, e1JPerMol, kelvins) + arrhenius(a2PerS, e2JPerMol, kelvins) * degree)
                    * (1 - degree)
                    * (b - degree);
        }

        /** The upper branch. */
        double above(double degree, double kelvins) {
            return arrhenius(a3PerS, e3JPerMol, kelvins) * (1 - unit(degree));
        }

        @Override
        public OptionalDouble jump() {
            return OptionalDouble.of(jumpAt);
        }

        @Override
        public String symbols() {
            return "da/dt = (K1 + K2 a)(1 - a)(B - a) to the jump, K3 (1 - a) above it, K = A exp(-E/RT)";
        }
    }
}
