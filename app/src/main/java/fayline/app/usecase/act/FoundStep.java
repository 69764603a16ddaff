package fayline.app.usecase.act;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Make;
import fayline.flow.project.piece.ReworkSteps;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A step found in a definition by its id.
 *
 * @param id the id: {@code project/made/make-number/key}
 * @param made the part or joint
 * @param number number of the make, from 1
 * @param recipe the recipe
 * @param step the recipe's step
 */
public record FoundStep(String id, Made made, int number, Recipe recipe, RecipeStep step) {
    private static final Set<String> NO = Set.of("", "no", "0", "none", "false");

    /** A step by its id. */
    public static Optional<FoundStep> find(Definition d, String id) {
        String[] bits = id.split("/", -1);
        if (bits.length != 4 || !bits[0].equals(d.facts().id()) || !bits[2].matches("[1-9][0-9]{0,2}")) {
            return Optional.empty();
        }
        int n = Integer.parseInt(bits[2]);
        return made(d, bits[1]).stream()
                .flatMap(m -> all(d, m, n).stream())
                .filter(s -> s.step().id().equals(bits[3]))
                .findFirst();
    }

    private static Optional<Made> made(Definition d, String id) {
        Optional<Made> part = d.parts().find(id).map(p -> p);
        return part.isPresent() ? part : d.joints().find(id).map(j -> j);
    }

    /** The steps of a make that exist with its parameters, in order. */
    private static List<FoundStep> all(Definition d, Made made, int n) {
        if (n < 1 || n > made.make().size()) {
            return List.of();
        }
        Make make = made.make().get(n - 1);
        return d.recipes().find(make.recipe()).stream()
                .flatMap(r -> Stream.concat(r.steps().stream().filter(s -> exists(r, make, s)), make.extra().stream())
                        .map(s -> new FoundStep(
                                d.facts().id() + "/" + made.id() + "/" + n + "/" + s.id(), made, n, r, s)))
                .toList();
    }

    private static boolean exists(Recipe recipe, Make make, RecipeStep step) {
        if (step.when().isEmpty()) {
            return true;
        }
        String name = step.when().startsWith("with.") ? step.when().substring("with.".length()) : step.when();
        String usual = recipe.parameters().stream()
                .filter(p -> p.id().equals(name))
                .map(Recipe.Parameter::usual)
                .findFirst()
                .orElse("");
        return !NO.contains(make.with().getOrDefault(name, usual));
    }

    /** The steps that it waits for directly. */
    public List<FoundStep> before(Definition d) {
        List<FoundStep> found = new ArrayList<>();
        List<FoundStep> mine = all(d, made, number);
        Set<String> asked = new LinkedHashSet<>();
        step.after().stream().map(After::step).forEach(k -> within(mine, k, asked, found));
        if (step.after().isEmpty()) {
            found.addAll(beforeTheMake(d));
        }
        return found;
    }

    /** A step of the same make by its key; one that does not exist here stands for those before it. */
    private void within(List<FoundStep> mine, String key, Set<String> asked, List<FoundStep> found) {
        if (!asked.add(key)) {
            return;
        }
        Optional<FoundStep> here =
                mine.stream().filter(s -> s.step().id().equals(key)).findFirst();
        if (here.isPresent()) {
            found.add(here.get());
        } else {
            recipe.steps().stream()
                    .filter(s -> s.id().equals(key))
                    .flatMap(s -> s.after().stream())
                    .forEach(a -> within(mine, a.step(), asked, found));
        }
    }

    private List<FoundStep> beforeTheMake(Definition d) {
        List<FoundStep> found = new ArrayList<>();
        last(all(d, made, number - 1)).ifPresent(found::add);
        for (String ref : made.make().get(number - 1).after()) {
            String[] bits = ref.split("/", -1);
            Optional<Made> other = made(d, bits[0]);
            if (other.isEmpty()) {
                continue;
            }
            Stream<FoundStep> steps = bits.length == 3
                    ? all(d, other.get(), Integer.parseInt(bits[1])).stream()
                    : java.util.stream.IntStream.rangeClosed(
                                    1, other.get().make().size())
                            .boxed()
                            .flatMap(n -> all(d, other.get(), n).stream());
            List<FoundStep> candidates = steps.toList();
            if (bits.length == 1) {
                last(candidates).ifPresent(found::add);
            } else {
                candidates.stream()
                        .filter(s -> s.step().id().equals(bits[bits.length - 1]))
                        .forEach(found::add);
            }
        }
        return found;
    }

    private static Optional<FoundStep> last(List<FoundStep> steps) {
        // Work that puts a deviation right is no end of a make: what waits for it follows from the deviation.
        List<FoundStep> own = steps.stream()
                .filter(s -> !s.step().id().startsWith(ReworkSteps.KEY))
                .toList();
        return own.isEmpty() ? Optional.empty() : Optional.of(own.get(own.size() - 1));
    }

    /** Every step that must come before it and is a hold point, however far back. */
    public List<FoundStep> holdsBefore(Definition d) {
        Set<String> seen = new LinkedHashSet<>();
        List<FoundStep> holds = new ArrayList<>();
        List<FoundStep> open = new ArrayList<>(before(d));
        while (!open.isEmpty()) {
            FoundStep next = open.remove(open.size() - 1);
            if (seen.add(next.id())) {
                if (next.step().hold()) {
                    holds.add(next);
                }
                open.addAll(next.before(d));
            }
        }
        return holds;
    }

    /** How people call it. */
    public String name() {
        return step.title() + ", " + made.name();
    }
}
