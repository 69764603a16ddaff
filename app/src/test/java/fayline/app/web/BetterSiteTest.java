package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.view.PlanOrigin;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A search for a better plan of the demonstration, as a reader of the pages sees it. */
class BetterSiteTest {
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

    private String send(String path, String... fields) throws Exception {
        return browser.send("/better", path, fields).body();
    }

    private String whenOver() throws Exception {
        String page = browser.page("/better");
        for (int i = 0; page.contains("searching") && i < 1200; i++) {
            Thread.sleep(100);
            page = browser.page("/better");
        }
        return page;
    }

    @Test
    void should_follow_the_best_plan_of_a_search_and_tell_the_crew_how_it_came_about() throws Exception {
        String before = browser.page("/better");
        assertThat(before)
                .contains("From now to the end of all")
                .contains("Put together chain by chain.")
                .contains("The crew was told no plan yet.");
        send("/better/search", "effort", "1", "seed", "1");
        String after = whenOver();
        assertThat(after).contains("was ").contains("Best of a search to its limit (effort 1, seed 1)");
        assertThat(demo.view().audit()).isEmpty();
        assertThat(demo.looking().standing().orElseThrow().origin().kind()).isEqualTo(PlanOrigin.Kind.SEARCHED);

        send("/better/tell", "by", "runa");
        assertThat(browser.page("/better")).contains("nothing of it has moved since.");
        assertThat(demo.open().shop().entries(1)).anySatisfy(e -> {
            assertThat(e.kind()).isEqualTo("plan-published");
            assertThat(e.fields().text("made")).startsWith("Best of a search to its limit");
        });
    }

    @Test
    void should_say_that_a_search_was_stopped_and_keep_its_best() throws Exception {
        send("/better/search", "effort", "100", "seed", "1");
        for (int i = 0; browser.page("/better").contains("chain by chain") && i < 600; i++) {
            Thread.sleep(100);
        }
        send("/better/stop");
        assertThat(whenOver()).contains("stopped by hand (effort 100, seed 1)");
    }

    @Test
    void should_refuse_to_tell_a_plan_while_a_search_may_still_change_it() throws Exception {
        send("/better/search", "effort", "100", "seed", "1");
        assertThat(send("/better/tell", "by", "runa")).contains("The search is still under way");
        assertThat(browser.page("/better"))
                .contains("The crew was told no plan yet.")
                .contains("Stop the search, or let it end");
        send("/better/stop");
        assertThat(whenOver()).contains("The crew was told no plan yet.");
    }

    @Test
    void should_compare_with_no_plan_of_other_work_when_something_happens_during_the_search() throws Exception {
        send("/better/search", "effort", "100", "seed", "1");
        String page = browser.page("/better");
        for (int i = 0; !page.contains("when the search began") && i < 600; i++) {
            Thread.sleep(100);
            page = browser.page("/better");
        }
        assertThat(page).contains("No plan can end before").contains("Before, h");
        send("/shop/absence", "by", "runa", "id", "ilse", "from", "2026-03-04", "to", "2026-03-06", "why", "ill");
        assertThat(browser.page("/better"))
                .contains("searching")
                .contains("Something happened since the search began")
                .doesNotContain("No plan can end before")
                .doesNotContain("Before, h");
        send("/better/stop");
        assertThat(whenOver()).doesNotContain("when the search began").doesNotContain("No plan can end before");
    }

    @Test
    void should_refuse_an_effort_without_measure() throws Exception {
        assertThat(send("/better/search", "effort", "0", "seed", "1"))
                .contains("expected a whole number from 1 to 600");
    }
}
