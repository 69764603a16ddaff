package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.fit.SampleFit;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntUnaryOperator;

/**
 * How long the best move takes with 12 and with 2000 stations, a million trials of 12 gaps, and the least trim with 12, 500 and
 * 2000 stations. Each is measured again and again, the median is told.
 */
final class FitBench {
    private static final int FEW = 12;
    private static final int MANY = 2_000;
    private static final long TRIALS = 1_000_000;
    private static final double TARGET_FEW_MS = 1;
    private static final double TARGET_MANY_MS = 50;
    private static final double TARGET_TRIALS_MS = 1_000;
    private static final int SOME = 500;
    private static final double TARGET_TRIM_FEW_MS = 5;
    private static final double TARGET_TRIM_SOME_MS = 250;
    private static final double TARGET_TRIM_MANY_MS = 1_000;
    private final PrintStream out;

    FitBench(PrintStream out) {
        this.out = out;
    }

    int run(int seconds, boolean json) {
        boolean good = tell(
                "12 stations",
                TARGET_FEW_MS,
                json,
                median(seconds, i -> SampleFit.bestMove(FEW, i).outside().size()));
        good &= tell(
                "2000 stations",
                TARGET_MANY_MS,
                json,
                median(seconds, i -> SampleFit.bestMove(MANY, i).outside().size()));
        good &= tell(
                "a million trials of 12 gaps",
                TARGET_TRIALS_MS,
                json,
                median(seconds, i -> SampleFit.trials(FEW, TRIALS, i).stations().size()));
        good &= trim(FEW, TARGET_TRIM_FEW_MS, seconds, json);
        good &= trim(SOME, TARGET_TRIM_SOME_MS, seconds, json);
        good &= trim(MANY, TARGET_TRIM_MANY_MS, seconds, json);
        return good ? BenchRun.DONE : BenchRun.DIFFERS;
    }

    private boolean trim(int stations, double targetMs, int seconds, boolean json) {
        return tell(
                "least trim, " + stations + " stations",
                targetMs,
                json,
                median(seconds, i -> SampleFit.trim(stations, i).findings().size()));
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
    private static double median(int seconds, IntUnaryOperator call) {
        long span = Math.max(1, seconds) * 1_000_000_000L / 3;
        int i = 0;
        int seen = 0;
        long warm = System.nanoTime() + span / 3;
        do {
            seen += call.applyAsInt(i++);
        } while (System.nanoTime() < warm);
        List<Long> times = new ArrayList<>();
        long end = System.nanoTime() + span * 2 / 3;
        do {
            long start = System.nanoTime();
            seen += call.applyAsInt(i++);
            times.add(System.nanoTime() - start);
        } while (System.nanoTime() < end);
        // Uses what was reckoned, so that no call can be left out as useless.
        if (seen < 0) {
            throw new IllegalStateException("a count of " + seen);
        }
        long[] sorted = times.stream().mapToLong(Long::longValue).sorted().toArray();
        return sorted[sorted.length / 2] / 1e6;
    }
}
