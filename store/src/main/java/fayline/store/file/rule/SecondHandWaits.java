package fayline.store.file.rule;

import fayline.flow.project.design.AfterOpposite;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Part;
import fayline.flow.project.recipe.RecipeStep;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What steps wait for because an opposite hand is made first: the lessons of that hand, and the same steps of it where its crew
 * or soon after it is asked for. On the second hand itself and on the joints that it is in.
 */
final class SecondHandWaits {
    private final Draft d;

    SecondHandWaits(Draft draft) {
        d = draft;
    }

    /**
     * One wait.
     *
     * @param ref what is waited for: something made, or a step of it
     * @param at where that is written
     */
    record Wait(String ref, Tree at) {}

    /** What a step of something made waits for. */
    List<Wait> of(Made made, int number, RecipeStep step) {
        List<Wait> waits = new ArrayList<>();
        for (Placed<Part> p : d.parts()) {
            boolean concerned = made instanceof Joint j
                    ? j.between().contains(p.id())
                    : made.id().equals(p.id());
            Optional<AfterOpposite> asks = p.value().afterOpposite().filter(o -> concerned);
            asks.filter(o -> o.lessonsBefore().contains(step.kind()))
                    .flatMap(AfterOpposite::lessonsOf)
                    .ifPresent(ref -> waits.add(
                            new Wait(ref, p.at().down("after-opposite").down("lessons-of"))));
            asks.filter(o -> o.follows()
                            && o.concerns(step.kind())
                            && !step.hands().isEmpty())
                    .flatMap(o -> first(made))
                    .ifPresent(first ->
                            waits.add(new Wait(first + "/" + number + "/" + step.id(), p.at().down("after-opposite"))));
        }
        return waits;
    }

    /** The opposite part, or the joint between the opposites of a joint's parts. */
    private Optional<String> first(Made made) {
        if (made instanceof Part p) {
            return p.opposite();
        }
        Set<String> wanted = new HashSet<>();
        if (made instanceof Joint j) {
            j.between()
                    .forEach(id -> wanted.add(d.made(id)
                            .flatMap(m -> m instanceof Part p ? p.opposite() : Optional.empty())
                            .orElse(id)));
        }
        return d.joints().stream()
                .filter(j -> !j.id().equals(made.id())
                        && wanted.equals(new HashSet<>(j.value().between())))
                .map(Placed::id)
                .findFirst();
    }
}
