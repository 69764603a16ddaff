package fayline.store.file.rule;

import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.Ply;
import fayline.flow.project.stock.Material;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Plies that can be laid in stages; stacks that warp as a caution; zones that have a size. */
final class Stacks {
    private final Draft d;
    private final Problems problems;

    Stacks(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
    }

    void check() {
        d.laminates().forEach(l -> {
            angles(l);
            if (l.sound()) {
                stages(l);
                if (!Set.of("yes", "true").contains(l.at().down("uneven").text())) {
                    new Warp(d, problems).check(l);
                }
                fibre(l);
            }
        });
        d.parts().forEach(p -> {
            zones(p);
            if (p.sound()) {
                gaps(p);
            }
        });
    }

    private void fibre(Placed<Laminate> l) {
        double share = l.value().fibreMassFraction().ratio();
        if (share <= 0 || share >= 1) {
            problems.stop(l.at().down("fibre"), share * 100 + " %", "a share between 0 and 100 %, both left out", "");
        }
    }

    private void angles(Placed<Laminate> l) {
        for (Tree ply : l.at().down("plies").items()) {
            boolean fibres = d.whole()
                    .materials()
                    .find(ply.down("of").text())
                    .filter(m -> m.kind() != Material.Kind.CORE)
                    .isPresent();
            if (fibres && ply.get("angle").isEmpty()) {
                problems.stopAtKey(
                        ply, "angle", "nothing", "\"angle:\", which cloth and tape must have", "add angle: 0 deg");
            }
        }
    }

    private void stages(Placed<Laminate> l) {
        int before = 0;
        List<Ply> plies = l.value().plies();
        for (int i = 0; i < plies.size(); i++) {
            if (plies.get(i).stage() < before) {
                problems.stop(
                        l.at().down("plies"),
                        "a ply of stage " + plies.get(i).stage() + " upon one of stage " + before,
                        "stages that do not fall from the mould face outwards",
                        "");
                return;
            }
            before = plies.get(i).stage();
        }
    }

    /** One zone may sit out a stage, but a stage that no zone of a part has cannot be. */
    private void gaps(Placed<Part> part) {
        TreeSet<Integer> stages = new TreeSet<>();
        part.value()
                .zones()
                .forEach(z -> d.whole()
                        .laminates()
                        .find(z.laminate())
                        .ifPresent(l -> l.plies().forEach(p -> stages.add(p.stage()))));
        for (int s = 1; !stages.isEmpty() && s < stages.last(); s++) {
            if (!stages.contains(s)) {
                problems.stop(
                        part.at().down("zones"),
                        "plies of stage " + stages.last() + " and none of stage " + s,
                        "stages of a part from 1 without gaps",
                        "look at the stages of its laminates");
                return;
            }
        }
    }

    private void zones(Placed<Part> part) {
        for (Tree z : part.at().down("zones").items()) {
            boolean outline = z.get("outline").isPresent();
            if (!outline && z.get("area").isEmpty()) {
                problems.stop(z, "neither area nor outline", "\"area:\" or \"outline:\" for a zone", "");
            } else if (!outline && z.get("edge").isEmpty()) {
                problems.stopAtKey(z, "edge", "nothing", "\"edge:\" or \"outline:\" for a zone", "");
            }
        }
    }
}
