package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static fayline.app.usecase.Teasel.step;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.folder.ExportFolder;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.stores.Certificate;
import fayline.app.usecase.stores.MoveLot;
import fayline.app.usecase.stores.PlaceOrder;
import fayline.app.usecase.stores.ReceiveLot;
import fayline.app.usecase.stores.ReceiveOrder;
import fayline.app.usecase.stores.ReceivedLot;
import fayline.app.usecase.stores.TakeStock;
import fayline.app.usecase.traveller.BenchTime;
import fayline.app.usecase.traveller.MixCup;
import fayline.app.usecase.traveller.StepAsks;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.app.usecase.view.StoresByPlan;
import fayline.basis.finding.InputProblem;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.RecordState;
import fayline.flow.record.stock.Order;
import fayline.flow.record.stock.StockTake;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.result.stock.LotStanding;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The stores over real entries: lots received, moved and counted, mixes audited, orders. */
class StoresEntriesTest {
    private final Teasel teasel = Teasel.readIn();

    private static String said(Outcome o) {
        return o.problems().stream().map(InputProblem::toString).reduce("", String::concat);
    }

    private ShopView view() {
        return new LookAtShop(teasel.shop).look(Teasel.PROJECT).orElseThrow();
    }

    private void mixWithoutReading(String step, int batch) {
        Outcome o = new MixCup(teasel.shop)
                .mix(
                        new Sent(Sent.freshId(), "bo", false),
                        step,
                        StepAsks.NOTHING,
                        new MixCup.Cup(String.valueOf(batch), "er-slow", "L-0412", "L-0413", "", "", "scale away"),
                        BenchTime.of(Optional.of(Teasel.START.plus(Duration.ofMinutes(batch)))));
        assertThat(o.stands()).as(o.sentence() + said(o)).isTrue();
    }

    private Outcome count(Sent sent, String... lotAndLeft) {
        List<StockTake.Count> counts = new ArrayList<>();
        for (int i = 0; i < lotAndLeft.length; i += 2) {
            counts.add(new StockTake.Count(lotAndLeft[i], lotAndLeft[i + 1]));
        }
        return new TakeStock(teasel.shop)
                .take(
                        sent,
                        Teasel.PROJECT,
                        counts,
                        TakeStock.Against.of(teasel.shop, Teasel.PROJECT, teasel.shop.now()),
                        Optional.empty());
    }

    private Outcome receive(ReceivedLot lot) {
        return new ReceiveLot(teasel.shop).receive(by("ada"), Teasel.PROJECT, lot, Optional.empty(), Optional.empty());
    }

    private static ReceivedLot cloth(String number) {
        return new ReceivedLot(number, "g-200", "", "18.5 m2", true, "2026-03-03", "2030-01-01", "", "9.80 per m2", "");
    }

    @Test
    void should_raise_a_deviation_on_every_part_when_22_mixes_had_half_the_hardener() {
        for (int i = 1; i <= 22; i++) {
            mixWithoutReading(step(i <= 14 ? "seat/1/lay-up-1" : "rib-left/1/lay-up-1"), i);
        }
        teasel.clock.plusMinutes(120);
        Sent sent = by("ada");

        Outcome o = count(sent, "L-0412", "7.00 kg", "L-0413", "2.85 kg");

        assertThat(o.stands()).as(said(o)).isTrue();
        assertThat(o.sentence()).contains("A deviation is raised for each of");
        assertThat(o.cautions().get(0).sentence()).contains("half the hardener").contains("100:15.0 instead of");
        List<Deviation> open = teasel.shop.state().trouble().open();
        assertThat(open).extracting(Deviation::about).contains("teasel-1/seat", "teasel-1/rib-left");
        assertThat(open).allMatch(Deviation::structural);
        Deviation seat = open.stream()
                .filter(d -> d.about().equals("teasel-1/seat"))
                .findFirst()
                .orElseThrow();
        for (int i = 1; i <= 14; i++) {
            assertThat(seat.text()).contains("batch " + i + " at seat/1/lay-up-1");
        }
        int before = teasel.shop.state().trouble().deviations().size();
        assertThat(count(sent, "L-0412", "7.00 kg", "L-0413", "2.85 kg").kind()).isEqualTo(Outcome.Kind.ALREADY);
        assertThat(teasel.shop.state().trouble().deviations()).hasSize(before);
    }

    @Test
    void should_raise_nothing_when_the_ratio_was_kept_or_cannot_be_told() {
        mixWithoutReading(step("seat/1/lay-up-1"), 1);
        teasel.clock.plusMinutes(120);
        count(by("ada"), "L-0412", "11.000 kg", "L-0413", "3.300 kg");
        assertThat(teasel.shop.state().trouble().open()).isEmpty();
        assertThat(lot("L-0412").left().si()).isEqualTo(11.0);
        assertThat(lot("L-0412").moves())
                .extracting(LotStanding.Move::sort)
                .contains(LotStanding.Sort.OPENING, LotStanding.Sort.COUNTED);
    }

    private LotStanding lot(String id) {
        return StoresByPlan.of(view()).lots().stream()
                .filter(l -> l.lot().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_refuse_a_count_of_an_unknown_lot_one_twice_and_in_another_kind_and_keep_nothing() {
        Outcome o = count(by("ada"), "L-9999", "1 kg", "L-0412", "3 m", "R/77.2", "4 kg", "R/77.2", "5 m2");
        assertThat(o.kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(said(o)).contains("L-9999").contains("3 m").contains("R/77.2 twice");
        assertThat(said(count(by("ada")))).contains("at least one lot");
        assertThat(teasel.shop.state().stock().takes()).isEmpty();
    }

    @Test
    void should_hold_a_received_lot_with_its_certificate_and_refuse_its_number_a_second_time() {
        byte[] pdf = "%PDF-1.7 certificate".getBytes(StandardCharsets.US_ASCII);
        Outcome o = new ReceiveLot(teasel.shop)
                .receive(by("ada"), Teasel.PROJECT, cloth("N-1"), Optional.of(new Certificate(pdf)), Optional.empty());
        assertThat(o.stands()).as(said(o)).isTrue();
        String hash = teasel.shop.state().stock().receipt("N-1").orElseThrow().certificate();
        assertThat(teasel.shop.files().get(hash)).contains(pdf);
        assertThat(lot("N-1").left().si()).isEqualTo(18.5);
        assertThat(lot("N-1").lot().price().orElseThrow().amount()).isEqualTo(9.8);
        assertThat(said(receive(cloth("N-1")))).contains("N-1 a second time");
        assertThat(said(new ReceiveLot(teasel.shop)
                        .receive(
                                by("ada"),
                                Teasel.PROJECT,
                                cloth("N-2"),
                                Optional.of(new Certificate("#!/bin/sh".getBytes(StandardCharsets.US_ASCII))),
                                Optional.empty())))
                .contains("a PDF, JPEG or PNG");
    }

    @Test
    void should_name_every_field_that_is_wrong_when_a_lot_is_received() {
        Outcome o = receive(
                new ReceivedLot("no number!", "g-999", "", "many", false, "yesterday", "soon", "a while", "cheap", ""));
        assertThat(said(o))
                .contains("no number!")
                .contains("g-999")
                .contains("many")
                .contains("yesterday")
                .contains("soon")
                .contains("a while")
                .contains("cheap");
        assertThat(said(receive(new ReceivedLot("N-1", "er-slow", "", "4 kg", false, "2026-03-03", "", "", "", ""))))
                .contains("resin or hardener");
        assertThat(teasel.shop.state().stock().receipts()).isEmpty();
    }

    @Test
    void should_take_all_lots_of_a_table_or_none() {
        ReceiveLot act = new ReceiveLot(teasel.shop);
        List<Outcome> refused =
                act.receiveAll(by("ada"), Teasel.PROJECT, List.of(cloth("N-1"), cloth("bad number"), cloth("N-3")));
        assertThat(refused).hasSize(1);
        assertThat(said(refused.get(0))).contains("bad number");
        assertThat(teasel.shop.state().stock().receipts()).isEmpty();
        Sent sent = by("ada");
        assertThat(act.receiveAll(sent, Teasel.PROJECT, List.of(cloth("N-1"), cloth("N-3"))))
                .allMatch(Outcome::stands);
        act.receiveAll(sent, Teasel.PROJECT, List.of(cloth("N-1"), cloth("N-3")));
        assertThat(teasel.shop.state().stock().receipts()).hasSize(2);
    }

    @Test
    void should_refuse_to_carry_what_need_not_be_cold() {
        Outcome o = new MoveLot(teasel.shop).move(by("bo"), Teasel.PROJECT, "L-0412", false, Optional.empty());
        assertThat(said(o)).contains("kept in the cold").contains("out-life");
    }

    private PlaceOrder.Placed pulleys(String drawing, String revision) {
        return new PlaceOrder.Placed(
                "o-pulleys",
                "pulleys",
                "1 pair",
                "a machine shop",
                drawing,
                revision,
                "2026-04-03",
                "480",
                List.of("seat"),
                List.of(new Order.Feature("bore", "40 mm", "0.02 mm"), new Order.Feature("width", "62 mm", "0.1 mm")));
    }

    private Outcome came(boolean accepted, String revision, String bore, String note) {
        return new ReceiveOrder(teasel.shop)
                .receive(
                        by("ada"),
                        new ReceiveOrder.Came(
                                "o-pulleys",
                                revision,
                                List.of(new Order.Measured("bore", bore), new Order.Measured("width", "62.05 mm")),
                                accepted,
                                note,
                                accepted ? "" : "2026-04-20"),
                        Optional.empty());
    }

    @Test
    void should_measure_what_was_ordered_against_its_drawing_and_accept_what_is_off_only_with_a_reason() {
        assertThat(said(new PlaceOrder(teasel.shop)
                        .place(by("ada"), Teasel.PROJECT, pulleys("DR-7", ""), Optional.empty())))
                .contains("the revision of drawing DR-7");
        Outcome placed =
                new PlaceOrder(teasel.shop).place(by("ada"), Teasel.PROJECT, pulleys("DR-7", "B"), Optional.empty());
        assertThat(placed.stands()).as(said(placed)).isTrue();

        assertThat(said(came(true, "B", "40.05 mm", ""))).contains("note");
        assertThat(said(came(true, "A", "40.01 mm", ""))).contains("note");
        Outcome back = came(false, "B", "40.05 mm", "bore too wide");
        assertThat(back.stands()).isTrue();
        assertThat(back.cautions()).anyMatch(f -> f.sentence().contains("outside the drawing"));
        assertThat(came(true, "B", "40.02 mm", "").stands()).isTrue();
        Order order = teasel.shop.state().stock().order("o-pulleys").orElseThrow();
        assertThat(order.arrivals()).hasSize(2);
        assertThat(order.accepted()).isPresent();
        assertThat(said(came(true, "B", "40.01 mm", ""))).contains("still open");
    }

    @Test
    void should_be_the_same_shop_when_its_folder_is_exported_and_read_in_again() {
        receive(cloth("N-1"));
        count(by("ada"), "L-0412", "11.5 kg", "N-1", "18 m2");
        new PlaceOrder(teasel.shop).place(by("ada"), Teasel.PROJECT, pulleys("DR-7", "B"), Optional.empty());
        came(true, "B", "40.01 mm", "fine");
        RecordState before = teasel.shop.state();

        Teasel again = Teasel.empty(new MemoryLog());
        again.clock.to("2026-03-05T12:00:00Z");
        var imported = new ImportFolder(again.shop).of(new ExportFolder(teasel.shop).files(Teasel.PROJECT), false);

        assertThat(imported.taken()).as(imported.problems().toString()).isTrue();
        RecordState after = again.shop.state();
        assertThat(after.stock().receipts()).hasSize(1);
        assertThat(after.stock().receipts().get(0).price())
                .isEqualTo(before.stock().receipts().get(0).price());
        assertThat(after.stock().takes().get(0).counts())
                .isEqualTo(before.stock().takes().get(0).counts());
        Order order = after.stock().order("o-pulleys").orElseThrow();
        Order first = before.stock().order("o-pulleys").orElseThrow();
        assertThat(order.features()).isEqualTo(first.features());
        assertThat(order.needed()).isEqualTo(first.needed());
        assertThat(order.accepted().orElseThrow().measured())
                .isEqualTo(first.accepted().orElseThrow().measured());
    }
}
