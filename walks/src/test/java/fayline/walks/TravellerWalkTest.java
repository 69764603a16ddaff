package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** An inspector finds a ply with no help; what is wrong holds the part. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class TravellerWalkTest {
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

    @Test
    @Order(2)
    void should_give_an_inspector_lot_air_people_and_signature_of_a_named_ply() {
        Page page = shop.desk();
        page.navigate(shop.at("/part/spar-left"));
        page.locator("a", new Page.LocatorOptions().setHasText("Traveller")).click();
        page.locator("#find").fill("ply 3");
        page.locator("#find").press("Enter");
        String found = page.locator("main").innerText();
        assertThat(page.locator("li strong").count()).isEqualTo(1);
        assertThat(found)
                .contains("Ply 3, Spar, Carbon tape 300")
                .contains("L-2616")
                .contains("humidity 62 %")
                .contains("Bram, Ilse, Tove, Ned")
                .contains("Tove, Thu 8 Jan");
    }

    @Test
    @Order(3)
    void should_hold_the_part_while_something_wrong_with_it_is_undecided() {
        Page page = shop.phone();
        shop.as(page, "Ilse");
        page.navigate(shop.at("/card/chine-doubler-right/1/cut"));
        page.locator("#wrong summary").click();
        page.locator("#wrong-text").fill("Cut to the left hand's template.");
        page.locator("#wrong form button:not([type=button])").click();
        assertThat(page.locator("main").innerText()).contains("Recorded as entry");
        assertThat(page.locator("#troubles").innerText()).contains("Cut to the left hand's template");
        page.navigate(shop.at("/card/chine-doubler-right/1/lay-up-1"));
        assertThat(page.locator("main").innerText()).contains("Held").contains("Cut to the left hand's template");
    }
}
