package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The forecast and the learned rates of the demonstration through their pages. */
class ForecastSiteTest extends AtTheDemo {
    @Test
    void should_make_trial_plans_behind_the_page_and_then_show_spreads_and_both_causes() throws Exception {
        String page = browser.page("/forecast");
        for (int i = 0; page.contains("trial plans are made.") && i < 600; i++) {
            Thread.sleep(200);
            page = browser.page("/forecast");
        }
        assertThat(page)
                .contains("Half of the trials by")
                .contains("Hull ready to close")
                .contains("What most often holds the end")
                .contains("Rate factor")
                .contains("h a month")
                .contains("Both together")
                .contains("Why steps slipped")
                .contains("fitting and filling went round again")
                .contains("half of the outcomes by")
                .contains("states no latest day: up to 7 days late")
                .doesNotContain("100 %");
    }

    @Test
    void should_show_what_finished_steps_teach_and_put_it_on_the_cards_to_come() throws Exception {
        assertThat(browser.page("/rates"))
                .contains("By kind of work")
                .contains("lay up")
                .contains("By person")
                .contains("finished steps that count");
        assertThat(browser.page("/weeks")).contains("/forecast");
        assertThat(browser.page("/recipes")).contains("/rates");
    }

    @Test
    void should_stand_what_might_be_beside_what_is_without_touching_the_record() throws Exception {
        String head = demo.open().shop().state().head().toString();
        String page = browser.page("/what-if?w=away/bram/2026-03-05/2026-03-20&ask=late&delivery=d-resin&days=14");
        assertThat(page)
                .contains("As it is")
                .contains("Bram away")
                .contains("14 days later")
                .contains("All of these together")
                .contains("All planned work ends")
                .contains("Windows missed")
                .contains(" later");
        assertThat(demo.open().shop().state().head().toString()).isEqualTo(head);
    }

    @Test
    void should_say_what_was_expected_when_a_question_cannot_be_read() throws Exception {
        assertThat(browser.page("/what-if?ask=away&person=nobody&from=2026-03-05&to=2026-03-06"))
                .contains("Found \"nobody\", expected one of the crew.");
        assertThat(browser.page("/what-if?ask=air&air=cosy&from=2026-03-05&days=7"))
                .contains("16 degC or 61 degF");
        assertThat(browser.page("/what-if?ask=late&delivery=d-resin&days=0")).contains("a number from 1 to 60");
        assertThat(browser.page("/what-if?ask=day&day=soon")).contains("a day such as 2026-03-09");
    }

    @Test
    void should_say_why_each_step_is_where_it_is_and_what_holds_the_end() throws Exception {
        String weeks = browser.page("/weeks?weeks=6");
        assertThat(weeks)
                .contains("What holds the end")
                .contains("waits for the delivery")
                .contains("why then")
                .containsAnyOf("without moving anything else", "without moving something else")
                .contains("/calendar/runa.ics");
        assertThat(browser.page("/card/canopy-frame-right/1/cut")).contains("Why then");
    }

    @Test
    void should_give_each_of_the_crew_a_calendar_of_their_own_work() throws Exception {
        String own = browser.page("/calendar/runa.ics");
        assertThat(own).startsWith("BEGIN:VCALENDAR").contains("BEGIN:VEVENT", "Runa");
        assertThat(browser.get("/calendar/nobody.ics").statusCode()).isEqualTo(404);
    }

    @Test
    void should_offer_other_work_and_heating_for_cold_days() throws Exception {
        assertThat(browser.page("/"))
                .contains("Expected too cold or damp for wet work: Fri 6 Mar, Mon 9 Mar.")
                .contains("href=\"/cold\"");
        assertThat(browser.page("/cold"))
                .contains("Fri 6 Mar")
                .contains("Mon 9 Mar")
                .contains("What can be done instead")
                .contains("What heating would buy")
                .contains("carbon monoxide");
    }
}
