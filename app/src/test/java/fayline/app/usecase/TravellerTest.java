package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static fayline.app.usecase.Teasel.step;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.folder.ExportFolder;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.traveller.BenchTime;
import fayline.app.usecase.traveller.DrawLot;
import fayline.app.usecase.traveller.LayPly;
import fayline.app.usecase.traveller.MixCup;
import fayline.app.usecase.traveller.StepAsks;
import fayline.app.usecase.trouble.RaiseDeviation;
import fayline.app.usecase.trouble.SettleDeviation;
import fayline.app.usecase.view.LookAtShop;
import fayline.basis.finding.InputProblem;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.made.StepMade;
import fayline.flow.record.trouble.Rework;
import fayline.store.file.DefinitionFolder;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What goes into a step: plies in their order, lots of the right material and in date, cups weighed. */
class TravellerTest {
    private final Teasel teasel = Teasel.readIn();
    private final String layUp = step("seat/1/lay-up-1");
    private final StepAsks asks = asks();

    private StepAsks asks() {
        var view = new LookAtShop(teasel.shop).look(Teasel.PROJECT).orElseThrow();
        return StepAsks.of(view.definition(), view.result().step(layUp).orElseThrow());
    }

    private Outcome lay(Sent sent, String number, String lot, boolean skipped, String why) {
        return new LayPly(teasel.shop)
                .lay(sent, layUp, asks, new LayPly.Ticked(number, "", lot, skipped, why), BenchTime.NOW);
    }

    private Outcome draw(String person, String lot, boolean override, String why) {
        return new DrawLot(teasel.shop)
                .draw(by(person), layUp, asks, new DrawLot.Drawn(lot, "", "", override, why), BenchTime.NOW);
    }

    private Outcome mix(String resinLot, String hardenerLot, String resin, String hardener) {
        return new MixCup(teasel.shop)
                .mix(
                        by("bo"),
                        layUp,
                        asks,
                        new MixCup.Cup("1", "er-slow", resinLot, hardenerLot, resin, hardener, ""),
                        BenchTime.NOW);
    }

    private StepMade made() {
        return teasel.shop.state().made().step(layUp);
    }

    private static String said(Outcome o) {
        return o.problems().stream().map(InputProblem::toString).reduce("", String::concat);
    }

    @Test
    void should_tick_plies_in_their_order_and_keep_what_the_card_called_them() {
        assertThat(asks.plies()).hasSizeGreaterThan(2);
        assertThat(lay(by("bo"), "1", "R/77.2", false, "").stands()).isTrue();
        assertThat(made().ply("1").orElseThrow().name())
                .isEqualTo(asks.plies().get(0).name());
        Outcome early = lay(by("bo"), "3", "", false, "");
        assertThat(early.kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(said(early)).contains("ply 3 before ply 2");
        assertThat(lay(by("bo"), "3", "", false, "ply 2 is being cut anew").stands())
                .isTrue();
        assertThat(lay(by("bo"), "2", "", true, "").stands()).isFalse();
        assertThat(lay(by("bo"), "2", "", true, "no cloth left").stands()).isTrue();
    }

    @Test
    void should_tick_a_ply_once_when_it_is_sent_twice_and_refuse_a_second_tick() {
        Sent sent = by("bo");
        long seq = lay(sent, "1", "", false, "").seq();
        assertThat(lay(sent, "1", "", false, "").kind()).isEqualTo(Outcome.Kind.ALREADY);
        assertThat(said(lay(by("ada"), "1", "", false, ""))).contains("entry " + seq);
        assertThat(made().plies()).hasSize(1);
        new CorrectStep(teasel.shop).withdraw(by("bo"), seq, "the wrong card");
        assertThat(made().plies()).isEmpty();
        assertThat(lay(by("ada"), "1", "", false, "").stands()).isTrue();
    }

    @Test
    void should_refuse_unknown_lots_and_wrong_material_whoever_asks() {
        assertThat(said(draw("ada", "L-9999", false, ""))).contains("the stores do not know");
        teasel.shop.state();
        assertThat(said(lay(by("ada"), "1", "L-0412", false, ""))).contains("nobody can allow it");
        assertThat(said(new DrawLot(teasel.shop)
                        .draw(
                                by("ada"),
                                step("seat/1/release"),
                                StepAsks.NOTHING,
                                new DrawLot.Drawn("R/77.2", "", "", true, "it is there"),
                                BenchTime.NOW)))
                .contains("nobody can allow it");
    }

    @Test
    void should_refuse_a_lot_out_of_date_until_somebody_who_may_allows_it_with_a_reason() {
        teasel.clock.to("2027-02-01T08:00:00Z");
        assertThat(said(draw("bo", "L-0413", false, ""))).contains("out of date since 2027-01-01");
        assertThat(said(draw("bo", "L-0413", true, "test piece hard after 20 h")))
                .contains("crew list lets sign");
        assertThat(draw("ada", "L-0413", true, "").stands()).isFalse();
        assertThat(mix("L-0412", "L-0413", "100 g", "30 g").stands()).isFalse();
        assertThat(draw("ada", "L-0413", true, "test piece hard after 20 h").stands())
                .isTrue();
        assertThat(draw("ada", "L-0412", true, "clear, no crystals").stands()).isTrue();
        assertThat(mix("L-0412", "L-0413", "100 g", "30 g").stands()).isTrue();
        assertThat(made().draws()).allMatch(d -> d.override() && !d.why().isEmpty());
    }

    @Test
    void should_say_at_once_what_mends_a_cup_out_of_tolerance() {
        // 100:30 by mass: 200 g of resin ask for 60 g of hardener
        Outcome thin = mix("L-0412", "L-0413", "200.0 g", "50 g");
        assertThat(thin.stands()).isTrue();
        assertThat(thin.cautions())
                .singleElement()
                .satisfies(c -> assertThat(c.sentence()).contains("add 10.0 g of hardener"));
        assertThat(mix("L-0412", "L-0413", "200.0 g", "60.5 g").cautions()).isEmpty();
        assertThat(made().mixes().get(0).resin()).isEqualTo("200.0 g");
    }

    @Test
    void should_take_a_cup_without_a_scale_reading_marked_so_and_refuse_half_a_reading() {
        Outcome blind = mix("L-0412", "L-0413", "", "");
        assertThat(blind.stands()).isTrue();
        assertThat(blind.cautions()).anyMatch(c -> c.sentence().contains("No scale reading"));
        assertThat(made().mixes().get(0).weighed()).isFalse();
        assertThat(said(mix("L-0412", "L-0413", "200 g", ""))).contains("both parts, or for neither");
        assertThat(said(mix("L-0413", "L-0412", "200 g", "60 g"))).contains("taken for each other");
    }

    @Test
    void should_be_the_same_after_an_export_and_an_import() {
        lay(by("bo"), "1", "R/77.2", false, "");
        lay(by("bo"), "2", "", true, "\"too short\": none left");
        draw("ada", "R/77.2", false, "");
        mix("L-0412", "L-0413", "200.0 g", "60 g");
        mix("L-0412", "", "", "");
        long deviation = new RaiseDeviation(teasel.shop)
                .raise(by("bo"), new RaiseDeviation.Raised(layUp, "Ply short.", true), List.of(), BenchTime.NOW)
                .seq();
        new SettleDeviation(teasel.shop)
                .settle(
                        by("ada"),
                        deviation,
                        new SettleDeviation.Decision(
                                "rework", "Lap 20:1.", false, "", List.of(new Rework("Lay a strip.", "1 h", "lay-up"))),
                        Optional.empty());
        Teasel two = Teasel.empty(new MemoryLog());
        two.clock.to("2026-04-20T12:00:00Z");
        DefinitionFolder out = new ExportFolder(teasel.shop).files(Teasel.PROJECT);
        assertThat(new ImportFolder(two.shop).of(out, false).problems()).isEmpty();
        assertThat(payloads(two)).isEqualTo(payloads(teasel)).hasSize(7);
        assertThat(two.shop.state().trouble().open()).hasSize(1);
    }

    /** What was told of steps and deviations, without the places in the record, which differ. */
    private static List<String> payloads(Teasel t) {
        return t.log.read(1).stream()
                .filter(e -> e.kind().matches("lot-drawn|mix-made|ply-laid|deviation-.*"))
                .map(e -> e.by() + " " + e.payload().replaceAll("\"deviation\":\\d+", ""))
                .toList();
    }

    @Test
    void should_say_when_something_was_entered_later_than_it_happened() {
        Instant happened = Instant.parse("2026-03-03T06:00:00Z");
        new LayPly(teasel.shop)
                .lay(
                        by("bo"),
                        layUp,
                        asks,
                        new LayPly.Ticked("1", "", "", false, ""),
                        BenchTime.of(Optional.of(happened)));
        assertThat(made().ply("1").orElseThrow().at()).isEqualTo(happened);
        assertThat(made().ply("1").orElseThrow().told()).contains(Teasel.START);
    }
}
