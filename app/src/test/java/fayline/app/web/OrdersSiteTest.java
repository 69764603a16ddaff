package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.stock.Order;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;

/** Orders to makers outside through their pages, and costs. */
class OrdersSiteTest extends AtTheDemo {
    private HttpResponse<String> came(String verdict, String revision, String first, String note) throws Exception {
        return browser.send(
                "orders/d-pulleys",
                "orders/d-pulleys",
                "by",
                demo.person(),
                "revision",
                revision,
                "found",
                first,
                "found",
                "40.01 mm",
                "found",
                "62.0 mm",
                "note",
                note,
                "due",
                "",
                "verdict",
                verdict);
    }

    @Test
    void should_measure_what_came_against_its_drawing_and_let_its_checks_begin_when_it_is_accepted() throws Exception {
        assertThat(browser.page("orders"))
                .contains("Reduction pulleys")
                .contains("on order")
                .contains("To order");
        assertThat(browser.page("orders/d-pulleys"))
                .contains("OU-710, revision B")
                .contains("bore of the driving pulley")
                .contains("When it is accepted, this can begin");

        HttpResponse<String> refused = came("accept", "B", "35.08 mm", "");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("note");
        came("return", "B", "35.08 mm", "bored too wide");
        assertThat(browser.page("orders/d-pulleys")).contains("sent back").contains("outside the drawing");

        came("accept", "B", "35.01 mm", "");
        Order order = demo.open().shop().state().stock().order("d-pulleys").orElseThrow();
        assertThat(order.accepted()).isPresent();
        assertThat(demo.view().definition().deliveries().get("d-pulleys").arrived())
                .isPresent();
    }

    @Test
    void should_place_an_order_that_the_plan_then_waits_for_and_refuse_one_of_that_name_again() throws Exception {
        String[] fields = {
            "by",
            demo.person(),
            "order",
            "o-horn",
            "what",
            "rudder horn",
            "quantity",
            "1",
            "due",
            "2026-05-20",
            "needed",
            "water-rudder",
            "price",
            "95",
            "name",
            "hole",
            "drawn",
            "6 mm",
            "within",
            "0.05 mm"
        };
        browser.send("orders", "orders", fields);
        assertThat(demo.open().shop().state().stock().order("o-horn")).isPresent();
        assertThat(demo.view().definition().deliveries().find("o-horn")).isPresent();
        assertThat(browser.send("orders", "orders", fields).body()).contains("a second time");
    }

    @Test
    void should_show_costs_by_assembly_and_part_against_budgets_and_say_what_is_assumed() throws Exception {
        assertThat(browser.page("costs"))
                .contains("At completion")
                .contains("By assembly")
                .contains("Budget")
                .contains("reckoned at 31.20 EUR");
    }
}
