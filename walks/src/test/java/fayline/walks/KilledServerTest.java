package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.archive.VerifyRecord;
import fayline.flow.record.Entry;
import fayline.flow.record.payload.Value;
import fayline.store.sql.DataFolder;
import fayline.walks.History.Seen;
import fayline.walks.History.Sent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real server, killed again and again while twelve phones write to it: their histories are judged against the record. */
@Tag("fault")
class KilledServerTest {
    private static final int KILLS = Integer.getInteger("fayline.kills", 20);
    private static final int WRITERS = 12;
    private static final long SEED = Long.getLong("fayline.seed", 20260302L);
    private static final int PATIENT_MS = 60_000;

    @TempDir
    Path folder;

    private static final String CUT = "/card/chine-doubler-left/1/cut";
    private static final String SHARED = "/card/chine-doubler-left/1/prepare";
    private static final int TEXTS = 3;
    private static final String FIRST = "text-as-it-was";

    private final History history = new History();
    private final Register register = new Register();
    /** The entries of notes that all correct. */
    private final List<String> texts = new ArrayList<>();

    private final AtomicInteger acknowledged = new AtomicInteger();
    private final AtomicInteger unheard = new AtomicInteger();
    private final AtomicBoolean over = new AtomicBoolean();
    private final ConcurrentHashMap<Integer, Throwable> failures = new ConcurrentHashMap<>();

    @Test
    void should_lose_and_double_nothing_when_killed_under_writing_and_take_what_was_not_yet_sent() throws Exception {
        RunningShop shop = RunningShop.in(folder, List.of("--demo"));
        for (int i = 0; i < TEXTS; i++) {
            String id = UUID.randomUUID().toString();
            Value.Fields note = RawPhone.form(id, SHARED + "/note", "text", FIRST);
            texts.add(String.valueOf(new Phone(WRITERS, shop.port()).sendUntilAnswered(id, note)));
        }
        List<Thread> writers = new ArrayList<>();
        for (int w = 0; w < WRITERS; w++) {
            int me = w;
            Thread writer = new Thread(() -> write(me, shop.port()), "writer " + w);
            writer.setUncaughtExceptionHandler((t, e) -> failures.put(me, e));
            writers.add(writer);
            writer.start();
        }
        Random random = new Random(SEED);
        for (int kill = 0; kill < KILLS; kill++) {
            await(acknowledged.get() + 1 + random.nextInt(20));
            Thread.sleep(random.nextInt(30));
            shop.kill();
            VerifyRecord.Report report = VerifyRecord.verify(folder, Optional.empty());
            assertThat(report.fault()).as("seed %d, kill %d", SEED, kill).isEmpty();
            shop.start();
        }
        over.set(true);
        for (Thread writer : writers) {
            writer.join();
        }
        shop.kill();
        assertThat(failures).isEmpty();
        judge();
    }

    private void judge() throws IOException {
        assertThat(VerifyRecord.verify(folder, Optional.empty()).fault()).isEmpty();
        List<String> record;
        try (DataFolder data = DataFolder.open(folder)) {
            record = data.log().read(1).stream().map(Entry::client).toList();
        }
        assertThat(history.fault(record)).as("seed %d", SEED).isEmpty();
        Map<String, String> initial = texts.stream().collect(Collectors.toMap(t -> t, t -> FIRST));
        assertThat(register.fault(initial)).as("seed %d", SEED).isEmpty();
        assertThat(register.size()).isGreaterThanOrEqualTo(KILLS);
        assertThat(acknowledged.get()).isGreaterThanOrEqualTo(KILLS);
        assertThat(unheard.get()).as("answers that a kill cut off").isPositive();
        System.out.printf(
                "%d kills, %d writers, %d sendings, %d acknowledged, %d unheard, %d entries, %d of shared texts%n",
                KILLS, WRITERS, history.size(), acknowledged.get(), unheard.get(), record.size(), register.size());
    }

    /** Waits until so many entries were acknowledged; a writer that failed ends the waiting. */
    private void await(int many) throws InterruptedException {
        while (acknowledged.get() < many && failures.isEmpty()) {
            Thread.sleep(5);
        }
        assertThat(failures).isEmpty();
    }

    /** One phone: adds, corrects its last entry, looks; what was not answered it sends again until it is. */
    private void write(int me, int port) {
        Random random = new Random(SEED + me);
        Phone phone = new Phone(me, port);
        long last = 0;
        while (!over.get()) {
            int dice = random.nextInt(10);
            if (dice < 3) {
                phone.look();
            } else if (dice < 5 && last > 0) {
                String id = UUID.randomUUID().toString();
                phone.sendUntilAnswered(id, RawPhone.correction(id, CUT, last, "corrected by " + me));
                last = 0;
            } else if (dice < 8) {
                String text = texts.get(random.nextInt(texts.size()));
                if (random.nextInt(3) == 0) {
                    phone.write(text);
                } else {
                    phone.read(text);
                }
            } else {
                String id = UUID.randomUUID().toString();
                last = phone.sendUntilAnswered(id, RawPhone.note(id, "by writer " + me));
            }
        }
    }

    /** A phone and what it saw, with the moments. */
    private final class Phone {
        private final int me;
        private final int port;
        private Optional<RawPhone> known = Optional.empty();

        private Phone(int me, int port) {
            this.me = me;
            this.port = port;
        }

        /** Asks how far the record is, which also opens the session anew after the server was killed. */
        private boolean look() {
            long begin = System.nanoTime();
            try {
                RawPhone phone = RawPhone.at(port);
                history.add(new Seen(me, begin, System.nanoTime(), phone.head()));
                known = Optional.of(phone);
                return true;
            } catch (IOException e) {
                // the server is down
                pause();
                return false;
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }

        /** Corrects a text that all correct; it counts at some moment between its first sending and its answer. */
        private void write(String text) {
            String id = UUID.randomUUID().toString();
            String value = "by-" + me + "-" + id.substring(0, 8);
            long begin = System.nanoTime();
            sendUntilAnswered(id, RawPhone.correction(id, SHARED, Long.parseLong(text), value));
            register.add(text, new Register.Op(true, value, begin, System.nanoTime()));
        }

        /** Looks what a text says now, where the server answers. */
        private void read(String text) {
            long begin = System.nanoTime();
            try {
                if (known.isEmpty() && !look()) {
                    return;
                }
                String page = known.orElseThrow().page(SHARED + "?project=ousel-1");
                long end = System.nanoTime();
                Matcher says = Pattern.compile("(by-[0-9]+-[0-9a-f]+|" + FIRST + ") <span [^>]*>entry " + text + "<")
                        .matcher(page);
                assertThat(says.find()).as("entry %s on its card", text).isTrue();
                register.add(text, new Register.Op(false, says.group(1), begin, end));
            } catch (IOException e) {
                // the server is down
                known = Optional.empty();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }

        private long sendUntilAnswered(String id, Value.Fields entry) {
            while (true) {
                if (known.isEmpty() && !look()) {
                    continue;
                }
                long begin = System.nanoTime();
                byte[] request = known.orElseThrow().request(entry);
                Optional<Value.Fields> answer = RawPhone.send(port, request, PATIENT_MS, PATIENT_MS)
                        .map(all -> all.get(0))
                        .filter(a -> !a.text("what").equals("unknown"));
                if (answer.isPresent()) {
                    assertThat(answer.get().text("what"))
                            .as(answer.get().text("say"))
                            .isIn("taken", "there");
                    long seq = answer.get().whole("seq").orElseThrow();
                    history.add(new Sent(id, begin, System.nanoTime(), seq));
                    acknowledged.incrementAndGet();
                    return seq;
                }
                history.add(new Sent(id, begin, History.NEVER, 0));
                unheard.incrementAndGet();
                known = Optional.empty();
            }
        }

        private void pause() {
            try {
                Thread.sleep(50);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
