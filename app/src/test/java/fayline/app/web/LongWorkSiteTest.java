package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.SaveFile;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A lay-up of 14 person-hours by one person, put into the demonstration. */
class LongWorkSiteTest extends AtTheDemo {
    @BeforeAll
    static void lengthen() throws Exception {
        String recipes =
                demo.open().shop().folder("ousel-1").text("recipes/skins.yaml").orElseThrow();
        Outcome saved = new SaveFile(demo.open().shop())
                .save(Sent.once(demo.person()), "ousel-1", "recipes/skins.yaml", withLongLayUp(recipes));
        assertThat(saved.kind()).isEqualTo(Outcome.Kind.RECORDED);
    }

    private static String withLongLayUp(String recipes) {
        int from = recipes.indexOf("title: Lay up all plies");
        int hands = recipes.indexOf("          - {minutes: 14, per: ply-m2", from);
        int skills = recipes.indexOf("        skills:", hands);
        return recipes.substring(0, hands)
                + "          - {minutes: 840, per: step, origin: assumed}\n        crew: 1-1\n"
                + recipes.substring(skills);
    }

    @Test
    void should_never_plan_it_as_one_block_and_show_the_price_of_each_way_out() throws Exception {
        assertThat(demo.view().plan().unplanned()).isNotEmpty();
        assertThat(browser.page("/weeks"))
                .contains("Not planned")
                .contains("split, helped or on a longer day, compared");
        String asking = browser.page("/what-if");
        assertThat(asking).contains("Too long for one day").contains("by one without a stop");
        Matcher link = Pattern.compile("href=\"(/what-if\\?ways=[^\"]+)\"").matcher(asking);
        assertThat(link.find()).isTrue();
        assertThat(browser.page(link.group(1).replace("&amp;", "&")))
                .contains(" parts, 12 h between")
                .contains("by 2 at once")
                .contains("All who are in stay until")
                .contains("Hands on all that is planned")
                .contains("Hands leave Lay up all plies")
                .contains("All of these together");
    }

    @Test
    void should_say_what_was_expected_when_a_way_out_cannot_be_read() throws Exception {
        assertThat(browser.page("/what-if?w=parts/1/12/0/no:such:1:step")).contains("expected a step of the plan");
        assertThat(browser.page("/what-if?ways=no:such:1:step")).contains("Change the step or the hours");
        assertThat(browser.page("/what-if?ask=long&day=2026-03-05&until=late")).contains("one such as 20:00");
        assertThat(browser.page("/what-if?ask=long&day=2026-03-05&until=20:00")).contains("stay until 20:00, ");
    }
}
