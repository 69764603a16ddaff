package fayline.flow.project.fit;

import fayline.method.fitup.heat.Expansion;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Materials whose expansion may be named instead of entered; what is taken so is shown as assumed. */
public enum KnownExpansion {
    /** Clear or dark cast sheet. */
    ACRYLIC(72e-6, "[acrylic-maker1], the low end of 72 to 77 millionths"),
    /** Balanced laminate of carbon. */
    CARBON_LAMINATE(2e-6, "common practice, no source"),
    /** Balanced laminate of glass. */
    GLASS_LAMINATE(12e-6, "common practice, no source"),
    /** Aluminium. */
    ALUMINIUM(23e-6, "from memory of published tables");

    private final double perK;
    private final String origin;

    KnownExpansion(double perK, String origin) {
        this.perK = perK;
        this.origin = origin;
    }

    /** The name in files: {@code carbon-laminate}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The same in every direction. */
    public Expansion expansion() {
        return Expansion.even(perK);
    }

    /** Where the figure is from, as a sentence that calls it assumed. */
    public String sentence() {
        return String.format(
                Locale.ROOT,
                "Assumed for %s: %.0f millionths per kelvin (%s).",
                key().replace('-', ' '),
                perK * 1e6,
                origin);
    }

    /** The names of all. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(KnownExpansion::key).toList();
    }

    /** A material by its name in files. */
    public static Optional<KnownExpansion> named(String key) {
        return Arrays.stream(values()).filter(k -> k.key().equals(key)).findFirst();
    }
}
