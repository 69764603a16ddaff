package fayline.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import org.junit.jupiter.api.Test;

/** Shares of many times. */
class TimesTest {
    @Test
    void should_tell_the_time_within_which_a_share_was_done() {
        Times times = new Times();
        for (int i = 200; i >= 1; i--) {
            times.add(i);
        }
        assertThat(times.within(0.5)).isEqualTo(100);
        assertThat(times.within(0.99)).isEqualTo(198);
        assertThat(times.within(1)).isEqualTo(200);
        assertThat(times.within(0)).isEqualTo(1);
        ObjectNode n = Json.object();
        times.into(n, "reads");
        assertThat(n.toString()).isEqualTo("{\"reads\":200,\"readsP50Ms\":100,\"readsP99Ms\":198,\"readsMostMs\":200}");
    }

    @Test
    void should_tell_no_time_where_there_was_none() {
        ObjectNode n = Json.object();
        new Times().into(n, "writes");
        assertThat(n.toString()).isEqualTo("{\"writes\":0}");
        assertThat(new Times().within(0.5)).isNaN();
    }
}
