package fayline.flow.record.inspect;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Made;
import fayline.flow.project.local.LocalStage;
import fayline.flow.project.recipe.StepKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What must be there before something is closed: a look from outside, pictures, and nothing found that is still open. */
public final class StageGate {
    private final Definition d;
    private final InspectState state;

    /**
     * For a project.
     *
     * @param definition the project
     * @param state visits and what they found
     */
    public StageGate(Definition definition, InspectState state) {
        this.d = definition;
        this.state = state;
    }

    /**
     * Why a step may not begin, one sentence each; none where it may.
     *
     * @param made the part or joint
     * @param local the step, as {@code made/number/key}
     * @param kind its sort
     */
    public List<String> barred(String made, String local, StepKind kind) {
        List<String> all = new ArrayList<>();
        for (LocalStage stage : d.local().stages()) {
            if (stage.before().contains(local)) {
                all.addAll(missing(stage));
            }
        }
        if (kind == StepKind.CLOSE_OUT && all.isEmpty()) {
            all.addAll(open(around(made)));
        }
        return all;
    }

    /** What a stage still lacks, one sentence each. */
    public List<String> missing(LocalStage stage) {
        List<String> all = new ArrayList<>();
        List<HeldVisit> held = visits(stage);
        if (held.stream().allMatch(HeldVisit::own)) {
            all.add("Nobody from outside has looked at \"" + stage.name() + "\" yet.");
        }
        long photos = photos(stage);
        if (photos < stage.photos()) {
            all.add("\"" + stage.name() + "\" asks for " + stage.photos()
                    + " pictures with their scale and direction; there are " + photos + ".");
        }
        Set<String> covered = new HashSet<>();
        stage.of().forEach(id -> covered.addAll(below(id, new HashSet<>())));
        all.addAll(open(covered));
        return all;
    }

    /** The visits of a stage, oldest first. */
    public List<HeldVisit> visits(LocalStage stage) {
        return state.visitsOf(d.facts().id()).stream()
                .filter(v -> v.stage().equals(stage.id()))
                .toList();
    }

    /** How many pictures of a stage tell their scale and direction. */
    public long photos(LocalStage stage) {
        return visits(stage).stream()
                .flatMap(v -> v.photos().stream())
                .filter(StagePhoto::isTold)
                .count();
    }

    private List<String> open(Set<String> made) {
        return state.faultsOf(d.facts().id()).stream()
                .filter(f -> f.isOpen() && made.contains(f.made()))
                .map(f -> "Finding " + f.number() + " is open: " + f.text())
                .toList();
    }

    /** What is closed with something: itself, what a joint joins, and all that stands in its assembly. */
    private Set<String> around(String made) {
        Set<String> all = new HashSet<>(Set.of(made));
        d.joints().find(made).ifPresent(j -> all.addAll(j.between()));
        made(made).map(Made::in).ifPresent(in -> all.addAll(below(in, new HashSet<>())));
        return all;
    }

    private Optional<Made> made(String id) {
        return everything().filter(m -> m.id().equals(id)).findFirst();
    }

    private Stream<Made> everything() {
        return Stream.concat(d.parts().stream(), d.joints().stream());
    }

    private Set<String> below(String id, Set<String> seen) {
        Set<String> all = new HashSet<>(Set.of(id));
        if (seen.add(id) && d.assemblies().find(id).isPresent()) {
            everything().filter(m -> m.in().equals(id)).forEach(m -> all.add(m.id()));
            d.assemblies().stream()
                    .filter(a -> a.in().equals(Optional.of(id)))
                    .map(Assembly::id)
                    .forEach(a -> all.addAll(below(a, seen)));
        }
        return all;
    }
}
