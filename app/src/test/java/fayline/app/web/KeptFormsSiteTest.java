package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.Entry;
import fayline.flow.record.inspect.FoundFault;
import fayline.flow.record.inspect.HeldVisit;
import fayline.flow.record.payload.Value;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Inspections and stores from a phone that had no network: each once, judged as their own pages judge them. */
class KeptFormsSiteTest extends AtTheDemo {
    private static final String LATELY = "2026-03-03T07:02:00Z";
    private static final String VISIT = "/inspections/visit";

    private static String fresh() {
        return UUID.randomUUID().toString();
    }

    private Value.Fields once(Value.Fields form) throws Exception {
        List<Value.Fields> answers = KeptSiteTest.send(browser, form, form);
        assertThat(answers.get(0).text("what")).as(answers.get(0).text("say")).isEqualTo("taken");
        assertThat(answers.get(1).text("what")).as(answers.get(1).text("say")).isEqualTo("there");
        List<Entry> kept = KeptSiteTest.entriesOf(demo, form.text("id"));
        assertThat(kept).hasSize(1);
        assertThat(kept.get(0).fields().text("at")).isEqualTo(LATELY);
        return kept.get(0).fields();
    }

    private static Value.Fields form(String path, String by, String... typed) {
        return KeptSiteTest.form(fresh(), path, by, LATELY, typed);
    }

    private static String photo() throws Exception {
        Path file = Path.of("../store/src/test/resources/fayline/store/file/picture/with-place.jpg");
        return "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(Files.readAllBytes(file));
    }

    private static HeldVisit lastVisit() {
        List<HeldVisit> all = demo.open().shop().state().inspect().visitsOf("ousel-1");
        return all.get(all.size() - 1);
    }

    @Test
    void should_take_a_visit_a_finding_its_mending_and_its_signature_once_each() throws Exception {
        once(form(VISIT, "runa", "by", "runa", "who", "A licensed engineer", "text", "Looked in the shed."));
        String visit = String.valueOf(lastVisit().seq());
        Value.Fields found = once(form(
                "/inspections/finding",
                "runa",
                "visit",
                visit,
                "about",
                "hull-deck",
                "text",
                "Dull place",
                "photo",
                photo()));
        assertThat(found.items("photos")).hasSize(1);
        FoundFault fault = demo.open().shop().state().inspect().of(lastVisit()).get(0);
        String finding = String.valueOf(fault.seq());
        Value.Fields mended = once(form(
                "/inspections/put-right", "ned", "finding", finding, "text", "Opened and filled.", "photo", photo()));
        assertThat(mended.items("photos")).hasSize(1);
        Value.Fields own = form("/inspections/sign-off", "ned", "finding", finding, "accepted", "yes");
        Value.Fields refused = KeptSiteTest.send(browser, own).get(0);
        assertThat(refused.text("what")).isEqualTo("refused");
        assertThat(refused.text("say")).contains("somebody other than Ned");
        once(form("/inspections/sign-off", "runa", "finding", finding, "accepted", "yes"));
        assertThat(browser.page("/inspections")).contains("Dull place", "Opened and filled.");
    }

    @Test
    void should_take_a_photo_of_a_finding_at_once_as_well() throws Exception {
        String html = browser.page("/inspections");
        byte[] jpeg =
                Files.readAllBytes(Path.of("../store/src/test/resources/fayline/store/file/picture/with-place.jpg"));
        browser.postParts(
                VISIT,
                List.of(jpeg),
                "once",
                Browser.hidden(html, "once"),
                "csrf",
                Browser.hidden(html, "csrf"),
                "by",
                "runa",
                "who",
                "A second engineer");
        assertThat(lastVisit().who()).isEqualTo("A second engineer");
        assertThat(lastVisit().photos()).hasSize(1);
    }

    @Test
    void should_receive_a_lot_with_its_certificate_and_count_it_once() throws Exception {
        String pdf = "data:application/pdf;base64,"
                + Base64.getEncoder().encodeToString("%PDF-1.7\n%%EOF\n".getBytes(StandardCharsets.US_ASCII));
        Value.Fields lot = once(form(
                "/stores/receive",
                "ned",
                "lot",
                "K-1",
                "stuff",
                "g-280",
                "quantity",
                "20 m2",
                "received",
                "2026-03-03",
                "certificate",
                pdf));
        assertThat(lot.text("certificate")).hasSize(64);
        Value.Fields counted =
                once(form("/stores/count", "ned", "lot", "K-1", "left", "19.5 m2", "lot", "L-2611", "left", ""));
        assertThat(counted.items("counts")).hasSize(1);
        assertThat(browser.page("/stores/lot?lot=K-1")).contains("19.50 m2", "counted");
        Value.Fields twice = KeptSiteTest.send(
                        browser,
                        form(
                                "/stores/receive",
                                "ned",
                                "lot",
                                "K-1",
                                "stuff",
                                "g-280",
                                "quantity",
                                "1 m2",
                                "received",
                                "2026-03-03"))
                .get(0);
        assertThat(twice.text("what")).isEqualTo("refused");
        assertThat(twice.text("say")).contains("a second time");
    }

    @Test
    void should_audit_a_kept_count_once_and_raise_its_deviations_once() throws Exception {
        for (String[] l :
                new String[][] {{"K-2", "er-slow resin", "12.00 kg"}, {"K-3", "er-slow hardener", "3.60 kg"}}) {
            once(form(
                    "/stores/receive", "ned", "lot", l[0], "stuff", l[1], "quantity", l[2], "received", "2026-03-02"));
        }
        int before = demo.open().shop().state().trouble().open().size();
        // whatever is found by the audit, it is found once
        once(form("/stores/count", "ned", "lot", "K-2", "left", "7.00 kg", "lot", "K-3", "left", "0.10 kg"));
        int after = demo.open().shop().state().trouble().open().size();
        List<String> about = demo.open().shop().state().trouble().open().stream()
                .map(d -> d.about() + d.text())
                .toList();
        assertThat(about).doesNotHaveDuplicates();
        assertThat(after).isGreaterThanOrEqualTo(before);
    }
}
