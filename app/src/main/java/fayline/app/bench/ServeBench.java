package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.open.OpenShop;
import fayline.flow.record.Entry;
import java.io.IOException;
import java.io.PrintStream;
import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Many phones on one program over loopback: the demonstration is served as a user serves it, each phone follows the record, looks and
 * writes. Afterwards the program is stopped and what was answered as kept is counted against the record.
 */
final class ServeBench {
    private static final int BEGINNING_S = 60;
    private final PrintStream out;
    private final PrintStream err;
    private final Times reads = new Times();
    private final Times writes = new Times();
    private final Times heard = new Times();

    ServeBench(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    int run(int count, int seconds, boolean json) {
        if (count < 1 || seconds < 1) {
            err.println(
                    "bench serve: found " + count + " phones and " + seconds + " seconds, expected at least 1 of each");
            return BenchRun.BAD_INPUT;
        }
        if (!Files.isExecutable(RunningProgram.launcher())) {
            err.println("bench serve: found no launcher " + RunningProgram.launcher()
                    + ", expected to be started by ./bench");
            return BenchRun.BAD_INPUT;
        }
        try {
            Path folder = Files.createTempDirectory("fayline-phones");
            try {
                return run(folder, count, seconds, json);
            } finally {
                RunningProgram.delete(folder);
            }
        } catch (IOException e) {
            err.println("bench serve: " + e.getMessage());
            return BenchRun.FAULT;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return BenchRun.FAULT;
        }
    }

    private int run(Path folder, int count, int seconds, boolean json) throws IOException, InterruptedException {
        ObjectNode n = Json.object();
        n.put("bench", "serve").put("phones", count).put("seconds", seconds);
        List<Phone> phones;
        try (RunningProgram program = RunningProgram.start(folder, "--demo", "--no-browser")) {
            phones = work(program, count, seconds);
            n.put("stillFollowing", phones.stream().filter(Phone::follows).count());
            n.put("processorSeconds", Math.round(program.processorSeconds()));
            put(n, "memoryMiB", program.kilobytes("VmRSS"));
            put(n, "memoryMostMiB", program.kilobytes("VmHWM"));
        }
        return count(folder, phones, seconds, n, json);
    }

    private static void put(ObjectNode n, String name, OptionalLong kilobytes) {
        kilobytes.ifPresent(k -> n.put(name, k / 1024));
    }

    private List<Phone> work(RunningProgram program, int count, int seconds) throws IOException, InterruptedException {
        HttpClient client = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .followRedirects(HttpClient.Redirect.NEVER)
                .build();
        List<Phone> phones = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Phone phone = new Phone(client, program.address(), i, reads, writes);
            phone.open();
            phones.add(phone);
        }
        // what it took to open them all is no figure of the two minutes
        reads.clear();
        long until = System.nanoTime() + seconds * 1_000_000_000L;
        List<Thread> threads = new ArrayList<>();
        for (Phone phone : phones) {
            Thread t = new Thread(() -> work(phone, until), "phone");
            t.setDaemon(true);
            t.start();
            threads.add(t);
        }
        for (Thread t : threads) {
            t.join((seconds + BEGINNING_S) * 1000L);
            if (t.isAlive()) {
                throw new IOException("a phone got no answer within " + BEGINNING_S + " s after the end");
            }
        }
        return phones;
    }

    private static void work(Phone phone, long until) {
        try {
            phone.work(until);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private int count(Path folder, List<Phone> phones, int seconds, ObjectNode n, boolean json) {
        Map<String, List<Entry>> kept = new HashMap<>();
        try (OpenShop shop = OpenShop.open(RunningProgram.data(folder), Clock.systemUTC(), Optional.empty())) {
            for (Entry e : shop.shop().entries(1)) {
                if (Phone.isNote(e.fields().text("text"))) {
                    kept.computeIfAbsent(e.fields().text("text"), t -> new ArrayList<>())
                            .add(e);
                }
            }
        }
        int tried = 0;
        int acknowledged = 0;
        int lost = 0;
        int twice = 0;
        int unanswered = 0;
        int refused = 0;
        for (Phone phone : phones) {
            tried += phone.tried();
            unanswered += phone.unanswered();
            refused += phone.refused();
            acknowledged += phone.acknowledged().size();
            for (Map.Entry<String, Long> a : phone.acknowledged().entrySet()) {
                List<Entry> there = kept.getOrDefault(a.getKey(), List.of());
                lost += there.isEmpty() ? 1 : 0;
                there.stream().findFirst().ifPresent(e -> news(phones, e.seq(), a.getValue()));
            }
        }
        for (List<Entry> same : kept.values()) {
            twice += same.size() > 1 ? 1 : 0;
        }
        reads.into(n, "reads");
        writes.into(n, "writes");
        n.put("notes", tried).put("acknowledged", acknowledged).put("inTheRecord", kept.size());
        n.put("entriesPerSecond", Math.round(10.0 * acknowledged / seconds) / 10.0);
        heard.into(n, "heardByOthers");
        n.put("unanswered", unanswered)
                .put("refused", refused)
                .put("lost", lost)
                .put("twice", twice);
        Table.print(out, n, json);
        return lost == 0 && twice == 0 && acknowledged > 0 ? BenchRun.DONE : BenchRun.DIFFERS;
    }

    /** How long after the answer each stream had said so. */
    private void news(List<Phone> phones, long seq, long answered) {
        for (Phone phone : phones) {
            phone.heard().stream()
                    .filter(h -> h.head() >= seq)
                    .findFirst()
                    .ifPresent(h -> heard.add(Math.max(0, (h.atNs() - answered) / 1e6)));
        }
    }
}
