package fayline.method.mix;

import fayline.basis.units.Area;
import fayline.basis.units.Density;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import java.util.Optional;

/**
 * The question how much mixed adhesive or filler a joint takes: a bond line, a fillet, or both.
 *
 * @param line the bond line
 * @param fillet the fillet
 * @param density density of the mix
 * @param waste squeeze-out and what stays in the cup, as a fraction of what stays in the joint
 */
public record AdhesiveMass(Optional<BondLine> line, Optional<Fillet> fillet, Density density, Fraction waste) {
    /** A bond line of even thickness. */
    public static AdhesiveMass ofLine(Area area, Length thickness, Density density, Fraction waste) {
        return new AdhesiveMass(
                Optional.of(new BondLine(area, thickness, thickness)), Optional.empty(), density, waste);
    }

    /**
     * A bond line, the gap running evenly from one value to the other.
     *
     * @param area faying area
     * @param gapStart gap at one end
     * @param gapEnd gap at the other end; equal for an even bond line
     */
    public record BondLine(Area area, Length gapStart, Length gapEnd) {
        /** A strip of a length and width. */
        public static BondLine strip(Length length, Length width, Length gapStart, Length gapEnd) {
            return new BondLine(new Area(length.metres() * width.metres()), gapStart, gapEnd);
        }
    }

    /**
     * A fillet in a square corner.
     *
     * @param length its length
     * @param radius radius of a concave fillet, or leg of a straight bead
     * @param shape its shape
     */
    public record Fillet(Length length, Length radius, Shape shape) {}

    /** Shapes of a fillet in a square corner. */
    public enum Shape {
        /** Concave quarter circle: area r2 (1 - pi/4). */
        CONCAVE,
        /** Straight bead of two legs: area r2/2. */
        STRAIGHT
    }
}
