package fayline.method.fitup.trim;

import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.WantedLines;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
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

    private final TrimQuestion question;
    private final TrimLines lines;
    private final Map<Set<String>, TrimSearch> searches = new HashMap<>();

    TrimStages(TrimQuestion question, WantedLines<?, ?> moving, Box box) {
        this.question = question;
        lines = new TrimLines(question, moving, box);
    }

    /**
     * What came out.
     *
     * @param areaMm2 the area cut
     * @param depthsMm depth of each row
     * @param edges the edges cut
     * @param move the unknowns of the move
     * @param unique whether the depths are the only ones of this area
     */
    record Won(double areaMm2, List<Double> depthsMm, List<String> edges, List<Double> move, boolean unique) {}

    /** The best cut; empty where none makes it fit. */
    Optional<Won> solve() {
        Set<String> all = cuttable();
        return search(all).leastArea(Double.POSITIVE_INFINITY).map(whole -> {
            Set<String> chosen = choose(all, whole.areaMm2());
            TrimSearch.Found least =
                    search(chosen).leastArea(Double.POSITIVE_INFINITY).orElse(whole);
            boolean fewest = question.rules().goal() == TrimGoal.FEWEST_EDGES;
            boolean unique = fewest
                    ? search(chosen).unique(least, SAME_DEPTH_MM)
                    : search(all).unique(whole, SAME_DEPTH_MM);
            return won(chosen, least, unique);
        });
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

    private TrimSearch search(Set<String> edges) {
        return searches.computeIfAbsent(edges, e -> new TrimSearch(lines, e));
    }

    private double area(Set<String> edges, double most) {
        return search(edges).leastArea(most).map(TrimSearch.Found::areaMm2).orElse(Double.POSITIVE_INFINITY);
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
                double area = area(subset, fewest ? least : leastArea + slack(leastArea));
                if (area < least - slack(leastArea)) {
                    least = area;
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

    private Won won(Set<String> edges, TrimSearch.Found least, boolean unique) {
        TrimSearch.Found best = search(edges).shallowest(least);
        List<Double> depths = Arrays.stream(best.depthsMm())
                .mapToObj(d -> d < TOUCHED_MM ? 0.0 : d)
                .toList();
        Set<String> touched = new LinkedHashSet<>();
        for (int i = 0; i < depths.size(); i++) {
            if (depths.get(i) > 0) {
                touched.add(question.rows().get(i).row().edge());
            }
        }
        return new Won(
                least.areaMm2(),
                depths,
                List.copyOf(touched),
                Arrays.stream(best.move()).boxed().toList(),
                unique);
    }

    private static double slack(double area) {
        return SLACK * Math.max(1, area / 100);
    }
}
