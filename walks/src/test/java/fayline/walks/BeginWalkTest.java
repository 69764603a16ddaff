package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.MoveWords;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.move.BestMove;
import fayline.method.fitup.move.BestMoveCalculator;
import fayline.method.fitup.move.MinimaxMove;
import fayline.method.fitup.outline.EdgePoint;
import fayline.method.fitup.outline.EvenStations;
import fayline.method.fitup.outline.RoundedPolygon;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A new user with an empty shop and a phone: begins a fit beside the airframe, reads twelve gaps by the keys, sees the move. */
class BeginWalkTest {
    private static final List<String> GAPS =
            List.of("3.4", "3.5", "3.3", "3.4", "3.6", "3.5", "2.6", "2.7", "2.5", "2.6", "2.4", "2.5");
    private static final int TAPS_OF_A_READING = 4;

    private static Shopfloor shop;
    private int taps;

    @BeforeAll
    static void open() throws Exception {
        shop = Shopfloor.empty();
    }

    @AfterAll
    static void close() throws Exception {
        if (shop != null) {
            shop.close();
        }
    }

    private void tap(Locator what) {
        what.click();
        taps++;
    }

    private static MinimaxMove expected() {
        List<EdgePoint> places = EvenStations.along(
                new RoundedPolygon(
                                List.of(
                                        new Spot(-300, -200),
                                        new Spot(300, -200),
                                        new Spot(300, 200),
                                        new Spot(-300, 200)),
                                List.of(0.0, 0.0, 0.0, 0.0))
                        .drawn()
                        .outline()
                        .orElseThrow(),
                GAPS.size());
        List<FitRow> rows = new ArrayList<>();
        for (int i = 0; i < GAPS.size(); i++) {
            EdgePoint p = places.get(i);
            rows.add(FitRow.of(
                    new Station(String.valueOf(i + 1), p.at(), p.nx(), p.ny()),
                    Double.parseDouble(GAPS.get(i)),
                    2.5,
                    3,
                    3.5));
        }
        return BestMoveCalculator.calculate(BestMove.of(rows, MoveLimits.WIDEST))
                .minimax()
                .orElseThrow();
    }

    @Test
    void should_tell_the_move_of_the_engine_when_a_new_user_has_read_twelve_gaps_on_a_phone() {
        Page page = shop.phone();
        page.navigate(shop.at("/fits/new"));
        begin(page);
        int begun = taps;
        for (int i = 0; i < GAPS.size(); i++) {
            assertThat(page.locator("h1").innerText()).isEqualTo("Station " + (i + 1));
            inSight(page.locator(".fit-small svg"), page);
            for (char c : GAPS.get(i).toCharArray()) {
                tap(page.locator("[data-key='" + c + "']"));
            }
            inSight(page.locator(".fit-small svg"), page);
            inSight(page.locator(".thumb button"), page);
            tap(page.locator(".thumb button"));
            page.waitForLoadState();
        }
        assertThat(taps - begun).isEqualTo(TAPS_OF_A_READING * GAPS.size());
        assertThat(begun).isLessThanOrEqualTo(8);
        assertThat(page.locator("[data-move]").innerText())
                .isEqualTo(new MoveWords(Side.LEFT, new Spot(0, 0), "the middle of the stations")
                        .sentence(expected().move())
                        .toString());
        inSight(page.locator("#h-fits"), page);
        assertThat(shop.errors()).isEmpty();
    }

    /** By hand in CurvedFitSiteTest: the hatch lies 0.4 mm forward and 0.5 mm in, its edges leaning by 30 degrees. */
    @Test
    void should_tell_how_far_out_a_bulged_part_must_go_when_its_gaps_and_flushes_are_read_on_a_phone() {
        Page page = shop.phone();
        page.navigate(shop.at("/fits/new"));
        for (List<String> f : List.of(
                List.of("#name", "Bulged hatch"),
                List.of("#gap", "3"),
                List.of("#tolerance", "0.5"),
                List.of("#flush-tolerance", "0.3"))) {
            page.locator(f.get(0)).fill(f.get(1));
        }
        saysWho(page);
        page.locator("label[for='e-none']").click();
        page.locator("label[for='s-typed']").click();
        page.locator("#stations")
                .fill("A1; aft, low; 300 -100; 1 0; ; 30\nA2; aft, high; 300 100; 1 0; ; 30\n"
                        + "U; upper; 0 200; 0 1; ; 30\nF; front; -300 0; -1 0; ; 30\nL; lower; 0 -200; 0 -1; ; 30");
        page.locator(".thumb button").click();
        page.waitForLoadState();
        for (String gap : List.of("3.1", "3.1", "2.75", "2.4", "2.75")) {
            type(page, gap);
        }
        // the gaps of a bulged part read, its flush is asked for, then comes the answer
        assertThat(page.locator("label[for='value']").textContent()).startsWith("Flush");
        for (String flush : List.of("-0.63", "-0.63", "-0.43", "-0.23", "-0.43")) {
            type(page, flush);
        }
        assertThat(page.locator("[data-move]").innerText()).startsWith("0.4 mm aft, 0.5 mm outboard");
        assertThat(page.locator("table").allInnerTexts()).anyMatch(t -> t.contains("A1"));
        assertThat(shop.errors()).isEmpty();
    }

    /** In an empty shop a name is typed, else it is chosen, unless it is known already. */
    private static void saysWho(Page page) {
        Locator by = page.locator("#by");
        if (by.count() > 0 && by.evaluate("e => e.tagName").equals("SELECT")) {
            by.selectOption(by.locator("option").last().getAttribute("value"));
        } else if (by.count() > 0) {
            by.fill("Zoe");
        }
    }

    private static void type(Page page, String value) {
        for (int i = 0; i < value.length(); i++) {
            page.locator("[data-key='" + value.charAt(i) + "']").click();
        }
        page.locator(".thumb button").click();
        page.waitForLoadState();
    }

    @Test
    void should_put_the_text_of_a_chosen_drawing_into_the_form() {
        Page page = shop.desk();
        page.navigate(shop.at("/fits/new"));
        page.locator("label[for='"
                        + page.locator("input[name=edge][value=drawing]").getAttribute("id") + "']")
                .click();
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='200mm' viewBox='0 0 300 200'>"
                + "<path d='M0 0H300V200H0Z'/></svg>";
        page.locator("#drawing-file")
                .setInputFiles(new FilePayload("edge.svg", "image/svg+xml", svg.getBytes(StandardCharsets.UTF_8)));
        page.waitForFunction("() => document.getElementById('drawing').value !== ''");
        assertThat(page.locator("#drawing").inputValue()).isEqualTo(svg);
        page.context().close();
    }

    /** Types what the form needs: a name, the gap, what it may be off, the size of the part. */
    private void begin(Page page) {
        for (List<String> f : List.of(
                List.of("#by", "Zoe"),
                List.of("#name", "Hatch in the hull side"),
                List.of("#gap", "3"),
                List.of("#tolerance", "0.5"),
                List.of("#flush-tolerance", "0.5"),
                List.of("#width", "600"),
                List.of("#height", "400"))) {
            tap(page.locator(f.get(0)));
            page.keyboard().type(f.get(1));
        }
        tap(page.locator(".thumb button"));
        page.waitForLoadState();
    }

    private static void inSight(Locator what, Page page) {
        BoundingBox box = what.boundingBox();
        assertThat(box.y).isGreaterThanOrEqualTo(-1);
        assertThat(box.y + box.height).isLessThanOrEqualTo(page.viewportSize().height + 1);
    }
}
