package fayline.flow.result.fit.frame;

import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Ply;
import fayline.flow.project.fit.frame.FrameSection;
import fayline.flow.project.fit.frame.FrameSection.Laid;
import fayline.flow.project.fit.frame.FrameSection.Plain;
import fayline.flow.project.stock.Lamina;
import fayline.flow.project.stock.Material;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.ply.PlyLayer;
import fayline.method.fitup.frame.ply.PlySum;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The stiffness of sections, entered or summed over the plies of a laminate. */
final class SprungSections {
    private final Catalog<Laminate> laminates;
    private final Catalog<Material> materials;
    private final List<String> missing = new ArrayList<>();

    SprungSections(Catalog<Laminate> laminates, Catalog<Material> materials) {
        this.laminates = laminates;
        this.materials = materials;
    }

    /** What is not known, a sentence each. */
    List<String> missing() {
        return List.copyOf(missing);
    }

    /** A section with its stiffness; empty, and told as missing, where it cannot be known. */
    Optional<UsedSection> of(FrameSection s) {
        if (s.form() instanceof Plain plain) {
            return Optional.of(new UsedSection(s, plain.section(), s.origin(), s.assumed()));
        }
        if (s.form() instanceof Laid laid) {
            return laid(s, laid);
        }
        throw new IllegalStateException("no stiffness of " + s.form());
    }

    private Optional<UsedSection> laid(FrameSection s, Laid laid) {
        Optional<Laminate> laminate = laminates.find(laid.laminate());
        if (laminate.isEmpty()) {
            missing.add("Section " + s.id() + ": there is no laminate " + laid.laminate() + ".");
            return Optional.empty();
        }
        List<PlyLayer> layers = new ArrayList<>();
        for (Ply p : laminate.get().plies()) {
            layer(s, p, laid.axisRad()).ifPresent(layers::add);
        }
        if (layers.size() < laminate.get().plies().size()) {
            return Optional.empty();
        }
        try {
            PlySum sum = new PlySum(layers);
            BeamSection beam = laid.outMm().isPresent()
                    ? sum.box(laid.acrossMm(), laid.outMm().getAsDouble())
                    : sum.strip(laid.acrossMm());
            return Optional.of(new UsedSection(s, beam, origin(laminate.get()), assumed(laminate.get())));
        } catch (IllegalArgumentException e) {
            missing.add("Section " + s.id() + ": " + e.getMessage() + ".");
            return Optional.empty();
        }
    }

    private Optional<PlyLayer> layer(FrameSection s, Ply ply, double axisRad) {
        Optional<Material> material = materials.find(ply.material());
        double thickness = material.flatMap(Material::thickness)
                .map(t -> t.value().millimetres())
                .orElse(0.0);
        Optional<Lamina> lamina = material.flatMap(Material::lamina);
        if (!(thickness > 0)) {
            return absent(s, ply, "its thickness as laid");
        }
        if (ply.core()) {
            return Optional.of(PlyLayer.core(thickness));
        }
        return lamina.isEmpty()
                ? absent(s, ply, "its moduli once laid (\"lamina:\")")
                : Optional.of(new PlyLayer(
                        thickness,
                        ply.angle().radians() - axisRad,
                        lamina.get().along().megapascals(),
                        lamina.get().across().megapascals(),
                        lamina.get().shear().megapascals(),
                        lamina.get().poisson()));
    }

    private Optional<PlyLayer> absent(FrameSection s, Ply ply, String what) {
        String sentence = "Section " + s.id() + ": of material " + ply.material() + " " + what + " is not entered.";
        if (!missing.contains(sentence)) {
            missing.add(sentence);
        }
        return Optional.empty();
    }

    private List<Material> layers(Laminate l) {
        Set<String> ids = new LinkedHashSet<>();
        l.plies().forEach(p -> ids.add(p.material()));
        return ids.stream().flatMap(id -> materials.find(id).stream()).toList();
    }

    private String origin(Laminate l) {
        return "laminate " + l.name() + ", summed over its plies; "
                + layers(l).stream()
                        .filter(m -> m.lamina().isPresent())
                        .map(m -> m.name() + ": " + m.lamina().get().origin())
                        .collect(Collectors.joining("; "));
    }

    private boolean assumed(Laminate l) {
        return layers(l).stream().flatMap(m -> m.lamina().stream()).anyMatch(Lamina::assumed);
    }
}
