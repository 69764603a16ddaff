package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import fayline.flow.record.EntryKind;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Beside a part and before a shelf there is no network: a visit, a finding, its mending, a lot and a count are kept and arrive once. */
class KeptFormsWalkTest {
    private static final String INSPECTIONS = "/inspections";
    private static final String RECEIVE = "/stores/receive";
    private static final String COUNT = "/stores/count";

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

    private static void visit(Page page) {
        page.locator("#who").fill("A surveyor");
        page.locator("#text").fill("Looked at the bare hull.");
        page.locator("form[action='/inspections/visit'] > button").click();
    }

    private static void photo(Page page, Locator form) {
        form.locator("input[type=file][multiple]").setInputFiles(MannersWalkTest.photo());
        form.and(page.locator("[data-ready='1']")).waitFor();
    }

    private static Locator opened(Page page, String action) {
        Locator form =
                page.locator("form[action='/inspections/" + action + "']").last();
        form.locator("xpath=../summary").click();
        return form;
    }

    private static void find(Page page, String text) {
        Locator form = opened(page, "finding");
        form.locator("select[name=about]").selectOption("hull-deck");
        form.locator("textarea").fill(text);
        photo(page, form);
        form.locator("xpath=./button").click();
    }

    private static void mend(Page page) {
        Locator form = opened(page, "put-right");
        form.locator("textarea").fill("Sanded out and sealed.");
        photo(page, form);
        form.locator("xpath=./button").click();
    }

    private static void receive(Page page) {
        page.locator("#receive-lot").fill("W-77");
        page.locator("#receive-stuff").selectOption("g-280");
        page.locator("#receive-quantity").fill("25 m2");
        page.locator("main form > button").click();
    }

    private static void count(Page page) {
        page.locator("[aria-label='Left of lot L-2612']").fill("101.5 m2");
        page.locator("main form > button").click();
    }

    private static void hold(Page page, String path) {
        shop.fresh(page, path);
        Shopfloor.held(page);
    }

    @Test
    void should_keep_what_is_told_at_a_part_or_a_shelf_and_send_each_once() throws Exception {
        Page page = shop.phoneOf("Runa");
        Told told = new Told(shop, page);
        shop.fresh(page, INSPECTIONS);
        told.deed(page, EntryKind.FINDING_RAISED, () -> find(page, "Dull place by the hatch."));
        for (String path : new String[] {RECEIVE, COUNT, INSPECTIONS}) {
            hold(page, path);
        }
        shop.wire().lose();
        told.kept(page, EntryKind.FINDING_CORRECTED, () -> mend(page));
        Shopfloor.waitFor(page, "[data-kept-line]", "No network");
        assertThat(page.locator("[data-kept-here]").innerText()).contains("put right: Sanded out", "with a photo");
        told.kept(page, EntryKind.FINDING_RAISED, () -> find(page, "Scratch under the seat."));
        told.kept(page, EntryKind.VISIT_HELD, () -> visit(page));
        assertThat(page.locator("#who").inputValue()).as("the form begins anew").isEmpty();
        page.navigate(shop.at(RECEIVE));
        told.kept(page, EntryKind.LOT_RECEIVED, () -> receive(page));
        assertThat(page.locator("[data-kept-here]").innerText()).contains("Lot W-77 received: 25 m2");
        page.navigate(shop.at(COUNT));
        told.kept(page, EntryKind.STOCK_TAKEN, () -> count(page));
        assertThat(page.locator("[data-kept-here]").innerText()).contains("Stock-take: L-2612 101.5 m2");
        // the server dies as well before the network is back
        shop.kill();
        shop.start();
        shop.wire().restore();
        told.arrive(page);
        shop.fresh(page, INSPECTIONS);
        String all = page.locator("#visits").innerText();
        for (String one :
                new String[] {"Dull place by the hatch", "Sanded out and sealed", "Scratch under", "A surveyor"}) {
            assertThat(all.split(one, -1)).as(one).hasSize(2);
        }
        page.navigate(shop.at("/stores/lot?lot=W-77"));
        assertThat(page.locator("main").innerText()).contains("25 m2");
        assertThat(shop.errors()).allMatch(e -> e.contains("net::ERR_"));
        shop.kill();
        assertThat(Shopfloor.command("verify-record", shop.data().toString())).startsWith("0\n");
        told.isTheRecord(shop.data());
        shop.start();
    }
}
