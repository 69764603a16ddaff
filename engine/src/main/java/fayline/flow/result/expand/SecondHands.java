package fayline.flow.result.expand;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.OppositeHands.Follow;
import fayline.flow.plan.OppositeHands.Taught;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Miss;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.project.Definition;
import fayline.flow.project.design.AfterOpposite;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Part;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepWindow;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the second hand of a part waits for and whose hands it asks for, on the part itself and on the joints that it is in. The
 * same step of the first hand is the one of the same make and key; for a joint, of the joint between the opposite parts.
 */
final class SecondHands {
    private final Definition definition;
    private final ShopState state;
    private final MakeTree tree;
    private final String project;
    private final List<Follow> follows = new ArrayList<>();
    private final List<Taught> lessons = new ArrayList<>();

    SecondHands(Definition definition, ShopState state, MakeTree tree) {
        this.definition = definition;
        this.state = state;
        this.tree = tree;
        this.project = definition.facts().id();
    }

    /** What was asked for by the steps so far. */
    OppositeHands asked() {
        return new OppositeHands(follows, lessons);
    }

    /**
     * Windows to the first hand that a step is to keep.
     *
     * @param waits what it waits for anyway
     * @param titles of steps by their local ids
     */
    List<StepWindow> of(
            MakeNode node,
            RecipeStep step,
            List<StepWindow> waits,
            Map<String, String> titles,
            List<Finding> findings) {
        List<StepWindow> more = new ArrayList<>();
        for (Part part : secondIn(node.made())) {
            AfterOpposite asks = part.afterOpposite().orElseThrow();
            lessons(node, step, part, asks, titles, findings, more);
            if (asks.follows() && asks.concerns(step.kind()) && !step.hands().isEmpty()) {
                same(node, step).ifPresent(first -> follow(node, step, asks, first, waits, titles, more));
            }
        }
        return more;
    }

    private List<Part> secondIn(Made made) {
        List<Part> parts = made instanceof Part p
                ? List.of(p)
                : made instanceof Joint j
                        ? j.between().stream()
                                .flatMap(id -> definition.parts().find(id).stream())
                                .toList()
                        : List.of();
        return parts.stream().filter(p -> p.afterOpposite().isPresent()).toList();
    }

    private void lessons(
            MakeNode node,
            RecipeStep step,
            Part part,
            AfterOpposite asks,
            Map<String, String> titles,
            List<Finding> findings,
            List<StepWindow> into) {
        if (asks.lessonsOf().isEmpty() || !asks.lessonsBefore().contains(step.kind())) {
            return;
        }
        String of = part.opposite()
                .flatMap(o -> definition.parts().find(o))
                .map(Part::name)
                .orElse("the first hand");
        List<String> taughtBy = tree.resolve(asks.lessonsOf().get());
        for (String local : taughtBy) {
            into.add(Windows.plain(
                    project + "/" + local, "lessons of " + of + ": " + titles.getOrDefault(local, local)));
            lessons.add(new Taught(project + "/" + node.local(step.id()), project + "/" + local, of));
        }
        boolean over = !taughtBy.isEmpty()
                && taughtBy.stream()
                        .allMatch(l -> Optional.ofNullable(state.steps().get(l))
                                .flatMap(f -> f.handsEnded())
                                .isPresent());
        if (over && part.lessons().isEmpty() && !isNoted(part)) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    node.local(step.id()),
                    of + " is so far, but no lesson of it is written down: note on its steps what it taught before \""
                            + step.title() + "\" begins.",
                    "the definition"));
        }
    }

    /** Whether something was noted on the first hand, or on a joint that it is in. */
    private boolean isNoted(Part part) {
        Set<String> first = new HashSet<>();
        part.opposite().ifPresent(o -> {
            first.add(o);
            definition.joints().stream()
                    .filter(j -> j.between().contains(o))
                    .map(Joint::id)
                    .forEach(first::add);
        });
        return state.notes().stream().anyMatch(n -> first.contains(n.step().split("/")[0]));
    }

    /** The same step of the first hand, by its local id. */
    private Optional<String> same(MakeNode node, RecipeStep step) {
        return opposite(node.made())
                .map(m -> m + "/" + node.number() + "/" + step.id())
                .filter(ref -> tree.resolve(ref).equals(List.of(ref)));
    }

    private Optional<String> opposite(Made made) {
        if (made instanceof Part p) {
            return p.opposite();
        }
        Set<String> wanted = new LinkedHashSet<>();
        if (made instanceof Joint j) {
            j.between()
                    .forEach(id -> wanted.add(
                            definition.parts().find(id).flatMap(Part::opposite).orElse(id)));
        }
        return definition.joints().stream()
                .filter(o -> !o.id().equals(made.id()) && wanted.equals(new LinkedHashSet<>(o.between())))
                .map(Joint::id)
                .findFirst();
    }

    private void follow(
            MakeNode node,
            RecipeStep step,
            AfterOpposite asks,
            String first,
            List<StepWindow> waits,
            Map<String, String> titles,
            List<StepWindow> into) {
        String id = project + "/" + first;
        boolean priced = waits.stream()
                .anyMatch(w -> w.link().step().equals(id) && w.miss().isPresent());
        Optional<Span> shuts = asks.within().filter(w -> !priced).map(w -> new Span(w.minutes(), ""));
        Optional<Miss> miss =
                shuts.map(s -> new Miss("Hands are out of practice: read the first hand's card and notes again.", (int)
                        Math.ceil(asks.again().minutes() - 1e-9)));
        into.add(new StepWindow(
                new Link(id, "hands-end", Span.NONE, shuts, miss),
                titles.getOrDefault(first, first),
                "",
                asks.within()
                        .filter(w -> shuts.isPresent())
                        .map(w -> "while hands are practised")
                        .orElse(""),
                ""));
        OppositeHands.Crew crew = switch (asks.crew()) {
            case SAME -> OppositeHands.Crew.SAME;
            case ONE -> OppositeHands.Crew.ONE;
            case ANY -> OppositeHands.Crew.ANY;
        };
        follows.add(new Follow(project + "/" + node.local(step.id()), id, crew));
    }
}
