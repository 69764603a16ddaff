package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.flow.plan.WorkStep;
import fayline.flow.record.KeptFile;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.step.StepResult;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demonstration through its pages, as a browser gets them. */
class SiteTest extends AtTheDemo {
    private static ShopView view() {
        return demo.view();
    }

    /** A step to do that mixes something, asks nothing that was not signed, and is planned. */
    private static StepResult wetStep() {
        return view().result().steps().stream()
                .filter(s -> s.work().state() == WorkStep.State.TODO)
                .filter(s -> !s.batches().isEmpty() && !s.signed())
                .filter(s ->
                        view().plan().steps().stream().anyMatch(p -> p.step().equals(s.id())))
                .findFirst()
                .orElseThrow();
    }

    private static String path(StepResult step) {
        return "/card/" + step.local();
    }

    private HttpResponse<String> begin(StepResult step, String csrf, String once, String... more) throws Exception {
        return browser.post(
                path(step) + "/start",
                Browser.and(
                        more,
                        "csrf",
                        csrf,
                        "once",
                        once,
                        "by",
                        demo.person(),
                        "people",
                        demo.person(),
                        "which-way",
                        "Bow at the door."));
    }

    @Test
    void should_answer_every_page_with_its_heading() throws Exception {
        for (String[] p : new String[][] {
            {"/", "Who does what"},
            {"/weeks", "The same as a list"},
            {"/airframe", "of all hands-on time is done"},
            {"/stores", "Needed against held"},
            {"/fits", "Canopy"},
            {"/recipes", "A part says"},
            {"/shop", "Expected days"},
            {"/definition", "people.yaml"},
            {"/screen", "Units"},
            {"/who", "Who is at this screen?"},
            {"/why?of=air", "Method:"}
        }) {
            assertThat(browser.page(p[0]))
                    .as(p[0])
                    .contains(p[1])
                    .contains("<title>")
                    .contains("Ousel");
        }
    }

    @Test
    void should_name_everyone_of_the_crew_and_the_dew_point_margin_on_today() throws Exception {
        String today = browser.page("/");
        view().work().people().forEach(w -> assertThat(today).contains(w.name()));
        assertThat(today)
                .contains(new QuantityFormat(UnitSystem.METRIC)
                        .difference(view().result().airNow().margin()));
    }

    @Test
    void should_show_computed_amounts_in_the_units_of_the_screen() throws Exception {
        PartResult part = view().result().parts().stream()
                .filter(p -> p.area().squareMetres() > 0)
                .findFirst()
                .orElseThrow();
        assertThat(browser.page("/part/" + part.part()))
                .contains(new QuantityFormat(UnitSystem.METRIC).area(part.area()))
                .contains(new QuantityFormat(UnitSystem.METRIC).mass(part.asMade()));
        browser.cookie("units", "inch");
        assertThat(browser.page("/part/" + part.part()))
                .contains(new QuantityFormat(UnitSystem.INCH).area(part.area()));
    }

    @Test
    void should_lead_from_a_figure_to_its_inputs_and_source() throws Exception {
        PartResult part = view().result().parts().stream()
                .filter(p -> !p.figures().isEmpty())
                .findFirst()
                .orElseThrow();
        String why = browser.page("/why?of=part&id=" + part.part() + "&n=0");
        assertThat(why).contains("Method: ");
        assertThat(why).contains(escaped(part.figures().get(0).inputs().get(0).name()));
    }

    @Test
    void should_start_once_and_run_the_clock_when_a_card_is_started_and_finished() throws Exception {
        StepResult step = wetStep();
        String card = browser.page(path(step));
        String csrf = Browser.hidden(card, "csrf");
        String once = Browser.hidden(card, "once");
        long before = demo.open().shop().state().head().seq();

        HttpResponse<String> started = begin(step, csrf, once);
        assertThat(started.statusCode()).isEqualTo(200);
        assertThat(started.body()).contains("Recorded as entry").contains("at work");
        assertThat(demo.open().shop().state().head().seq()).isEqualTo(before + 1);
        assertThat(begin(step, csrf, once).body()).contains("Was recorded before");
        assertThat(demo.open().shop().state().head().seq()).isEqualTo(before + 1);

        String[] bare = {"csrf", csrf, "once", UUID.randomUUID().toString(), "by", demo.person()};
        HttpResponse<String> refused = browser.post(path(step) + "/finish", bare);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("no record of the cups of").contains("a reason why not");
        List<String> reasoned = new ArrayList<>(List.of(bare));
        Pattern.compile("name=\"(why-[^\"]+)\"")
                .matcher(browser.page(path(step)))
                .results()
                .forEach(m -> reasoned.addAll(List.of(m.group(1), "weighed on paper")));
        HttpResponse<String> finished = browser.post(path(step) + "/finish", reasoned.toArray(String[]::new));
        assertThat(finished.statusCode()).as(finished.body()).isEqualTo(200);
        assertThat(demo.open().shop().state().step(step.id()).finished()).isPresent();
        assertThat(view().result().clocks()).anyMatch(c -> c.step().equals(step.id()));
        assertThat(browser.page("/")).contains(escaped(step.title())).contains("Clocks running");

        long entry = demo.open().shop().state().step(step.id()).startedBy();
        HttpResponse<String> back = browser.post(
                path(step) + "/correct",
                "csrf",
                csrf,
                "once",
                UUID.randomUUID().toString(),
                "by",
                demo.person(),
                "entry",
                String.valueOf(entry),
                "how",
                "withdraw",
                "why",
                "started the wrong card");
        assertThat(back.statusCode()).as(back.body()).isEqualTo(200);
        assertThat(demo.open().shop().state().step(step.id()).started()).isEmpty();
    }

    @Test
    void should_refuse_in_plain_words_when_nobody_works_on_it() throws Exception {
        StepResult step = wetStep();
        String csrf = Browser.hidden(browser.page(path(step)), "csrf");
        long before = demo.open().shop().state().head().seq();
        HttpResponse<String> r = browser.post(
                path(step) + "/start", "csrf", csrf, "once", UUID.randomUUID().toString(), "by", demo.person());
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body()).contains("Nobody is ticked. Say who works on it.");
        assertThat(demo.open().shop().state().head().seq()).isEqualTo(before);
    }

    @Test
    void should_take_a_note_as_data_when_it_looks_like_markup() throws Exception {
        StepResult step = wetStep();
        String csrf = Browser.hidden(browser.page(path(step)), "csrf");
        HttpResponse<String> r = browser.post(
                path(step) + "/note",
                "csrf",
                csrf,
                "once",
                UUID.randomUUID().toString(),
                "by",
                demo.person(),
                "text",
                "<script>alert(1)</script> 3/32 in proud");
        assertThat(r.statusCode()).isEqualTo(200);
        assertThat(r.body()).doesNotContain("<script>alert(1)").contains("&lt;script&gt;alert(1)");
        assertThat(demo.open().shop().state().step(step.id()).notes())
                .anyMatch(n -> n.text().equals("<script>alert(1)</script> 3/32 in proud"));
    }

    @Test
    void should_ask_about_a_reading_with_a_lost_point_on_the_card_it_was_typed_on() throws Exception {
        StepResult step = wetStep();
        HttpResponse<String> r = browser.send(
                path(step), path(step) + "/reading", "by", demo.person(), "kind", "vacuum", "value", "82 bar");
        assertThat(r.statusCode()).isEqualTo(200);
        assertThat(r.body())
                .contains("Caution: \"82 bar\": a bag is pulled to 0.2 to 1.05 bar below the air.")
                .contains("data-units=\"bar mbar inHg\"")
                .contains("data-keypad");
    }

    @Test
    void should_say_line_found_and_expected_when_a_file_is_wrong_and_keep_what_was_typed() throws Exception {
        String page = browser.page("/definition/file?path=people.yaml");
        String csrf = Browser.hidden(page, "csrf");
        String text = people();
        String broken = text.replaceFirst("skills: \\[laminate", "skills: [laminat");
        HttpResponse<String> r = browser.post(
                "/definition/file",
                "csrf",
                csrf,
                "once",
                UUID.randomUUID().toString(),
                "by",
                demo.person(),
                "path",
                "people.yaml",
                "based-on",
                Browser.hidden(page, "based-on"),
                "how",
                "save",
                "text",
                broken);
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body())
                .contains("was not saved")
                .contains("people.yaml, line 4")
                .contains("[laminat,");
        assertThat(people()).isEqualTo(text);
    }

    private HttpResponse<String> shopForm(String form, String once, String... fields) throws Exception {
        String csrf = Browser.hidden(browser.page("/shop"), "csrf");
        return browser.post("/shop/" + form, Browser.and(fields, "csrf", csrf, "once", once, "by", demo.person()));
    }

    /** Planned work of a person that is still to do and lies within days. */
    private static long planned(String person, String from, String to) {
        Instant first = Instant.parse(from + "T00:00:00Z");
        Instant last = Instant.parse(to + "T23:59:00Z");
        return view().plan().steps().stream()
                .filter(s -> s.people().contains(person))
                .filter(s -> s.handsEnd().isAfter(first) && s.start().isBefore(last))
                .count();
    }

    @Test
    void should_plan_around_an_absence_and_back_when_it_is_entered_twice_and_taken_out() throws Exception {
        long before = planned("ilse", "2026-03-04", "2026-03-05");
        assertThat(before).isPositive();
        long head = demo.open().shop().state().head().seq();
        String once = UUID.randomUUID().toString();
        String[] fields = {"id", "ilse", "from", "2026-03-04", "to", "2026-03-05", "why", "course"};
        HttpResponse<String> taken = shopForm("absence", once, fields);
        assertThat(taken.statusCode()).as(taken.body()).isEqualTo(200);
        assertThat(taken.body()).contains("tomorrow to Thu 5 Mar").contains("What moved in the plan");
        assertThat(shopForm("absence", once, fields).statusCode()).isEqualTo(200);
        assertThat(demo.open().shop().state().head().seq()).isEqualTo(head + 1);
        assertThat(planned("ilse", "2026-03-04", "2026-03-05")).isZero();

        HttpResponse<String> other =
                shopForm("back", UUID.randomUUID().toString(), "id", "ilse", "place", "0", "from", "2026-03-11");
        assertThat(other.statusCode()).isEqualTo(422);
        assertThat(other.body()).contains("has been changed meanwhile");
        HttpResponse<String> back =
                shopForm("back", UUID.randomUUID().toString(), "id", "ilse", "place", "0", "from", "2026-03-04");
        assertThat(back.statusCode()).as(back.body()).isEqualTo(200);
        assertThat(planned("ilse", "2026-03-04", "2026-03-05")).isEqualTo(before);
    }

    @Test
    void should_say_what_is_wrong_and_keep_nothing_when_a_weekly_form_has_a_bad_date() throws Exception {
        long head = demo.open().shop().state().head().seq();
        String text = people();
        HttpResponse<String> r = shopForm(
                "absence", UUID.randomUUID().toString(), "id", "ilse", "from", "2026-02-30", "to", "2026-03-05");
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body()).contains("2026-02-30").contains("expected a date such as 2026-03-02");
        assertThat(demo.open().shop().state().head().seq()).isEqualTo(head);
        assertThat(people()).isEqualTo(text);
    }

    @Test
    void should_have_a_lot_in_the_stores_when_it_is_added_on_the_shop_page() throws Exception {
        HttpResponse<String> r = shopForm(
                "new-lot",
                UUID.randomUUID().toString(),
                "id",
                "L-2901",
                "of",
                "er-slow",
                "component",
                "resin",
                "quantity",
                "12",
                "received",
                "2026-03-03");
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body()).contains("add the unit");
        r = shopForm(
                "new-lot",
                UUID.randomUUID().toString(),
                "id",
                "L-2901",
                "of",
                "er-slow",
                "component",
                "resin",
                "quantity",
                "12 kg",
                "received",
                "2026-03-03");
        assertThat(r.statusCode()).as(r.body()).isEqualTo(200);
        assertThat(browser.page("/stores")).contains("L-2901");
    }

    @Test
    void should_say_whether_the_plan_meets_each_goal() throws Exception {
        String weeks = browser.page("/weeks");
        assertThat(weeks).contains("Hull ready to close").contains("to spare");
        HttpResponse<String> r =
                shopForm("goal", UUID.randomUUID().toString(), "id", "hull-closed", "due", "2026-03-05");
        assertThat(r.statusCode()).as(r.body()).isEqualTo(200);
        assertThat(browser.page("/weeks")).containsPattern("late by \\d+ days</span>");
        shopForm("goal", UUID.randomUUID().toString(), "id", "hull-closed", "due", "2026-04-24");
        assertThat(browser.page("/weeks")).doesNotContain("late by");
    }

    @Test
    void should_send_the_cards_of_a_day_as_pdf() throws Exception {
        byte[] pdf = browser.bytes("/cards.pdf?day=2026-03-03");
        assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        assertThat(browser.get("/cards.pdf?day=tomorrow").statusCode()).isEqualTo(422);
    }

    @Test
    void should_stay_within_the_program_when_told_where_to_go_back() throws Exception {
        String csrf = Browser.hidden(browser.page("/who"), "csrf");
        HttpResponse<String> r = browser.post(
                "/who", "csrf", csrf, "once", "12345678", "person", demo.person(), "back", "//elsewhere.example/");
        assertThat(r.uri().getHost()).isEqualTo("127.0.0.1");
        assertThat(r.uri().getPath()).isEqualTo("/");
        assertThat(r.body()).contains("(here)");
    }

    @Test
    void should_answer_plainly_when_there_is_no_such_thing() throws Exception {
        for (String path : List.of("/part/nothing", "/joint/nothing", "/card/a/1/b", "/why?of=nothing")) {
            HttpResponse<String> r = browser.get(path);
            assertThat(r.statusCode()).as(path).isEqualTo(404);
            assertThat(r.body()).as(path).contains("There is no ");
        }
    }

    @Test
    void should_say_how_a_project_comes_in_when_the_shop_is_empty(@TempDir Path other) throws Exception {
        try (OpenShop empty = OpenShop.open(other, ServedDemo.CLOCK, Optional.empty());
                WebServer bare = WebServer.start(
                        0,
                        new Site(
                                empty.shop(),
                                new LookAtShop(empty.shop()),
                                new LeastFinish(other.resolve("library")),
                                empty::sign,
                                "test"))) {
            assertThat(new Browser(bare).page("/")).contains("No project yet").contains("import");
        }
    }

    /** The crew's file as it is kept now. */
    private static String people() {
        return Optional.ofNullable(demo.open().shop().state().files("ousel-1").get("people.yaml"))
                .map(KeptFile::content)
                .orElseThrow();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    @Test
    void should_show_the_lessons_of_a_part_on_the_card_of_its_leak_test_too() throws Exception {
        assertThat(browser.page("/card/float-shell-right/1/leak-test?project=ousel-1"))
                .contains("Lessons", "From the left: the bow pleat leaked; make it 150 mm high.");
    }
}
