package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.net.NetShelf;
import fayline.app.usecase.net.NetShelf.Best;
import fayline.app.usecase.net.NetShelf.Item;
import fayline.app.usecase.net.ScheduleNet;
import fayline.app.usecase.net.ScheduleNet.Timed;
import fayline.app.usecase.net.UnreadableNetsException;
import fayline.app.usecase.open.UsualPlace;
import fayline.flow.plan.net.NetAnswer;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How well nets of public sets are scheduled, against the best that is known. Processor time is what counts: a net is given up
 * when its two searches have used twice the seconds together, and half of what they used is told.
 */
final class NetBench {
    private static final int WORKERS = 2;

    private final PrintStream out;
    private final PrintStream err;

    NetBench(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /** One net with what came of it. */
    private record Done(Item item, NetAnswer answer, double seconds) {
        /** In percent of the best known makespan. */
        double gap() {
            int upper = item.best().map(Best::upper).orElse(0);
            return upper == 0 ? 0 : 100.0 * (answer.makespan().orElse(upper) - upper) / upper;
        }

        boolean isCompared() {
            return answer.makespan().isPresent() && item.best().isPresent();
        }
    }

    int run(Path folder, int seconds, boolean json) {
        if (seconds < 1) {
            err.println("bench plan: --seconds: found " + seconds + ", expected at least 1");
            return BenchRun.BAD_INPUT;
        }
        List<Item> items;
        ScheduleNet schedule;
        try {
            items = NetShelf.read(folder);
            schedule = new ScheduleNet(UsualPlace.libraries());
        } catch (UnreadableNetsException e) {
            err.println("bench plan: " + e.getMessage());
            return BenchRun.BAD_INPUT;
        } catch (UncheckedIOException | UnsatisfiedLinkError e) {
            err.println("bench plan: the solver cannot be loaded on this machine: " + e.getMessage());
            return BenchRun.FAULT;
        }
        return run(items, schedule, seconds, json);
    }

    private int run(List<Item> items, ScheduleNet schedule, int seconds, boolean json) {
        Map<String, List<Done>> sets = new LinkedHashMap<>();
        boolean agrees = true;
        for (Item item : items) {
            Timed timed;
            try {
                timed = schedule.byCpu(item.net(), WORKERS * seconds);
            } catch (IllegalStateException e) {
                err.println("bench plan: " + item.set() + "/" + item.instance() + ": " + e.getMessage());
                return BenchRun.FAULT;
            }
            Done done = new Done(item, timed.answer(), timed.cpuS() / WORKERS);
            sets.computeIfAbsent(item.set(), s -> new ArrayList<>()).add(done);
            List<String> against = against(done);
            against.forEach(a -> err.println("bench plan: " + item.set() + "/" + item.instance() + ": " + a));
            agrees &= against.isEmpty();
            if (json) {
                out.println(Json.line(line(done)));
                out.flush();
            }
        }
        if (!json) {
            table(sets);
        }
        return agrees ? BenchRun.DONE : BenchRun.DIFFERS;
    }

    private static ObjectNode line(Done d) {
        ObjectNode n = Json.object();
        n.put("set", d.item.set()).put("instance", d.item.instance());
        if (d.answer.makespan().isPresent()) {
            n.put("makespan", d.answer.makespan().getAsInt());
        } else {
            n.putNull("makespan");
        }
        n.put("bound", d.answer.bound())
                .put("proven", d.answer.proven())
                .put("infeasible", d.answer.infeasible())
                .put("seconds", Math.round(d.seconds * 1000) / 1000.0);
        return n;
    }

    /** What cannot be true beside what is known. */
    private static List<String> against(Done d) {
        List<String> all = new ArrayList<>();
        d.item.best().ifPresent(best -> {
            NetAnswer a = d.answer;
            if (best.infeasible() && a.makespan().isPresent()) {
                all.add("found a schedule of " + a.makespan().getAsInt() + ", known as infeasible");
            } else if (!best.infeasible() && a.infeasible()) {
                all.add("found infeasible, known: a schedule of " + best.upper());
            } else if (!best.infeasible()
                    && a.makespan().isPresent()
                    && a.makespan().getAsInt() < best.lower()) {
                all.add("found a schedule of " + a.makespan().getAsInt() + ", below the known bound " + best.lower());
            } else if (!best.infeasible() && a.bound() > best.upper()) {
                all.add("found the bound " + a.bound() + ", above the known schedule of " + best.upper());
            }
        });
        return all;
    }

    private void table(Map<String, List<Done>> sets) {
        out.println(String.format(
                Locale.ROOT,
                "%-10s %5s %7s %10s %9s  %10s %10s  %9s %9s",
                "set",
                "nets",
                "proven",
                "infeasible",
                "unsolved",
                "mean gap",
                "worst gap",
                "mean s",
                "most s"));
        sets.forEach((set, all) -> out.println(row(set, all)));
    }

    private static String row(String set, List<Done> all) {
        List<Done> compared = all.stream().filter(Done::isCompared).toList();
        return String.format(
                Locale.ROOT,
                "%-10s %5d %7d %10d %9d  %8.2f %% %8.2f %%  %9.2f %9.2f",
                set,
                all.size(),
                all.stream().filter(d -> d.answer.proven()).count(),
                all.stream().filter(d -> d.answer.infeasible()).count(),
                all.stream()
                        .filter(d ->
                                !d.answer.infeasible() && d.answer.makespan().isEmpty())
                        .count(),
                compared.stream().mapToDouble(Done::gap).average().orElse(0),
                compared.stream().mapToDouble(Done::gap).max().orElse(0),
                all.stream().mapToDouble(Done::seconds).average().orElse(0),
                all.stream().mapToDouble(Done::seconds).max().orElse(0));
    }
}
