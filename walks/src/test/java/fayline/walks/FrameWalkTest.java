package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Two trials of the right frame's rear arch, typed by the keys of a phone, until it says to bond. */
class FrameWalkTest {
    private static final String REAR = "/fit/pane-right/frame?width=rear";

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

    private static void read(Page page, String width) {
        page.navigate(shop.at(REAR));
        width.chars().forEach(c -> page.locator("[data-key='" + (char) c + "']").click());
        assertThat(page.locator("#value").inputValue()).isEqualTo(width);
        page.locator(".thumb button").click();
        page.waitForLoadState();
    }

    @Test
    void should_say_bond_after_two_trials_typed_by_the_keys_of_a_phone() {
        Page page = shop.as(shop.phone(), "Runa");
        page.navigate(shop.at(REAR));
        assertThat(page.locator("main").innerText()).contains("695.6 mm, as taught");
        read(page, "695.4");
        read(page, "691.8");
        page.navigate(shop.at(REAR));
        assertThat(page.locator("main").innerText())
                .contains("No adhesive yet: one more trial")
                .contains("Width rear, trial 2: bare");
        read(page, "696.1");
        read(page, "692.5");
        page.navigate(shop.at(REAR));
        assertThat(page.locator("main").innerText()).contains("Bond at this bare width");
        assertThat(shop.errors()).isEmpty();
    }
}
