package fayline.flow.result.expand;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.plan.PieceGroup.Limit;
import fayline.flow.project.Definition;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Make;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.PieceSets;
import fayline.flow.project.piece.Divided;
import fayline.flow.project.piece.Division;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.shop.Stand;
import fayline.flow.result.air.ClockBook;
import fayline.flow.result.air.ShopAir;
import fayline.flow.result.state.ShopState;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How many like pieces go into one set as far as that can be computed: the shelves of the stand that a recipe names, by area; and,
 * where one pot is the limit, the most pieces that every mix of their steps serves with one batch, at the warmest of the usual
 * day. First principles; what a pot serves is {@link fayline.flow.result.mix.MixPlanner}'s answer.
 *
 * @param limits what holds how many
 * @param most the most pieces of a set, the part's own limit included
 * @param findings where the part asks for more than fits, or what limits it is not known
 */
public record SetLimits(List<Limit> limits, int most, List<Finding> findings) {
    /** Room for rounding in areas. */
    private static final double NEARLY = 1e-9;

    /** Copies the lists. */
    public SetLimits {
        limits = List.copyOf(limits);
        findings = List.copyOf(findings);
    }

    /**
     * Looks at a part with all that follow its sets.
     *
     * @param whole the definition with its parts undivided
     * @param part one that states pieces
     * @param air the shop's air
     * @param clocks the clocks on which spans run
     */
    public static SetLimits of(Definition whole, Part part, ShopAir air, ClockBook clocks) {
        PieceSets asks = part.sets().orElseThrow();
        List<Part> group = whole.parts().stream()
                .filter(p -> p.sets().isPresent() && Division.leader(p).equals(part.id()))
                .toList();
        List<Limit> limits = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        int most = asks.most();
        for (Part p : group) {
            for (Make make : p.make()) {
                List<Limit> shelves = shelves(whole, p, make);
                limits.addAll(shelves);
                most = Math.min(
                        most, shelves.stream().mapToInt(Limit::most).max().orElse(Integer.MAX_VALUE));
            }
        }
        if (asks.limit() == PieceSets.Limit.SHELVES && limits.isEmpty()) {
            findings.add(new Finding(
                    Severity.NOTE,
                    part.id(),
                    "The sets of " + part.name()
                            + " are limited by shelves, but no stand that its recipes name says how much"
                            + " it holds: the limit is as written. Give the stand its shelves.",
                    "the definition"));
        }
        if (asks.limit() == PieceSets.Limit.ONE_POT) {
            int pot = onePot(whole, part, group, most, air, clocks);
            limits.add(new Limit("", pot));
            most = Math.min(most, pot);
        }
        if (most < asks.most()) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    part.id(),
                    String.format(
                            Locale.ROOT,
                            "A set of %s may have %d, but only %d fit %s: sets are made no larger.",
                            part.name(),
                            asks.most(),
                            most,
                            asks.limit() == PieceSets.Limit.ONE_POT ? "one pot" : "on the shelves"),
                    "the definition"));
        }
        return new SetLimits(limits.stream().distinct().toList(), Math.max(1, most), findings);
    }

    private static List<Limit> shelves(Definition whole, Part p, Make make) {
        double one =
                p.zones().stream().mapToDouble(z -> z.area().squareMetres()).sum();
        Optional<Recipe> recipe = whole.recipes().find(make.recipe());
        boolean stands = recipe.filter(r -> r.holds().stream().anyMatch(h -> h.what() == Recipe.Place.STAND))
                .isPresent();
        List<String> named = recipe.flatMap(r -> new With(r, make, p).get("stand")).stream()
                .flatMap(v -> List.of(v.split("\\s*,\\s*")).stream())
                .toList();
        List<Limit> limits = new ArrayList<>();
        for (String id : stands && one > 0 ? named : List.<String>of()) {
            Optional<Stand> stand = whole.shop().stands().find(id);
            if (stand.isPresent()) {
                limits.add(new Limit(
                        id,
                        stand.get()
                                .shelves()
                                .map(a -> (int) Math.floor(a.squareMetres() / one + NEARLY))
                                .orElse(Integer.MAX_VALUE)));
            }
        }
        return limits.stream().allMatch(l -> l.most() == Integer.MAX_VALUE) ? List.of() : limits;
    }

    private static int onePot(Definition whole, Part part, List<Part> group, int most, ShopAir air, ClockBook clocks) {
        for (int n = most; n > 1; n--) {
            Definition only = Divided.of(of(whole, part, group, n), List.of(), List.of());
            boolean one = new StepExpander(only, ShopState.at(air.now()), air, clocks)
                    .expand().steps().stream()
                            .flatMap(s -> s.batches().stream())
                            .allMatch(b -> b.batches() == 1 && b.fits());
            if (one) {
                return n;
            }
        }
        return 1;
    }

    /** Nothing but one set of so many pieces. */
    private static Definition of(Definition whole, Part part, List<Part> group, int n) {
        List<Part> parts = group.stream()
                .map(p -> p.id().equals(part.id())
                        ? p.withSets(new PieceSets(n, "", n, n, PieceSets.Limit.OTHER, "", false, Optional.empty()))
                        : p)
                .toList();
        return whole.withMade(new Catalog<>(parts), Catalog.empty(), Catalog.empty());
    }
}
