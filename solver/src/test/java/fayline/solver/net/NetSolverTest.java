package fayline.solver.net;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.net.NetAuditor;
import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.Net.Activity;
import fayline.flow.plan.net.Net.Lag;
import fayline.flow.plan.net.NetAnswer;
import fayline.solver.CpSatLibrary;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Schedules of small nets, known by hand or by properties; each judged by the auditor, which knows nothing of the search. */
class NetSolverTest {
    private static final NetLimits SHORT = NetLimits.ofEffort(0.5);

    @TempDir
    static Path folder;

    private static NetSolver solver;

    @BeforeAll
    static void load() {
        CpSatLibrary library = new CpSatLibrary(folder);
        library.load();
        solver = new NetSolver(library);
    }

    private static LongStream seeds() {
        return LongStream.rangeClosed(1, 12);
    }

    private static NetAnswer solved(Net net) {
        return solved(net, SHORT);
    }

    private static NetAnswer solved(Net net, NetLimits limits) {
        NetAnswer answer = solver.solve(net, limits);
        answer.starts().ifPresent(s -> {
            assertThat(NetAuditor.breaches(net, s)).isEmpty();
            assertThat(answer.makespan()).hasValue(net.makespan(s));
            assertThat(answer.bound()).isLessThanOrEqualTo(net.makespan(s));
        });
        return answer;
    }

    private static void assertOptimum(Net net, int makespan) {
        NetAnswer answer = solved(net);
        assertThat(answer.proven()).isTrue();
        assertThat(answer.makespan()).hasValue(makespan);
    }

    /** Three moulds of 4, 3 and 3 hours, then trimming of 2 hours each on the one bench: 3 + 2 + 2 + 2 = 9. */
    @Test
    void should_find_what_can_be_seen_by_hand() {
        Net net = new Net(
                List.of(
                        new Activity("lay a", 4, List.of(0)),
                        new Activity("lay b", 3, List.of(0)),
                        new Activity("lay c", 3, List.of(0)),
                        new Activity("trim a", 2, List.of(1)),
                        new Activity("trim b", 2, List.of(1)),
                        new Activity("trim c", 2, List.of(1))),
                List.of(new Lag(0, 3, 4), new Lag(1, 4, 3), new Lag(2, 5, 3)),
                List.of(1));
        assertOptimum(net, 9);
    }

    @Test
    void should_pair_what_fits_in_twos() {
        assertOptimum(InventedNets.twoAtATime(7, 3), 12);
    }

    /** b within 1 after the start of a, both on the one bench for 2: no schedule; within 2: b right behind a. */
    @Test
    void should_tell_infeasible_from_tight_when_there_are_maximum_lags() {
        List<Activity> two = List.of(new Activity("a", 2, List.of(1)), new Activity("b", 2, List.of(1)));
        NetAnswer none = solved(new Net(two, List.of(new Lag(0, 1, 0), new Lag(1, 0, -1)), List.of(1)));
        assertThat(none.infeasible()).isTrue();
        assertThat(none.proven()).isTrue();
        assertOptimum(new Net(two, List.of(new Lag(0, 1, 0), new Lag(1, 0, -2)), List.of(1)), 4);
    }

    /** Three of 2 hours two at a time, all to start within 1 of each other: nothing but search can tell. */
    @Test
    void should_prove_infeasible_when_only_resources_and_lags_together_rule_it_out() {
        List<Lag> near = List.of(
                new Lag(0, 1, -1),
                new Lag(1, 0, -1),
                new Lag(0, 2, -1),
                new Lag(2, 0, -1),
                new Lag(1, 2, -1),
                new Lag(2, 1, -1));
        Activity one = new Activity("x", 2, List.of(1));
        assertThat(solved(new Net(List.of(one, one, one), near, List.of(2))).infeasible())
                .isTrue();
        assertOptimum(new Net(List.of(one, one, one), near, List.of(3)), 2);
    }

    @Test
    void should_say_infeasible_when_a_demand_exceeds_what_there_is_or_lags_go_round() {
        Activity large = new Activity("x", 1, List.of(3));
        assertThat(solved(new Net(List.of(large), List.of(), List.of(2))).infeasible())
                .isTrue();
        Activity a = new Activity("a", 1, List.of());
        assertThat(solved(new Net(List.of(a, a), List.of(new Lag(0, 1, 1), new Lag(1, 0, 0)), List.of()))
                        .infeasible())
                .isTrue();
    }

    @Test
    void should_be_done_at_once_when_there_is_nothing_to_do() {
        assertOptimum(new Net(List.of(), List.of(), List.of(1)), 0);
        assertOptimum(new Net(List.of(new Activity("x", 0, List.of(9))), List.of(), List.of(1)), 0);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_not_be_shorter_when_a_resource_is_added(long seed) {
        Net net = InventedNets.plain(18, seed);
        NetAnswer without = solved(net);
        NetAnswer with = solved(InventedNets.withOneMoreResource(net));
        assertThat(with.makespan().orElseThrow()).isGreaterThanOrEqualTo(without.bound());
        if (with.proven()) {
            assertThat(with.bound()).isGreaterThanOrEqualTo(without.bound());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_not_be_longer_when_there_is_more_of_each_resource(long seed) {
        Net net = InventedNets.plain(18, seed);
        NetAnswer little = solved(net);
        NetAnswer more = solved(InventedNets.withMoreOfEach(net));
        assertThat(little.proven()).isTrue();
        assertThat(more.proven()).isTrue();
        assertThat(more.bound()).isLessThanOrEqualTo(little.bound());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_scale_when_durations_and_lags_are_scaled(long seed) {
        for (Net net : List.of(InventedNets.plain(15, seed), InventedNets.lagged(12, seed))) {
            NetAnswer answer = solved(net);
            NetAnswer scaled = solved(InventedNets.scaled(net, 7));
            assertThat(answer.proven()).isTrue();
            assertThat(scaled.proven()).isTrue();
            assertThat(scaled.infeasible()).isEqualTo(answer.infeasible());
            answer.makespan().ifPresent(m -> assertThat(scaled.makespan()).hasValue(7 * m));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_agree_with_trying_every_order_when_the_net_is_tiny(long seed) {
        Net net = InventedNets.plain(7, seed);
        assertOptimum(net, EveryOrder.shortest(net));
    }

    @Test
    void should_answer_alike_when_net_seed_and_effort_are_alike() {
        for (Net net : List.of(InventedNets.plain(60, 3), InventedNets.lagged(40, 5))) {
            NetLimits little = NetLimits.ofEffort(0.1);
            assertThat(solved(net, little)).isEqualTo(solved(net, little));
        }
    }

    @Test
    void should_find_the_same_optimum_when_two_searches_run_side_by_side() {
        for (long seed = 1; seed <= 3; seed++) {
            for (Net net : List.of(InventedNets.plain(30, seed), InventedNets.lagged(20, seed))) {
                NetAnswer alone = solved(net, NetLimits.ofEffort(5));
                NetAnswer both = solved(net, NetLimits.ofCpu(20));
                assertThat(both.proven()).isTrue();
                assertThat(both.infeasible()).isEqualTo(alone.infeasible());
                assertThat(both.makespan()).isEqualTo(alone.makespan());
            }
        }
    }
}
