package fayline.store.file.rule;

import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Ply;
import fayline.flow.project.stock.Material;
import fayline.store.file.yaml.Problems;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Stacks that warp. An unsymmetric stack bends as it cures and cools, an unbalanced one shears when it is pulled; both may be
 * wanted, so both are cautions. A woven cloth has fibres in both its directions, so that at 0 or 45 degrees it is balanced in
 * itself (classical lamination theory; R. M. Jones, Mechanics of Composite Materials, 2nd ed., chapter 4, from memory).
 */
final class Warp {
    private static final double SAME_DEG = 1;
    private final Draft d;
    private final Problems problems;

    Warp(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
    }

    void check(Placed<Laminate> laminate) {
        symmetric(laminate);
        balanced(laminate);
    }

    private void symmetric(Placed<Laminate> p) {
        List<Ply> plies = p.value().plies();
        for (int i = 0; i < plies.size() / 2; i++) {
            Ply a = plies.get(i);
            Ply b = plies.get(plies.size() - 1 - i);
            boolean same = a.core() == b.core()
                    && a.material().equals(b.material())
                    && (a.core() || fold(a) == fold(b) || period(a) - Math.abs(fold(a) - fold(b)) < SAME_DEG);
            if (!same) {
                problems.caution(
                        p.at().down("plies"),
                        "a stack that is not symmetric: ply " + (i + 1) + " is " + words(a) + ", ply "
                                + (plies.size() - i) + " is " + words(b),
                        "the same plies from both faces inwards, for it warps as it cures and cools",
                        "say uneven: yes if that is meant");
                return;
            }
        }
    }

    private void balanced(Placed<Laminate> p) {
        Map<String, Integer> odd = new TreeMap<>();
        for (Ply ply : p.value().plies()) {
            long angle = fold(ply);
            long half = period(ply);
            if (!ply.core() && angle != 0 && 2 * angle != half) {
                boolean mirrored = 2 * angle > half;
                odd.merge(
                        ply.material() + " at " + (mirrored ? half - angle : angle) + " degrees",
                        mirrored ? -1 : 1,
                        Integer::sum);
            }
        }
        odd.values().removeIf(n -> n == 0);
        odd.forEach((what, n) -> problems.caution(
                p.at().down("plies"),
                "a stack that is not balanced: " + Math.abs(n) + " more of " + what + " one way than the other",
                "as many plies at minus an angle as at plus, for it shears when it is pulled",
                "say uneven: yes if that is meant"));
    }

    private boolean isWoven(Ply ply) {
        return d.whole()
                .materials()
                .find(ply.material())
                .filter(m -> m.kind() == Material.Kind.CLOTH)
                .isPresent();
    }

    /** Degrees after which the fibres lie as before. */
    private long period(Ply ply) {
        return isWoven(ply) ? 90 : 180;
    }

    private long fold(Ply ply) {
        return Math.floorMod(Math.round(ply.angle().degrees()), period(ply));
    }

    private static String words(Ply ply) {
        return ply.core()
                ? ply.material()
                : String.format(
                        Locale.ROOT,
                        "%s at %.0f deg",
                        ply.material(),
                        ply.angle().degrees());
    }
}
