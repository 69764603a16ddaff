package fayline.flow.result.quantity;

import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Material;
import fayline.flow.project.stock.Price;
import fayline.flow.project.stock.ResinSystem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Prices what is drawn from the stores, and adds it up. */
public final class Drawn {
    private final Definition definition;

    /**
     * Prices by a definition's prices.
     *
     * @param definition materials and systems with their prices
     */
    public Drawn(Definition definition) {
        this.definition = definition;
    }

    /**
     * A need with its cost.
     *
     * @param of the material or system
     * @param amount how much
     * @param purpose what for
     */
    public Need need(String of, Quantity amount, String purpose) {
        return new Need(of, amount, purpose, cost(of, amount));
    }

    /** Adds needs of the same thing; the purposes are joined in the order of first use, the order is that of first use. */
    public static List<Need> sum(Collection<Need> needs) {
        Map<String, Need> byThing = new LinkedHashMap<>();
        for (Need n : needs) {
            byThing.merge(n.of() + "|" + n.amount().getClass().getSimpleName(), n, Drawn::plus);
        }
        return new ArrayList<>(byThing.values());
    }

    /** The cost of needs that have a price. */
    public static double cost(Collection<Need> needs) {
        return needs.stream().mapToDouble(n -> n.cost().orElse(0)).sum();
    }

    /**
     * The sum of two amounts of one kind.
     *
     * @throws IllegalArgumentException if the kinds differ or are none of area, length and mass
     */
    public static Quantity plus(Quantity a, Quantity b) {
        if (a instanceof Area x && b instanceof Area y) {
            return x.plus(y);
        }
        if (a instanceof Length x && b instanceof Length y) {
            return x.plus(y);
        }
        if (a instanceof Mass x && b instanceof Mass y) {
            return x.plus(y);
        }
        throw new IllegalArgumentException("amounts of different kinds: " + a + " and " + b);
    }

    private static Need plus(Need a, Need b) {
        boolean said = List.of(a.purpose().split(", ")).contains(b.purpose());
        OptionalDouble cost = a.cost().isPresent() && b.cost().isPresent()
                ? OptionalDouble.of(a.cost().getAsDouble() + b.cost().getAsDouble())
                : OptionalDouble.empty();
        return new Need(
                a.of(), plus(a.amount(), b.amount()), said ? a.purpose() : a.purpose() + ", " + b.purpose(), cost);
    }

    private OptionalDouble cost(String of, Quantity amount) {
        Optional<ResinSystem> system = definition.systems().find(of);
        if (system.isPresent()) {
            return system.get()
                    .price()
                    .filter(p -> p.per().equals("kg") && amount instanceof Mass)
                    .map(p -> OptionalDouble.of(p.amount() * amount.si()))
                    .orElse(OptionalDouble.empty());
        }
        Optional<Material> material = definition.materials().find(of);
        if (material.isEmpty() || material.get().price().isEmpty()) {
            return OptionalDouble.empty();
        }
        return cost(material.get().price().get(), of, amount);
    }

    /**
     * What an amount costs at a price.
     *
     * @param price the price
     * @param of the material or system
     * @param amount how much
     * @return the cost; empty where the price is for another kind of unit and nothing says how they go together
     */
    public OptionalDouble cost(Price price, String of, Quantity amount) {
        Optional<Material> material = definition.materials().find(of);
        if (material.isEmpty()) {
            return price.per().equals("kg") && amount instanceof Mass m
                    ? OptionalDouble.of(price.amount() * m.kilograms())
                    : OptionalDouble.empty();
        }
        return switch (price.per()) {
            case "m2" ->
                amount instanceof Area a
                        ? OptionalDouble.of(price.amount() * a.squareMetres())
                        : OptionalDouble.empty();
            case "m" -> inMetres(material.get(), amount, price.amount());
            case "kg" -> inKilograms(material.get(), amount, price.amount());
            case "each" -> inPieces(material.get(), amount, price.amount());
            default -> OptionalDouble.empty();
        };
    }

    private static OptionalDouble inMetres(Material material, Quantity amount, double perMetre) {
        if (amount instanceof Length l) {
            return OptionalDouble.of(perMetre * l.metres());
        }
        if (amount instanceof Area a && material.rollWidth().isPresent()) {
            return OptionalDouble.of(perMetre
                    * a.squareMetres()
                    / material.rollWidth().get().value().metres());
        }
        return OptionalDouble.empty();
    }

    private static OptionalDouble inKilograms(Material material, Quantity amount, double perKilogram) {
        if (amount instanceof Mass m) {
            return OptionalDouble.of(perKilogram * m.kilograms());
        }
        if (amount instanceof Area a && material.arealMass().isPresent()) {
            return OptionalDouble.of(perKilogram
                    * a.squareMetres()
                    * material.arealMass().get().value().kilogramsPerSquareMetre());
        }
        return OptionalDouble.empty();
    }

    /** A roll or sheet is charged by the part of it that is used. */
    private static OptionalDouble inPieces(Material material, Quantity amount, double perPiece) {
        if (material.rollLength().isEmpty()) {
            return OptionalDouble.empty();
        }
        double lengthM = material.rollLength().get().value().metres();
        if (amount instanceof Length l) {
            return OptionalDouble.of(perPiece * l.metres() / lengthM);
        }
        if (amount instanceof Area a && material.rollWidth().isPresent()) {
            return OptionalDouble.of(perPiece
                    * a.squareMetres()
                    / (lengthM * material.rollWidth().get().value().metres()));
        }
        return OptionalDouble.empty();
    }
}
