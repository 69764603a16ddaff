package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.inspect.HeldVisit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Inspections on the demonstration's pages, in both orders. */
class InspectSiteTest extends AtTheDemo {
    private static List<HeldVisit> visits() {
        return demo.open().shop().state().inspect().visitsOf("ousel-1");
    }

    @Test
    void should_show_the_same_findings_by_date_and_by_assembly() throws Exception {
        String byDate = browser.page("/inspections");
        String byAssembly = browser.page("/inspections?order=assembly");

        for (String page : List.of(byDate, byAssembly)) {
            assertThat(page)
                    .contains("Finding 1.1", "Finding 1.2", "Drain hole at the third rib", "Accepted and signed")
                    .contains("Hull before the deck goes on", "Nobody from outside has looked");
        }
        assertThat(byDate).contains("Visit 1, The inspector of the Ousel");
        assertThat(byAssembly).contains("<h3>Wing</h3>");
    }

    @Test
    void should_take_a_visit_a_finding_its_mending_and_its_signature() throws Exception {
        browser.send(
                "/inspections", "/inspections/visit", "by", "runa", "who", "A licensed engineer", "text", "Looked.");
        HeldVisit visit = visits().get(visits().size() - 1);
        String found = "Scratch <deep> at the lip";
        browser.send(
                "/inspections",
                "/inspections/finding",
                "by",
                "runa",
                "visit",
                String.valueOf(visit.seq()),
                "about",
                "hull-deck",
                "text",
                found);
        var fault = demo.open().shop().state().inspect().of(visit).get(0);

        assertThat(browser.page("/inspections")).contains("Scratch &lt;deep&gt; at the lip", "A licensed engineer");
        String id = String.valueOf(fault.seq());
        browser.send("/inspections", "/inspections/put-right", "by", "ned", "finding", id, "text", "Sanded out.");
        assertThat(browser.page("/inspections")).contains("put right, not signed");
        assertThat(browser.send("/inspections", "/inspections/sign-off", "by", "ned", "finding", id, "accepted", "yes")
                        .body())
                .contains("somebody other than Ned");
        browser.send("/inspections", "/inspections/sign-off", "by", "runa", "finding", id, "accepted", "yes");
        assertThat(demo.open()
                        .shop()
                        .state()
                        .inspect()
                        .fault(fault.seq())
                        .orElseThrow()
                        .isOpen())
                .isFalse();
        assertThat(browser.page("/record")).contains("accepted finding " + fault.number());
    }
}
