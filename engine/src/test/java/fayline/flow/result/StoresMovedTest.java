package fayline.flow.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.units.TimeSpan;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Hand;
import fayline.flow.record.RecordState;
import fayline.flow.record.made.Draw;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.MadeState;
import fayline.flow.record.made.Mix;
import fayline.flow.record.made.StepMade;
import fayline.flow.record.stock.LotMove;
import fayline.flow.record.stock.Receipt;
import fayline.flow.record.stock.StockState;
import fayline.flow.record.stock.StockTake;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import fayline.flow.result.stock.LotStanding;
import fayline.flow.result.stock.OutOfCold;
import fayline.flow.result.stock.StoresResult;
import fayline.flow.result.stock.take.LotAudit;
import fayline.flow.result.stock.take.StockTakeAudit;
import fayline.flow.result.trace.LotTrace;
import fayline.flow.result.trace.TracedUse;
import fayline.method.mix.audit.RatioAuditResult.Verdict;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Lots moved by what the bench tells, stock-takes, traces. */
class StoresMovedTest {
    private static final Instant NOW = SmallShop.MONDAY.plus(Duration.ofDays(30));
    private static final Instant EARLY = SmallShop.MONDAY.plus(Duration.ofDays(1));
    private final List<Mix> mixes = new ArrayList<>();
    private final List<Draw> draws = new ArrayList<>();
    private final List<Laid> plies = new ArrayList<>();
    private final List<Receipt> receipts = new ArrayList<>();
    private final List<LotMove> moves = new ArrayList<>();
    private final List<StockTake> takes = new ArrayList<>();
    private long seq = 100;

    private static String step(Definition d, String within) {
        return d.facts().id() + "/" + within;
    }

    private void mix(String step, Instant at, String batch, String resin, String hardener) {
        mixes.add(new Mix(
                seq++,
                step,
                at,
                "ada",
                Optional.empty(),
                batch,
                "er",
                "R-1",
                "H-1",
                resin,
                hardener,
                !resin.isEmpty(),
                ""));
    }

    private void count(Instant at, String... lotAndLeft) {
        List<StockTake.Count> counts = new ArrayList<>();
        for (int i = 0; i < lotAndLeft.length; i += 2) {
            counts.add(new StockTake.Count(lotAndLeft[i], lotAndLeft[i + 1]));
        }
        takes.add(new StockTake(seq++, at, "ada", counts));
    }

    private MadeState made() {
        SortedMap<String, StepMade> steps = new TreeMap<>();
        List<String> names = new ArrayList<>();
        mixes.forEach(m -> names.add(m.step()));
        draws.forEach(m -> names.add(m.step()));
        plies.forEach(m -> names.add(m.step()));
        for (String name : names) {
            steps.put(
                    name,
                    new StepMade(
                            name,
                            draws.stream().filter(x -> x.step().equals(name)).toList(),
                            mixes.stream().filter(x -> x.step().equals(name)).toList(),
                            plies.stream().filter(x -> x.step().equals(name)).toList()));
        }
        return new MadeState(steps);
    }

    private ShopState state(Map<String, StepFacts> facts) {
        return ShopState.at(NOW).withSteps(facts).withStores(made(), new StockState(receipts, moves, takes, List.of()));
    }

    private static StepFacts started() {
        return new StepFacts(
                EARLY, Optional.of(EARLY.plusSeconds(3600)), Optional.empty(), List.of("ada"), List.of(), 0);
    }

    private static SmallShop shop() {
        SmallShop shop = new SmallShop();
        shop.lots.add(SmallShop.lot("R-1", "er", "resin", "12.00 kg", "2027-01-01"));
        shop.lots.add(SmallShop.lot("H-1", "er", "hardener", "3.60 kg", "2027-01-01"));
        shop.moreParts.add(shop.shell("lid", Hand.NONE, Optional.empty(), shop.shellMake));
        return shop;
    }

    private static LotStanding lot(StoresResult stores, String id) {
        return stores.lots().stream()
                .filter(l -> l.lot().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private List<LotAudit> audits(Definition d, ShopState state) {
        return new StockTakeAudit(
                        d, state, ProjectCalculator.calculate(d, state).steps())
                .all();
    }

    @Test
    void should_raise_half_the_hardener_and_name_all_22_mixes_and_their_parts_when_stock_is_taken() {
        Definition d = shop().build();
        for (int i = 0; i < 22; i++) {
            mix(step(d, i < 15 ? "shell/1/lay-up-1" : "lid/1/lay-up-1"), EARLY, String.valueOf(i + 1), "", "");
        }
        count(NOW.minusSeconds(600), "R-1", "7.00 kg", "H-1", "2.85 kg");

        List<LotAudit> all = audits(d, state(Map.of()));

        assertThat(all).hasSize(1);
        LotAudit audit = all.get(0);
        assertThat(audit.result().orElseThrow().verdict()).isEqualTo(Verdict.FAIL);
        assertThat(audit.result().orElseThrow().resinUsed().kilograms()).isCloseTo(5.00, within(1e-9));
        assertThat(audit.result().orElseThrow().hardenerUsed().kilograms()).isCloseTo(0.75, within(1e-9));
        assertThat(audit.result().orElseThrow().hardenerPer100().orElseThrow()).isCloseTo(15, within(1e-9));
        assertThat(audit.result().orElseThrow().findings().get(0).sentence()).contains("half the hardener");
        assertThat(audit.suspectMixes()).hasSize(22);
        assertThat(audit.suspectParts()).containsExactlyInAnyOrder(step(d, "shell"), step(d, "lid"));
        assertThat(audit.labels()).isTrue();
        assertThat(audit.since()).isEmpty();
    }

    @Test
    void should_reckon_from_the_stock_take_before_and_take_the_weighed_mixes_out_when_there_is_one() {
        Definition d = shop().build();
        mix(step(d, "shell/1/lay-up-1"), EARLY, "1", "", "");
        count(EARLY.plusSeconds(60), "R-1", "11.00 kg", "H-1", "3.30 kg");
        mix(step(d, "shell/1/lay-up-2"), EARLY.plusSeconds(120), "1", "400 g", "120 g");
        mix(step(d, "shell/1/lay-up-2"), EARLY.plusSeconds(180), "2", "", "");
        count(NOW.minusSeconds(600), "R-1", "10.000 kg", "H-1", "3.000 kg");

        LotAudit last = audits(d, state(Map.of())).get(0);

        assertThat(last.since()).contains(EARLY.plusSeconds(60));
        assertThat(last.labels()).isFalse();
        assertThat(last.read()).hasSize(1);
        assertThat(last.unread()).hasSize(1);
        assertThat(last.result().orElseThrow().resinUnread().kilograms()).isCloseTo(0.6, within(1e-9));
        assertThat(last.result().orElseThrow().hardenerUnread().kilograms()).isCloseTo(0.18, within(1e-9));
    }

    @Test
    void should_say_which_lot_was_not_counted_when_the_ratio_cannot_be_told_for_that() {
        Definition d = shop().build();
        mix(step(d, "shell/1/lay-up-1"), EARLY, "1", "", "");
        count(NOW.minusSeconds(600), "R-1", "11 kg");

        LotAudit audit = audits(d, state(Map.of())).get(0);

        assertThat(audit.uncounted()).containsExactly("H-1");
        assertThat(audit.result()).isEmpty();
        assertThat(audit.suspectParts()).isEmpty();
    }

    @Test
    void should_name_steps_of_which_no_mix_was_recorded_among_those_in_doubt() {
        Definition d = shop().build();
        count(NOW.minusSeconds(600), "R-1", "7.00 kg", "H-1", "2.85 kg");

        LotAudit audit = audits(d, state(Map.of("shell/1/lay-up-1", started()))).get(0);

        assertThat(audit.failed()).isTrue();
        assertThat(audit.untold()).containsExactly(step(d, "shell/1/lay-up-1"));
        assertThat(audit.suspectParts()).containsExactly(step(d, "shell"));
    }

    @Test
    void should_move_a_lot_by_what_was_weighed_and_counted_and_reckon_only_what_nobody_told() {
        Definition d = shop().build();
        Map<String, StepFacts> begun = Map.of("shell/1/lay-up-1", started());
        double reckoned = 12
                - lot(ProjectCalculator.calculate(d, state(begun)).stores(), "R-1")
                        .left()
                        .si();
        assertThat(reckoned).isGreaterThan(0.5);

        mix(step(d, "shell/1/lay-up-1"), EARLY, "1", "300 g", "90 g");
        mix(step(d, "shell/1/lay-up-1"), EARLY.plusSeconds(60), "2", "", "");
        LotStanding told = lot(ProjectCalculator.calculate(d, state(begun)).stores(), "R-1");
        assertThat(told.left().si()).isCloseTo(12 - reckoned, within(1e-9));
        assertThat(told.moves())
                .extracting(LotStanding.Move::sort)
                .containsExactly(LotStanding.Sort.OPENING, LotStanding.Sort.MIXED, LotStanding.Sort.RECKONED);
        assertThat(told.moves().get(1).change().si()).isCloseTo(-0.3, within(1e-9));
        assertThat(told.moves().get(2).change().si()).isCloseTo(0.3 - reckoned, within(1e-9));

        count(EARLY.plusSeconds(7200), "R-1", "9.5 kg");
        mix(step(d, "lid/1/lay-up-1"), EARLY.plusSeconds(9000), "1", "200 g", "60 g");
        LotStanding counted = lot(ProjectCalculator.calculate(d, state(begun)).stores(), "R-1");
        assertThat(counted.left().si()).isCloseTo(9.3, within(1e-9));
        LotStanding hardener = lot(ProjectCalculator.calculate(d, state(begun)).stores(), "H-1");
        assertThat(hardener.moves().get(hardener.moves().size() - 1).change().si())
                .isCloseTo(-0.06, within(1e-9));
    }

    @Test
    void should_need_less_from_the_stores_when_part_of_it_was_fetched_already() {
        SmallShop shop = shop();
        shop.lots.add(SmallShop.lot("L-1", "g-200", "", "30 m2", ""));
        Definition d = shop.build();
        StoresResult before = ProjectCalculator.calculate(d, state(Map.of())).stores();
        draws.add(new Draw(
                seq++, step(d, "shell/1/lay-up-1"), EARLY, "bo", Optional.empty(), "L-1", "", "2 m2", false, ""));
        StoresResult after = ProjectCalculator.calculate(d, state(Map.of())).stores();
        assertThat(cloth(before).needed().si() - cloth(after).needed().si()).isCloseTo(2, within(1e-9));
        assertThat(cloth(after).held().si()).isCloseTo(28, within(1e-9));
    }

    private static StoresResult.Item cloth(StoresResult stores) {
        return stores.items().stream()
                .filter(i -> i.of().equals("g-200"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_hold_a_lot_that_came_by_the_record_from_its_day_and_count_its_delivery_no_more() {
        SmallShop shop = shop();
        shop.deliveries.add(new fayline.flow.project.stock.Delivery(
                "d-1", "g-200", "20 m2", LocalDate.parse("2026-06-01"), Optional.empty(), Optional.empty(), List.of()));
        receipts.add(new Receipt(
                seq++,
                EARLY,
                "ada",
                "L-9",
                "g-200",
                "",
                "19.5 m2",
                true,
                "2026-03-03",
                "",
                "",
                "9.20 per m2",
                "",
                "d-1"));
        StoresResult stores =
                ProjectCalculator.calculate(shop.build(), state(Map.of())).stores();
        assertThat(cloth(stores).held().si()).isCloseTo(19.5, within(1e-9));
        assertThat(cloth(stores).coming().si()).isZero();
        assertThat(lot(stores, "L-9").lot().price().orElseThrow().amount()).isEqualTo(9.2);
    }

    @Test
    void should_add_up_time_out_of_the_cold_and_end_the_lot_when_it_is_used_up() {
        Instant out = Instant.parse("2026-03-02T08:00:00Z");
        moves.add(new LotMove(1, out, "ada", "F-1", false));
        moves.add(new LotMove(2, out.plus(Duration.ofHours(30)), "ada", "F-1", true));
        moves.add(new LotMove(3, out.plus(Duration.ofHours(100)), "ada", "F-1", false));
        OutOfCold still = OutOfCold.of("F-1", TimeSpan.ofHours(48), moves, out.plus(Duration.ofHours(110)));
        assertThat(still.spent().hours()).isCloseTo(40, within(1e-9));
        assertThat(still.inRoom()).isTrue();
        assertThat(still.ends()).contains(out.plus(Duration.ofHours(118)));
        assertThat(still.isSpent(out.plus(Duration.ofHours(117)))).isFalse();
        assertThat(still.isSpent(out.plus(Duration.ofHours(118)))).isTrue();
        moves.add(new LotMove(4, out.plus(Duration.ofHours(130)), "ada", "F-1", true));
        OutOfCold spent = OutOfCold.of("F-1", TimeSpan.ofHours(48), moves, out.plus(Duration.ofHours(500)));
        assertThat(spent.spent().hours()).isCloseTo(60, within(1e-9));
        assertThat(spent.ends()).contains(out.plus(Duration.ofHours(118)));
        OutOfCold never = OutOfCold.of("F-2", TimeSpan.ofHours(48), moves, out);
        assertThat(never.ends()).isEmpty();
        assertThat(never.inRoom()).isFalse();
    }

    @Test
    void should_follow_a_lot_into_its_parts_and_a_part_back_to_its_lots() {
        Definition d = shop().build();
        mix(step(d, "shell/1/lay-up-1"), EARLY, "1", "300 g", "90 g");
        mix(step(d, "lid/1/lay-up-1"), EARLY.plusSeconds(60), "1", "", "");
        plies.add(new Laid(
                seq++,
                step(d, "lid/1/lay-up-1"),
                EARLY.plusSeconds(30),
                "bo",
                Optional.empty(),
                "1",
                "outer, 45",
                "L-1",
                false,
                ""));
        RecordState record = withMade(made());

        List<TracedUse> forward = new LotTrace(record).forward("H-1");
        assertThat(forward).extracting(TracedUse::made).containsExactly(step(d, "shell"), step(d, "lid"));
        assertThat(forward.get(0).amount()).isEqualTo("90 g");
        assertThat(forward.get(0).with()).isEqualTo("R-1");

        List<TracedUse> backward = new LotTrace(record).backward(step(d, "lid"));
        assertThat(backward).extracting(TracedUse::lot).containsExactly("L-1", "R-1", "H-1");
        assertThat(backward.get(0).what()).isEqualTo("1, outer, 45");
    }

    private static RecordState withMade(MadeState made) {
        RecordState e = RecordState.EMPTY;
        return new RecordState(
                e.head(),
                e.work(),
                e.projects(),
                e.shopFiles(),
                e.projectFiles(),
                e.steps(),
                e.readings(),
                e.mended(),
                made,
                e.trouble(),
                e.stock(),
                e.inspect(),
                e.erasures(),
                e.change(),
                e.published(),
                e.conflicts(),
                e.unknown());
    }
}
