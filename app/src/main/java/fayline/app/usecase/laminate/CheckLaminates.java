package fayline.app.usecase.laminate;

import fayline.basis.units.Angle;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.Ply;
import fayline.flow.project.stock.Material;
import fayline.flow.result.laminate.LaminateCheck;
import fayline.flow.result.laminate.LaminateCheckCalculator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks laminates of a definition by their real plies; also with one ply exchanged, without touching the definition. */
public final class CheckLaminates {
    private CheckLaminates() {}

    /** One laminate as it is defined. */
    public static Optional<LaminateCheck> of(Definition definition, String id) {
        return definition.laminates().find(id).map(l -> LaminateCheckCalculator.calculate(l, definition.materials()));
    }

    /** Every laminate that parts are made of, in the order of the definition. */
    public static List<LaminateCheck> all(Definition definition) {
        return definition.laminates().stream()
                .map(l -> LaminateCheckCalculator.calculate(l, definition.materials()))
                .toList();
    }

    /** The parts that a laminate is laid up on. */
    public static List<Part> partsOf(Definition definition, String laminate) {
        return definition.parts().stream()
                .filter(p -> p.zones().stream().anyMatch(z -> z.laminate().equals(laminate)))
                .toList();
    }

    /**
     * The same laminate with one ply exchanged.
     *
     * @param definition the definition, which stays as it is
     * @param laminate the laminate
     * @param ply the ply, counted from the mould face from 1
     * @param material what lies there instead; empty leaves the ply out
     * @param angle its direction
     * @return what can be said of it; empty if there is no such ply or material, or no ply would be left
     */
    public static Optional<LaminateCheck> exchanged(
            Definition definition, Laminate laminate, int ply, Optional<String> material, Angle angle) {
        if (ply < 1 || ply > laminate.plies().size()) {
            return Optional.empty();
        }
        List<Ply> plies = new ArrayList<>(laminate.plies());
        Ply was = plies.remove(ply - 1);
        if (material.isPresent()) {
            Optional<Material> m = definition.materials().find(material.get());
            if (m.isEmpty()) {
                return Optional.empty();
            }
            plies.add(
                    ply - 1, new Ply(material.get(), angle, was.stage(), m.get().kind() == Material.Kind.CORE));
        }
        return plies.isEmpty()
                ? Optional.empty()
                : Optional.of(LaminateCheckCalculator.calculate(
                        new Laminate(
                                laminate.id(),
                                laminate.name(),
                                laminate.system(),
                                laminate.fibreMassFraction(),
                                plies,
                                laminate.loads()),
                        definition.materials()));
    }
}
