package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.move.BestMove;
import fayline.method.fitup.move.BestMoveCalculator;
import fayline.method.fitup.move.BestMoveResult;
import fayline.method.fitup.odds.ExpectedGap;
import fayline.method.fitup.odds.GapSource;
import fayline.method.fitup.odds.GapSpread;
import fayline.method.fitup.odds.GapTrials;
import fayline.method.fitup.odds.GapTrialsCalculator;
import fayline.method.uncertainty.Distribution;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;

/**
 * How long the best move takes with 12 and with 2000 stations, and how long a million trials of 12 gaps take. Stations lie on a
 * window of 700 by 460 mm with seeded readings; each is measured again and again, the median is told.
 */
final class FitBench {
    private static final int FEW = 12;
    private static final int MANY = 2_000;
    private static final long TRIALS = 1_000_000;
    private static final double TARGET_FEW_MS = 1;
    private static final double TARGET_MANY_MS = 50;
    private static final double TARGET_TRIALS_MS = 1_000;
    private final PrintStream out;

    FitBench(PrintStream out) {
        this.out = out;
    }

    int run(int seconds, boolean json) {
        boolean good = tell("12 stations", TARGET_FEW_MS, json, median(seconds, i -> move(FEW, i)));
        good &= tell("2000 stations", TARGET_MANY_MS, json, median(seconds, i -> move(MANY, i)));
        good &= tell("a million trials of 12 gaps", TARGET_TRIALS_MS, json, median(seconds, FitBench::trials));
        return good ? BenchRun.DONE : BenchRun.DIFFERS;
    }

    private boolean tell(String what, double targetMs, boolean json, double ms) {
        if (json) {
            ObjectNode n = Json.object();
            n.put("bench", "fit").put("what", what).put("medianMs", ms).put("targetMs", targetMs);
            out.println(Json.line(n));
        } else {
            out.println(String.format(Locale.ROOT, "%-28s  %10.3f ms  (wanted: below %.0f ms)", what, ms, targetMs));
        }
        return ms < targetMs;
    }

    /** The median time of one call in milliseconds, after a third of the time to warm up. */
    private static double median(int seconds, IntConsumer call) {
        long span = Math.max(1, seconds) * 1_000_000_000L / 3;
        int i = 0;
        long warm = System.nanoTime() + span / 3;
        do {
            call.accept(i++);
        } while (System.nanoTime() < warm);
        List<Long> times = new ArrayList<>();
        long end = System.nanoTime() + span * 2 / 3;
        do {
            long start = System.nanoTime();
            call.accept(i++);
            times.add(System.nanoTime() - start);
        } while (System.nanoTime() < end);
        long[] sorted = times.stream().mapToLong(Long::longValue).sorted().toArray();
        return sorted[sorted.length / 2] / 1e6;
    }

    private static BestMoveResult move(int stations, int seed) {
        return BestMoveCalculator.calculate(BestMove.of(rows(stations, seed), MoveLimits.of(5, 5, Math.toRadians(1))));
    }

    private static List<FitRow> rows(int stations, int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Move off = new Move(0.4 - random.nextDouble(), 0.4 - random.nextDouble(), 0.002 * random.nextDouble());
        Spot middle = new Spot(0, 0);
        List<FitRow> rows = new ArrayList<>();
        for (int i = 0; i < stations; i++) {
            int side = i * 4 / stations;
            double along = (i * 4.0 / stations - side) * 2 - 1 + 1.0 / stations;
            Station s = switch (side) {
                case 0 -> new Station("S" + i, new Spot(350 * along, -230), 0, -1);
                case 1 -> new Station("S" + i, new Spot(350, 230 * along), 1, 0);
                case 2 -> new Station("S" + i, new Spot(-350 * along, 230), 0, 1);
                default -> new Station("S" + i, new Spot(-350, -230 * along), -1, 0);
            };
            double gap = FitRow.of(s, 3, 2.5, 3, 3.5).gapAfterMm(off, middle) + 0.3 * (random.nextDouble() - 0.5);
            rows.add(FitRow.of(s, gap, 2.5, 3, 3.5));
        }
        return rows;
    }

    private static Object trials(int seed) {
        List<ExpectedGap> gaps = rows(FEW, 1).stream()
                .map(r -> new ExpectedGap(r.station().id(), r.nominalMm(), 2.6, 3.4, 0.06))
                .toList();
        double[] turn = new double[FEW];
        Arrays.setAll(turn, i -> 1 - 2.0 * i / FEW);
        List<GapSource> sources = List.of(
                along("stop 1", 0.29, i -> 1.0),
                along("stop 2", 0.29, i -> turn[i]),
                along("stop 3", 0.29, i -> -turn[i] * turn[i]));
        return GapTrialsCalculator.calculate(new GapTrials(new GapSpread(gaps, sources), TRIALS, seed));
    }

    private static GapSource along(String name, double deviationMm, IntFunction<Double> weight) {
        List<Double> weights = new ArrayList<>();
        for (int i = 0; i < FEW; i++) {
            weights.add(weight.apply(i));
        }
        return new GapSource.Along(name, name, Distribution.normal(0, deviationMm), weights);
    }
}
