package fayline.app.usecase.traveller;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import fayline.flow.project.stock.Material;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.quantity.PlyCut;
import fayline.flow.result.step.StepResult;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What should go into a step.
 *
 * @param plies plies and core in the order of laying
 * @param systems what is mixed for it, as ids
 * @param materials everything it draws from the stores, systems too, as ids
 */
public record StepAsks(List<Ply> plies, List<String> systems, List<String> materials) {
    /** A step that asks for nothing. */
    public static final StepAsks NOTHING = new StepAsks(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public StepAsks {
        plies = List.copyOf(plies);
        systems = List.copyOf(systems);
        materials = List.copyOf(materials);
    }

    /**
     * A ply or core layer to lay.
     *
     * @param number its place in the step, from 1
     * @param name zone, material and direction, as the card calls it
     * @param material the material's id
     */
    public record Ply(int number, String name, String material) {}

    /** What the results say of a step. */
    public static StepAsks of(Definition d, StepResult step) {
        List<Ply> plies = new ArrayList<>();
        Set<String> materials = new LinkedHashSet<>();
        for (PlyCut cut : step.plies()) {
            plies.add(new Ply(plies.size() + 1, name(d, step.made(), cut), cut.material()));
            materials.add(cut.material());
        }
        step.needs().stream().map(Need::of).forEach(materials::add);
        List<String> systems =
                step.mixes().stream().map(m -> m.system()).distinct().toList();
        materials.addAll(systems);
        return new StepAsks(plies, systems, List.copyOf(materials));
    }

    private static String name(Definition d, String made, PlyCut cut) {
        String zone = d.parts().find(made).map(Part::zones).orElse(List.of()).stream()
                .filter(z -> z.id().equals(cut.zone()))
                .map(z -> z.name())
                .findFirst()
                .orElse(cut.zone());
        String angle = cut.core()
                ? "core"
                : String.format(Locale.ROOT, "%.0f\u00b0", cut.angle().degrees() + 0.0);
        return zone + ", " + materialName(d, cut.material()) + ", " + angle;
    }

    /** What people call a material or system. */
    public static String materialName(Definition d, String id) {
        return d.materials()
                .find(id)
                .map(Material::name)
                .or(() -> d.systems().find(id).map(ResinSystem::name))
                .orElse(id);
    }

    /** A ply by its number as typed. */
    public Optional<Ply> ply(String number) {
        return plies.stream()
                .filter(p -> String.valueOf(p.number()).equals(number))
                .findFirst();
    }
}
