package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.WorkStep;
import fayline.flow.record.Chain;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lead of the demonstration keeps, rules out, swaps and withdraws, as a reader of the pages sees it. */
class WishSiteTest {
    private static final String STEP = "ousel-1/chine-doubler-left/1/prepare";
    private static final String HERE = "/wish/chine-doubler-left/1/prepare?project=ousel-1";

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

    private String send(String what, String... more) throws Exception {
        String[] fields = new String[more.length + 6];
        System.arraycopy(new String[] {"by", "runa", "do", what, "shown", shown()}, 0, fields, 0, 6);
        System.arraycopy(more, 0, fields, 6, more.length);
        return browser.send(HERE, HERE, fields).body();
    }

    private String shown() {
        return planned(STEP)
                .start()
                .atZone(demo.view().zone())
                .toLocalDateTime()
                .toString();
    }

    private PlannedStep planned(String step) {
        return demo.view().plan().steps().stream()
                .filter(p -> p.step().equals(step))
                .findFirst()
                .orElseThrow();
    }

    private void assertWhole() {
        assertThat(demo.view().audit()).isEmpty();
        assertThat(Chain.check(demo.open().shop().entries(1), Optional.empty())).isEmpty();
    }

    private void withdraw() throws Exception {
        String id = demo.view().definition().shop().wishes().stream()
                .findFirst()
                .orElseThrow()
                .id();
        assertThat(browser.send("/wishes", "/wishes/withdraw", "by", "runa", "wish", id)
                        .body())
                .isNotNull();
    }

    /** The list of wishes, without the frame of the page. */
    private String listed() throws Exception {
        String page = browser.page("/wishes");
        return page.substring(page.indexOf("Wanted now"), page.indexOf("</section>", page.indexOf("Wanted now")));
    }

    @Test
    void should_change_the_crew_as_wished_show_who_and_why_and_change_it_back_when_withdrawn() throws Exception {
        List<String> before = planned(STEP).people();
        String hash = demo.view().definition().hash();
        String out = before.get(0);
        String name = demo.view().definition().shop().people().get(out).name();
        assertThat(browser.page("/wishes")).contains("Nothing is wished.");
        send("without " + out, "why", "Needed at the pods");
        assertThat(planned(STEP).people()).isNotEmpty().doesNotContain(out);
        assertWhole();
        assertThat(browser.page(HERE)).contains("Wanted: it done without " + name, "Needed at the pods", "Runa, today");
        assertThat(browser.page("/wishes?costs=yes")).contains("Without it ");
        assertThat(browser.page("/weeks?weeks=2")).contains("wanted: it done without " + name, "Wishes (1)");
        assertThat(browser.page("/")).contains("wanted: it done without " + name);
        assertThat(browser.page("/card/chine-doubler-left/1/prepare?project=ousel-1"))
                .contains("it done without " + name, "Decide who, where or when");
        withdraw();
        assertThat(planned(STEP).people()).isEqualTo(before);
        assertThat(demo.view().definition().hash()).isEqualTo(hash);
        assertWhole();
    }

    @Test
    void should_make_one_entry_of_a_swap_and_end_it_whole() throws Exception {
        PlannedStep own = planned(STEP);
        PlannedStep other = demo.view().plan().steps().stream()
                .filter(p -> p.people().size() == own.people().size()
                        && p.people().stream().noneMatch(own.people()::contains)
                        && demo.view().work().steps().stream()
                                .anyMatch(s -> s.id().equals(p.step())
                                        && s.state() == WorkStep.State.TODO
                                        && s.skills().isEmpty()))
                .findFirst()
                .orElseThrow();
        int entries = demo.open().shop().entries(1).size();
        send("swap", "swap", other.step());
        assertThat(demo.open().shop().entries(1)).hasSize(entries + 1);
        assertThat(planned(STEP).people()).containsAll(other.people()).doesNotContainAnyElementsOf(own.people());
        assertThat(planned(other.step()).people())
                .containsAll(own.people())
                .doesNotContainAnyElementsOf(other.people());
        assertWhole();
        withdraw();
        assertThat(demo.view().definition().shop().wishes().stream()).isEmpty();
        assertThat(planned(STEP).people()).isEqualTo(own.people());
    }

    @Test
    void should_keep_a_start_a_half_day_and_a_day_to_wait_for_the_last_taking_the_place_of_the_others()
            throws Exception {
        PlannedStep before = planned(STEP);
        send("start");
        assertThat(planned(STEP).start()).isEqualTo(before.start());
        send("half-day");
        assertThat(browser.page("/wishes")).contains("it to begin in the morning of Tue 3 Mar");
        send("not-before", "from", "2026-03-05T13:00");
        assertThat(planned(STEP).start()).isAfterOrEqualTo(java.time.Instant.parse("2026-03-05T13:00:00Z"));
        assertThat(demo.view().definition().shop().wishes().stream()).hasSize(1);
        assertThat(browser.page(HERE)).contains("no sooner than Thu 5 Mar 13:00");
        assertWhole();
    }

    @Test
    void should_say_what_stands_against_what_when_nobody_can_keep_a_wish() throws Exception {
        send("with ilse");
        assertThat(listed()).doesNotContain("class=\"word trouble\"");
        send("not-before", "from", "2027-03-05T13:00");
        assertThat(browser.page(HERE))
                .contains("Not planned", "Runa wants it to begin no sooner than Fri 5 Mar 2027 13:00");
        assertThat(browser.page("/weeks")).contains("Not planned", "What stands against what");
        // Only the wish in the way is marked as trouble; the other one of the step would be kept.
        assertThat(listed())
                .contains(
                        "Stands in the way of a step that has no place in the plan.",
                        "The step has no place in the plan, but not for this wish.")
                .containsOnlyOnce("class=\"word trouble\"");
        withdraw();
        withdraw();
        assertThat(demo.view().plan().unplanned()).isEmpty();
    }

    @Test
    void should_refuse_what_is_no_wish_and_make_one_entry_of_a_form_sent_twice() throws Exception {
        assertThat(send("fly")).contains("nothing to wish called");
        assertThat(send("with-other", "person", "")).contains("Who else is empty");
        assertThat(send("not-before", "from", "soon")).contains("is no time");
        assertThat(send("not-before", "from", "2026-03-01T08:00")).contains("that moment is over");
        assertThat(send("with nobody")).contains("a person that exists");
        assertThat(browser.page("/wishes")).contains("Nothing is wished.");
        int entries = demo.open().shop().entries(1).size();
        String html = browser.page(HERE);
        browser.sendFrom(html, HERE, "by", "runa", "do", "with ilse", "shown", shown());
        browser.sendFrom(html, HERE, "by", "runa", "do", "with ilse", "shown", shown());
        assertThat(demo.open().shop().entries(1)).hasSize(entries + 1);
        assertThat(browser.sendFrom(html, HERE, "by", "runa", "do", "without ilse", "shown", shown())
                        .body())
                .contains("was sent before with something else");
        send("with ilse");
        assertThat(demo.open().shop().entries(1)).hasSize(entries + 1);
    }
}
