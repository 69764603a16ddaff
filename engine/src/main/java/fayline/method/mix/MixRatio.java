package fayline.method.mix;

import fayline.basis.units.Density;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import java.util.Optional;

/**
 * Questions on the ratio of two parts by mass.
 *
 * @param partsResin parts of resin by mass; positive
 * @param partsHardener parts of hardener by mass; positive
 * @param tolerance allowed deviation of the hardener as a fraction of the nominal
 * @param total mixed mass to split, where asked
 * @param resinWeighed resin on the scale, where a mix is checked
 * @param hardenerWeighed hardener on the scale, where a mix is checked
 * @param resinDensity density of the resin, for the ratio by volume
 * @param hardenerDensity density of the hardener, for the ratio by volume
 */
public record MixRatio(
        double partsResin,
        double partsHardener,
        Optional<Fraction> tolerance,
        Optional<Mass> total,
        Optional<Mass> resinWeighed,
        Optional<Mass> hardenerWeighed,
        Optional<Density> resinDensity,
        Optional<Density> hardenerDensity) {
    /** A total to split. */
    public static MixRatio split(double partsResin, double partsHardener, Mass total) {
        return new MixRatio(
                partsResin,
                partsHardener,
                Optional.empty(),
                Optional.of(total),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** A weighed mix to check. */
    public static MixRatio weighed(
            double partsResin, double partsHardener, Fraction tolerance, Mass resin, Mass hardener) {
        return new MixRatio(
                partsResin,
                partsHardener,
                Optional.of(tolerance),
                Optional.empty(),
                Optional.of(resin),
                Optional.of(hardener),
                Optional.empty(),
                Optional.empty());
    }
}
