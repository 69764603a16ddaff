package fayline.flow.project.design;

import fayline.basis.units.Area;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.flow.project.catalog.Keyed;
import java.util.List;
import java.util.Map;

/**
 * A bonded joint.
 *
 * @param id the id
 * @param name the name
 * @param in the assembly that comes about
 * @param between the parts that it joins
 * @param adhesive the system
 * @param length length of the joint
 * @param width width of the overlap
 * @param bondLine wanted thickness of the adhesive
 * @param squeezeOut adhesive beyond what stays in the joint, as a fraction of the latter
 * @param make how it is made
 * @param sizes other measures that rates are counted by, as {@code clamps}
 * @param structural whether it carries the structure
 */
public record Joint(
        String id,
        String name,
        String in,
        List<String> between,
        String adhesive,
        Length length,
        Length width,
        Length bondLine,
        Fraction squeezeOut,
        List<Make> make,
        Map<String, Double> sizes,
        boolean structural)
        implements Keyed, Made {
    /** The same made otherwise. */
    public Joint withMake(List<Make> others) {
        return new Joint(
                id, name, in, between, adhesive, length, width, bondLine, squeezeOut, others, sizes, structural);
    }

    /** Copies the collections. */
    public Joint {
        between = List.copyOf(between);
        make = List.copyOf(make);
        sizes = Map.copyOf(sizes);
    }

    /** The faying area. */
    public Area fayingArea() {
        return new Area(length.metres() * width.metres());
    }
}
