package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Open pages hear that the record has grown. The times are guards against hanging, not measures. */
@Timeout(120)
class LiveSiteTest {
    private static final String CARD = "/card/chine-doubler-left/1/cut";

    @TempDir
    Path folder;

    private ServedDemo demo;
    private Browser browser;

    @BeforeEach
    void start() throws Exception {
        demo = ServedDemo.in(folder);
        browser = new Browser(demo.server());
    }

    @AfterEach
    void stop() {
        demo.close();
    }

    /** What is said next: record, head, plan, definition. */
    static String[] next(Iterator<String> lines) {
        while (lines.hasNext()) {
            String line = lines.next();
            if (line.startsWith("data:")) {
                return line.substring(5).strip().split(" ");
            }
        }
        throw new IllegalStateException("the stream ended");
    }

    static String[] after(Iterator<String> lines, long head) {
        String[] said = next(lines);
        while (Long.parseLong(said[1]) <= head) {
            said = next(lines);
        }
        return said;
    }

    private long head() {
        return demo.open().shop().state().head().seq();
    }

    private void note(String words) throws Exception {
        browser.send(CARD + "?project=ousel-1", CARD + "/note?project=ousel-1", "by", demo.person(), "text", words);
    }

    @Test
    void should_tell_an_open_page_the_new_head_when_somebody_else_writes() throws Exception {
        HttpResponse<Stream<String>> answer = browser.follow();
        assertThat(answer.headers().firstValue("Content-Type").orElse("").replace(" ", ""))
                .isEqualToIgnoringCase("text/event-stream;charset=utf-8");
        assertThat(answer.headers().firstValue("Cache-Control").orElse("")).isEqualTo("no-store");
        try (Stream<String> lines = answer.body()) {
            Iterator<String> said = lines.iterator();
            long before = head();
            String[] first = next(said);
            assertThat(Long.parseLong(first[1])).isEqualTo(before);
            new Browser(demo.server())
                    .send(
                            CARD + "?project=ousel-1",
                            CARD + "/note?project=ousel-1",
                            "by",
                            demo.person(),
                            "text",
                            "Heard.");
            String[] second = after(said, before);
            assertThat(Long.parseLong(second[1])).isEqualTo(before + 1);
            assertThat(second[0]).isEqualTo(first[0]);
            assertThat(second[3]).isEqualTo(first[3]);
        }
    }

    /** As another program on the same database does: past this program's own acts. */
    @Test
    void should_tell_of_an_entry_that_came_past_the_program() throws Exception {
        try (Stream<String> lines = browser.follow().body()) {
            Iterator<String> said = lines.iterator();
            long before = Long.parseLong(next(said)[1]);
            demo.open()
                    .shop()
                    .append(NewEntry.of(
                            "elsewhere-1",
                            "",
                            demo.open().shop().now(),
                            "",
                            EntryKind.SIGNED_OUT,
                            Value.Fields.NONE.with("person", "x").with("why", "left")));
            assertThat(Long.parseLong(after(said, before)[1])).isEqualTo(before + 1);
        }
    }

    @Test
    void should_say_that_another_definition_holds_once_a_file_is_saved() throws Exception {
        try (Stream<String> lines = browser.follow().body()) {
            Iterator<String> said = lines.iterator();
            String[] before = next(said);
            browser.send(
                    "/shop", "/shop/absence", "by", demo.person(), "id", demo.person(), "from", "2026-04-01", "to", "");
            String[] now = after(said, Long.parseLong(before[1]));
            assertThat(now[3]).isNotEqualTo(before[3]);
            assertThat(now[2]).isEqualTo(before[2]);
        }
    }

    @Test
    void should_answer_the_same_line_to_whoever_asks_now_and_then_and_on_every_page_that_follows() throws Exception {
        note("One more.");
        HttpResponse<String> asked = browser.raw("GET", "/live/head", "");
        assertThat(asked.headers().firstValue("Content-Type").orElse(""))
                .contains("text/plain")
                .contains("utf-8");
        assertThat(asked.body().split(" ")[1]).isEqualTo(String.valueOf(head()));
        assertThat(browser.page("/"))
                .contains("data-latest=\"" + asked.body() + "\"")
                .contains("data-live=\"true\"");
        assertThat(browser.page(CARD + "?project=ousel-1")).contains("data-live=\"true\"");
        assertThat(browser.page("/what-if")).doesNotContain("data-live=");
    }

    @Test
    void should_keep_what_was_just_said_for_whoever_is_led_there_when_a_page_asks_by_itself() throws Exception {
        String html = browser.page(CARD + "?project=ousel-1");
        browser.raw(
                "POST",
                CARD + "/note?project=ousel-1",
                "csrf=" + Browser.hidden(html, "csrf") + "&once=" + Browser.hidden(html, "once") + "&by="
                        + demo.person() + "&text=Said.");
        assertThat(browser.raw("GET", "/", "", "Fayline-By-Itself", "yes").body())
                .doesNotContain("class=\"said\"");
        assertThat(browser.page("/")).contains("class=\"said\"");
    }

    @Test
    void should_refuse_whoever_does_not_ask_for_a_stream_or_asks_from_elsewhere() throws Exception {
        assertThat(browser.raw("GET", "/live", "").statusCode()).isEqualTo(406);
        try (Stream<String> lines =
                browser.follow("Origin", "http://elsewhere.example").body()) {
            assertThat(lines.toList().toString()).contains("not from Fayline").doesNotContain("data:");
        }
        HttpResponse<Stream<String>> other = browser.follow("Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "cors");
        try (Stream<String> lines = other.body()) {
            assertThat(other.statusCode()).isEqualTo(403);
            assertThat(lines.toList().toString()).doesNotContain("data:");
        }
    }

    @Test
    void should_end_its_streams_when_the_program_stops() throws Exception {
        try (Stream<String> lines = browser.follow().body()) {
            Iterator<String> said = lines.iterator();
            next(said);
            demo.server().close();
            // a stream that was cut off would fail here
            while (said.hasNext()) {
                assertThat(said.next()).doesNotContain("enough");
            }
        }
    }
}
