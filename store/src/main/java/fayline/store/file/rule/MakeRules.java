package fayline.store.file.rule;

import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Make;
import fayline.flow.project.design.Part;
import fayline.flow.project.recipe.HandsRate;
import fayline.flow.project.recipe.MixUse;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import fayline.store.file.kind.Kind;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What a part or joint must say for the recipes that make it. */
final class MakeRules {
    private static final Set<String> DRIVERS = Set.of(
            "step",
            "m2",
            "ply",
            "ply-m2",
            "m",
            "corner",
            "batch",
            "pleat",
            "tape-m",
            "core-m2",
            "joint-m",
            "joint-m2",
            "coat-m2");
    private static final String MOULD = "mould";
    private static final String STAND = "stand";
    private static final Set<String> NO = Set.of("", "no", "0", "none", "false");
    private final Draft d;
    private final Problems problems;

    MakeRules(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
    }

    void check() {
        for (Placed<? extends Keyed> p : d.made()) {
            Optional<Made> made = d.made(p.id());
            if (made.isEmpty() || made.get() != p.value()) {
                continue;
            }
            Set<Integer> laid = new LinkedHashSet<>();
            for (int n = 0; n < made.get().make().size(); n++) {
                Make make = made.get().make().get(n);
                Tree at = p.at().down("make", n);
                Optional<Recipe> recipe = d.whole().recipes().find(make.recipe());
                recipe.ifPresent(r -> one(made.get(), make, r, at, laid));
            }
            if (p.sound() && p.value() instanceof Part part) {
                unlaid(part, p.at(), laid);
            }
        }
    }

    private void one(Made made, Make make, Recipe recipe, Tree at, Set<Integer> laid) {
        Map<String, String> values = values(made, make, recipe);
        parameters(make, recipe, at, values);
        List<RecipeStep> steps =
                recipe.steps().stream().filter(s -> exists(s, values)).toList();
        Tree with = at.get("with").orElse(at);
        systems(steps, values, with, recipe);
        amounts(steps, values, with, recipe);
        rates(made, recipe, steps, at);
        places(made, make, recipe, at, with);
        for (RecipeStep s : steps) {
            if (!s.bagged()) {
                stage(s, values).ifPresent(laid::add);
            }
        }
    }

    private static Map<String, String> values(Made made, Make make, Recipe recipe) {
        Map<String, String> values = new HashMap<>();
        if (made instanceof Joint j) {
            values.put(RecipeRules.ADHESIVE, j.adhesive());
        }
        recipe.parameters().stream().filter(p -> !p.usual().isEmpty()).forEach(p -> values.put(p.id(), p.usual()));
        values.putAll(make.with());
        return values;
    }

    private static boolean exists(RecipeStep s, Map<String, String> values) {
        return s.when().isEmpty() || !NO.contains(values.getOrDefault(s.when(), ""));
    }

    private static String fill(String text, Map<String, String> values) {
        return text.startsWith("with.") ? values.getOrDefault(text.substring("with.".length()), "") : text;
    }

    private static Optional<Integer> stage(RecipeStep s, Map<String, String> values) {
        try {
            return Optional.of(Integer.parseInt(fill(s.stage(), values))).filter(n -> n > 0);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private void parameters(Make make, Recipe recipe, Tree at, Map<String, String> values) {
        List<String> known = new ArrayList<>(
                recipe.parameters().stream().map(Recipe.Parameter::id).toList());
        recipe.holds().forEach(h -> {
            String place = h.what() == Recipe.Place.MOULD ? MOULD : STAND;
            if (h.what() != Recipe.Place.PORT && !known.contains(place)) {
                known.add(place);
            }
        });
        for (String given : make.with().keySet()) {
            if (!known.contains(given) && !given.equals(RecipeRules.ADHESIVE)) {
                problems.stop(
                        at.down("with", given),
                        "a parameter " + Problems.quote(given),
                        "one of the recipe " + recipe.id() + ": " + String.join(", ", known),
                        Nearest.suggest(given, known));
            }
        }
        for (Tree p : recipeTree(recipe).down("parameters").items()) {
            String id = p.down("id").text();
            if (p.get("usual").isEmpty() && !values.containsKey(id)) {
                problems.stop(
                        at.get("with").orElse(at.down("recipe")),
                        "no value for " + id + " (" + p.down("about").text() + ")",
                        "every parameter without a usual value under \"with:\"",
                        "add " + id + ":");
            }
        }
    }

    private Tree recipeTree(Recipe recipe) {
        return d.recipes().stream()
                .filter(r -> r.id().equals(recipe.id()))
                .map(Placed::at)
                .findFirst()
                .orElse(d.project());
    }

    /** Parameters that stand for a system must name one. */
    private void systems(List<RecipeStep> steps, Map<String, String> values, Tree with, Recipe recipe) {
        List<String> known = Draft.ids(d.systems());
        Set<String> used = new LinkedHashSet<>();
        for (RecipeStep s : steps) {
            s.mixes().forEach(m -> used.add(m.system()));
            s.alone().ifPresent(a -> used.add(a.system()));
            s.after()
                    .forEach(a -> Stream.of(a.opens(), a.shuts())
                            .flatMap(Optional::stream)
                            .forEach(o -> used.add(o.system())));
        }
        for (String ref : used) {
            String value = fill(ref, values);
            if (d.all(Kind.SYSTEMS) && ref.startsWith("with.") && !value.isEmpty() && !known.contains(value)) {
                problems.stop(
                        with.down(ref.substring("with.".length())),
                        Problems.quote(value),
                        "a system that exists, since the recipe " + recipe.id() + " mixes it or waits for it",
                        Nearest.suggest(value, known));
            }
        }
    }

    private void amounts(List<RecipeStep> steps, Map<String, String> values, Tree with, Recipe recipe) {
        for (RecipeStep s : steps) {
            for (MixUse m : s.mixes()) {
                String amount = fill(m.amount(), values);
                if (!amount.isEmpty() && !isAmount(amount)) {
                    Tree at = m.amount().startsWith("with.")
                            ? with.down(m.amount().substring(5))
                            : with;
                    problems.stop(
                            at,
                            Problems.quote(amount),
                            "an amount such as 0.5 kg/m2, 0.5 mm or 120 g for step " + s.id() + " of " + recipe.id(),
                            "");
                }
            }
        }
    }

    private static boolean isAmount(String text) {
        for (QuantityKind<?> kind : List.of(QuantityKind.MASS, QuantityKind.LENGTH, QuantityKind.AREAL_MASS)) {
            try {
                return QuantityParser.parse(text, kind).value().si() >= 0;
            } catch (UnreadableQuantityException e) {
                // another kind may fit
            }
        }
        return false;
    }

    /** A rate counts by what the program measures or what the part states. */
    private void rates(Made made, Recipe recipe, List<RecipeStep> steps, Tree at) {
        Set<String> missing = new LinkedHashSet<>();
        for (RecipeStep s : steps) {
            List<HandsRate> rates = new ArrayList<>(s.hands());
            s.after().forEach(a -> a.miss().ifPresent(m -> rates.addAll(m.hands())));
            rates.stream()
                    .map(HandsRate::per)
                    .filter(per -> !DRIVERS.contains(per) && !made.sizes().containsKey(per))
                    .forEach(missing::add);
        }
        for (String per : missing) {
            List<String> known = new ArrayList<>(DRIVERS.stream().sorted().toList());
            known.addAll(made.sizes().keySet());
            problems.stop(
                    at.down("recipe"),
                    "no size " + Problems.quote(per) + ", by which the recipe " + recipe.id() + " counts",
                    "\"sizes: {" + per + ": ...}\" on " + made.id(),
                    Nearest.suggest(per, known));
        }
    }

    private void places(Made made, Make make, Recipe recipe, Tree at, Tree with) {
        boolean mould = recipe.holds().stream().anyMatch(h -> h.what() == Recipe.Place.MOULD);
        if (mould
                && made instanceof Part p
                && p.mould().isEmpty()
                && !make.with().containsKey(MOULD)) {
            problems.caution(
                    at.down("recipe"),
                    "no mould on " + made.id() + ", and the recipe " + recipe.id() + " holds one",
                    "\"mould:\" on the part",
                    "with: {mould: none} says that it is laid up on a flat bench");
        }
        List<String> stands = d.whole().shop().stands().stream().map(Keyed::id).toList();
        for (String s : make.with().getOrDefault(STAND, "").split(",", -1)) {
            if (!s.isBlank() && d.all(Kind.SHOP) && !stands.contains(s.strip())) {
                problems.stop(
                        with.down(STAND),
                        Problems.quote(s.strip()),
                        "a stand of the shop",
                        Nearest.suggest(s.strip(), stands));
            }
        }
        List<String> moulds = new ArrayList<>(Draft.ids(d.moulds()));
        moulds.add("none");
        Optional.ofNullable(make.with().get(MOULD))
                .filter(m -> d.all(Kind.MOULDS) && !moulds.contains(m))
                .ifPresent(m -> problems.stop(
                        with.down(MOULD),
                        Problems.quote(m),
                        "a mould that exists, or none",
                        Nearest.suggest(m, moulds)));
    }

    /** Every stage that is drawn must be laid by a step, where any is. */
    private void unlaid(Part part, Tree at, Set<Integer> laid) {
        Set<Integer> drawn = new LinkedHashSet<>();
        part.zones()
                .forEach(z -> d.whole()
                        .laminates()
                        .find(z.laminate())
                        .ifPresent(l -> l.plies().forEach(p -> drawn.add(p.stage()))));
        drawn.removeAll(laid);
        if (!laid.isEmpty() && !drawn.isEmpty()) {
            problems.stop(
                    at.down("make"),
                    "plies of stage " + drawn.iterator().next() + " that no step lays",
                    "a step for every stage of the part's laminates",
                    "another recipe, or another stage in the laminate");
        }
    }
}
