package fayline.store.file.rule;

import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.store.file.yaml.Problems;
import java.util.Optional;

/** A left part names a right one and the other way round. */
final class HandRules {
    private final Draft d;
    private final Problems problems;

    HandRules(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
    }

    void check() {
        for (Placed<Part> p : d.parts()) {
            Part part = p.value();
            if (part.hand() == Hand.NONE) {
                if (part.opposite().isPresent()) {
                    problems.stopAtKey(
                            p.at(), "hand", "nothing", "\"hand: left\" or \"hand: right\" beside \"opposite:\"", "");
                }
            } else if (part.opposite().isEmpty()) {
                problems.stop(
                        p.at().down("hand"),
                        "a " + part.hand().key() + " part that names no opposite",
                        "\"opposite:\" with the part of the other hand",
                        guess(part));
            } else {
                d.whole().parts().find(part.opposite().get()).ifPresent(o -> mutual(p, part, o));
            }
        }
    }

    private void mutual(Placed<Part> p, Part part, Part other) {
        if (other.hand() != part.hand().opposite()) {
            problems.stop(
                    p.at().down("opposite"),
                    other.id() + " with hand " + other.hand().key(),
                    "a part with hand " + part.hand().opposite().key(),
                    other.id().equals(part.id()) ? "a part is not its own opposite" : "");
        } else if (other.opposite().filter(part.id()::equals).isEmpty()) {
            problems.stop(
                    p.at().down("opposite"),
                    other.id() + ", whose own opposite is " + other.opposite().orElse("not named"),
                    "two parts that name each other",
                    "write opposite: " + part.id() + " at " + other.id());
        }
    }

    private String guess(Part part) {
        String other =
                part.id().replace(part.hand().key(), part.hand().opposite().key());
        Optional<Part> found =
                other.equals(part.id()) ? Optional.empty() : d.whole().parts().find(other);
        return found.map(o -> "add opposite: " + o.id()).orElse("");
    }
}
