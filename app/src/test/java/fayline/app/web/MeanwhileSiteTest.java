package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.EntryKind;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people before the same form: the second is told what changed and decides; nothing is written over without a word. */
class MeanwhileSiteTest {
    private static final Pattern HIDDEN =
            Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\">");

    @TempDir
    Path folder;

    private ServedDemo demo;
    private Browser one;
    private Browser other;

    @BeforeEach
    void start() throws Exception {
        demo = ServedDemo.in(folder);
        one = new Browser(demo.server());
        other = new Browser(demo.server());
    }

    @AfterEach
    void stop() {
        demo.close();
    }

    private long head() {
        return demo.open().shop().state().head().seq();
    }

    private String first(String list) {
        var d = demo.view().definition();
        return switch (list) {
            case "lots" -> d.lots().items().get(0).id();
            case "deliveries" -> d.deliveries().items().get(0).id();
            default -> d.facts().milestones().get(0).id();
        };
    }

    /** Sends a form of a page as it was served, with how far that page had seen the record. */
    private static HttpResponse<String> send(Browser browser, String html, String to, String... fields)
            throws Exception {
        return browser.sendFrom(html, to, Browser.and(fields, "seen-head", Browser.hidden(html, "seen-head")));
    }

    /** Sends what the page of a conflict holds: mine in its place. */
    private static HttpResponse<String> decide(Browser browser, String html, String to) throws Exception {
        String form = html.substring(html.indexOf("<form method=\"post\" action=\"" + to), html.lastIndexOf("</form>"));
        Matcher m = HIDDEN.matcher(form);
        List<String> fields = new java.util.ArrayList<>();
        while (m.find()) {
            fields.add(m.group(1));
            fields.add(m.group(2));
        }
        return browser.post(to, fields.toArray(String[]::new));
    }

    /** The two send the same form of the same page with other values; the second is told, and then decides. */
    private void collide(String page, String to, String key, String[] firstSends, String[] secondSends, String wanted)
            throws Exception {
        String seenByOne = one.page(page);
        String seenByOther = other.page(page);
        long before = head();
        assertThat(send(one, seenByOne, to, firstSends).statusCode()).isEqualTo(200);
        assertThat(head()).isEqualTo(before + 1);
        HttpResponse<String> told = send(other, seenByOther, to, secondSends);
        assertThat(told.statusCode()).as(told.body()).isEqualTo(409);
        assertThat(head()).isEqualTo(before + 1);
        assertThat(told.body())
                .contains("Changed meanwhile")
                .contains(key)
                .contains("entry " + (before + 1))
                .contains(
                        demo.view().definition().shop().people().items().get(0).name())
                .contains(wanted);
        assertThat(decide(other, told.body(), to).statusCode()).isEqualTo(200);
        assertThat(head()).isEqualTo(before + 2);
    }

    private String[] with(String... more) {
        return Browser.and(more, "by", demo.person());
    }

    @Test
    void should_tell_the_second_what_the_first_changed_of_a_lot() throws Exception {
        String lot = first("lots");
        collide(
                "/shop",
                "/shop/lot",
                "quantity",
                with("id", lot, "quantity", "88 kg", "opened", "", "was-opened", ""),
                with("id", lot, "quantity", "77 kg", "opened", "", "was-opened", ""),
                "77 kg");
        assertThat(one.page("/shop")).contains("77 kg").doesNotContain("88 kg");
    }

    @Test
    void should_tell_the_second_what_the_first_changed_of_hours_of_a_delivery_and_of_a_date() throws Exception {
        collide(
                "/shop",
                "/shop/hours",
                "hours[0]",
                with("id", demo.person(), "place", "0", "from", "05:10", "to", "15:00"),
                with("id", demo.person(), "place", "0", "from", "05:20", "to", "15:00"),
                "05:20");
        String delivery = first("deliveries");
        collide(
                "/shop",
                "/shop/delivery",
                "due",
                with(
                        "id",
                        delivery,
                        "due",
                        "2026-03-05",
                        "latest",
                        "",
                        "was-latest",
                        "",
                        "arrived",
                        "",
                        "was-arrived",
                        ""),
                with(
                        "id",
                        delivery,
                        "due",
                        "2026-03-06",
                        "latest",
                        "",
                        "was-latest",
                        "",
                        "arrived",
                        "",
                        "was-arrived",
                        ""),
                "2026-03-06");
        String goal = first("goals");
        collide(
                "/shop",
                "/shop/goal",
                "due",
                with("id", goal, "due", "2027-07-01"),
                with("id", goal, "due", "2027-07-02"),
                "2027-07-02");
    }

    @Test
    void should_tell_the_second_what_the_first_changed_of_an_expected_day() throws Exception {
        collide(
                "/shop",
                "/shop/day",
                "day",
                with("place", "3", "day", "11 degC", "night", "9 degC", "humidity", "61 %"),
                with("place", "3", "day", "12 degC", "night", "9 degC", "humidity", "61 %"),
                "12 degC");
    }

    @Test
    void should_take_both_where_two_change_other_things_of_one_file() throws Exception {
        var lots = demo.view().definition().lots().items();
        String seen = other.page("/shop");
        send(
                one,
                one.page("/shop"),
                "/shop/lot",
                with("id", lots.get(0).id(), "quantity", "88 kg", "opened", "", "was-opened", ""));
        HttpResponse<String> second = send(
                other,
                seen,
                "/shop/lot",
                with("id", lots.get(1).id(), "quantity", "77 kg", "opened", "", "was-opened", ""));
        assertThat(second.statusCode()).isEqualTo(200);
        assertThat(one.page("/shop")).contains("88 kg").contains("77 kg");
    }

    @Test
    void should_tell_nobody_anything_where_both_want_the_same() throws Exception {
        String[] same = with("id", first("goals"), "due", "2027-07-01");
        String seen = other.page("/shop");
        send(one, one.page("/shop"), "/shop/goal", same);
        long before = head();
        assertThat(send(other, seen, "/shop/goal", same).statusCode()).isEqualTo(200);
        assertThat(head()).isEqualTo(before);
    }

    @Test
    void should_show_the_lines_that_the_first_changed_of_a_definition_file_and_keep_the_text_of_the_second()
            throws Exception {
        String page = "/definition/file?path=shop.yaml";
        String html = other.page(page);
        String text = demo.open().shop().folder("ousel-1").text("shop.yaml").orElseThrow();
        String based = Browser.hidden(html, "based-on");
        one.send(
                page,
                "/definition/file",
                with("path", "shop.yaml", "based-on", based, "text", text + "# of the first\n"));
        long before = head();
        String[] mine = with("path", "shop.yaml", "based-on", based, "text", "# of the second\n" + text);
        HttpResponse<String> told = other.sendFrom(html, "/definition/file", mine);
        assertThat(told.statusCode()).isEqualTo(409);
        assertThat(told.body())
                .contains("# of the first")
                .contains("# of the second")
                .contains("entry " + before)
                .contains("Your text below is not saved");
        assertThat(head()).isEqualTo(before);
        HttpResponse<String> gone = other.sendFrom(html, "/definition/file", Browser.and(mine, "how", "remove"));
        assertThat(gone.statusCode()).isEqualTo(409);
        assertThat(head()).isEqualTo(before);
        other.sendFrom(
                told.body(),
                "/definition/file",
                with(
                        "path",
                        "shop.yaml",
                        "based-on",
                        Browser.hidden(told.body(), "based-on"),
                        "text",
                        "# of the second\n" + text));
        assertThat(head()).isEqualTo(before + 1);
        assertThat(demo.open().shop().folder("ousel-1").text("shop.yaml").orElseThrow())
                .startsWith("# of the second");
    }

    @Test
    void should_tell_the_second_of_a_wish_that_theirs_would_end() throws Exception {
        String page = "/wish/chine-doubler-left/1/cut?project=ousel-1";
        String seen = other.page(page);
        String mine = demo.person();
        String to = "/wish/chine-doubler-left/1/cut?project=ousel-1";
        String shown = Browser.hidden(seen, "shown");
        assertThat(send(one, one.page(page), to, with("shown", shown, "do", "with " + mine))
                        .statusCode())
                .isEqualTo(200);
        long before = head();
        HttpResponse<String> told = send(other, seen, to, with("shown", shown, "do", "without " + mine));
        assertThat(told.statusCode()).isEqualTo(409);
        assertThat(told.body()).contains("entry " + before).contains(mine);
        assertThat(head()).isEqualTo(before);
        assertThat(decide(other, told.body(), to).statusCode()).isEqualTo(200);
        assertThat(demo.view().definition().shop().wishes().stream().toList()).hasSize(1);
    }

    @Test
    void should_tell_the_second_that_a_reading_was_corrected_meanwhile() throws Exception {
        String fit = demo.view().definition().fits().items().get(0).id();
        String station =
                demo.view().definition().fits().items().get(0).stations().get(0).id();
        one.send(
                "/fit/" + fit + "/read",
                "/fit/" + fit + "/read",
                with("station", station, "kind", "gap", "unit", "mm", "round", "1", "state", "", "value", "2.1"));
        long reading = demo.open().shop().entries(1).stream()
                .filter(e -> e.kind().equals(EntryKind.READING_TAKEN.key()))
                .mapToLong(e -> e.seq())
                .max()
                .orElseThrow();
        String page = "/fit/" + fit + "/reading/" + reading;
        String seen = other.page(page);
        String[] right = with("value", "2.3", "nogo", "", "station", station, "state", "", "why", "misread");
        assertThat(send(one, one.page(page), page + "/correct", right).statusCode())
                .isEqualTo(200);
        long before = head();
        String[] mine = with("value", "2.5", "nogo", "", "station", station, "state", "", "why", "read again");
        HttpResponse<String> told = send(other, seen, page + "/correct", mine);
        assertThat(told.statusCode()).isEqualTo(409);
        assertThat(told.body()).contains("2.1").contains("2.3").contains("entry " + before);
        assertThat(head()).isEqualTo(before);
        assertThat(decide(other, told.body(), page + "/correct").statusCode()).isEqualTo(200);
        assertThat(head()).isEqualTo(before + 1);
    }

    @Test
    void should_tell_the_second_what_the_first_corrected_or_took_back_on_a_card() throws Exception {
        String card = "/card/chine-doubler-left/1/cut";
        one.send(card, card + "/note", with("text", "Roll one is short."));
        long note = head();
        String seen = other.page(card);
        String[] right = with("entry", "" + note, "how", "mend", "value", "Roll two is short.", "why", "wrong roll");
        assertThat(send(one, one.page(card), card + "/correct", right).statusCode())
                .isEqualTo(200);
        String[] mine = with("entry", "" + note, "how", "mend", "value", "Roll three is short.", "why", "looked again");
        HttpResponse<String> told = send(other, seen, card + "/correct", mine);
        assertThat(told.statusCode()).as(told.body()).isEqualTo(409);
        assertThat(told.body())
                .contains("Roll one is short.")
                .contains("Roll two is short.")
                .contains("entry " + (note + 1));
        assertThat(head()).isEqualTo(note + 1);
        String between = one.page(card);
        assertThat(decide(other, told.body(), card + "/correct").statusCode()).isEqualTo(200);
        assertThat(other.page(card)).contains("Roll three is short.");
        String[] away = with("entry", "" + note, "how", "withdraw", "why", "not so");
        assertThat(send(other, other.page(card), card + "/correct", away).statusCode())
                .isEqualTo(200);
        HttpResponse<String> gone = send(one, between, card + "/correct", right);
        assertThat(gone.statusCode()).isEqualTo(409);
        assertThat(gone.body()).contains("withdrawn");
        assertThat(head()).isEqualTo(note + 3);
    }
}
