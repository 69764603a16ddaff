package fayline.flow.project.stock;

import fayline.basis.units.Density;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.catalog.Keyed;
import fayline.method.cure.CureSheet;
import java.util.List;
import java.util.Optional;

/**
 * A mixed system of two parts.
 *
 * @param id the id
 * @param name the name
 * @param kind what it is for
 * @param partsResin parts of resin by mass
 * @param partsHardener parts of hardener by mass
 * @param ratioTolerance allowed deviation of the hardener, as a fraction of the nominal
 * @param density density of the mix
 * @param densityResin density of the resin part, for ratios by volume
 * @param densityHardener density of the hardener part
 * @param cure how it cures
 * @param coldest least temperature of use, where the sheet says so
 * @param dampest most relative humidity of use, where the sheet says so
 * @param largestPot most mass to be mixed in one container
 * @param useRateKgPerS mixed mass that one person applies per minute, in kg/s
 * @param price price per kilogram mixed
 * @param leadTime time from order to delivery
 * @param outLife how long it may be out of the cold, all together, of what is kept there
 * @param hazards hazard words, each a key of the caution table
 */
public record ResinSystem(
        String id,
        String name,
        Kind kind,
        double partsResin,
        double partsHardener,
        Fraction ratioTolerance,
        Density density,
        Optional<Density> densityResin,
        Optional<Density> densityHardener,
        CureSheet cure,
        Optional<Temperature> coldest,
        Optional<Fraction> dampest,
        Mass largestPot,
        double useRateKgPerS,
        Optional<Price> price,
        Optional<TimeSpan> leadTime,
        Optional<TimeSpan> outLife,
        List<String> hazards)
        implements Keyed {
    /** Copies the list. */
    public ResinSystem {
        hazards = List.copyOf(hazards);
    }

    /** What a system is for. */
    public enum Kind {
        /** Wetting cloth. */
        LAMINATING,
        /** Tooling surface coat. */
        SURFACE_COAT,
        /** Rigid paste adhesive. */
        RIGID_ADHESIVE,
        /** Flexible adhesive. */
        FLEXIBLE_ADHESIVE,
        /** Filler and fairing. */
        FILLER;

        /** The word for files, as {@code rigid-adhesive}. */
        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }
}
