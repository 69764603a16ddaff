package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.laminate.SampleLaminate;
import fayline.method.laminate.optimum.LightestStackResult;
import fayline.method.laminate.strength.Criterion;
import fayline.method.laminate.strength.StrongPly;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

/** How many laminates of 16 plies are analysed in full in a second on one core, and what a search for the lightest stack takes. */
final class LaminateBench {
    private static final double TARGET_PER_SECOND = 100_000;
    private static final int BATCH = 2_000;

    private final PrintStream out;

    LaminateBench(PrintStream out) {
        this.out = out;
    }

    int run(int seconds, boolean json) {
        double perSecond = perSecond(seconds);
        long start = System.nanoTime();
        LightestStackResult r = SampleLaminate.searched();
        double ms = (System.nanoTime() - start) / 1e6;
        if (json) {
            ObjectNode n = Json.object().put("bench", "laminate").put("perSecond", perSecond);
            n.put("target", TARGET_PER_SECOND).put("searchMs", ms).put("space", r.space());
            n.put("nodes", r.nodes()).put("judged", r.judged()).put("proven", r.proven());
            n.put("plies", r.plies().size()).put("massKgPerM2", r.massKgPerM2());
            out.println(Json.line(n));
        } else {
            out.println(String.format(
                    Locale.ROOT,
                    "full analysis, 16 plies       %10.0f per second on one core  (wanted: %.0f or more)",
                    perSecond,
                    TARGET_PER_SECOND));
            out.println(String.format(
                    Locale.ROOT,
                    "lightest stack                %10.0f ms  %s: %d plies, %.2f kg/m2; %.3g stacks could be written down,"
                            + " %d part stacks looked at, %d judged whole",
                    ms,
                    r.proven() ? "proven" : "not proven",
                    r.plies().size(),
                    r.massKgPerM2(),
                    r.space(),
                    r.nodes(),
                    r.judged()));
        }
        return perSecond >= TARGET_PER_SECOND && r.proven() ? BenchRun.DONE : BenchRun.DIFFERS;
    }

    /** The best of short batches, since the machine does other work beside; the first third of the time warms up. */
    private static double perSecond(int seconds) {
        List<List<StrongPly>> stacks = SampleLaminate.stacks();
        Criterion criterion = Criterion.tsaiWu(Criterion.USUAL_F12);
        long span = Math.max(1, seconds) * 1_000_000_000L;
        long begin = System.nanoTime();
        double best = Double.POSITIVE_INFINITY;
        double seen = 0;
        while (System.nanoTime() - begin < span) {
            long start = System.nanoTime();
            for (int i = 0; i < BATCH; i++) {
                seen += SampleLaminate.analysed(stacks.get(i % stacks.size()), criterion);
            }
            if (start - begin > span / 3) {
                best = Math.min(best, (System.nanoTime() - start) / 1e9 / BATCH);
            }
        }
        // Uses what was reckoned, so that no call can be left out as useless.
        if (Double.isNaN(seen)) {
            throw new IllegalStateException("an analysis that is no number");
        }
        return 1 / best;
    }
}
