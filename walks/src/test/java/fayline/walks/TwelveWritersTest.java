package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.Entry;
import fayline.flow.record.StepRecord;
import fayline.walks.History.Seen;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Twelve people add, correct the same three notes and look, a hundred times each and all at once: both judges find an order. */
@Tag("fault")
class TwelveWritersTest {
    private static final int WRITERS = 12;
    private static final int CALLS = Integer.getInteger("fayline.calls", 100);
    private static final long SEED = Long.getLong("fayline.seed", 20260302L);
    private static final String STEP = "ousel-1/chine-doubler-left/1/cut";
    private static final String FIRST = "as it was";

    @TempDir
    Path folder;

    private final History history = new History();
    private final Register register = new Register();
    private final ConcurrentHashMap<Integer, Throwable> failures = new ConcurrentHashMap<>();

    @Test
    void should_have_one_order_for_the_record_and_for_each_text_when_twelve_write_at_once() throws Exception {
        Clock clock = Clock.fixed(Instant.parse("2026-03-03T12:00:00Z"), ZoneOffset.UTC);
        try (OpenShop open = OpenShop.openWith(
                folder.resolve("data"), Shopfloor.root().resolve("demo/ousel"), clock, Optional.empty())) {
            ShopRecord shop = open.shop();
            List<Long> texts = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                texts.add(new NoteStep(shop)
                        .note(Sent.once("ilse"), STEP, FIRST, Optional.empty())
                        .seq());
            }
            List<Thread> writers = new ArrayList<>();
            for (int w = 0; w < WRITERS; w++) {
                int me = w;
                Thread writer = new Thread(() -> write(me, shop, texts), "writer " + w);
                writer.setUncaughtExceptionHandler((t, e) -> failures.put(me, e));
                writers.add(writer);
                writer.start();
            }
            for (Thread writer : writers) {
                writer.join();
            }
            assertThat(failures).isEmpty();
            List<String> record = shop.entries(1).stream().map(Entry::client).toList();
            assertThat(history.fault(record)).as("seed %d", SEED).isEmpty();
            Map<String, String> initial = texts.stream().collect(Collectors.toMap(t -> "" + t, t -> FIRST));
            assertThat(register.fault(initial)).as("seed %d", SEED).isEmpty();
            assertThat(history.size() + register.size()).isGreaterThan(WRITERS * CALLS / 2);
        }
    }

    private void write(int me, ShopRecord shop, List<Long> texts) {
        Random random = new Random(SEED + me);
        for (int call = 0; call < CALLS; call++) {
            long text = texts.get(random.nextInt(texts.size()));
            long begin = System.nanoTime();
            switch (random.nextInt(4)) {
                case 0 -> {
                    Sent sent = Sent.once("ilse");
                    Outcome made =
                            new NoteStep(shop).note(sent, STEP, "Of " + me + ", " + call + ".", Optional.empty());
                    history.add(new History.Sent(sent.client(), begin, System.nanoTime(), made.seq()));
                }
                case 1 -> {
                    String value = "by " + me + ", " + call;
                    Outcome made = new CorrectStep(shop).correct(Sent.once("ilse"), text, Mended.note(value), "a slip");
                    assertThat(made.stands()).as(made.sentence()).isTrue();
                    register.add("" + text, new Register.Op(true, value, begin, System.nanoTime()));
                }
                case 2 -> {
                    String says = shop.state().step(STEP).notes().stream()
                            .filter(n -> n.seq() == text)
                            .map(StepRecord.Note::text)
                            .findFirst()
                            .orElse("");
                    register.add("" + text, new Register.Op(false, says, begin, System.nanoTime()));
                }
                default -> {
                    long head = shop.state().head().seq();
                    history.add(new Seen(me, begin, System.nanoTime(), head));
                }
            }
        }
    }
}
