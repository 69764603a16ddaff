package fayline.app.usecase.change;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import fayline.flow.record.change.Change;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.result.change.ChangeResult;
import fayline.flow.result.change.Reached;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A change with all that it touches now, and how far each thing is.
 *
 * @param change the change
 * @param result what it touches by the definition now
 * @param lines what is to be settled, with what became of it
 * @param disposals what was begun before it, each with its disposition
 */
public record Followed(Change change, ChangeResult result, List<Line> lines, List<Disposal> disposals) {
    /** Copies the lists. */
    public Followed {
        lines = List.copyOf(lines);
        disposals = List.copyOf(disposals);
    }

    /**
     * One thing that is to be settled.
     *
     * @param reached what it is
     * @param settled what became of it; empty while it is open
     */
    public record Line(Reached reached, Optional<Change.Settled> settled) {}

    /**
     * What becomes of something that was begun before the change.
     *
     * @param made the part or joint
     * @param name what people call it
     * @param deviation its disposition; empty where none is opened
     * @param open what is still to be done, in words; empty where nothing is
     */
    public record Disposal(String made, String name, Optional<Deviation> deviation, String open) {}

    /** What is made otherwise and begun, by id. */
    List<String> begun() {
        return result.of(Reached.Group.MADE).stream()
                .filter(r -> r.standing() == Reached.Standing.MADE || r.standing() == Reached.Standing.IN_WORK)
                .map(Reached::id)
                .toList();
    }

    /** The lines that are open. */
    public List<Line> open() {
        return lines.stream().filter(l -> l.settled().isEmpty()).toList();
    }

    /** What must be done before it can be closed, each in words; empty where nothing is missing. */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (change.stage() != Change.Stage.ACCEPTED) {
            missing.add("It is " + change.stage().words() + ".");
        }
        for (Reached.Group g : Reached.Group.values()) {
            List<String> names = open().stream()
                    .map(Line::reached)
                    .filter(r -> r.group() == g)
                    .map(Reached::name)
                    .toList();
            if (!names.isEmpty()) {
                missing.add(g.words() + ", not settled: " + String.join("; ", names) + ".");
            }
        }
        disposals.stream().filter(d -> !d.open().isEmpty()).forEach(d -> missing.add(d.name() + ": " + d.open() + "."));
        return List.copyOf(missing);
    }

    /** The drawing of a part; empty where there is none. */
    static String drawing(Definition d, String made) {
        return d.parts().find(made).map(Part::drawing).orElse("");
    }
}
