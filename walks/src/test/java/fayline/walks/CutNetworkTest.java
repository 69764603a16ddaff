package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.web.Site;
import fayline.app.web.WebServer;
import fayline.flow.record.Entry;
import fayline.flow.record.payload.Value;
import fayline.walks.CuttingProxy.Cut;
import fayline.walks.CuttingProxy.How;
import fayline.walks.CuttingProxy.Way;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The network is cut at every so many bytes of a phone's sending, either way: nothing lost, nothing twice, nothing out of order. */
@Tag("fault")
class CutNetworkTest {
    /** At every how many bytes the wire is reset; 1 cuts at each. The other manners come at every fifth of these places. */
    private static final int EVERY = Integer.getInteger("fayline.every", 50);

    /** Long enough for any answer: only a hang comes to this. */
    private static final int PATIENT_MS = 60_000;

    private static final int BLACK_HOLE_MS = 400;

    @TempDir
    static Path folder;

    private static OpenShop open;
    private static WebServer server;
    private static CuttingProxy proxy;
    private static RawPhone phone;

    @BeforeAll
    static void start() throws Exception {
        Clock clock = Clock.fixed(Instant.parse("2026-03-03T12:00:00Z"), ZoneOffset.UTC);
        open = OpenShop.openWith(
                folder.resolve("data"), Shopfloor.root().resolve("demo/ousel"), clock, Optional.empty());
        LookAtShop looking = new LookAtShop(open.shop());
        server = WebServer.start(
                0, new Site(open.shop(), looking, new LeastFinish(folder.resolve("library")), open::sign, "test"));
        proxy = new CuttingProxy(server.port());
        phone = RawPhone.at(server.port());
    }

    @AfterAll
    static void stop() throws Exception {
        proxy.close();
        server.close();
        open.close();
    }

    private static List<Value.Fields> direct(byte[] request) {
        return RawPhone.send(server.port(), request, PATIENT_MS, PATIENT_MS).orElseThrow();
    }

    private static List<Entry> madeSince(long seq) {
        return open.shop().entries(seq + 1);
    }

    @ParameterizedTest
    @EnumSource(How.class)
    void should_make_each_entry_once_and_in_order_wherever_the_network_is_cut(How how) {
        int step = how == How.RESET ? EVERY : 5 * EVERY;
        int cuts = 0;
        boolean heard = false;
        for (int after = 0; !heard; after += step) {
            Told told = cutOnce(new Cut(Way.TO_SERVER, how, after));
            heard = told.heard();
            cuts++;
            assertThat(told.stood()).as("the server never had it whole").isEqualTo(heard);
        }
        // from the first byte of an answer on the entries are in the record
        heard = false;
        for (int after = 1; !heard; after += step) {
            Told told = cutOnce(new Cut(Way.TO_PHONE, how, after));
            heard = told.heard();
            cuts++;
            assertThat(told.stood()).as("stands there, heard or not").isTrue();
        }
        assertThat(cuts)
                .as("as many bytes as a request and an answer have at least")
                .isGreaterThan(1200 / step);
    }

    /**
     * What came of a sending over a wire that was cut.
     *
     * @param heard whether the phone heard the whole answer
     * @param stood whether its entries stood in the record when it sent them again
     */
    private record Told(boolean heard, boolean stood) {}

    /** Sends two entries over a wire that is cut, and again over one that is not. */
    private static Told cutOnce(Cut cut) {
        String one = UUID.randomUUID().toString();
        String two = UUID.randomUUID().toString();
        byte[] request = phone.request(RawPhone.note(one, "One, " + cut), RawPhone.note(two, "Two, " + cut));
        long before = open.shop().state().head().seq();
        proxy.cutNext(cut);
        boolean vanishes = cut.how() == How.BLACK_HOLE && cut.way() == Way.TO_SERVER && request.length > cut.after();
        Optional<List<Value.Fields>> first =
                RawPhone.send(proxy.port(), request, vanishes ? BLACK_HOLE_MS : PATIENT_MS, BLACK_HOLE_MS);
        List<Value.Fields> again = direct(request);
        List<Entry> made = madeSince(before);
        assertThat(made).as("%s", cut).extracting(Entry::client).containsExactly(one, two);
        for (int i = 0; i < 2; i++) {
            assertThat(again.get(i).whole("seq"))
                    .as("%s", cut)
                    .hasValue(made.get(i).seq());
            int at = i;
            first.ifPresent(answers -> {
                assertThat(answers.get(at).whole("seq")).hasValue(made.get(at).seq());
                assertThat(again.get(at).text("what")).isEqualTo("there");
            });
        }
        return new Told(first.isPresent(), again.get(0).text("what").equals("there"));
    }

    @Test
    void should_make_one_entry_when_the_network_doubles_what_was_sent() {
        for (int i = 0; i < 5; i++) {
            String id = UUID.randomUUID().toString();
            byte[] request = phone.request(RawPhone.note(id, "Doubled " + i));
            long before = open.shop().state().head().seq();
            List<CompletableFuture<List<Value.Fields>>> both = List.of(
                    CompletableFuture.supplyAsync(() -> direct(request)),
                    CompletableFuture.supplyAsync(() -> direct(request)));
            assertThat(both).extracting(f -> f.join().get(0).text("what")).containsExactlyInAnyOrder("taken", "there");
            assertThat(madeSince(before)).extracting(Entry::client).containsExactly(id);
        }
    }

    @Test
    void should_serve_others_when_forty_phones_send_a_byte_now_and_then() throws Exception {
        List<Socket> slow = new ArrayList<>();
        List<String> ids = new ArrayList<>();
        try {
            for (int i = 0; i < 40; i++) {
                ids.add(UUID.randomUUID().toString());
                byte[] request = phone.request(RawPhone.note(ids.get(i), "Slow " + i));
                Socket wire = new Socket(InetAddress.getLoopbackAddress(), server.port());
                slow.add(wire);
                OutputStream out = wire.getOutputStream();
                // all but the end, which comes never
                out.write(Arrays.copyOf(request, request.length - 40 + i % 30));
                out.flush();
            }
            for (int i = 0; i < 10; i++) {
                slow.get(i).getOutputStream().write('x');
                slow.get(i).getOutputStream().flush();
                String id = UUID.randomUUID().toString();
                Optional<List<Value.Fields>> answer = RawPhone.send(
                        server.port(), phone.request(RawPhone.note(id, "Quick " + i)), PATIENT_MS, PATIENT_MS);
                assertThat(answer).as("the quick phone, time %d", i).isPresent();
            }
        } finally {
            for (Socket wire : slow) {
                wire.close();
            }
        }
        assertThat(open.shop().entries(1)).extracting(Entry::client).doesNotContainAnyElementsOf(ids);
    }
}
