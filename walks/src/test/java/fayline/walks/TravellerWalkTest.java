package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import fayline.flow.record.EntryKind;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/**
 * A whole part is made by a crew member on a phone, through a reload, a lost network and a killed server; an inspector finds a ply with
 * no help; what is wrong holds the part.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class TravellerWalkTest {
    private static final String PART = "chine-doubler-left";
    private static final String CARD = "/card/" + PART + "/1/";
    private static final String LAY_UP = CARD + "lay-up-1";

    private static Shopfloor shop;

    @BeforeAll
    static void open() throws Exception {
        shop = Shopfloor.behindWire();
    }

    @AfterAll
    static void close() throws Exception {
        if (shop != null) {
            shop.close();
        }
    }

    private static void start(Told told, Page page, String step) {
        shop.fresh(page, CARD + step);
        told.deed(page, EntryKind.STEP_STARTED, () -> Shopfloor.start(page));
    }

    private static void finish(Told told, Page page, String step) {
        shop.fresh(page, CARD + step);
        told.deed(page, EntryKind.STEP_FINISHED, () -> Shopfloor.finish(page));
        shop.fresh(page, CARD + step);
        assertThat(page.locator("#finish").count()).isZero();
    }

    /** Draws a lot by what the reader types from its label. */
    private static void draw(Page page, String scanned) {
        page.locator("#lots summary").first().click();
        page.locator("#draw-lot-typed").fill(scanned);
        page.locator("#lots form > button").click();
    }

    private static void leak(Page page, String which, String value) {
        page.locator("#leak-down input[value=" + which + "]").check();
        page.locator("#leak-value").fill(value);
        page.locator("#leak-down form button:not([type=button])").click();
    }

    private static void read(Page page, String kind, String value) {
        page.locator("summary", new Page.LocatorOptions().setHasText("Enter a reading"))
                .click();
        page.locator("#reading-kind").selectOption(kind);
        page.locator("#reading-value").fill(value);
        page.locator("form[action*='/reading'] > button").click();
    }

    private static void photographed(Page page, String form, String text) {
        page.locator("#" + form + " summary").first().click();
        page.locator("#" + form + "-text").fill(text);
        page.locator("#" + form + "-choose").setInputFiles(MannersWalkTest.photo());
        page.locator("#" + form + " form[data-photos][data-ready='1']").waitFor();
        page.locator("#" + form + " form > button").click();
    }

    private static void tick(Page page) {
        page.locator("[data-plies-form] > button").click();
    }

    private static void cup(Page page, String resin, String hardener) {
        page.locator("[data-cup-resin]").fill(resin);
        page.locator("[data-cup-hardener]").fill(hardener);
        Shopfloor.waitFor(page, "[data-cup-says]", "in tolerance");
        page.locator("[data-cup] > button").click();
    }

    /** The lay-up: its second ply and first cup without network, its third ply unheard, its second cup before the shop is killed. */
    private static void layUp(Told told, Page page) throws Exception {
        start(told, page, "lay-up-1");
        told.deed(page, EntryKind.PLY_LAID, () -> tick(page));
        // a half typed cup survives a reload, and what is off is said while it is typed
        page.locator("[data-cup-resin]").fill("239.0 g");
        page.locator("[data-cup-hardener]").fill("60 g");
        page.reload();
        assertThat(page.locator("[data-cup-resin]").inputValue()).isEqualTo("239.0 g");
        Shopfloor.waitFor(page, "[data-cup-says]", "add 11.7 g of hardener");
        Shopfloor.held(page);
        shop.wire().lose();
        told.kept(page, EntryKind.PLY_LAID, () -> tick(page));
        told.kept(page, EntryKind.MIX_MADE, () -> cup(page, "239.0 g", "71.8 g"));
        shop.wire().restore();
        told.arrive(page);
        shop.fresh(page, LAY_UP);
        assertThat(page.locator("[data-ply='2']").innerText()).contains("laid");
        // the shop takes it and the answer is lost: browser or phone send it again, and it is there once
        shop.wire().cutNextPost(new CuttingProxy.Cut(CuttingProxy.Way.TO_PHONE, CuttingProxy.How.RESET, 0));
        told.deed(page, EntryKind.PLY_LAID, () -> tick(page));
        assertThat(shop.wire().hasCut()).isTrue();
        assertThat(page.locator("[data-ply='3']").innerText()).contains("laid");
        told.deed(page, EntryKind.MIX_MADE, () -> cup(page, "238.5 g", "71.5 g"));
        Shopfloor.held(page);
        shop.kill();
        // what the phone keeps of the card is what it saw last, by whatever address it is asked for
        page.navigate(shop.at(LAY_UP));
        Shopfloor.waitFor(page, "[data-kept-line]", "No network");
        assertThat(page.locator("#cups").innerText()).contains("Cups mixed: 2");
        shop.start();
        shop.fresh(page, LAY_UP);
        assertThat(page.locator("#cups").innerText())
                .contains("Cups mixed: 2")
                .contains("239.0 g and 71.8 g")
                .contains("238.5 g and 71.5 g");
        finish(told, page, "lay-up-1");
    }

    /** The lead decides at the desk about what a crew member said is wrong. */
    private static void decide(Told told, Page page) {
        shop.as(page, "Runa");
        page.navigate(shop.at("/deviations"));
        page.locator("section", new Page.LocatorOptions().setHasText("bridge at the aft end"))
                .locator("h2 a")
                .click();
        page.locator("#decides").selectOption("runa");
        page.locator("input[name=disposition][value=use-as-is]").check();
        page.locator("#note").fill("Trimmed away with the flange.");
        told.deed(
                page,
                EntryKind.DEVIATION_SETTLED,
                () -> page.locator("button.main").click());
    }

    /** The server dies at whatever moment of a form's way. */
    private static void killedMeanwhile(Told told, Page page, EntryKind kind, Runnable send) throws Exception {
        Thread killer = new Thread(() -> {
            try {
                shop.kill();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        killer.start();
        told.sent(page, kind, send);
        killer.join();
        shop.start();
        told.arrive(page);
    }

    @Test
    @Order(1)
    void should_lose_nothing_and_double_nothing_when_a_part_is_made_from_cutting_to_its_signature() throws Exception {
        Page page = shop.phoneOf("Ilse");
        Page desk = shop.desk();
        desk.setDefaultTimeout(90_000);
        Told told = new Told(shop, page);
        start(told, page, "cut");
        told.deed(page, EntryKind.LOT_DRAWN, () -> draw(page, shop.at("/stores/lot?lot=L-2612")));
        told.deed(page, EntryKind.LOT_DRAWN, () -> draw(page, "L-2613"));
        finish(told, page, "cut");
        start(told, page, "prepare");
        told.deed(page, EntryKind.STEP_NOTED, () -> photographed(page, "note", "Water film held a minute."));
        told.deed(page, EntryKind.READING_TAKEN, () -> read(page, "vacuum", "25.5 inHg"));
        finish(told, page, "prepare");
        layUp(told, page);
        start(told, page, "bag-1");
        killedMeanwhile(told, page, EntryKind.READING_TAKEN, () -> leak(page, "start", "25.5 inHg"));
        shop.fresh(page, CARD + "bag-1");
        told.deed(page, EntryKind.READING_TAKEN, () -> leak(page, "later", "24.5 inHg"));
        told.deed(
                page,
                EntryKind.DEVIATION_RAISED,
                () -> photographed(page, "wrong", "The bag has a bridge at the aft end."));
        finish(told, page, "bag-1");
        shop.fresh(page, CARD + "inspect");
        assertThat(page.locator("main").innerText()).contains("Held").contains("bridge at the aft end");
        decide(told, desk);
        start(told, page, "inspect");
        shop.fresh(page, CARD + "inspect");
        told.deed(
                page,
                EntryKind.STEP_NOTED,
                () -> photographed(page, "note", "Tap map: no dull place. 1.4 mm at A, B, C."));
        told.deed(page, EntryKind.READING_TAKEN, () -> read(page, "mass", "1.12 kg"));
        shop.fresh(page, CARD + "inspect");
        page.locator("#signed").selectOption("tove");
        told.deed(page, EntryKind.STEP_FINISHED, () -> Shopfloor.finish(page));
        shop.fresh(page, CARD + "inspect");
        assertThat(page.locator("main").innerText()).contains("signed by Tove");
        assertThat(shop.errors()).allMatch(e -> e.contains("net::ERR_"));
        once(desk);
        shop.kill();
        assertThat(Shopfloor.command("verify-record", shop.data().toString())).startsWith("0\n");
        told.isTheRecord(shop.data());
        shop.start();
    }

    /** On its traveller each ply, cup and word stands once. */
    private static void once(Page desk) {
        desk.navigate(shop.at("/traveller/" + PART));
        String all = desk.locator("main").innerText();
        for (String one : List.of(
                "Ply 1,",
                "Ply 2,",
                "Ply 3,",
                "239.0 g and 71.8 g",
                "238.5 g and 71.5 g",
                "Water film held a minute",
                "Tap map: no dull place")) {
            assertThat(all.split(one, -1)).as(one).hasSize(2);
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
