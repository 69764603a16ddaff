package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The chains of the demonstration through their page. */
class ChainSiteTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-03T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    static Path folder;

    private static OpenShop open;
    private static WebServer server;
    private Browser browser;

    @BeforeAll
    static void start() throws Exception {
        open = OpenShop.openWith(folder.resolve("data"), Path.of("../demo/ousel"), CLOCK, Optional.empty());
        server = WebServer.start(
                0,
                new Site(open.shop(), new LookAtShop(open.shop()), new LeastFinish(folder.resolve("library")), "test"));
    }

    @AfterAll
    static void stop() {
        server.close();
        open.close();
    }

    @BeforeEach
    void visit() {
        browser = new Browser(server);
    }

    @Test
    void should_show_three_bonds_which_spends_most_and_the_chance_when_nothing_is_read() throws Exception {
        assertThat(browser.page("/chain/canopy-chain-right"))
                .contains("Pane into frame")
                .contains("Frame onto hinge arms")
                .contains("Hinge arms into opening")
                .containsOnlyOnce("spends most<")
                .contains("that every gap ends inside, if set to the wanted gaps")
                .contains("No gap is read there yet")
                .doesNotContain("What is left after the cure");
    }

    @Test
    void should_compare_remedies_over_the_readings_when_every_link_is_bonded() throws Exception {
        assertThat(browser.page("/chain/canopy-chain-left"))
                .contains("What is left after the cure")
                .contains("Loosen the hinge arms and set them anew")
                .contains("90.0 h")
                .doesNotContain("Where to put the correction");
    }

    @Test
    void should_lead_from_the_fit_to_its_chain_and_refuse_one_that_is_none() throws Exception {
        assertThat(browser.page("/fit/canopy-left")).contains("/chain/canopy-chain-left");
        assertThat(browser.get("/chain/no-such").statusCode()).isEqualTo(404);
    }
}
