package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The demonstration's bulkheads in their sets, and its right canopy half after the left, through pages. */
class SetsSiteTest extends AtTheDemo {
    @Test
    void should_tell_on_card_and_part_which_set_of_how_many_and_why() throws Exception {
        assertThat(browser.page("/card/bulkhead-7-12/1/lay-up-1?project=ousel-1"))
                .contains("Bulkheads, set 2 of 3: B7 to B12");
        assertThat(browser.page("/part/bulkhead-moulds-13-18"))
                .contains("3 to 6 in a set: The warm box holds six.")
                .contains("Planned 6, 6 and 6; 6, 6, 3 and 3 was thought of too.");
    }

    @Test
    void should_tell_what_the_right_half_takes_over_from_the_left() throws Exception {
        assertThat(browser.page("/part/canopy-frame-right"))
                .contains("bond waits for the lessons of Canopy half hung on the hull, left")
                .contains("lay up and bond by one of the people who did it on the first hand.");
    }
}
