package fayline.flow.result.laminate;

import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Ply;
import fayline.flow.project.stock.Lamina;
import fayline.flow.project.stock.Material;
import fayline.method.laminate.strength.PlyStrength;
import fayline.method.laminate.strength.StrongPly;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The plies of a laminate as they are entered: what can be reckoned with, what is missing, where it is from. */
final class EnteredStack {
    /** A core without figures carries nothing in its plane. */
    private static final double NOTHING_PA = 1e6;

    private static final double OF_A_CORE = 0.3;
    private final Laminate laminate;
    private final Catalog<Material> materials;
    private final Set<String> missing = new LinkedHashSet<>();
    private final List<StrongPly> plies = new ArrayList<>();
    private boolean expansions = true;

    EnteredStack(Laminate laminate, Catalog<Material> materials) {
        this.laminate = laminate;
        this.materials = materials;
        laminate.plies().forEach(p -> ply(p).ifPresent(plies::add));
    }

    List<StrongPly> plies() {
        return List.copyOf(plies);
    }

    List<String> missing() {
        return List.copyOf(missing);
    }

    boolean expansionKnown() {
        return expansions;
    }

    private Optional<StrongPly> ply(Ply p) {
        Optional<Material> found = materials.find(p.material());
        if (found.isEmpty() || found.get().thickness().isEmpty()) {
            missing.add("Of " + p.material() + " the thickness as laid is not entered.");
            return Optional.empty();
        }
        Material m = found.get();
        double thickness = m.thickness().get().value().si();
        if (m.lamina().isEmpty() && !p.core()) {
            missing.add("Of " + m.name() + " the moduli once laid are not entered (lamina).");
            return Optional.empty();
        }
        if (!p.core() && m.lamina().flatMap(Lamina::bears).isEmpty()) {
            missing.add("Of " + m.name() + " what it bears is not entered (lamina, bears).");
        }
        try {
            return Optional.of(new StrongPly(
                    new fayline.method.laminate.Ply(
                            m.lamina().map(this::lamina).orElseGet(EnteredStack::soft),
                            thickness,
                            p.angle().degrees()),
                    p.core()
                            ? Optional.empty()
                            : m.lamina().flatMap(Lamina::bears).map(EnteredStack::strength),
                    Optional.empty()));
        } catch (IllegalArgumentException e) {
            missing.add(m.name() + ": " + e.getMessage() + ".");
            return Optional.empty();
        }
    }

    private static fayline.method.laminate.Lamina soft() {
        return fayline.method.laminate.Lamina.isotropic(NOTHING_PA, OF_A_CORE, 0);
    }

    private fayline.method.laminate.Lamina lamina(Lamina l) {
        expansions &= l.expansionAlong().isPresent() && l.expansionAcross().isPresent();
        return new fayline.method.laminate.Lamina(
                l.along().pascals(),
                l.across().pascals(),
                l.shear().pascals(),
                l.poisson(),
                l.expansionAlong().orElse(0),
                l.expansionAcross().orElse(0));
    }

    private static PlyStrength strength(Lamina.Bears b) {
        return PlyStrength.of(
                b.pulledAlong().pascals(),
                b.pressedAlong().pascals(),
                b.pulledAcross().pascals(),
                b.pressedAcross().pascals(),
                b.shear().pascals());
    }

    /** Each material once, with how far its figures are to be trusted. */
    List<LaminateCheck.Input> inputs() {
        Set<String> ids = new LinkedHashSet<>();
        laminate.plies().forEach(p -> ids.add(p.material()));
        List<LaminateCheck.Input> all = new ArrayList<>();
        for (String id : ids) {
            materials.find(id).ifPresent(m -> all.add(input(m)));
        }
        return all;
    }

    private static LaminateCheck.Input input(Material m) {
        if (m.lamina().isEmpty()) {
            boolean core = m.kind() == Material.Kind.CORE;
            return new LaminateCheck.Input(
                    m.name(),
                    core ? "not entered" : "missing",
                    core ? "taken to carry nothing in its plane, and not asked for strength" : "",
                    core);
        }
        Lamina l = m.lamina().get();
        return new LaminateCheck.Input(m.name(), l.status().words(), l.origin(), !l.isUntrusted());
    }

    /** Mass per area with resin, where every layer's is entered. */
    OptionalDouble massKgPerM2() {
        double fibre = 0;
        double core = 0;
        for (Ply p : laminate.plies()) {
            Optional<Material> m = materials.find(p.material());
            OptionalDouble mass = p.core()
                    ? m.flatMap(x -> x.thickness()
                                    .flatMap(t -> x.density()
                                            .map(d -> t.value().si() * d.value().si())))
                            .map(OptionalDouble::of)
                            .orElse(OptionalDouble.empty())
                    : m.flatMap(Material::arealMass)
                            .map(a -> OptionalDouble.of(a.value().si()))
                            .orElse(OptionalDouble.empty());
            if (mass.isEmpty()) {
                return mass;
            }
            fibre += p.core() ? 0 : mass.getAsDouble();
            core += p.core() ? mass.getAsDouble() : 0;
        }
        double share = laminate.fibreMassFraction().ratio();
        return share > 0 ? OptionalDouble.of(fibre / share + core) : OptionalDouble.empty();
    }

    /** What cloth, tape and core cost per area, where every price is by area. */
    OptionalDouble costPerM2() {
        double sum = 0;
        for (Ply p : laminate.plies()) {
            Optional<fayline.flow.project.stock.Price> price =
                    materials.find(p.material()).flatMap(Material::price);
            if (price.isEmpty() || !"m2".equals(price.get().per())) {
                return OptionalDouble.empty();
            }
            sum += price.get().amount();
        }
        return OptionalDouble.of(sum);
    }
}
