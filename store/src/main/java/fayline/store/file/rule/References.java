package fayline.store.file.rule;

import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.design.Made;
import fayline.flow.project.shop.Stand;
import fayline.flow.project.stock.Material;
import fayline.store.file.kind.Kind;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every reference must name something that exists. */
final class References {
    private final Draft d;
    private final Problems problems;

    References(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
    }

    void check() {
        List<String> assemblies = Draft.ids(d.assemblies());
        List<String> parts = Draft.ids(d.parts());
        List<String> systems = Draft.ids(d.systems());
        List<String> stock = new ArrayList<>(Draft.ids(d.materials()));
        stock.addAll(systems);
        List<String> things = new ArrayList<>(parts);
        things.addAll(Draft.ids(d.joints()));
        List<String> goals = new ArrayList<>(assemblies);
        goals.addAll(things);
        List<String> stands = d.whole().shop().stands().stream().map(Stand::id).toList();

        d.project()
                .down("milestones")
                .items()
                .forEach(m -> one(
                        m.get("after"), goals, "an assembly, part or joint", Kind.ASSEMBLIES, Kind.PARTS, Kind.JOINTS));
        d.moulds().forEach(m -> one(m.at().get("stand"), stands, "a stand of the shop", Kind.SHOP));
        d.lots().forEach(l -> one(l.at().get("of"), stock, "a material or system", Kind.MATERIALS, Kind.SYSTEMS));
        List<String> ordered = new ArrayList<>(stock);
        ordered.addAll(parts);
        d.deliveries().forEach(l -> {
            one(
                    l.at().get("what").filter(References::isId),
                    ordered,
                    "a material, system or part",
                    Kind.MATERIALS,
                    Kind.SYSTEMS,
                    Kind.PARTS);
            l.at().down("needed").items().forEach(this::work);
        });
        d.laminates().forEach(l -> {
            one(l.at().get("resin"), systems, "a system", Kind.SYSTEMS);
            List<String> layers = d.whole().materials().stream()
                    .filter(m -> isLayer(m.kind()))
                    .map(Material::id)
                    .toList();
            l.at().down("plies")
                    .items()
                    .forEach(
                            p -> one(p.get("of"), layers, "a cloth, tape or core among the materials", Kind.MATERIALS));
        });
        d.assemblies().forEach(a -> one(a.at().get("in"), assemblies, "an assembly", Kind.ASSEMBLIES));
        d.parts().forEach(p -> {
            one(p.at().get("in"), assemblies, "an assembly", Kind.ASSEMBLIES);
            one(p.at().get("opposite"), parts, "a part", Kind.PARTS);
            one(p.at().down("sets").get("as"), parts, "a part", Kind.PARTS);
            p.at().down("after-opposite").get("lessons-of").ifPresent(this::work);
            one(p.at().get("mould"), Draft.ids(d.moulds()), "a mould", Kind.MOULDS);
            p.at().down("zones")
                    .items()
                    .forEach(z -> one(z.get("laminate"), Draft.ids(d.laminates()), "a laminate", Kind.LAMINATES));
            make(p.at());
        });
        d.joints().forEach(j -> {
            one(j.at().get("in"), assemblies, "an assembly", Kind.ASSEMBLIES);
            many(j.at(), "between", parts, "a part", Kind.PARTS);
            one(j.at().get("adhesive"), systems, "a system", Kind.SYSTEMS);
            make(j.at());
        });
        d.fits().forEach(f -> {
            one(f.at().get("part"), parts, "a part", Kind.PARTS);
            one(f.at().get("joint"), Draft.ids(d.joints()), "a joint", Kind.JOINTS);
            many(f.at(), "against", parts, "a part", Kind.PARTS);
            f.at().down("frame")
                    .down("sections")
                    .items()
                    .forEach(s -> one(
                            s.down("laid").get("laminate"), Draft.ids(d.laminates()), "a laminate", Kind.LAMINATES));
        });
        chains();
        local(goals);
    }

    private void local(List<String> goals) {
        many(d.local(), "paid", Draft.ids(d.people()), "a person", Kind.PEOPLE);
        for (String list : List.of("tasks", "stages")) {
            once(d.local().down(list).items(), list);
            d.local()
                    .down(list)
                    .items()
                    .forEach(t -> many(
                            t, "of", goals, "an assembly, part or joint", Kind.ASSEMBLIES, Kind.PARTS, Kind.JOINTS));
        }
        d.local().down("stages").items().forEach(s -> s.down("before").items().forEach(this::work));
    }

    private void once(List<Tree> items, String among) {
        List<String> seen = new ArrayList<>();
        for (Tree t : items) {
            String id = t.down("id").text();
            if (!id.isEmpty() && seen.contains(id)) {
                problems.stop(t.down("id"), Problems.quote(id) + " a second time", "each id once among " + among, "");
            }
            seen.add(id);
        }
    }

    private void chains() {
        List<String> fits = Draft.ids(d.fits());
        d.chains().forEach(c -> {
            one(c.at().get("ends-at"), fits, "a fit", Kind.FITS);
            c.at().down("links").items().forEach(l -> one(l.get("scheme-of"), fits, "a fit", Kind.FITS));
        });
    }

    /** What is made outside is told in words, not by id. */
    private static boolean isId(Tree t) {
        return t.text().matches("[a-z0-9][a-z0-9-]*");
    }

    private static boolean isLayer(Material.Kind kind) {
        return kind == Material.Kind.CLOTH || kind == Material.Kind.TAPE || kind == Material.Kind.CORE;
    }

    private void make(Tree made) {
        for (Tree m : made.down("make").items()) {
            one(m.get("recipe"), Draft.ids(d.recipes()), "a recipe", Kind.RECIPES);
            m.down("after").items().forEach(this::work);
        }
    }

    private void many(Tree at, String key, Collection<String> known, String what, Kind... kinds) {
        at.down(key).items().forEach(t -> one(Optional.of(t), known, what, kinds));
    }

    private void one(Optional<Tree> at, Collection<String> known, String what, Kind... kinds) {
        if (!d.all(kinds)) {
            return;
        }
        at.filter(t -> t.form() == Tree.Form.SCALAR && !t.isBlank() && !known.contains(t.text()))
                .ifPresent(t -> problems.stop(
                        t, Problems.quote(t.text()), what + " that exists", Nearest.suggest(t.text(), known)));
    }

    /** A part, joint or step of one. */
    private void work(Tree at) {
        if (at.form() != Tree.Form.SCALAR || !d.all(Kind.PARTS, Kind.JOINTS, Kind.RECIPES)) {
            return;
        }
        String[] bits = at.text().split("/", -1);
        Optional<Made> made = d.made(bits[0]);
        if (made.isEmpty()) {
            List<String> known =
                    d.made().stream().map(p -> (Keyed) p.value()).map(Keyed::id).toList();
            problems.stop(
                    at, Problems.quote(at.text()), "a part or joint that exists", Nearest.suggest(bits[0], known));
            return;
        }
        if (bits.length > 1) {
            Set<String> steps = steps(made.get(), bits);
            String step = bits[bits.length - 1];
            if (!steps.contains(step) && made.get().make().stream().allMatch(m -> known(m.recipe()))) {
                problems.stop(
                        at,
                        Problems.quote(at.text()),
                        "a step of " + bits[0] + ": "
                                + String.join(", ", steps.stream().sorted().toList()),
                        Nearest.suggest(step, steps));
            }
        }
    }

    private boolean known(String recipe) {
        return d.whole().recipes().find(recipe).isPresent();
    }

    private Set<String> steps(Made made, String[] bits) {
        Set<String> steps = new HashSet<>();
        for (int n = 1; n <= made.make().size(); n++) {
            if (bits.length < 3 || bits[1].equals(String.valueOf(n))) {
                steps.addAll(steps(d, made, n));
            }
        }
        return steps;
    }

    /** The keys of the steps of one making, counted from 1; none where there is no such making. */
    static Set<String> steps(Draft d, Made made, int n) {
        Set<String> steps = new HashSet<>();
        if (n <= made.make().size()) {
            d.whole()
                    .recipes()
                    .find(made.make().get(n - 1).recipe())
                    .ifPresent(r -> r.steps().forEach(s -> steps.add(s.id())));
        }
        return steps;
    }
}
