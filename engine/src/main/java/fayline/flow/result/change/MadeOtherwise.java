package fayline.flow.result.change;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Part;
import fayline.flow.project.piece.Division;
import fayline.flow.result.step.StepResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Which parts and joints are made otherwise because something is altered, and why. */
final class MadeOtherwise {
    private final Definition d;
    private final List<StepResult> steps;
    private final Map<String, List<String>> why = new LinkedHashMap<>();

    MadeOtherwise(Definition d, List<StepResult> steps) {
        this.d = d;
        this.steps = steps;
    }

    /** By the id of what is made: the ways, in words. */
    Map<String, List<String>> of(List<Touch> touches) {
        touches.forEach(this::touch);
        sameDrawing();
        Map<String, List<String>> ordered = new LinkedHashMap<>();
        Stream.concat(d.parts().stream(), d.joints().stream())
                .map(Made::id)
                .filter(why::containsKey)
                .forEach(id -> ordered.put(id, List.copyOf(why.getOrDefault(id, List.of()))));
        return ordered;
    }

    private void touch(Touch t) {
        switch (t.sort()) {
            case PART -> d.parts().stream().filter(p -> isPart(p, t.id())).forEach(p -> add(p.id(), "the part itself"));
            case JOINT -> d.joints().find(t.id()).ifPresent(j -> add(j.id(), "the joint itself"));
            case LAMINATE -> laminate(t.id(), "laminate ");
            case RECIPE -> recipe(t.id());
            case MOULD ->
                d.parts().stream()
                        .filter(p -> p.mould().filter(t.id()::equals).isPresent())
                        .forEach(p ->
                                add(p.id(), "mould " + name(d.shop().moulds().find(t.id()), m -> m.name(), t.id())));
            case MATERIAL -> material(t.id());
            case SYSTEM -> system(t.id());
            // a fit is read and trimmed otherwise; the part itself is made as before
            case FIT -> {}
        }
    }

    /** A part by its id, or one of its sets where it is made in sets. */
    private boolean isPart(Part p, String id) {
        return p.id().equals(id)
                || Division.partOf(d, p.id()).filter(w -> w.id().equals(id)).isPresent();
    }

    private void laminate(String id, String words) {
        String name = name(d.laminates().find(id), Laminate::name, id);
        d.parts().stream()
                .filter(p -> p.zones().stream().anyMatch(z -> z.laminate().equals(id)))
                .forEach(p -> add(p.id(), words + name));
    }

    private void recipe(String id) {
        String name = name(d.recipes().find(id), r -> r.name(), id);
        Stream.concat(d.parts().stream(), d.joints().stream())
                .filter(m -> m.make().stream().anyMatch(k -> k.recipe().equals(id)))
                .forEach(m -> add(m.id(), "recipe " + name));
    }

    private void material(String id) {
        String name = name(d.materials().find(id), m -> m.name(), id);
        d.laminates().stream()
                .filter(l -> l.plies().stream().anyMatch(p -> p.material().equals(id)))
                .forEach(l -> laminate(l.id(), name + " in laminate "));
        steps.stream()
                .filter(s -> s.needs().stream().anyMatch(n -> n.of().equals(id))
                        || s.plies().stream().anyMatch(p -> p.material().equals(id)))
                .forEach(s -> add(s.made(), name + " in " + s.title()));
    }

    private void system(String id) {
        String name = name(d.systems().find(id), s -> s.name(), id);
        d.laminates().stream()
                .filter(l -> l.system().equals(id))
                .forEach(l -> laminate(l.id(), name + " in laminate "));
        d.joints().stream().filter(j -> j.adhesive().equals(id)).forEach(j -> add(j.id(), "adhesive " + name));
        Stream.concat(d.parts().stream(), d.joints().stream())
                .filter(m -> m.make().stream().anyMatch(k -> k.with().containsValue(id)))
                .forEach(m -> add(m.id(), "its recipe takes " + name));
        steps.stream()
                .filter(s -> s.mixes().stream().anyMatch(m -> m.system().equals(id)))
                .forEach(s -> add(s.made(), name + " in " + s.title()));
    }

    /** What is made to the drawing of a part that is altered itself is altered with it: the other hand, most often. */
    private void sameDrawing() {
        List<Part> named = d.parts().stream()
                .filter(p -> !p.drawing().isBlank()
                        && why.getOrDefault(p.id(), List.of()).contains("the part itself"))
                .toList();
        for (Part p : d.parts()) {
            named.stream()
                    .filter(n -> !n.id().equals(p.id()) && n.drawing().equals(p.drawing()))
                    .forEach(n -> add(p.id(), "same drawing as " + n.name() + ", " + p.drawing()));
        }
    }

    private void add(String made, String words) {
        List<String> mine = why.computeIfAbsent(made, m -> new ArrayList<>());
        if (!mine.contains(words)) {
            mine.add(words);
        }
    }

    private static <T> String name(Optional<T> found, java.util.function.Function<T, String> of, String id) {
        return found.map(of).orElse(id);
    }

    /** Whether a joint is touched by a part. */
    static boolean joins(Joint j, String part) {
        return j.between().contains(part);
    }
}
