package fayline.flow.result.quantity;

import fayline.basis.units.ArealMass;
import fayline.basis.units.Density;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.Ply;
import fayline.flow.project.design.Zone;
import fayline.flow.project.stock.Material;
import fayline.method.mix.LaminateMass;
import fayline.method.mix.LaminateMassCalculator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Masses of plies and of the resin in them, in kg, by {@link LaminateMassCalculator}. Core and panes take no resin here; their
 * bedding is a mix of its own.
 */
public final class PlyMass {
    private final Definition definition;

    /** Masses by the materials of a definition. */
    public PlyMass(Definition definition) {
        this.definition = definition;
    }

    /** Whether a ply is fibre that resin wets, and not core or sheet. */
    public boolean isFibre(String material, boolean core) {
        return !core
                && definition
                        .materials()
                        .find(material)
                        .filter(m -> m.kind() == Material.Kind.CLOTH || m.kind() == Material.Kind.TAPE)
                        .isPresent();
    }

    /** Mass per area in kg/m2: as stated, else thickness times density; empty where neither is known. */
    public OptionalDouble arealKgPerM2(String material) {
        Material m = definition.materials().find(material).orElse(null);
        if (m == null) {
            return OptionalDouble.empty();
        }
        if (m.arealMass().isPresent()) {
            return OptionalDouble.of(m.arealMass().get().value().kilogramsPerSquareMetre());
        }
        if (m.thickness().isPresent() && m.density().isPresent()) {
            return OptionalDouble.of(m.thickness().get().value().metres()
                    * m.density().get().value().kilogramsPerCubicMetre());
        }
        return OptionalDouble.empty();
    }

    /** Mass of the cloth of a zone's plies of a stage; stage 0 for all. */
    public double fibreKg(Zone zone, int stage) {
        return sum(zone, stage, true);
    }

    /** Mass of the core and sheet of a zone's plies of a stage; stage 0 for all. */
    public double coreKg(Zone zone, int stage) {
        return sum(zone, stage, false);
    }

    /** Mass of the resin in a zone's plies of a stage; stage 0 for all. */
    public double resinKg(Zone zone, int stage) {
        Laminate laminate = definition.laminates().get(zone.laminate());
        List<ArealMass> plies = laminate.plies().stream()
                .filter(p -> (stage == 0 || p.stage() == stage) && isFibre(p.material(), p.core()))
                .map(p -> new ArealMass(arealKgPerM2(p.material()).orElse(0)))
                .toList();
        return LaminateMassCalculator.calculate(
                        LaminateMass.of(zone.area(), plies, laminate.fibreMassFraction(), new Fraction(0)))
                .resinInPart()
                .map(Mass::kilograms)
                .orElse(0.0);
    }

    /** Mass of the resin in a part's plies of a stage; stage 0 for all. */
    public double resinKg(Part part, int stage) {
        return part.zones().stream().mapToDouble(z -> resinKg(z, stage)).sum();
    }

    /**
     * Thickness of a zone's stack in m, each cloth by itself without voids, and core as it is; empty where a density or
     * thickness is not known.
     */
    public OptionalDouble thicknessM(Zone zone) {
        Laminate laminate = definition.laminates().get(zone.laminate());
        Optional<Density> resinDensity =
                definition.systems().find(laminate.system()).map(s -> s.density());
        double sum = 0;
        for (Ply ply : laminate.plies()) {
            Material m = definition.materials().find(ply.material()).orElse(null);
            if (m == null) {
                return OptionalDouble.empty();
            }
            if (!isFibre(ply.material(), ply.core())) {
                if (m.thickness().isEmpty()) {
                    return OptionalDouble.empty();
                }
                sum += m.thickness().get().value().metres();
                continue;
            }
            if (m.arealMass().isEmpty() || m.density().isEmpty() || resinDensity.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += LaminateMassCalculator.calculate(new LaminateMass(
                            Optional.empty(),
                            List.of(m.arealMass().get().value()),
                            laminate.fibreMassFraction(),
                            new Fraction(0),
                            Optional.of(m.density().get().value()),
                            resinDensity))
                    .thickness()
                    .map(Length::metres)
                    .orElse(0.0);
        }
        return OptionalDouble.of(sum);
    }

    private double sum(Zone zone, int stage, boolean fibre) {
        return definition.laminates().get(zone.laminate()).plies().stream()
                .filter(p -> (stage == 0 || p.stage() == stage) && isFibre(p.material(), p.core()) == fibre)
                .mapToDouble(p ->
                        zone.area().squareMetres() * arealKgPerM2(p.material()).orElse(0))
                .sum();
    }
}
