package fayline.flow.result.expand;

import fayline.flow.project.design.Made;
import fayline.flow.project.design.Make;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One recipe on one part or joint.
 *
 * @param made the part or joint
 * @param number the make number, from 1
 * @param make how the part uses the recipe
 * @param recipe the recipe
 * @param with its parameters
 * @param steps the recipe's steps that exist with these parameters, in order
 */
record MakeNode(Made made, int number, Make make, Recipe recipe, With with, List<RecipeStep> steps) {
    static MakeNode of(Made made, int number, Make make, Recipe recipe) {
        With with = new With(recipe, make, made);
        return new MakeNode(
                made,
                number,
                make,
                recipe,
                with,
                Stream.concat(recipe.steps().stream().filter(s -> with.exists(s.when())), make.extra().stream())
                        .toList());
    }

    String local(String key) {
        return made.id() + "/" + number + "/" + key;
    }

    /** The step with a key, where it exists here. */
    Optional<RecipeStep> step(String key) {
        return steps.stream().filter(s -> s.id().equals(key)).findFirst();
    }

    /** The recipe's step with a key, or where that is left out here the nearest one before it that is not. */
    Optional<RecipeStep> nearest(String key) {
        if (make.extra().stream().anyMatch(s -> s.id().equals(key))) {
            return step(key);
        }
        Optional<RecipeStep> found = Optional.empty();
        for (RecipeStep s : recipe.steps()) {
            if (steps.contains(s)) {
                found = Optional.of(s);
            }
            if (s.id().equals(key)) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** What a step waits for within the recipe: as written, else the step before it. */
    List<After> after(RecipeStep step) {
        if (!step.after().isEmpty()) {
            return step.after();
        }
        int i = steps.indexOf(step);
        if (i <= 0) {
            return List.of();
        }
        return List.of(new After(
                steps.get(i - 1).id(), After.Moment.END, Optional.empty(), Optional.empty(), Optional.empty()));
    }

    /** Whether a step waits for nothing within the recipe. */
    boolean isRoot(RecipeStep step) {
        return after(step).stream().noneMatch(a -> nearest(a.step()).isPresent());
    }

    /** Steps that no other step of the recipe waits for: where the make ends. The last step is always one of them. */
    List<RecipeStep> sinks() {
        List<RecipeStep> left = new ArrayList<>(steps);
        for (RecipeStep s : steps) {
            for (After a : after(s)) {
                nearest(a.step()).filter(earlier -> !earlier.equals(s)).ifPresent(left::remove);
            }
        }
        return left;
    }

    /** Steps from one key to another, both included; what is left out here is passed over. */
    List<RecipeStep> between(String from, String to) {
        List<RecipeStep> span = new ArrayList<>();
        boolean in = false;
        for (RecipeStep s : recipe.steps()) {
            in |= s.id().equals(from);
            if (in && steps.contains(s)) {
                span.add(s);
            }
            if (s.id().equals(to)) {
                return in ? span : List.of();
            }
        }
        return List.of();
    }

    /** The lay-up stage of a step; 0 for none. A bag without a stage closes over the stage that was laid last before it. */
    int stage(RecipeStep step) {
        int own = (int) Math.round(with.number(step.stage(), 0));
        if (own > 0 || !step.bagged()) {
            return own;
        }
        int before = 0;
        for (RecipeStep s : steps) {
            if (s.equals(step)) {
                break;
            }
            int stage = (int) Math.round(with.number(s.stage(), 0));
            before = stage > 0 ? stage : before;
        }
        return before;
    }
}
