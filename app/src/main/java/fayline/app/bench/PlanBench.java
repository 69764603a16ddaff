package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.open.UsualPlace;
import fayline.app.usecase.shop.UnreadableDefinitionException;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.ReadFolder;
import fayline.app.usecase.view.ShopView;
import fayline.flow.plan.Plan;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.goal.PlanGoal;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How long the serial planner takes to its first plan of a folder's work, and whether the auditor finds anything in it: planned
 * again and again for a second, so that the first, cold time stands beside the usual one. Then how the plan gets better in
 * processor time, and how far the solver's model alone comes without our start; for the folder and for two invented shops.
 */
final class PlanBench {
    private final PrintStream out;
    private final PrintStream err;

    PlanBench(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    int run(Path folder, int seconds, boolean json) {
        if (seconds < 1) {
            err.println("bench plan: --seconds: found " + seconds + ", expected at least 1");
            return BenchRun.BAD_INPUT;
        }
        ShopView view;
        try {
            view = ReadFolder.read(folder, Optional.empty(), Clock.systemUTC());
        } catch (UnreadableDefinitionException e) {
            e.problems().forEach(p -> err.println(p.sentence()));
            return BenchRun.BAD_INPUT;
        } catch (NoSuchFileException | NotDirectoryException e) {
            err.println("bench plan: found no folder " + folder + ", expected a definition folder");
            return BenchRun.BAD_INPUT;
        } catch (IOException e) {
            err.println("bench plan: " + folder + " cannot be read: " + e.getMessage());
            return BenchRun.FAULT;
        }
        // Before the clock runs, so that loading the library does not count as planning.
        Optional<Instant> least = new LeastFinish(UsualPlace.libraries()).of(view.work(), view.plan());
        SerialPlanner planner = new SerialPlanner();
        List<Double> ms = new ArrayList<>();
        Plan plan = view.plan();
        long end = System.nanoTime() + 1_000_000_000L;
        do {
            long start = System.nanoTime();
            plan = planner.plan(view.work(), PlanGoal.USUAL);
            ms.add((System.nanoTime() - start) / 1e6);
        } while (System.nanoTime() < end);
        report(view, plan, least, ms, json);
        try {
            new BetterBench(out).run(view, seconds, json);
        } catch (UncheckedIOException | UnsatisfiedLinkError e) {
            err.println("bench plan: the solver cannot be loaded on this machine: " + e.getMessage());
            return BenchRun.FAULT;
        }
        return view.audit().isEmpty() ? BenchRun.DONE : BenchRun.DIFFERS;
    }

    private void report(ShopView view, Plan plan, Optional<Instant> least, List<Double> ms, boolean json) {
        List<Double> sorted = new ArrayList<>(ms);
        Collections.sort(sorted);
        ObjectNode n = Json.object();
        n.put("bench", "plan");
        n.put("project", view.project());
        n.put("steps", view.work().steps().size());
        n.put("planned", plan.steps().size());
        n.put("unplanned", plan.unplanned().size());
        n.put("broken", view.audit().size());
        plan.finish().ifPresent(f -> n.put("finish", f.toString()));
        least.ifPresent(f -> n.put("noPlanBefore", f.toString()));
        n.put("plans", ms.size());
        n.put("firstMs", round(ms.get(0)));
        n.put("leastMs", round(sorted.get(0)));
        n.put("medianMs", round(sorted.get(sorted.size() / 2)));
        Table.print(out, n, json);
    }

    private static double round(double ms) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.1f", ms));
    }
}
