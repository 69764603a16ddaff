package fayline.store.sql;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryLog.Answer;
import fayline.flow.record.RecordState;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real store in a program of its own, killed at random moments while it writes: nothing acknowledged is lost. */
@Tag("fault")
class KillTest {
    private static final int KILLS = Integer.getInteger("fayline.kills", 10);
    private static final long SEED = Long.getLong("fayline.seed", 20260302L);
    private static final int WRITERS = 4;
    private static final String TAKEN = "taken ";

    @TempDir
    Path folder;

    @Test
    void should_keep_every_acknowledged_entry_when_killed_at_random_moments() throws Exception {
        Random random = new Random(SEED);
        Map<String, Long> acknowledged = new HashMap<>();
        for (int kill = 0; kill < KILLS; kill++) {
            runUntilKilled(kill, 5 + random.nextInt(60), random.nextInt(12), acknowledged);
            RecordCheck.Report report = RecordCheck.check(folder, Optional.empty());
            assertThat(report.fault()).as("seed %d, kill %d", SEED, kill).isEmpty();
        }
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(KILLS * 5);
        try (DataFolder shop = DataFolder.open(folder)) {
            List<Entry> entries = shop.log().read(1);
            assertThat(Chain.check(entries, Optional.empty())).isEmpty();
            Map<String, Long> kept = new HashMap<>();
            entries.forEach(e -> kept.put(e.client(), e.seq()));
            assertThat(kept).as("seed %d", SEED).containsAllEntriesOf(acknowledged);
            assertThat(kept).hasSize(entries.size());
            // The tables beside the entries went the same way.
            assertThat(RecordState.of(entries).step("ousel-1/hull/1/bag").notes())
                    .hasSize(entries.size());
            String again = acknowledged.keySet().iterator().next();
            assertThat(shop.log().append(EntryLogContract.note(again, again)))
                    .isEqualTo(new Answer.AlreadyThere(acknowledged.getOrDefault(again, 0L)));
        }
    }

    private void runUntilKilled(int run, int after, int thenWaitMs, Map<String, Long> acknowledged)
            throws IOException, InterruptedException {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx200m",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writers.class.getName(),
                        folder.toString(),
                        Integer.toString(run),
                        Integer.toString(WRITERS))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8))) {
            for (int heard = 0; heard < after; ) {
                heard += note(said.readLine(), acknowledged);
            }
            Thread.sleep(thenWaitMs);
            // Not Process.destroyForcibly, which closes our end of the pipe before the rest is read.
            program.toHandle().destroyForcibly();
            // What was said before the kill counts as acknowledged, though it is read after it. The last line may be
            // cut.
            StringBuilder rest = new StringBuilder();
            char[] some = new char[4096];
            for (int n = said.read(some); n >= 0; n = said.read(some)) {
                rest.append(some, 0, n);
            }
            int whole = rest.lastIndexOf("\n");
            rest.substring(0, Math.max(whole, 0))
                    .lines()
                    .filter(l -> !l.isEmpty())
                    .forEach(l -> note(l, acknowledged));
        }
        assertThat(program.waitFor(60, TimeUnit.SECONDS)).isTrue();
    }

    /** Takes one line of the program; whatever else it says is passed over. */
    private static int note(@Nullable String line, Map<String, Long> acknowledged) {
        if (line == null) {
            throw new IllegalStateException("the program ended by itself");
        }
        if (!line.startsWith(TAKEN)) {
            return 0;
        }
        String[] parts = line.substring(TAKEN.length()).split(" ");
        acknowledged.put(parts[0], Long.parseLong(parts[1]));
        return 1;
    }

    /** The program that is killed: writes without end and says each entry that the store acknowledged. */
    static final class Writers {
        private Writers() {}

        /** Arguments: folder, number of the run, number of writers. */
        public static void main(String[] args) {
            DataFolder shop = DataFolder.open(Path.of(args[0]));
            for (int w = 0; w < Integer.parseInt(args[2]); w++) {
                String name = "run-" + args[1] + "-writer-" + w + "-";
                new Thread(() -> {
                            for (int i = 0; ; i++) {
                                Answer answer = shop.log().append(EntryLogContract.note(name + i, name + i));
                                if (answer instanceof Answer.Taken t) {
                                    say(TAKEN + name + i + " " + t.seq());
                                }
                            }
                        })
                        .start();
            }
        }

        private static synchronized void say(String line) {
            System.out.println(line);
            System.out.flush();
        }
    }
}
