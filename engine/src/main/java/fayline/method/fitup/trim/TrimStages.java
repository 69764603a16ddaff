package fayline.method.fitup.trim;

import fayline.basis.numeric.LinearProgram;
import fayline.method.fitup.Move;
import fayline.method.fitup.motion.MoveRows;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One thing after the other, each keeping what was won: area and edges, then the deepest cut, then the length of the move. */
final class TrimStages {
    private static final int MOST_EDGES = 6;
    private static final double SLACK = 1e-7;
    private static final double SAME_DEPTH_MM = 1e-4;
    private static final double TOUCHED_MM = 1e-6;
    private static final int MOST_ROUNDS = 60;
    private static final double SHORT_ENOUGH_MM = 1e-7;

    private final TrimQuestion question;
    private final MoveRows moving;

    TrimStages(TrimQuestion question, MoveRows moving) {
        this.question = question;
        this.moving = moving;
    }

    /**
     * What came out.
     *
     * @param areaMm2 the area cut
     * @param depthsMm depth of each row
     * @param edges the edges cut
     * @param move the move
     * @param unique whether the depths are the only ones of this area
     */
    record Won(double areaMm2, List<Double> depthsMm, List<String> edges, Move move, boolean unique) {}

    /** The best cut; empty where none makes it fit. */
    Optional<Won> solve() {
        Set<String> all = cuttable();
        Optional<Double> whole = leastArea(all);
        if (whole.isEmpty()) {
            return Optional.empty();
        }
        Set<String> chosen = choose(all, whole.get());
        double area = leastArea(chosen).orElse(whole.get());
        boolean fewest = question.rules().goal() == TrimGoal.FEWEST_EDGES;
        return Optional.of(refine(chosen, area, unique(fewest ? chosen : all, fewest ? area : whole.get())));
    }

    private Set<String> cuttable() {
        Set<String> present = new HashSet<>();
        question.rows().stream()
                .filter(r -> r.mostMm() > 0)
                .forEach(r -> present.add(r.row().edge()));
        Set<String> all = new LinkedHashSet<>(question.rules().edges());
        all.retainAll(present);
        return all;
    }

    private Optional<Double> leastArea(Set<String> edges) {
        TrimModel m = new TrimModel(question, moving, edges, false);
        LinearProgram.Outcome o = m.program().build().minimise(m.areaCut());
        return o.optimal() ? Optional.of(Math.max(0, o.value())) : Optional.empty();
    }

    /** The first smallest set of edges, in the builder's order, that wins: any at all, or no more than the least area. */
    private Set<String> choose(Set<String> all, double leastArea) {
        boolean fewest = question.rules().goal() == TrimGoal.FEWEST_EDGES;
        List<String> edges = new ArrayList<>(all);
        if (edges.size() > MOST_EDGES) {
            edges = edges.subList(0, MOST_EDGES);
        }
        for (int size = 0; size <= edges.size(); size++) {
            Set<String> best = Set.of();
            double least = Double.POSITIVE_INFINITY;
            for (Set<String> subset : subsets(edges, size)) {
                Optional<Double> area = leastArea(subset);
                if (area.isPresent() && area.get() < least - slack(leastArea)) {
                    least = area.get();
                    best = subset;
                }
            }
            if (fewest ? least < Double.POSITIVE_INFINITY : least <= leastArea + slack(leastArea)) {
                return best;
            }
        }
        return all;
    }

    private static List<Set<String>> subsets(List<String> edges, int size) {
        List<Set<String>> all = new ArrayList<>();
        add(all, edges, 0, size, new LinkedHashSet<>());
        return all;
    }

    private static void add(List<Set<String>> all, List<String> edges, int from, int left, Set<String> taken) {
        if (left == 0) {
            all.add(new LinkedHashSet<>(taken));
            return;
        }
        for (int i = from; i <= edges.size() - left; i++) {
            taken.add(edges.get(i));
            add(all, edges, i + 1, left - 1, taken);
            taken.remove(edges.get(i));
        }
    }

    private boolean unique(Set<String> edges, double area) {
        TrimModel m = new TrimModel(question, moving, edges, false);
        LinearProgram p = m.program()
                .row(m.areaCut(), Double.NEGATIVE_INFINITY, area + slack(area))
                .build();
        for (Map.Entry<Integer, Integer> depth : m.depths().entrySet()) {
            LinearProgram.Outcome high = p.maximise(m.one(depth.getValue()));
            LinearProgram.Outcome low = p.minimise(m.one(depth.getValue()));
            if (!high.optimal() || !low.optimal() || high.value() - low.value() > SAME_DEPTH_MM) {
                return false;
            }
        }
        return true;
    }

    private Won refine(Set<String> edges, double area, boolean unique) {
        TrimModel m = new TrimModel(question, moving, edges, false);
        LinearProgram.Builder b = m.program().row(m.areaCut(), Double.NEGATIVE_INFINITY, area + slack(area));
        for (int k : m.depths().values()) {
            double[] row = m.one(m.bound());
            row[k] = -1;
            b.row(row, 0, Double.POSITIVE_INFINITY);
        }
        LinearProgram.Outcome deepest = b.build().minimise(m.one(m.bound()));
        LinearProgram.Outcome best = deepest.optimal() ? deepest : b.build().minimise(m.areaCut());
        if (!best.optimal()) {
            throw new IllegalStateException("a cut that was found is lost again: " + best.status());
        }
        if (deepest.optimal()) {
            LinearProgram.Builder shallow = m.program().row(m.areaCut(), Double.NEGATIVE_INFINITY, area + slack(area));
            for (int k : m.depths().values()) {
                shallow.row(m.one(k), Double.NEGATIVE_INFINITY, deepest.value() + SLACK);
            }
            best = shortest(m, shallow, best);
        }
        List<Double> depths =
                m.depths(best).stream().map(d -> d < TOUCHED_MM ? 0.0 : d).toList();
        Set<String> touched = new LinkedHashSet<>();
        for (int i = 0; i < depths.size(); i++) {
            if (depths.get(i) > 0) {
                touched.add(question.rows().get(i).row().edge());
            }
        }
        return new Won(area, depths, List.copyOf(touched), m.move(best), unique);
    }

    /** Least √(dx² + dy² + (Λθ)²) by cutting planes: its length is at least that along every direction tried. */
    private LinearProgram.Outcome shortest(TrimModel m, LinearProgram.Builder b, LinearProgram.Outcome first) {
        LinearProgram.Outcome best = first;
        LinearProgram.Outcome at = first;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double length = length(at);
            if (length < length(best)) {
                best = at;
            }
            if (length <= SHORT_ENOUGH_MM) {
                return best;
            }
            double[] row = m.one(m.bound());
            for (int k = 0; k < 3; k++) {
                row[k] = -at.at(k) / length;
            }
            at = b.row(row, 0, Double.POSITIVE_INFINITY).build().minimise(m.one(m.bound()));
            if (!at.optimal() || length(best) - at.value() <= SHORT_ENOUGH_MM) {
                return at.optimal() && length(at) < length(best) ? at : best;
            }
        }
        return best;
    }

    private static double length(LinearProgram.Outcome o) {
        return Math.sqrt(o.at(0) * o.at(0) + o.at(1) * o.at(1) + o.at(2) * o.at(2));
    }

    private static double slack(double area) {
        return SLACK * Math.max(1, area / 100);
    }
}
