package fayline.flow.project.design;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.flow.project.catalog.Keyed;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something made.
 *
 * @param id the id
 * @param name the name
 * @param in the assembly it belongs to
 * @param hand which hand
 * @param opposite the part of the other hand
 * @param mould the mould it comes from
 * @param zones areas with their own stack
 * @param make how it is made: recipes in order
 * @param target the mass it should have
 * @param arm where its mass acts, aft of the datum
 * @param sizes other measures that rates are counted by, as {@code edge}, {@code depth}, {@code bends}; SI or plain counts
 * @param drawing the drawing it follows
 * @param orient how it lies: which way round, in words for the card
 * @param lessons what earlier parts taught, for the card
 * @param afterOpposite what it asks for because its opposite is made first
 * @param sets where it stands for like pieces that are made in sets
 * @param pieces where it is one of those sets
 * @param coupons witness pieces that are laid up with it and tested for it; each set that it is made in has its own
 * @param budget what it may cost, in the project's currency; of one piece, where there are several
 */
public record Part(
        String id,
        String name,
        String in,
        Hand hand,
        Optional<String> opposite,
        Optional<String> mould,
        List<Zone> zones,
        List<Make> make,
        Optional<Entered<Mass>> target,
        Optional<Entered<Length>> arm,
        Map<String, Double> sizes,
        String drawing,
        String orient,
        List<String> lessons,
        Optional<AfterOpposite> afterOpposite,
        Optional<PieceSets> sets,
        Optional<PieceRange> pieces,
        List<Coupon> coupons,
        OptionalDouble budget)
        implements Keyed, Made {
    /** Copies the collections. */
    public Part {
        zones = List.copyOf(zones);
        make = List.copyOf(make);
        sizes = Map.copyOf(sizes);
        lessons = List.copyOf(lessons);
        coupons = List.copyOf(coupons);
    }

    /** Without witness pieces and budget. */
    public Part(
            String id,
            String name,
            String in,
            Hand hand,
            Optional<String> opposite,
            Optional<String> mould,
            List<Zone> zones,
            List<Make> make,
            Optional<Entered<Mass>> target,
            Optional<Entered<Length>> arm,
            Map<String, Double> sizes,
            String drawing,
            String orient,
            List<String> lessons,
            Optional<AfterOpposite> afterOpposite,
            Optional<PieceSets> sets,
            Optional<PieceRange> pieces) {
        this(
                id,
                name,
                in,
                hand,
                opposite,
                mould,
                zones,
                make,
                target,
                arm,
                sizes,
                drawing,
                orient,
                lessons,
                afterOpposite,
                sets,
                pieces,
                List.of(),
                OptionalDouble.empty());
    }

    /** The witness pieces of an id. */
    public Optional<Coupon> coupon(String coupon) {
        return coupons.stream().filter(c -> c.id().equals(coupon)).findFirst();
    }

    /** The same made by other makes. */
    public Part withMake(List<Make> others) {
        return with(others, afterOpposite, sets);
    }

    /** The same asking for other things because its opposite is made first. */
    public Part withAfterOpposite(AfterOpposite asks) {
        return with(make, Optional.of(asks), sets);
    }

    /** The same in other sets. */
    public Part withSets(PieceSets others) {
        return with(make, afterOpposite, Optional.of(others));
    }

    private Part with(List<Make> makes, Optional<AfterOpposite> asks, Optional<PieceSets> divided) {
        return new Part(
                id, name, in, hand, opposite, mould, zones, makes, target, arm, sizes, drawing, orient, lessons, asks,
                divided, pieces, coupons, budget);
    }
}
