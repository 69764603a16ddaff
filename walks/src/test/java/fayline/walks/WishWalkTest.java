package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The lead rules somebody out of a step, sees the plan change and what it costs, withdraws it and sees the plan back. */
class WishWalkTest {
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

    private static Page as(Page page, String person) {
        page.navigate(shop.at("/who"));
        page.locator("button[name=person][value=" + person + "]").click();
        return page;
    }

    private static String planned(Page page) {
        return page.locator("#planned").innerText();
    }

    /** From Weeks to the page of the first step that somebody is planned for. */
    private static void decide(Page page) {
        page.navigate(shop.at("/weeks"));
        page.locator("details:has(a[href^='/wish/']) > summary").first().click();
        page.locator("a[href^='/wish/']").first().click();
        page.waitForLoadState();
    }

    private static void press(Page page, Locator button) {
        button.click();
        page.waitForLoadState();
    }

    private static void walk(Page page) {
        List<String> errors = shop.errors();
        decide(page);
        String before = planned(page);
        Locator out = page.locator("button[value^='without ']").first();
        String name = out.innerText().replace("Not ", "");
        assertThat(before).contains(name);
        page.locator("#why").fill("Needed elsewhere");
        press(page, out);
        assertThat(planned(page)).doesNotContain(name);
        page.waitForFunction("() => document.querySelector('#wish-list [data-cost]') !== null");
        assertThat(page.locator("#wish-list").innerText())
                .contains("Wanted: it done without " + name, "Needed elsewhere", "Runa", "Without it ");
        page.navigate(shop.at("/weeks"));
        assertThat(page.locator("main").innerText()).contains("wanted: it done without " + name, "Wishes (1)");
        page.navigate(shop.at("/wishes"));
        page.waitForFunction("() => document.querySelector('#wish-list [data-cost]') !== null");
        page.locator("#wish-list a[href^='/wish/']").first().click();
        page.waitForLoadState();
        press(page, page.locator("form[action='/wishes/withdraw'] button"));
        assertThat(page.locator("main").innerText()).contains("Withdrawn.");
        assertThat(planned(page)).isEqualTo(before);
        assertThat(shop.errors()).isEqualTo(errors);
    }

    @Test
    void should_change_the_plan_by_one_click_show_its_cost_and_change_it_back_when_withdrawn() {
        walk(as(shop.desk(), "runa"));
    }

    @Test
    void should_do_the_same_on_a_phone_and_pass_the_checker_on_either() {
        Page phone = as(shop.phone(), "runa");
        walk(phone);
        decide(phone);
        press(phone, phone.locator("button[value='half-day']"));
        ReachWalkTest.check(phone);
        phone.navigate(shop.at("/wishes"));
        phone.waitForFunction("() => document.querySelector('#wish-list [data-cost]') !== null");
        ReachWalkTest.check(phone);
        Page desk = as(shop.desk(), "runa");
        desk.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        decide(desk);
        ReachWalkTest.check(desk);
        press(desk, desk.locator("form[action='/wishes/withdraw'] button"));
        assertThat(desk.locator("main").innerText()).contains("Withdrawn.");
    }
}
