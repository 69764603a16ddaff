package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The laminates of the demonstration, asked from their parts. */
class LaminateSiteTest extends AtTheDemo {
    @Test
    void should_be_reached_from_the_part_and_answer_first() throws Exception {
        assertThat(browser.page("/part/hull-bottom"))
                .contains("Will it hold: Hull bottom skin", "/laminate/hull-bottom", "Within the entered allowables");
        String page = browser.page("/laminate/hull-bottom");
        assertThat(page)
                .contains(
                        "Within the entered allowables",
                        "margin",
                        "invented: load sheet L-02",
                        "Ply stack of Hull bottom")
                .contains("Not checked: flutter, fatigue, impact, lightning, damage tolerance")
                .contains("licensed engineers")
                .contains("href=\"/part/hull-bottom\"");
        assertThat(page.indexOf("Within the entered")).isLessThan(page.indexOf("Modulus along"));
    }

    @Test
    void should_say_no_where_a_load_is_not_borne_and_nothing_where_figures_are_assumed() throws Exception {
        assertThat(browser.page("/laminate/hull-chine")).contains("Not within the entered allowables", "Chine in chop");
        assertThat(browser.page("/laminate/spar"))
                .contains("Cannot be said", "Carbon tape 300", "are assumed", "What would settle it first");
        assertThat(browser.page("/laminate/wing-skin"))
                .contains("Cannot be said", "what it bears is not entered")
                .doesNotContain("Stress of each ply");
        assertThat(browser.page("/airframe")).contains("Laminates", "/laminate/hull-chine", "Not within");
    }

    @Test
    void should_tell_what_another_ply_would_change_and_touch_nothing() throws Exception {
        assertThat(browser.page("/laminate/hull-chine?ply=1&of=c-300&angle=45+deg"))
                .contains("Then", "Mass with resin", "Smallest margin", "Cloth, tape and core");
        assertThat(browser.page("/laminate/hull-chine")).doesNotContain("Smallest margin");
        assertThat(browser.get("/laminate/hull-chine?ply=99&of=c-300&angle=45+deg")
                        .statusCode())
                .isEqualTo(422);
        assertThat(browser.get("/laminate/hull-chine?ply=1&of=c-300&angle=45+m").body())
                .contains("Direction:");
        assertThat(browser.get("/laminate/nothing").statusCode()).isEqualTo(404);
    }
}
