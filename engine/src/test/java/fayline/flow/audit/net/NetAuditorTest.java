package fayline.flow.audit.net;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.Net.Activity;
import fayline.flow.plan.net.Net.Lag;
import fayline.flow.plan.net.NetAnswer;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each breach alone, on three activities that share two units: a (3, one unit), b (2, two units), c (2, one unit). */
class NetAuditorTest {
    private static final Net NET = new Net(
            List.of(
                    new Activity("a", 3, List.of(1)),
                    new Activity("b", 2, List.of(2)),
                    new Activity("c", 2, List.of(1))),
            List.of(new Lag(0, 1, 3), new Lag(2, 0, -1)),
            List.of(2));

    @Test
    void should_find_nothing_when_all_is_kept() {
        assertThat(NetAuditor.breaches(NET, List.of(0, 3, 0))).isEmpty();
        assertThat(NetAuditor.breaches(NET, List.of(0, 3, 1))).isEmpty();
        assertThat(NET.makespan(List.of(0, 3, 1))).isEqualTo(5);
    }

    @Test
    void should_name_the_lag_when_a_start_is_too_early() {
        Net roomy = new Net(NET.activities(), NET.lags(), List.of(9));
        assertThat(NetAuditor.breaches(roomy, List.of(1, 3, 1)))
                .containsExactly("activity b starts 2 after the start of activity a, expected at least 3");
    }

    @Test
    void should_name_the_lag_when_a_start_is_too_late() {
        assertThat(NetAuditor.breaches(NET, List.of(0, 5, 2)))
                .containsExactly("activity a starts -2 after the start of activity c, expected at least -1");
    }

    @Test
    void should_name_the_moment_when_a_resource_is_overdrawn() {
        Net net = new Net(NET.activities(), List.of(), NET.capacities());
        assertThat(NetAuditor.breaches(net, List.of(0, 2, 5)))
                .containsExactly("at 2 resource 1 is used 3 times, there are 2");
    }

    @Test
    void should_say_so_when_a_start_lies_before_the_beginning_or_is_missing() {
        assertThat(NetAuditor.breaches(NET, List.of(-1, 3, 0))).containsExactly("activity a starts at -1, before 0");
        assertThat(NetAuditor.breaches(NET, List.of(0, 3))).containsExactly("found 2 starts for 3 activities");
    }

    @Test
    void should_refuse_a_net_that_names_what_is_not_there() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Net(NET.activities(), List.of(new Lag(0, 3, 1)), List.of(2)))
                .withMessageContaining("to=3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Net(NET.activities(), List.of(), List.of(2, 1)))
                .withMessageContaining("1 demands for 2 resources");
        assertThatIllegalArgumentException().isThrownBy(() -> new Activity("x", -1, List.of()));
    }

    @Test
    void should_be_proven_only_when_bound_and_makespan_meet() {
        assertThat(NetAnswer.of(NET, List.of(0, 3, 0), 5).proven()).isTrue();
        assertThat(NetAnswer.of(NET, List.of(0, 3, 0), 4).proven()).isFalse();
        assertThat(NetAnswer.none(0).proven()).isTrue();
        assertThat(NetAnswer.unknown(4).proven()).isFalse();
    }
}
