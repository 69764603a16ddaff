package fayline.flow.project.piece;

import fayline.basis.units.Area;
import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.flow.project.Definition;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Make;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.PieceRange;
import fayline.flow.project.design.PieceSets;
import fayline.flow.project.design.Zone;
import fayline.flow.project.piece.Division.Range;
import fayline.flow.project.shop.Mould;
import fayline.flow.project.stock.Delivery;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A definition in a division: every part that stands for like pieces is replaced by one part for each set, with the amounts of
 * its pieces; what names the part names all its sets, but what follows its sets names the set with the same pieces.
 */
public final class Divided {
    /** Sizes that do not add up: the depth of one mould is that of six. */
    private static final Set<String> ONE_FOR_ALL = Set.of("depth");

    private final Definition whole;
    private final Map<String, List<Range>> ranges = new LinkedHashMap<>();

    private Divided(Definition whole, Division division) {
        this.whole = whole;
        for (Part p : whole.parts()) {
            if (p.sets().isPresent()) {
                ranges.put(p.id(), division.sets().getOrDefault(Division.leader(p), List.of()));
            }
        }
    }

    /** Whether a definition has parts that are not divided yet. */
    public static boolean isWhole(Definition definition) {
        return definition.parts().stream().anyMatch(p -> p.sets().isPresent());
    }

    /**
     * A definition in a division.
     *
     * @param whole a definition with its parts undivided
     * @param division one of its divisions
     */
    public static Definition of(Definition whole, Division division) {
        return isWhole(whole) ? new Divided(whole, division).divide() : whole;
    }

    /** A definition in its sets: those that have begun and are wanted, the rest as usual. One that is divided stays so. */
    public static Definition of(Definition definition, Collection<String> begun, Collection<String> wanted) {
        return isWhole(definition) ? of(definition, Division.of(definition, begun, wanted)) : definition;
    }

    private Definition divide() {
        List<Part> parts = new ArrayList<>();
        for (Part p : whole.parts()) {
            List<Range> own = ranges.get(p.id());
            if (own == null) {
                parts.add(p.withMake(p.make().stream().map(this::named).toList()));
            } else {
                for (int i = 0; i < own.size(); i++) {
                    parts.add(set(p, own, i));
                }
            }
        }
        List<Joint> joints = whole.joints().stream().map(this::joint).toList();
        List<Delivery> deliveries = whole.deliveries().stream()
                .map(d ->
                        new Delivery(d.id(), d.what(), d.quantity(), d.due(), d.latest(), d.arrived(), all(d.needed())))
                .toList();
        return whole.withMade(new Catalog<>(parts), new Catalog<>(joints), new Catalog<>(deliveries))
                .withShop(whole.shop().withMoulds(moulds()));
    }

    private Part set(Part p, List<Range> own, int i) {
        Range r = own.get(i);
        int n = r.size();
        PieceSets asks = p.sets().orElseThrow();
        PieceSets leads =
                whole.parts().find(Division.leader(p)).flatMap(Part::sets).orElse(asks);
        String pieces = n == 1 ? leads.mark() + r.from() : leads.mark() + r.from() + " to " + leads.mark() + r.to();
        List<Make> makes = new ArrayList<>();
        for (Make m : p.make()) {
            List<String> after = new ArrayList<>();
            m.after().forEach(ref -> after.addAll(ofSet(p, ref, r)));
            if (asks.inTurn() && i > 0 && makes.isEmpty()) {
                after.add(Division.id(p.id(), own.get(i - 1)));
            }
            makes.add(new Make(m.recipe(), m.with(), after, m.notBefore()));
        }
        Map<String, Double> sizes = new LinkedHashMap<>();
        p.sizes().forEach((k, v) -> sizes.put(k, ONE_FOR_ALL.contains(k) ? v : v * n));
        return new Part(
                Division.id(p.id(), r),
                p.name() + ", set " + (i + 1) + " of " + own.size() + ": " + pieces,
                p.in(),
                p.hand(),
                p.opposite(),
                p.mould().map(m -> isEach(m) ? Division.id(m, r) : m),
                p.zones().stream().map(z -> zone(z, n)).toList(),
                makes,
                p.target().map(t -> target(t, n)),
                p.arm(),
                sizes,
                p.drawing(),
                p.orient(),
                p.lessons(),
                p.afterOpposite(),
                Optional.empty(),
                Optional.of(new PieceRange(p, r.from(), r.to(), i + 1, own.size())),
                p.coupons(),
                p.budget().isPresent() ? OptionalDouble.of(n * p.budget().getAsDouble()) : OptionalDouble.empty());
    }

    private static Zone zone(Zone z, int n) {
        return new Zone(
                z.id(),
                z.name(),
                z.laminate(),
                new Area(z.area().squareMetres() * n),
                new Length(z.edge().metres() * n),
                z.corners() * n,
                z.axis(),
                z.outline());
    }

    private static Entered<Mass> target(Entered<Mass> one, int n) {
        return new Entered<>(n + " x " + one.asTyped(), one.value().times(n));
    }

    private Joint joint(Joint j) {
        return new Joint(
                j.id(),
                j.name(),
                j.in(),
                all(j.between()),
                j.adhesive(),
                j.length(),
                j.width(),
                j.bondLine(),
                j.squeezeOut(),
                j.make().stream().map(this::named).toList(),
                j.sizes(),
                j.structural());
    }

    private Make named(Make m) {
        return new Make(m.recipe(), m.with(), all(m.after()), m.notBefore());
    }

    private List<String> all(List<String> refs) {
        return refs.stream().flatMap(r -> sets(r).stream()).toList();
    }

    /** A reference to every set of what it names. */
    private List<String> sets(String ref) {
        String made = ref.split("/", -1)[0];
        List<Range> own = ranges.get(made);
        return own == null
                ? List.of(ref)
                : own.stream()
                        .map(r -> Division.id(made, r) + ref.substring(made.length()))
                        .toList();
    }

    /** What a set names: of parts in the same sets, the set with its pieces. */
    private List<String> ofSet(Part p, String ref, Range r) {
        String made = ref.split("/", -1)[0];
        boolean sameSets = whole.parts()
                .find(made)
                .filter(o -> o.sets().isPresent() && Division.leader(o).equals(Division.leader(p)))
                .isPresent();
        return sameSets ? List.of(Division.id(made, r) + ref.substring(made.length())) : sets(ref);
    }

    private boolean isEach(String mould) {
        return whole.shop().moulds().find(mould).filter(Mould::each).isPresent();
    }

    /** The moulds of each set in place of those that stand for one for each piece. */
    private List<Mould> moulds() {
        List<Mould> moulds = new ArrayList<>();
        for (Mould m : whole.shop().moulds()) {
            Optional<Part> of = whole.parts().stream()
                    .filter(p -> m.each()
                            && p.sets().isPresent()
                            && p.mould().filter(m.id()::equals).isPresent())
                    .findFirst();
            if (of.isEmpty()) {
                moulds.add(m);
                continue;
            }
            for (Range r : ranges.getOrDefault(of.get().id(), List.of())) {
                moulds.add(new Mould(
                        Division.id(m.id(), r),
                        m.name() + " " + r.from() + " to " + r.to(),
                        m.stand(),
                        m.pulls(),
                        m.sinceTouchUp(),
                        m.sinceFull(),
                        m.touchUpEvery(),
                        m.fullEvery()));
            }
        }
        return moulds;
    }
}
