package fayline.method.fitup.chain;

import fayline.method.fitup.Move;
import fayline.method.fitup.odds.GapSource;
import fayline.method.uncertainty.Distribution;
import fayline.method.uncertainty.Distribution.Shape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Marks that lay more than one bench of a chain: where such a mark was found in place it was found once, so its error is one cause
 * that moves every link that rests on it, and so is its error on a bench that is the same for both. Causes that are one add their
 * effects, not their variances [jcgm100] 5.2.
 */
final class SharedMarks {
    private static final double SAME_MM = 1e-6;
    private final Map<String, List<Use>> uses = new LinkedHashMap<>();
    private final int gaps;

    /**
     * A mark in a link.
     *
     * @param link the link's place in the chain
     * @param fit how its bench lies
     * @param pull what the mark's error does there
     */
    private record Use(int link, DatumFit fit, MarkPull pull) {}

    /**
     * A cause that acts through several links.
     *
     * @param source the whole of it
     * @param effects what it does through each link, by the link's place in the chain
     */
    record Shared(GapSource.Along source, Map<Integer, List<Double>> effects) {
        /** What of a gap's variance counts for a link: its own effect times the whole; over all links it is the whole. */
        double shareMm2(int link, int gap) {
            double u = source.spread().standardDeviation();
            return effects.containsKey(link)
                    ? effects.get(link).get(gap) * source.effects().get(gap) * u * u
                    : 0;
        }
    }

    SharedMarks(Chain chain) {
        this.gaps = chain.stations().size();
        for (int k = 0; k < chain.links().size(); k++) {
            Link l = chain.links().get(k);
            if (!l.settled() && l.carried().isPresent()) {
                DatumFit fit = l.carried().get();
                for (MarkPull p : fit.pulls()) {
                    uses.computeIfAbsent(p.mark().id(), id -> new ArrayList<>()).add(new Use(k, fit, p));
                }
            }
        }
        uses.values().removeIf(u -> u.size() < 2);
    }

    /** The marks that lay more than one bench. */
    List<String> names() {
        return List.copyOf(uses.keySet());
    }

    /** Whether a link rests on one of them. */
    boolean in(int link) {
        return uses.values().stream().flatMap(List::stream).anyMatch(u -> u.link == link);
    }

    /**
     * The causes of all of them.
     *
     * @param effect how much each gap grows when a link moves so about the middle of its marks
     */
    List<Shared> sources(BiFunction<Integer, Move, List<Double>> effect) {
        List<Shared> all = new ArrayList<>();
        uses.forEach((name, found) -> {
            all.addAll(
                    both("mark " + name + " in place", found.get(0).pull.mark().inPlaceMm(), found, effect));
            List<Use> left = new ArrayList<>(found);
            while (!left.isEmpty()) {
                DatumMark first = left.get(0).pull.mark();
                List<Use> same = left.stream()
                        .filter(u -> u.pull.mark().onBench().distanceMm(first.onBench()) < SAME_MM)
                        .toList();
                all.addAll(both("mark " + name + " on the bench", first.benchMm(), same, effect));
                left.removeAll(same);
            }
        });
        return all;
    }

    private List<Shared> both(
            String name, double deviationMm, List<Use> found, BiFunction<Integer, Move, List<Double>> effect) {
        return deviationMm > 0
                ? List.of(
                        one(name + ", along", deviationMm, found, u -> u.pull.perMmX(), effect),
                        one(name + ", up", deviationMm, found, u -> u.pull.perMmY(), effect))
                : List.of();
    }

    private Shared one(
            String name,
            double deviationMm,
            List<Use> found,
            Function<Use, Move> pull,
            BiFunction<Integer, Move, List<Double>> effect) {
        Map<Integer, List<Double>> each = new LinkedHashMap<>();
        found.forEach(u -> each.put(u.link, effect.apply(u.link, pull.apply(u))));
        List<Double> sum = new ArrayList<>();
        for (int i = 0; i < gaps; i++) {
            int gap = i;
            sum.add(each.values().stream().mapToDouble(e -> e.get(gap)).sum());
        }
        return new Shared(
                new GapSource.Along(name, "marks", Distribution.ofStandardDeviation(Shape.NORMAL, 0, deviationMm), sum),
                each);
    }
}
