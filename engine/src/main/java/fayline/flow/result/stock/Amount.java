package fayline.flow.result.stock;

import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.stock.Material;
import java.util.List;
import java.util.Optional;

/** Turns amounts of a material into the kind in which it is needed: a length of roll into an area, a mass of cloth into one. */
public final class Amount {
    private Amount() {}

    /** An amount as it is written, where it is an area, a length or a mass. */
    public static Optional<Quantity> read(String text) {
        for (QuantityKind<? extends Quantity> kind :
                List.of(QuantityKind.MASS, QuantityKind.AREA, QuantityKind.LENGTH)) {
            try {
                return Optional.of(QuantityParser.parse(text, kind).value());
            } catch (UnreadableQuantityException e) {
                // not of this kind: the next one
            }
        }
        return Optional.empty();
    }

    /**
     * An amount in the kind of another, in SI.
     *
     * @param amount the amount
     * @param like an amount of the kind that is wanted
     * @param material the material, where it is one
     * @return the value; empty where the one cannot be turned into the other
     */
    public static Optional<Double> as(Quantity amount, Quantity like, Optional<Material> material) {
        if (amount.getClass() == like.getClass()) {
            return Optional.of(amount.si());
        }
        Optional<Double> width =
                material.flatMap(m -> m.rollWidth().map(w -> w.value().metres()));
        Optional<Double> areal =
                material.flatMap(m -> m.arealMass().map(a -> a.value().kilogramsPerSquareMetre()));
        if (like instanceof Area) {
            return amount instanceof Length
                    ? width.map(w -> amount.si() * w)
                    : amount instanceof Mass ? areal.map(a -> amount.si() / a) : Optional.empty();
        }
        if (like instanceof Length && amount instanceof Area) {
            return width.map(w -> amount.si() / w);
        }
        if (like instanceof Mass && amount instanceof Area) {
            return areal.map(a -> amount.si() * a);
        }
        return Optional.empty();
    }

    /** A value in SI in the kind of another amount. */
    public static Quantity like(Quantity kind, double si) {
        if (kind instanceof Area) {
            return new Area(si);
        }
        return kind instanceof Length ? new Length(si) : new Mass(si);
    }
}
