package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;

/** Lots from a table: every wrong cell named, nothing half taken. */
class TableSiteTest extends AtTheDemo {
    private static final String GOOD = """
            lot,of,part,quantity,received,weighed,price
            T-1,er-slow,resin,20.00 kg,2026-03-03,yes,16.90 per kg
            T-2,er-slow,hardener,6.00 kg,2026-03-03,yes,
            """;

    private HttpResponse<String> look(String csv) throws Exception {
        String html = browser.page("stores/table");
        return browser.postParts(
                "stores/table",
                java.util.List.of(),
                "csrf",
                Browser.hidden(html, "csrf"),
                "once",
                Browser.hidden(html, "once"),
                "by",
                demo.person(),
                "table\"; filename=\"lots.csv",
                csv);
    }

    @Test
    void should_show_what_a_table_holds_take_it_only_when_told_and_once() throws Exception {
        HttpResponse<String> seen = look(GOOD);
        assertThat(seen.body())
                .contains("Read: 2 lots")
                .contains("Nothing is taken yet")
                .contains("20.00 kg, weighed");
        assertThat(demo.open().shop().state().stock().receipt("T-1")).isEmpty();

        browser.sendFrom(seen.body(), "stores/table/take", "by", demo.person(), "rows", GOOD);
        assertThat(demo.open().shop().state().stock().receipt("T-1")).isPresent();
        assertThat(demo.open().shop().state().stock().receipt("T-2")).isPresent();
        assertThat(browser.page("stores/lots.csv"))
                .contains("T-1,er-slow,20.00 kg")
                .contains("left");

        assertThat(look(GOOD).body()).contains("a second time").contains("column A (lot)");
    }

    @Test
    void should_name_every_wrong_cell_by_row_and_column_and_take_nothing() throws Exception {
        String page = look("""
                        lot,of,quantity,received,part
                        X-1,g-200,many,2026-03-03,
                        X-2,nothing,3 m2,yesterday,
                        X-1,er-slow,3 kg,2026-03-03,
                        """).body();
        assertThat(page)
                .contains("table:2: column C (quantity)")
                .contains("table:3: column B (of)")
                .contains("table:3: column D (received)")
                .contains("table:4: column A (lot)")
                .contains("table:4: column E (part)")
                .contains("Nothing was taken");
        assertThat(look("number,of\n1,2\n").body()).contains("column A").contains("no column \"lot\"");
        assertThat(demo.open().shop().state().stock().receipt("X-2")).isEmpty();
    }
}
