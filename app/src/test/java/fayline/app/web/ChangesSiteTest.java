package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.change.Change;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Changes of the design on the demonstration's pages. */
class ChangesSiteTest extends AtTheDemo {
    private static final String CARD = "/card/nacelle-cowl/1/cut";

    private static Change named(String name) {
        return demo.open().shop().state().change().find("ousel-1", name).orElseThrow();
    }

    private static String page(Change c) {
        return "/change/" + c.seq();
    }

    private static String printed(String mark) {
        return URLEncoder.encode(mark, StandardCharsets.UTF_8);
    }

    private HttpResponse<String> start(String by, String despite) throws Exception {
        return browser.send(CARD, CARD + "/start", "by", by, "people", "bram", "despite", despite);
    }

    @Test
    void should_list_the_closed_change_and_the_one_being_followed() throws Exception {
        assertThat(browser.page("/changes"))
                .contains(" open of ", "C-06", "closed", "C-07", "accepted, being followed");
        String open = browser.page(page(named("C-07")));
        assertThat(open)
                .contains("Second person: Tove.", "Structure is touched", "1 made, 0 in work, 2 not begun")
                .contains(
                        "Hull bottom",
                        "Chine doubler, left",
                        "Hull sides to bottom",
                        "Inspection: Hull before the deck")
                .contains("use as is: Stays to OU-110 rev B", "Missing before it can be closed");
        assertThat(browser.page(page(named("C-06"))))
                .contains("Ordered to OU-710 rev B")
                .doesNotContain("0 of 1 settled");
        assertThat(browser.page("/part/hull-bottom")).contains("C-07: Hull chine thicker");
        assertThat(browser.page("/record/entry/" + named("C-07").seq())).contains("raised change C-07");
    }

    @Test
    void should_say_that_an_old_print_is_withdrawn_wherever_it_turns_up() throws Exception {
        String old = "reduction-pulleys | OU-710 rev A | 9f2c44d1a7b3";
        assertThat(browser.page("/print-check?mark=" + printed(old)))
                .contains("withdrawn by change C-06. Do not use it. The drawing is now OU-710 rev B.");
        assertThat(browser.page("/part/reduction-pulleys"))
                .contains("What was printed to OU-710 rev A is withdrawn by change C-06. Do not use it.");
        assertThat(browser.page("/card/reduction-pulleys/1/measure?printed=" + printed(old)))
                .contains("The print in hand", "withdrawn by change C-06");
        String hash = demo.open().shop().readDefinition("ousel-1").hash().substring(0, 12);
        assertThat(browser.page("/print-check?mark=" + printed("reduction-pulleys | OU-710 rev B | " + hash)))
                .contains("it holds");
        assertThat(browser.page("/print-check?mark=" + printed("<b>hull</b>")))
                .contains("That is no mark", "&lt;b>hull&lt;/b>");
    }

    @Test
    void should_hold_a_card_while_a_change_is_open_and_be_closed_only_when_all_is_settled() throws Exception {
        HttpResponse<String> raised = browser.send(
                "/changes",
                "/changes",
                "by",
                "ned",
                "what",
                "A scoop <deep> in the cowl",
                "why",
                "The belt runs hot.",
                "touches",
                "part/nacelle-cowl");
        assertThat(raised.body()).contains("A scoop &lt;deep&gt; in the cowl", "to be decided");
        Change c = named("C-08");
        assertThat(browser.page(CARD)).contains("Held by a change", "Only the lead may let it begin");
        assertThat(start("bram", "").statusCode()).isEqualTo(422);
        assertThat(browser.send(page(c), page(c) + "/decide", "by", "runa", "note", "Needed.")
                        .body())
                .contains("Say whether the change is made or not");
        browser.send(page(c), page(c) + "/decide", "by", "runa", "decision", "accepted", "note", "Needed.");
        assertThat(named("C-08").stage()).isEqualTo(Change.Stage.ACCEPTED);
        HttpResponse<String> early = browser.send(page(c), page(c) + "/close", "by", "runa");
        assertThat(early.statusCode()).isEqualTo(422);
        assertThat(early.body()).contains("C-08 cannot be closed yet", "Weights, not settled: Nacelle cowl");
        assertThat(browser.send(page(c), page(c) + "/line", "by", "runa", "item", "made/nacelle-cowl", "how", "revised")
                        .body())
                .contains("still to drawing OU-720 rev A");
        assertThat(browser.page("/part/nacelle-cowl")).contains("What was printed to OU-720 rev A is withdrawn");
        assertThat(start("runa", "The cloth is cut alike.").body()).contains("Finish");
        assertThat(browser.page("/record")).contains("although a change stood before it: The cloth is cut alike.");

        // begun before its revision was in: what becomes of it must be said
        assertThat(browser.page(page(c))).contains("begun, and nobody has said what becomes of it");
        browser.send(page(c), page(c) + "/open", "by", "runa", "made", "nacelle-cowl");
        assertThat(browser.page(page(c))).contains("its disposition is to be decided");
        for (String path : List.of("/change/1", "/change/x", "/change/99999")) {
            assertThat(browser.get(path).statusCode()).isEqualTo(404);
        }
    }
}
