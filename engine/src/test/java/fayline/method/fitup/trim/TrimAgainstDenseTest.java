package fayline.method.fitup.trim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * The search over the move alone against the dense program of every depth, on seeded openings: some fit, some need a cut, some
 * are too large; caps, fairness, edges that may not be cut and lengths that differ.
 */
class TrimAgainstDenseTest {
    private static final String[] EDGES = {"lower", "aft", "upper", "fwd"};
    private static final double WIDE = 350;
    private static final double HIGH = 230;

    private static Station station(int i, int side, double along, double skew) {
        return switch (side) {
            case 0 -> new Station("S" + i, new Spot(WIDE * along, -HIGH), 0, -1);
            case 1 -> new Station("S" + i, new Spot(WIDE, HIGH * along), 1, 0);
            case 2 -> new Station("S" + i, new Spot(-WIDE * along, HIGH), skew / 2, 1);
            default -> new Station("S" + i, new Spot(-WIDE, -HIGH * along), -1, skew);
        };
    }

    static TrimQuestion seeded(int seed, TrimGoal goal) {
        SplittableRandom random = new SplittableRandom(seed);
        int each = 2 + random.nextInt(4);
        // Even lengths on a true rectangle leave it open which of two facing edges is cut.
        boolean even = random.nextInt(2) == 0;
        double shift = random.nextDouble(-0.9, 0.5);
        List<TrimRow> rows = new ArrayList<>();
        List<NeighbourPair> pairs = new ArrayList<>();
        for (int i = 0; i < 4 * each; i++) {
            int side = i / each;
            double along = 2 * ((i % each) + 0.5) / each - 1;
            double gap = 3 + shift + random.nextDouble(-0.5, 0.5);
            double most = random.nextInt(5) == 0 ? 0.4 : 3;
            double length = (side % 2 == 0 ? 2 * WIDE : 2 * HIGH) / each;
            FitRow row = new FitRow(
                    station(i, side, along, even ? 0 : 0.2), gap, 2.5, 3, 3.6, OptionalDouble.empty(), 1, EDGES[side]);
            rows.add(new TrimRow(row, even ? length : length * random.nextDouble(0.5, 1), most, 0));
            if (i % each > 0 && random.nextInt(4) > 0) {
                pairs.add(new NeighbourPair("S" + (i - 1), "S" + i, length * random.nextDouble(0.3, 1)));
            }
        }
        List<String> edges = new ArrayList<>(List.of(EDGES));
        if (random.nextInt(3) == 0) {
            edges.remove(random.nextInt(4));
        }
        return new TrimQuestion(
                rows,
                pairs,
                new Spot(random.nextDouble(-50, 50), 10),
                MoveLimits.of(0.8, 0.8, 0.0015),
                new TrimRules(edges, TrimRules.SLOPE, 0, goal));
    }

    @Test
    void should_cut_as_little_and_as_shallow_as_the_dense_program() {
        int fitting = 0;
        int cutting = 0;
        for (int seed = 1; seed <= 60; seed++) {
            TrimQuestion q = seeded(seed, TrimGoal.LEAST_AREA);
            DenseTrim dense = new DenseTrim(q, new HashSet<>(q.rules().edges()), false);
            Optional<Double> area = dense.leastArea();
            TrimResult r = TrimCalculator.calculate(q);
            assertEquals(area.isPresent(), r.status() == TrimStatus.OK, "seed " + seed);
            if (area.isEmpty()) {
                continue;
            }
            fitting++;
            TrimResult.Cut cut = r.cut().orElseThrow();
            assertEquals(area.get(), cut.areaMm2(), 1e-5, "seed " + seed);
            DenseTrim chosen = new DenseTrim(q, new HashSet<>(cut.edges()), false);
            assertEquals(area.get(), chosen.leastArea().orElseThrow(), 1e-5, "seed " + seed);
            assertEquals(chosen.deepest(area.get()).orElseThrow(), cut.deepestMm(), 1e-5, "seed " + seed);
            cutting += cut.areaMm2() > 1 ? 1 : 0;
        }
        assertTrue(fitting >= 30 && cutting >= 20, fitting + " fit, " + cutting + " by a cut");
    }

    @Test
    void should_call_depths_the_only_ones_when_the_dense_program_lets_none_move() {
        int only = 0;
        int several = 0;
        for (int seed = 101; seed <= 150; seed++) {
            TrimQuestion q = seeded(seed, TrimGoal.LEAST_AREA);
            DenseTrim dense = new DenseTrim(q, new HashSet<>(q.rules().edges()), false);
            Optional<TrimResult.Cut> cut = TrimCalculator.calculate(q).cut();
            if (cut.isEmpty()) {
                continue;
            }
            double area = dense.leastArea().orElseThrow();
            double range = 0;
            for (int i = 0; i < q.rows().size(); i++) {
                range = Math.max(range, dense.range(i, area));
            }
            if (range < 1e-5 || range > 1e-3) {
                assertEquals(range < 1e-5, cut.get().unique(), "seed " + seed + " ranges " + range);
                only += range < 1e-5 ? 1 : 0;
                several += range > 1e-3 ? 1 : 0;
            }
        }
        assertTrue(only >= 10 && several >= 5, only + " and " + several);
    }

    @Test
    void should_cut_the_fewest_edges_that_the_dense_program_can_do_with() {
        for (int seed = 201; seed <= 230; seed++) {
            TrimQuestion q = seeded(seed, TrimGoal.FEWEST_EDGES);
            Optional<TrimResult.Cut> cut = TrimCalculator.calculate(q).cut();
            if (cut.isEmpty()) {
                continue;
            }
            int fewest = 9;
            double least = Double.POSITIVE_INFINITY;
            List<String> edges = q.rules().edges();
            for (int bits = 0; bits < 1 << edges.size(); bits++) {
                HashSet<String> some = new HashSet<>();
                for (int e = 0; e < edges.size(); e++) {
                    if (((bits >> e) & 1) == 1) {
                        some.add(edges.get(e));
                    }
                }
                Optional<Double> area = new DenseTrim(q, some, false).leastArea();
                if (area.isPresent() && (some.size() < fewest || (some.size() == fewest && area.get() < least))) {
                    fewest = some.size();
                    least = area.get();
                }
            }
            assertEquals(least, cut.get().areaMm2(), 1e-5, "seed " + seed);
            assertTrue(cut.get().edges().size() <= fewest, "seed " + seed);
        }
    }

    @Test
    void should_add_and_then_cut_as_little_as_the_dense_program() {
        int added = 0;
        for (int seed = 301; seed <= 380; seed++) {
            TrimQuestion q = seeded(seed, TrimGoal.LEAST_AREA);
            DenseTrim dense = new DenseTrim(q, new HashSet<>(q.rules().edges()), true);
            Optional<Double> least = dense.leastAdded();
            Optional<TrimResult.BuildUp> b = TrimCalculator.buildUp(q);
            assertEquals(least.isPresent(), b.isPresent(), "seed " + seed);
            if (least.isPresent()) {
                assertEquals(least.get(), b.get().areaMm2(), 1e-5, "seed " + seed);
                assertEquals(
                        dense.leastCutAfter(least.get()).orElseThrow(), b.get().trimAreaMm2(), 1e-4, "seed " + seed);
                added += least.get() > 1 ? 1 : 0;
            }
        }
        assertTrue(added >= 10, added + " needed adding");
    }

    @Test
    void should_count_depths_as_several_when_a_station_speaks_for_no_length() {
        double[] gaps = {3, 3, 3, 3, 3, 3, 3, 3};
        double[] lengths = {300, 300, 200, 200, 300, 300, 200, 200};
        TrimRules rules = new TrimRules(List.of(EDGES), TrimRules.SLOPE, 0, TrimGoal.LEAST_AREA);
        TrimQuestion counted = TrimTest.rectangle(gaps, lengths, rules);
        assertEquals(0, new DenseTrim(counted, new HashSet<>(rules.edges()), false).range(0, 0), 1e-6);
        assertTrue(TrimCalculator.calculate(counted).cut().orElseThrow().unique());
        lengths[0] = 0;
        TrimQuestion free = TrimTest.rectangle(gaps, lengths, rules);
        assertTrue(new DenseTrim(free, new HashSet<>(rules.edges()), false).range(0, 0) > 0.1);
        assertFalse(TrimCalculator.calculate(free).cut().orElseThrow().unique());
    }
}
