package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.better.FirstPlans;
import fayline.app.usecase.better.FirstPlans.Took;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.open.UsualPlace;
import fayline.app.usecase.shop.UnreadableDefinitionException;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.ShopView;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How long the serial planner takes to a first plan, cold and warm, and whether the auditor finds anything in it. Then how the
 * plan gets better in processor time, and how far the solver's model alone comes without our start. Of a folder and of two
 * invented shops; or of one invented shop by itself, so that its first plan is the first of the process.
 */
final class PlanBench {
    /** Steps of an invented shop, in place of a folder. */
    private static final Pattern STEPS = Pattern.compile("[1-9][0-9]{1,3}");

    private static final long WARM_NS = 1_000_000_000L;

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
        try {
            return STEPS.matcher(folder.toString()).matches()
                            && !folder.toFile().isDirectory()
                    ? invented(Integer.parseInt(folder.toString()), seconds, json)
                    : shop(folder, seconds, json);
        } catch (UnreadableDefinitionException e) {
            e.problems().forEach(p -> err.println(p.sentence()));
            return BenchRun.BAD_INPUT;
        } catch (NoSuchFileException | NotDirectoryException e) {
            err.println(
                    "bench plan: found no folder " + folder + ", expected a definition folder or a number of steps");
            return BenchRun.BAD_INPUT;
        } catch (IOException e) {
            err.println("bench plan: " + folder + " cannot be read: " + e.getMessage());
            return BenchRun.FAULT;
        } catch (UncheckedIOException | UnsatisfiedLinkError e) {
            err.println("bench plan: the solver cannot be loaded on this machine: " + e.getMessage());
            return BenchRun.FAULT;
        }
    }

    private int shop(Path folder, int seconds, boolean json) throws IOException {
        FirstPlans first = new FirstPlans();
        ShopView view = first.read(folder);
        report(
                view.project(),
                view.work(),
                warm(first, view.work()),
                first,
                view.audit().size(),
                json);
        BetterBench better = new BetterBench(out);
        better.work(view.project(), view.work(), view.plan(), seconds, json);
        better.invented(seconds, json);
        return view.audit().isEmpty() ? BenchRun.DONE : BenchRun.DIFFERS;
    }

    private int invented(int steps, int seconds, boolean json) {
        FirstPlans first = new FirstPlans();
        Work work = InventedShop.of(BetterBench.SEED, steps);
        Plan plan = first.plan(work);
        int broken = BetterBench.broken(work, plan);
        report(BetterBench.name(steps), work, warm(first, work), first, broken, json);
        new BetterBench(out).work(BetterBench.name(steps), work, plan, seconds, json);
        return broken == 0 ? BenchRun.DONE : BenchRun.DIFFERS;
    }

    /** Plans again and again for a second. */
    private static Plan warm(FirstPlans first, Work work) {
        long end = System.nanoTime() + WARM_NS;
        Plan plan;
        do {
            plan = first.plan(work);
        } while (System.nanoTime() < end);
        return plan;
    }

    private void report(String name, Work work, Plan plan, FirstPlans first, int broken, boolean json) {
        ObjectNode n = Json.object();
        n.put("bench", "plan");
        n.put("project", name);
        n.put("steps", work.steps().size());
        n.put("planned", plan.steps().size());
        n.put("unplanned", plan.unplanned().size());
        n.put("broken", broken);
        plan.finish().ifPresent(f -> n.put("finish", f.toString()));
        new LeastFinish(UsualPlace.libraries()).of(work, plan).ifPresent(f -> n.put("noPlanBefore", f.toString()));
        first.cold().ifPresent(t -> put(n, "cold", t));
        first.warm().ifPresent(t -> put(n, "warm", t));
        put(n, "onePass", first.onePass(work));
        Table.print(out, n, json);
    }

    private static void put(ObjectNode n, String when, Took took) {
        n.put(when + "Ms", round(took.wallMs()));
        n.put(when + "CpuMs", round(took.cpuMs()));
    }

    private static double round(double ms) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.0f", ms));
    }
}
