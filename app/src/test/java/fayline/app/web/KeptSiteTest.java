package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.Entry;
import fayline.flow.record.payload.Value;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a phone kept comes in once and in order, whatever is resent, doubled or changed on the way. */
class KeptSiteTest {
    private static final String CARD = "/card/chine-doubler-left/1/";
    private static final String READ = "/fit/canopy-left/read";
    /** The demonstration stands at 07:05 of this day. */
    private static final String LATELY = "2026-03-03T07:02:00Z";

    private static final String LAST_WEEK = "2026-02-24T09:00:00Z";

    @TempDir
    static Path folder;

    private static ServedDemo demo;
    private Browser browser;

    @BeforeAll
    static void start() throws Exception {
        demo = ServedDemo.in(folder);
    }

    @AfterAll
    static void stop() {
        demo.close();
    }

    @BeforeEach
    void visit() {
        browser = new Browser(demo.server());
    }

    private static String fresh() {
        return UUID.randomUUID().toString();
    }

    static Value.Fields form(String id, String path, String by, String at, String... typed) {
        return Value.Fields.NONE
                .with("id", id)
                .with("path", path)
                .with("project", "ousel-1")
                .with("by", by)
                .with("at", at)
                .with("fields", Arrays.asList(typed));
    }

    private static Value.Fields note(String id, String text) {
        return form(id, CARD + "cut/note?project=ousel-1", "ilse", LATELY, "by", "ilse", "text", text);
    }

    private Value.Fields head() throws Exception {
        return head(browser);
    }

    private static Value.Fields head(Browser browser) throws Exception {
        return (Value.Fields) Value.parse(browser.page("/kept/head"));
    }

    private HttpResponse<String> sendAs(String record, Value.Fields... forms) throws Exception {
        return sendAs(browser, record, forms);
    }

    private static HttpResponse<String> sendAs(Browser browser, String record, Value.Fields... forms) throws Exception {
        Value.Fields batch = Value.Fields.NONE
                .with("format", 1)
                .with("record", record)
                .with("entries", new Value.Many(List.<Value>of(forms)));
        return browser.postJson("/kept/send", head(browser).text("token"), batch.canonical());
    }

    /** Sends and reads the answers as "what seq". */
    private List<Value.Fields> send(Value.Fields... forms) throws Exception {
        return send(browser, forms);
    }

    /** Sends what a phone kept. */
    static List<Value.Fields> send(Browser browser, Value.Fields... forms) throws Exception {
        HttpResponse<String> r = sendAs(browser, "", forms);
        assertThat(r.statusCode()).as(r.body()).isEqualTo(200);
        List<Value.Fields> answers = new ArrayList<>();
        ((Value.Fields) Value.parse(r.body())).items("answers").forEach(v -> answers.add((Value.Fields) v));
        return answers;
    }

    private static List<Entry> entriesOf(String... ids) {
        return entriesOf(demo, ids);
    }

    static List<Entry> entriesOf(ServedDemo demo, String... ids) {
        List<String> asked = List.of(ids);
        return demo.open().shop().entries(1).stream()
                .filter(e -> asked.contains(e.client()))
                .toList();
    }

    private static long seq(Value.Fields answer) {
        return answer.whole("seq").orElseThrow();
    }

    @Test
    void should_take_each_entry_once_and_in_order_when_the_row_is_sent_again() throws Exception {
        String one = fresh();
        String two = fresh();
        List<Value.Fields> first = send(note(one, "First."), note(two, "Second."));
        List<Value.Fields> again = send(note(one, "First."), note(two, "Second."), note(one, "First."));
        assertThat(first).extracting(a -> a.text("what")).containsExactly("taken", "taken");
        assertThat(again).extracting(a -> a.text("what")).containsExactly("there", "there", "there");
        assertThat(again)
                .extracting(KeptSiteTest::seq)
                .containsExactly(seq(first.get(0)), seq(first.get(1)), seq(first.get(0)));
        assertThat(entriesOf(one, two)).extracting(Entry::client).containsExactly(one, two);
        assertThat(entriesOf(one).get(0).fields().text("at")).isEqualTo(LATELY);
    }

    @Test
    void should_keep_each_once_when_rows_come_in_another_order() throws Exception {
        String one = fresh();
        String two = fresh();
        send(note(two, "Second."));
        List<Value.Fields> late = send(note(one, "First."), note(two, "Second."));
        assertThat(late).extracting(a -> a.text("what")).containsExactly("taken", "there");
        assertThat(entriesOf(one, two)).hasSize(2);
    }

    @Test
    void should_refuse_loudly_when_a_used_id_carries_other_content() throws Exception {
        String id = fresh();
        send(note(id, "As it was."));
        Value.Fields other = send(note(id, "Something else.")).get(0);
        assertThat(other.text("what")).isEqualTo("refused");
        assertThat(other.text("say")).contains("other content");
        assertThat(entriesOf(id)).hasSize(1);
    }

    @Test
    void should_answer_there_when_the_form_itself_came_through_before() throws Exception {
        String html = browser.page(CARD + "prepare?project=ousel-1");
        String once = Browser.hidden(html, "once");
        browser.sendFrom(html, CARD + "prepare/note?project=ousel-1", "by", "ned", "text", "Wiped twice.");
        Value.Fields late = form(once, CARD + "prepare/note?project=ousel-1", "ned", LATELY, "text", "Wiped twice.");
        assertThat(send(late).get(0).text("what")).isEqualTo("there");
        assertThat(entriesOf(once)).hasSize(1);
    }

    @Test
    void should_make_one_reading_when_form_and_kept_entry_both_come() throws Exception {
        String page = READ + "?state=struts&kind=gap&unit=mm&at=S3";
        String[] typed = {
            "by", "ned", "state", "struts", "kind", "gap", "unit", "mm", "round", "1", "station", "S3", "value", "2.95"
        };
        int before = readings();
        String html = browser.page(page);
        String once = Browser.hidden(html, "once");
        browser.sendFrom(html, READ, typed);
        assertThat(send(form(once, READ, "ned", LATELY, typed)).get(0).text("what"))
                .isEqualTo("there");
        String second = browser.page(page);
        String kept = Browser.hidden(second, "once");
        assertThat(send(form(kept, READ, "ned", LATELY, typed)).get(0).text("what"))
                .isEqualTo("taken");
        browser.sendFrom(second, READ, typed);
        assertThat(readings()).isEqualTo(before + 2);
        typed[typed.length - 1] = "3.4";
        assertThat(send(form(kept, READ, "ned", LATELY, typed)).get(0).text("say"))
                .contains("other content");
        assertThat(readings()).isEqualTo(before + 2);
    }

    private static int readings() {
        return demo.view().record().readings("ousel-1").size();
    }

    @Test
    void should_show_both_what_happened_when_a_start_of_last_week_conflicts() throws Exception {
        String card = "/card/chine-doubler-left/1/cut";
        String query = "?project=ousel-1";
        String html = browser.page(card + query);
        browser.sendFrom(html, card + "/start" + query, "by", "ilse", "people", "ilse");
        String id = fresh();
        Value.Fields late = form(id, card + "/start" + query, "ned", LAST_WEEK, "by", "ned", "people", "ned");
        Value.Fields answer = send(late).get(0);
        assertThat(answer.text("what")).isEqualTo("taken");
        assertThat(answer.text("say")).contains("already started").contains("stands beside it");
        assertThat(entriesOf(id).get(0).fields().text("at")).isEqualTo(LAST_WEEK);
        assertThat(browser.page(card + query))
                .contains("The start that Ilse recorded")
                .contains("The start that Ned recorded")
                .contains("without effect");
        assertThat(send(late).get(0).text("what")).isEqualTo("there");
    }

    @Test
    void should_take_a_correction_once_when_it_is_sent_after_it_had_its_effect() throws Exception {
        String id = fresh();
        long wrong = seq(send(note(id, "Wrong card.")).get(0));
        String back = fresh();
        Value.Fields withdraw = form(
                back,
                CARD + "cut/correct?project=ousel-1",
                "ilse",
                LATELY,
                "entry",
                String.valueOf(wrong),
                "why",
                "wrong card",
                "how",
                "withdraw");
        assertThat(send(withdraw).get(0).text("what")).isEqualTo("taken");
        assertThat(send(withdraw).get(0).text("what")).isEqualTo("there");
        assertThat(entriesOf(back)).hasSize(1);
    }

    @Test
    void should_leave_a_kept_correction_to_a_person_when_another_was_made_meanwhile() throws Exception {
        long wrong = seq(send(note(fresh(), "Five plies.")).get(0));
        String correct = CARD + "cut/correct?project=ousel-1";
        String entry = String.valueOf(wrong);
        Value.Fields others = form(
                fresh(),
                correct,
                "ned",
                LATELY,
                "entry",
                entry,
                "how",
                "mend",
                "value",
                "Six plies.",
                "why",
                "counted");
        assertThat(send(others).get(0).text("what")).isEqualTo("taken");
        String id = fresh();
        Value.Fields mine = form(
                id,
                correct,
                "ilse",
                LATELY,
                "entry",
                entry,
                "how",
                "mend",
                "value",
                "Four plies.",
                "why",
                "counted",
                "seen-head",
                entry);
        Value.Fields told = send(mine).get(0);
        assertThat(told.text("what")).isEqualTo("refused");
        assertThat(told.text("say")).contains("Five plies.").contains("Six plies.");
        assertThat(entriesOf(id)).isEmpty();
    }

    @Test
    void should_refuse_each_by_itself_when_it_cannot_be_taken() throws Exception {
        String good = fresh();
        List<Value.Fields> answers = send(
                form(fresh(), CARD + "no-such-step/note?project=ousel-1", "ilse", LATELY, "text", "x"),
                form(fresh(), CARD + "cut/note?project=ousel-1", "nobody", LATELY, "text", "x"),
                form(fresh(), CARD + "cut/note?project=ousel-1", "ilse", "2026-03-03T13:00:00Z", "text", "x"),
                form(fresh(), "/definition/file", "ilse", LATELY, "text", "x"),
                note(fresh(), "x").with("project", "elsewhere"),
                note(good, "Taken all the same."));
        assertThat(answers)
                .extracting(a -> a.text("what"))
                .containsExactly("refused", "refused", "refused", "refused", "refused", "taken");
        assertThat(answers.get(0).text("say")).contains("There is no card of that step");
        assertThat(answers.get(1).text("say")).contains("nobody");
        assertThat(answers.get(2).text("say")).contains("phone's clock");
        assertThat(answers.get(3).text("say")).contains("Nothing of this program");
        assertThat(answers.get(4).text("say")).contains("elsewhere");
    }

    @Test
    void should_refuse_a_signature_when_who_signs_may_not_however_late_it_comes() throws Exception {
        Value.Fields late =
                form(fresh(), CARD + "inspect/finish?project=ousel-1", "ned", LAST_WEEK, "by", "ned", "signed", "ned");
        Value.Fields answer = send(late).get(0);
        assertThat(answer.text("what")).isEqualTo("refused");
        assertThat(answer.text("say")).contains("hold point");
    }

    @Test
    void should_take_nothing_when_the_batch_is_foreign_or_unreadable() throws Exception {
        String id = fresh();
        String token = head().text("token");
        assertThat(browser.postJson("/kept/send", "forged", "{}").statusCode()).isEqualTo(403);
        assertThat(browser.postJson("/kept/send", token, "{\"entries\": []}").statusCode())
                .isEqualTo(400);
        assertThat(browser.postJson("/kept/send", token, "{\"entries\":[],\"format\":9,\"record\":\"\"}")
                        .body())
                .contains("found format 9");
        String other = sendAs("0123456789abcdef0123456789abcdef", note(id, "x")).body();
        assertThat(other).contains("refused").contains("another shop");
        assertThat(sendAs(head().text("record"), note(id, "x")).body()).contains("\"what\":\"taken\"");
        assertThat(entriesOf(id)).hasSize(1);
    }

    @Test
    void should_name_every_file_of_the_pages_when_the_worker_keeps_them() throws Exception {
        String worker = browser.page("/worker.js");
        try (var files = java.nio.file.Files.list(Path.of("src/main/resources/fayline/app/web/static"))) {
            assertThat(files.map(f -> "\"/static/" + f.getFileName() + '"')).allMatch(worker::contains);
        }
    }
}
