package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.archive.VerifyRecord;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.app.usecase.view.StoresByPlan;
import fayline.flow.record.NewEntry;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A record of 50,000 entries: how long a part's traveller, where a lot went, which lots a part holds and the page of the record take
 * in the program as a user starts it, and how long its chain takes to check.
 */
final class RecordBench {
    private static final int ENTRIES = 50_000;
    private static final int AT_ONCE = 1_000;
    private static final long SEED = 20260302;
    private static final double TARGET_MS = 100;
    private static final int CHECKS = 3;
    private static final int LEAST = 5;
    private final PrintStream out;
    private final PrintStream err;

    RecordBench(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /** What is asked of the program: addresses by what they show; those that have a target first. */
    private record Asked(Map<String, String> fast, Map<String, String> further) {}

    int run(int seconds, boolean json) {
        if (!Files.isExecutable(RunningProgram.launcher())) {
            err.println("bench record: found no launcher " + RunningProgram.launcher()
                    + ", expected to be started by ./bench");
            return BenchRun.BAD_INPUT;
        }
        try {
            Path folder = Files.createTempDirectory("fayline-record");
            try {
                return run(folder, seconds, json);
            } finally {
                RunningProgram.delete(folder);
            }
        } catch (IOException e) {
            err.println("bench record: " + e.getMessage());
            return BenchRun.FAULT;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return BenchRun.FAULT;
        }
    }

    private int run(Path folder, int seconds, boolean json) throws IOException, InterruptedException {
        Asked asked = fill(RunningProgram.data(folder));
        Times check = new Times();
        for (int i = 0; i < CHECKS; i++) {
            long start = System.nanoTime();
            VerifyRecord.Report report = VerifyRecord.verify(RunningProgram.data(folder), Optional.empty());
            check.add((System.nanoTime() - start) / 1e6);
            if (report.fault().isPresent() || report.entries() != ENTRIES) {
                throw new IOException(report.fault().orElse("found " + report.entries() + " entries"));
            }
        }
        boolean good = true;
        try (RunningProgram program = RunningProgram.start(folder, "--no-browser")) {
            int each =
                    Math.max(1, seconds / (asked.fast().size() + asked.further().size()));
            for (Map.Entry<String, String> a : asked.fast().entrySet()) {
                good &= tell(a.getKey(), seen(program, a.getValue(), each), Optional.of(TARGET_MS), json);
            }
            for (Map.Entry<String, String> a : asked.further().entrySet()) {
                good &= tell(a.getKey(), seen(program, a.getValue(), each), Optional.empty(), json);
            }
        }
        good &= tell("check of the chain, by command", new Seen(check.within(0.5), Double.NaN), Optional.empty(), json);
        return good ? BenchRun.DONE : BenchRun.DIFFERS;
    }

    /** Fills a data folder and says what to ask: the part with most entries, and the lot that went furthest. */
    private static Asked fill(Path data) throws IOException {
        Path demo = Path.of(System.getProperty("fayline.home", "."), "demo", "ousel");
        try (OpenShop open = OpenShop.openWith(data, demo, Clock.systemUTC(), Optional.empty())) {
            ShopRecord shop = open.shop();
            ShopView view = new LookAtShop(shop).look("").orElseThrow(() -> new IOException("no project in " + demo));
            List<String> lots =
                    StoresByPlan.of(view).lots().stream().map(l -> l.lot().id()).toList();
            List<String> steps = view.result().steps().stream().map(s -> s.id()).toList();
            InventedRecord invented = new InventedRecord(
                    SEED,
                    view.project(),
                    steps,
                    lots,
                    view.definition().shop().people().stream().map(p -> p.id()).toList(),
                    shop.now());
            long seq = shop.state().head().seq();
            while (seq < ENTRIES) {
                List<NewEntry> some = new ArrayList<>();
                while (seq < ENTRIES && some.size() < AT_ONCE) {
                    seq++;
                    some.add(invented.next(seq));
                }
                if (!shop.append(some).stream().allMatch(Outcome::stands)) {
                    throw new IOException("the record did not take what was invented");
                }
            }
            return asked(view, steps, lots);
        }
    }

    private static Asked asked(ShopView view, List<String> steps, List<String> lots) {
        String made = view.result().steps().stream()
                .map(s -> s.made())
                .distinct()
                .max(Comparator.comparingLong(m -> steps.stream()
                        .filter(s -> s.startsWith(view.project() + "/" + m + "/"))
                        .count()))
                .orElseThrow();
        Map<String, String> fast = new LinkedHashMap<>();
        fast.put("traveller of the part with most steps", "traveller/" + made);
        fast.put("where a lot went", "stores/lot?lot=" + lots.get(0));
        fast.put("which lots that part holds", "stores/in?made=" + made);
        Map<String, String> further = new LinkedHashMap<>();
        further.put("page of the record", "record");
        further.put("page of the record, words sought", "record?text=daylight");
        further.put("page of the record, every entry checked", "record?check=yes");
        return new Asked(fast, further);
    }

    /**
     * How long one page takes.
     *
     * @param medianMs at the median, by the clock
     * @param processorMs processor time of the program for one, on the mean; not a number where it was not measured
     */
    private record Seen(double medianMs, double processorMs) {}

    /** Looks at one page again and again, after a third of the time to warm up; at least three times. */
    private static Seen seen(RunningProgram program, String address, int seconds)
            throws IOException, InterruptedException {
        HttpClient client =
                HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(program.address() + address)).build();
        long warm = System.nanoTime() + seconds * 1_000_000_000L / 3;
        do {
            look(client, request);
        } while (System.nanoTime() < warm);
        Times times = new Times();
        double used = program.processorSeconds();
        long end = System.nanoTime() + seconds * 2_000_000_000L / 3;
        do {
            long start = System.nanoTime();
            look(client, request);
            times.add((System.nanoTime() - start) / 1e6);
        } while (System.nanoTime() < end || times.count() < LEAST);
        return new Seen(times.within(0.5), 1000 * (program.processorSeconds() - used) / times.count());
    }

    private static void look(HttpClient client, HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<String> page = client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        if (page.statusCode() != 200) {
            throw new IOException(request.uri() + " answered " + page.statusCode());
        }
    }

    private boolean tell(String what, Seen seen, Optional<Double> targetMs, boolean json) {
        ObjectNode n = Json.object();
        n.put("bench", "record").put("what", what).put("medianMs", seen.medianMs());
        targetMs.ifPresent(t -> n.put("targetMs", t));
        if (!Double.isNaN(seen.processorMs())) {
            n.put("processorMs", seen.processorMs());
        }
        if (json) {
            out.println(Json.line(n));
        } else {
            String processor = Double.isNaN(seen.processorMs())
                    ? ""
                    : String.format(Locale.ROOT, ", %.1f ms of a processor", seen.processorMs());
            out.println(String.format(Locale.ROOT, "%-40s  %8.1f ms%s", what, seen.medianMs(), processor)
                    + targetMs.map(t -> String.format(Locale.ROOT, "  (wanted: below %.0f ms)", t))
                            .orElse(""));
        }
        return targetMs.isEmpty() || seen.medianMs() < targetMs.get();
    }
}
