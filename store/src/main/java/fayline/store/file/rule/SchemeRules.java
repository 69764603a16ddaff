package fayline.store.file.rule;

import fayline.store.file.shape.PlaceText;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.List;

/** Points and schemes, of a fit or of a link of a chain. */
final class SchemeRules {
    private SchemeRules() {}

    static void check(Tree at, String of, Problems problems) {
        List<String> points =
                at.down("points").items().stream().map(p -> p.down("id").text()).toList();
        for (Tree s : at.down("schemes").items()) {
            List<Tree> holds = new ArrayList<>();
            for (String way : List.of("tape", "spacers", "blocks")) {
                holds.addAll(s.down(way).items());
            }
            holds.forEach(h -> h.down("points").items().stream()
                    .filter(t -> !points.contains(t.text()))
                    .forEach(t -> problems.stop(
                            t,
                            Problems.quote(t.text()),
                            points.isEmpty()
                                    ? "a point of this " + of + ", of which there is none"
                                    : "a point of this " + of + ": " + String.join(", ", points),
                            Nearest.suggest(t.text(), points))));
            List<Tree> pins = s.down("pins").items();
            if (holds.isEmpty() && pins.isEmpty()) {
                problems.stop(s, "a scheme that holds nothing", "at least one of tape, spacers, pins, blocks", "");
            }
            pins.stream()
                    .filter(p -> PlaceText.placeAt(p, "round").equals(PlaceText.placeAt(p, "slotted")))
                    .forEach(p -> problems.stop(
                            p.down("slotted"), "both holes in one place", "a place apart from the round hole", ""));
        }
    }
}
