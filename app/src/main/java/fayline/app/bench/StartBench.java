package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Time from the launcher to the first page: starts the program as a user does, on data of its own, reads the address that it
 * prints and fetches the page. The first start fills the data folder and makes the class-data archive; the starts after it are
 * warm and are what counts.
 */
final class StartBench {
    private static final int MOST_STARTS = 5;
    private static final int PATIENCE_S = 180;

    private final PrintStream out;
    private final PrintStream err;

    StartBench(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    int run(int seconds, boolean json) {
        Path launcher = RunningProgram.launcher();
        if (!Files.isExecutable(launcher)) {
            err.println("bench start: found no launcher " + launcher + ", expected to be started by ./bench");
            return BenchRun.BAD_INPUT;
        }
        List<Double> ms = new ArrayList<>();
        try {
            Path data = Files.createTempDirectory("fayline-start");
            try {
                double cold = once(data);
                long end = System.nanoTime() + seconds * 1_000_000_000L;
                do {
                    ms.add(once(data));
                } while (ms.size() < MOST_STARTS && System.nanoTime() < end);
                report(cold, ms, json);
                return BenchRun.DONE;
            } finally {
                RunningProgram.delete(data);
            }
        } catch (IOException e) {
            err.println("bench start: " + e.getMessage());
            return BenchRun.FAULT;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return BenchRun.FAULT;
        }
    }

    /** Starts, fetches the first page, stops; the time to the last byte of the page in milliseconds. */
    private static double once(Path data) throws IOException, InterruptedException {
        long start = System.nanoTime();
        try (RunningProgram program = RunningProgram.start(data)) {
            HttpClient client = HttpClient.newBuilder()
                    .connectTimeout(Duration.ofSeconds(PATIENCE_S))
                    .build();
            HttpResponse<String> page = client.send(
                    HttpRequest.newBuilder(URI.create(program.address())).build(),
                    HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
            double ms = (System.nanoTime() - start) / 1e6;
            if (page.statusCode() != 200 || page.body().isBlank()) {
                throw new IOException("the first page answered " + page.statusCode());
            }
            return ms;
        }
    }

    private void report(double cold, List<Double> ms, boolean json) {
        List<Double> sorted = new ArrayList<>(ms);
        Collections.sort(sorted);
        ObjectNode n = Json.object();
        n.put("bench", "start");
        n.put("coldMs", Math.round(cold));
        n.put("warmStarts", ms.size());
        n.put("leastMs", Math.round(sorted.get(0)));
        n.put("medianMs", Math.round(sorted.get(sorted.size() / 2)));
        n.put("mostMs", Math.round(sorted.get(sorted.size() - 1)));
        n.put("target", String.format(Locale.ROOT, "first page within %d ms", 3000));
        Table.print(out, n, json);
    }
}
