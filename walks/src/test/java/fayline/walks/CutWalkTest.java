package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import fayline.walks.CuttingProxy.Cut;
import fayline.walks.CuttingProxy.How;
import fayline.walks.CuttingProxy.Way;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A browser whose wire is cut in the middle of what it sends or hears: each entry is in the record once, and said to be. */
@Tag("fault")
class CutWalkTest {
    private static final String CUT = "/card/chine-doubler-left/1/cut?project=ousel-1";
    private static final int EVERY = Integer.getInteger("fayline.every", 700);
    private static final int LONGEST = 2000;

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

    private static List<Cut> cuts() {
        List<Cut> cuts = new ArrayList<>();
        for (Way way : Way.values()) {
            for (int after = 0; after < LONGEST; after += EVERY) {
                cuts.add(new Cut(way, How.RESET, after));
            }
            // without TLS a browser takes half the head of an answer for the whole one
            cuts.add(new Cut(way, How.HALF_CLOSE, way == Way.TO_SERVER ? 100 : 0));
            cuts.add(new Cut(way, How.BLACK_HOLE, 300));
        }
        return cuts;
    }

    @Test
    void should_record_each_note_once_when_the_wire_is_cut_in_the_middle_of_sending_it() {
        Page page = shop.phoneOf("Ilse");
        List<Cut> cuts = cuts();
        for (int i = 0; i < cuts.size(); i++) {
            String text = "Cut in the middle, " + i + ".";
            page.navigate(shop.at(CUT));
            shop.wire().cutNextPost(cuts.get(i));
            // to the page after it: that of the program, or the one that the phone has
            Shopfloor.noteAndLeave(page, text);
            // in the record at once where the answer came though the wire was cut; else kept here and sent later
            page.locator("ul.rows li", new Page.LocatorOptions().setHasText(text))
                    .first()
                    .waitFor();
            assertThat(shop.wire().hasCut()).as("%s", cuts.get(i)).isTrue();
        }
        page.navigate(shop.at("/kept"));
        page.waitForFunction("() => document.querySelector('[data-kept-none]').hidden === false");
        page.navigate(shop.at(CUT));
        String card = page.locator("main").innerText();
        for (int i = 0; i < cuts.size(); i++) {
            assertThat(card.split("Cut in the middle, " + i + "\\.", -1))
                    .as("%s", cuts.get(i))
                    .hasSize(2);
        }
    }
}
