package fayline.flow.result.expand;

import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.recipe.RecipeStep.Air;
import fayline.flow.project.shop.Mould;
import fayline.flow.project.shop.Port;
import fayline.flow.project.shop.Stand;
import fayline.flow.result.state.ShopState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Where steps may happen. A stand is the one that the make names with its parameter {@code stand} (several parted by commas),
 * else the one its mould cannot leave, else any; but only where it allows the air of the work. A warm box, kept more than
 * {@value #WARM_BOX_K} K over the shop, is taken only where it is named, and nobody works in it: hands work at the shop's own
 * temperature before it is closed. What has begun stays where it is.
 */
final class Places {
    private static final double WARM_BOX_K = 10;
    private static final double NEARLY = 1e-9;

    private final Definition definition;
    private final ShopState state;

    Places(Definition definition, ShopState state) {
        this.definition = definition;
        this.state = state;
    }

    /** The holds of a make, in the order of the recipe. */
    List<Hold> holds(MakeNode node, String project) {
        List<Hold> holds = new ArrayList<>();
        for (Recipe.Hold h : node.recipe().holds()) {
            List<RecipeStep> span = node.between(h.from(), h.to());
            List<String> candidates = candidates(node, h, span);
            if (span.isEmpty() || candidates.isEmpty()) {
                continue;
            }
            String kind = h.what().name().toLowerCase(java.util.Locale.ROOT);
            String id = project + "/" + node.local(kind + ":" + h.from() + "-" + h.to());
            List<String> steps =
                    span.stream().map(s -> project + "/" + node.local(s.id())).toList();
            holds.add(new Hold(id, Place.Kind.valueOf(h.what().name()), candidates, count(node, h), steps));
        }
        return holds;
    }

    /** How many places a hold takes; one for anything but ports. */
    private static int count(MakeNode node, Recipe.Hold h) {
        return h.what() == Recipe.Place.PORT
                ? (int) Math.max(1, Math.round(node.with().number(h.count(), 1)))
                : 1;
    }

    /** The least warmth over the shop's air, in kelvins, of the stands at which a step may happen. */
    double coldestK(MakeNode node, RecipeStep step) {
        return warmth(node, step).stream().mapToDouble(w -> w).min().orElse(0);
    }

    /** The most warmth over the shop's air, in kelvins, of the stands at which a step may happen. */
    double warmestK(MakeNode node, RecipeStep step) {
        return warmth(node, step).stream().mapToDouble(w -> w).max().orElse(0);
    }

    /** The most warmth over the shop's air, in kelvins, in which hands work at a step: that of a warm box does not count. */
    double workingK(MakeNode node, RecipeStep step) {
        return warmth(node, step).stream()
                .mapToDouble(w -> w)
                .filter(w -> w <= WARM_BOX_K)
                .max()
                .orElse(0);
    }

    private List<Double> warmth(MakeNode node, RecipeStep step) {
        ToDoubleFunction<String> warmer = id -> definition
                .shop()
                .stands()
                .find(id)
                .map(s -> s.warmer().kelvins())
                .orElse(0.0);
        return node.recipe().holds().stream()
                .filter(h -> h.what() == Recipe.Place.STAND)
                .filter(h -> node.between(h.from(), h.to()).contains(step))
                .flatMap(h -> candidates(node, h, node.between(h.from(), h.to())).stream())
                .map(warmer::applyAsDouble)
                .toList();
    }

    private List<String> candidates(MakeNode node, Recipe.Hold h, List<RecipeStep> span) {
        List<String> taken = new ArrayList<>();
        for (RecipeStep s : span) {
            Optional.ofNullable(state.steps().get(node.local(s.id()))).stream()
                    .flatMap(f -> f.places().stream())
                    .filter(p -> isOf(p, h.what()) && !taken.contains(p))
                    .forEach(taken::add);
        }
        int count = count(node, h);
        if (taken.size() >= count) {
            return taken.subList(0, count);
        }
        return switch (h.what()) {
            case MOULD -> mould(node).map(List::of).orElse(List.of());
            case PORT -> definition.shop().ports().stream().map(Port::id).toList();
            case STAND -> stands(node, span);
        };
    }

    private boolean isOf(String place, Recipe.Place what) {
        return switch (what) {
            case MOULD -> definition.shop().moulds().find(place).isPresent();
            case PORT -> definition.shop().ports().find(place).isPresent();
            case STAND -> definition.shop().stands().find(place).isPresent();
        };
    }

    static Optional<String> mould(MakeNode node) {
        Optional<String> named = node.with().get("mould");
        return named.isPresent()
                ? named.filter(m -> !m.equals("none"))
                : node.made() instanceof Part p ? p.mould() : Optional.empty();
    }

    private List<String> stands(MakeNode node, List<RecipeStep> span) {
        List<String> fitting = large(
                node,
                definition.shop().stands().stream().filter(s -> fits(s, span)).toList());
        List<String> named = node.with().get("stand").stream()
                .flatMap(v -> List.of(v.split("\\s*,\\s*")).stream())
                .filter(fitting::contains)
                .toList();
        if (!named.isEmpty()) {
            return named;
        }
        List<String> fixed = mould(node)
                .flatMap(m -> definition.shop().moulds().find(m))
                .flatMap(Mould::stand)
                .filter(fitting::contains)
                .map(List::of)
                .orElse(List.of());
        if (!fixed.isEmpty()) {
            return fixed;
        }
        List<String> usual = fitting.stream()
                .filter(id -> definition.shop().stands().get(id).warmer().kelvins() <= WARM_BOX_K)
                .toList();
        return usual.isEmpty() ? fitting : usual;
    }

    /** Those that hold all pieces of a set; where none does, all, so that it is seen that none does. */
    private static List<String> large(MakeNode node, List<Stand> stands) {
        double area = node.made() instanceof Part p && p.pieces().isPresent()
                ? p.zones().stream().mapToDouble(z -> z.area().squareMetres()).sum()
                : 0;
        List<String> all = stands.stream().map(Stand::id).toList();
        List<String> large = stands.stream()
                .filter(s -> s.shelves()
                        .filter(a -> a.squareMetres() < area * (1 - NEARLY))
                        .isEmpty())
                .map(Stand::id)
                .toList();
        return large.isEmpty() ? all : large;
    }

    private static boolean fits(Stand stand, List<RecipeStep> span) {
        return span.stream()
                .allMatch(s -> (s.air() != Air.WET || stand.wet()) && (s.air() != Air.DUST || stand.dust()));
    }
}
