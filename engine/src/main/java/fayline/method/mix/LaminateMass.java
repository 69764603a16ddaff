package fayline.method.mix;

import fayline.basis.units.Area;
import fayline.basis.units.ArealMass;
import fayline.basis.units.Density;
import fayline.basis.units.Fraction;
import java.util.List;
import java.util.Optional;

/**
 * The question what a stack of plies weighs, wet and dry, and how thick it becomes.
 *
 * @param area area of the zone; masses are answered where it is given
 * @param plies areal mass of each dry ply
 * @param fibreFraction fibre mass as a fraction of the laminate, above 0 and up to 1
 * @param waste mixed resin beyond what stays in the part, as a fraction of the latter
 * @param fibreDensity density of the fibre, for volume fraction and thickness
 * @param resinDensity density of the cured resin, for volume fraction and thickness
 */
public record LaminateMass(
        Optional<Area> area,
        List<ArealMass> plies,
        Fraction fibreFraction,
        Fraction waste,
        Optional<Density> fibreDensity,
        Optional<Density> resinDensity) {
    /** Copies the list. */
    public LaminateMass {
        plies = List.copyOf(plies);
    }

    /** Masses only. */
    public static LaminateMass of(Area area, List<ArealMass> plies, Fraction fibreFraction, Fraction waste) {
        return new LaminateMass(Optional.of(area), plies, fibreFraction, waste, Optional.empty(), Optional.empty());
    }

    /**
     * The fibre mass fraction that a ratio of cloth to resin by mass means.
     *
     * @param cloth parts of cloth; positive
     * @param resin parts of mixed resin; not negative
     */
    public static Fraction fibreFractionOf(double cloth, double resin) {
        return new Fraction(cloth / (cloth + resin));
    }
}
