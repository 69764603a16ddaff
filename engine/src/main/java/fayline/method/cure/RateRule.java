package fayline.method.cure;

import fayline.basis.units.MolarEnergy;
import fayline.basis.units.Temperature;
import java.util.Locale;

/**
 * How fast a reaction runs at a temperature, as a multiple of its speed at a reference temperature.
 *
 * <p>Arrhenius: factor = exp((E/R)(1/Tref - 1/T)), kelvins, R = 8.314462618 J/(mol K) [codata2018]. Or the rule of a factor
 * of two per 10 K: factor = 2^((T - Tref)/10), which equals about 51 kJ/mol near room temperature, is too optimistic for
 * ovens and is always shown as assumed (common practice, no source).
 *
 * @param origin where the speed-up comes from
 * @param reference the temperature at which the factor is one
 * @param energyJPerMol activation energy in J/mol; for {@link Origin#DOUBLING} the equivalent at the reference temperature,
 *     for information
 */
public record RateRule(Origin origin, Temperature reference, double energyJPerMol) {
    /** Molar gas constant in J/(mol K), exact since 2019 to the digits given [codata2018]. */
    public static final double GAS_CONSTANT = 8.314462618;

    private static final double DOUBLING_KELVINS = 10;
    private static final double GREATEST_EXPONENT = 80;

    /** The rule of a factor of two per 10 K from a reference temperature. */
    public static RateRule doubling(Temperature reference) {
        double t1 = reference.kelvins();
        double t2 = t1 + DOUBLING_KELVINS;
        return new RateRule(Origin.DOUBLING, reference, energyBetween(t1, t2, 2));
    }

    /** Arrhenius' law with an activation energy that the maker or a person states. */
    public static RateRule stated(Temperature reference, MolarEnergy energy) {
        return new RateRule(Origin.STATED, reference, energy.si());
    }

    /**
     * Arrhenius' law through two known speeds.
     *
     * @param slow one temperature, the reference
     * @param fast another temperature, not equal to the first
     * @param factor how many times faster the reaction runs at the second; positive
     * @throws IllegalArgumentException if the temperatures are equal or the factor is not positive
     */
    public static RateRule between(Temperature slow, Temperature fast, double factor) {
        if (slow.equals(fast) || !(factor > 0) || !Double.isFinite(factor)) {
            throw new IllegalArgumentException(
                    "two different temperatures and a positive factor are needed, got factor " + factor);
        }
        return new RateRule(Origin.FITTED, slow, energyBetween(slow.kelvins(), fast.kelvins(), factor));
    }

    private static double energyBetween(double t1, double t2, double factor) {
        return GAS_CONSTANT * Math.log(factor) / (1 / t1 - 1 / t2);
    }

    /**
     * The speed at a temperature as a multiple of that at the reference; above zero and finite.
     *
     * @param kelvins the temperature in kelvins, above zero
     */
    public double factorAt(double kelvins) {
        double exponent = origin == Origin.DOUBLING
                ? (kelvins - reference.kelvins()) / DOUBLING_KELVINS * Math.log(2)
                : energyJPerMol / GAS_CONSTANT * (1 / reference.kelvins() - 1 / Math.max(kelvins, 1));
        return Math.exp(Math.max(-GREATEST_EXPONENT, Math.min(GREATEST_EXPONENT, exponent)));
    }

    /** The speed at a temperature as a multiple of that at the reference. */
    public double factorAt(Temperature temperature) {
        return factorAt(temperature.kelvins());
    }

    /** The rule in one sentence for whoever asks why. */
    public String sentence() {
        String ref = String.format(Locale.ROOT, "%.1f degC", reference.celsius());
        return switch (origin) {
            case DOUBLING -> "factor of two per 10 K from " + ref + " (assumed)";
            case STATED ->
                String.format(Locale.ROOT, "Arrhenius, %.1f kJ/mol as stated, from %s", energyJPerMol / 1000, ref);
            case FITTED ->
                String.format(
                        Locale.ROOT,
                        "Arrhenius, %.1f kJ/mol fitted to data-sheet points, from %s",
                        energyJPerMol / 1000,
                        ref);
        };
    }

    /** Where the dependence on temperature comes from. */
    public enum Origin {
        /** Fitted to points at two or more temperatures. */
        FITTED,
        /** An activation energy that the data sheet or a person states. */
        STATED,
        /** The factor of two per 10 K, for want of anything better; shown as assumed. */
        DOUBLING
    }
}
