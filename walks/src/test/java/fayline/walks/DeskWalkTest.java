package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The lead at the desk: an absence and a cold reading change what depends on them; a planned heat is asked about. */
class DeskWalkTest {
    private static Shopfloor shop;

    @BeforeAll
    static void open() throws Exception {
        shop = Shopfloor.open();
    }

    @AfterAll
    static void close() throws Exception {
        if (shop != null) {
            shop.close();
        }
    }

    private static Page runa() {
        Page page = shop.desk();
        page.navigate(shop.at("/who"));
        page.locator("button[name=person][value=runa]").click();
        return page;
    }

    private static Locator crew(Page page, String id) {
        page.navigate(shop.at("/shop"));
        Locator person =
                page.locator("#people details").filter(new Locator.FilterOptions().setHas(page.locator("#from-" + id)));
        person.locator("summary").click();
        return person;
    }

    @Test
    void should_move_the_plan_when_somebody_is_away_and_say_what_moved() {
        Page page = runa();
        page.navigate(shop.at("/weeks"));
        String before = page.locator("main").innerText();
        Locator person = crew(page, "ilse");
        person.locator("#from-ilse").fill("2026-03-03");
        person.locator("#to-ilse").fill("2026-03-06");
        person.locator("#why-ilse").fill("course");
        person.locator("form[action='/shop/absence'] button").click();
        assertThat(page.locator("#people").innerText()).contains("course");
        assertThat(page.locator("main").innerText()).contains("What moved in the plan since this morning");
        page.navigate(shop.at("/weeks"));
        assertThat(page.locator("main").innerText()).isNotEqualTo(before);
        page.navigate(shop.at("/definition/file?path=people.yaml"));
        assertThat(page.locator("#text").inputValue())
                .contains("from: 2026-03-03", "# Two who may come on Saturdays. The plan does not count on them.");
    }

    @Test
    void should_refuse_with_place_and_reason_when_an_absence_ends_before_it_begins() {
        Page page = runa();
        Locator person = crew(page, "ned");
        person.locator("#from-ned").fill("2026-03-12");
        person.locator("#to-ned").fill("2026-03-10");
        person.locator("form[action='/shop/absence'] button").click();
        assertThat(page.locator("[role=alert]").innerText()).contains("people.yaml", "2026-03-10", "expected");
        page.navigate(shop.at("/definition/file?path=people.yaml"));
        assertThat(page.locator("#text").inputValue()).doesNotContain("2026-03-12");
    }

    @Test
    void should_put_off_the_demould_when_a_colder_reading_is_entered() {
        Page page = runa();
        String clocks = "section[aria-labelledby=h-clocks]";
        page.navigate(shop.at("/"));
        String before = page.locator(clocks).innerText();
        page.navigate(shop.at("/shop"));
        page.locator("#air-air").fill("9 degC");
        page.locator("#air-humidity").fill("70 %");
        page.locator("#air-surface").fill("8 degC");
        page.locator("form[action='/shop/air'] button.main").click();
        page.navigate(shop.at("/"));
        assertThat(page.locator(clocks).innerText()).isNotEqualTo(before);
        assertThat(page.locator("section[aria-labelledby=h-air]").innerText()).contains("Not fit to begin", "9.0 degC");
    }

    @Test
    void should_say_what_each_week_draws_from_the_stores() {
        Page page = runa();
        page.navigate(shop.at("/stores"));
        Locator week = page.locator("details")
                .filter(new Locator.FilterOptions().setHasText("Week of"))
                .first();
        week.locator("summary").click();
        assertThat(week.innerText()).contains("of hands", "EUR of material", "Laminating resin, slow hardener", "kg");
    }

    @Test
    void should_list_what_to_support_when_a_planned_heat_is_too_hot() {
        Page page = runa();
        page.navigate(shop.at("/part/float-shell-left"));
        page.getByText("May it be heated?").click();
        page.locator("input[name=strut]").check();
        page.locator("button.main").click();
        // The part has seen the shop's air only: at most 20.1 degC, plus 15 K of the definition.
        assertThat(page.locator("main").innerText())
                .contains("Too hot as it is", "Support and unload first", "Take off the strut", "35.1 degC");
    }
}
