package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.fit.AttachFit;
import fayline.app.usecase.fit.BeginFit;
import fayline.app.usecase.fit.NewEdge;
import fayline.app.usecase.fit.NewFit;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.basis.finding.InputProblem;
import fayline.basis.units.Length;
import fayline.flow.project.design.Hand;
import fayline.flow.project.fit.Fit;
import fayline.flow.record.MemoryLog;
import fayline.method.fitup.Spot;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BeginFitTest {
    private static NewFit hatch(String id, String gap) {
        return new NewFit(
                id,
                "Hatch: \"aft\" one",
                Hand.RIGHT,
                gap,
                "0.5 mm",
                "0 mm",
                "0.5 mm",
                List.of(
                        new NewFit.Marked("A", "aft, low", "200 -100", "1 0"),
                        new NewFit.Marked("B", "front", "-200 0", "-1 0"),
                        new NewFit.Marked("C", "top", "", "")));
    }

    private static Measured reading(String station) {
        return new Measured("gap", "hatch", station, "", Map.of("value", "1/8 in"), Optional.empty());
    }

    @Test
    void should_begin_a_fit_in_a_project_and_take_readings_of_it_before_it_has_a_part() {
        Teasel t = Teasel.readIn();
        Sent sent = by("ada");
        assertThat(new BeginFit(t.shop)
                        .begin(sent, Teasel.PROJECT, hatch("hatch", "1/8 in"))
                        .stands())
                .isTrue();
        assertThat(new BeginFit(t.shop)
                        .begin(sent, Teasel.PROJECT, hatch("hatch", "1/8 in"))
                        .kind())
                .isEqualTo(Outcome.Kind.ALREADY);
        Fit fit = t.shop.readDefinition(Teasel.PROJECT).fits().get("hatch");
        assertThat(fit.part()).isEmpty();
        assertThat(fit.hand()).isEqualTo(Hand.RIGHT);
        assertThat(fit.name()).isEqualTo("Hatch: \"aft\" one");
        assertThat(fit.stations().get(2).at()).isEmpty();
        assertThat(new TakeReading(t.shop)
                        .take(by("bo"), Teasel.PROJECT, reading("A"))
                        .stands())
                .isTrue();
        assertThat(new AttachFit(t.shop)
                        .attach(by("ada"), Teasel.PROJECT, "hatch", "fairing")
                        .stands())
                .isTrue();
        assertThat(t.shop.readDefinition(Teasel.PROJECT).fits().get("hatch").part())
                .contains("fairing");
        assertThat(t.shop.state().readings(Teasel.PROJECT)).anyMatch(r -> r.of().equals("hatch"));
    }

    @Test
    void should_refuse_what_cannot_be_read_an_id_that_is_taken_and_a_part_that_is_not_there() {
        Teasel t = Teasel.readIn();
        BeginFit begin = new BeginFit(t.shop);
        assertThat(begin.begin(by("ada"), Teasel.PROJECT, hatch("hatch", "3 kg"))
                        .problems())
                .extracting(InputProblem::key)
                .containsExactly("fits[0].gap");
        assertThat(begin.begin(by("ada"), Teasel.PROJECT, hatch("fairing-edge", "3 mm"))
                        .problems())
                .extracting(InputProblem::key)
                .containsExactly("id");
        assertThat(new AttachFit(t.shop)
                        .attach(by("ada"), Teasel.PROJECT, "hatch", "fairing")
                        .kind())
                .isEqualTo(Outcome.Kind.REFUSED);
        assertThat(new AttachFit(t.shop)
                        .attach(by("ada"), Teasel.PROJECT, "fairing-edge", "nothing")
                        .problems())
                .extracting(InputProblem::key)
                .containsExactly("fits[0].part");
    }

    @Test
    void should_make_a_small_project_when_the_shop_holds_none() {
        Teasel t = Teasel.empty(new MemoryLog());
        assertThat(new BeginFit(t.shop)
                        .begin(by("zoe"), "", hatch("hatch", "3 kg"))
                        .kind())
                .isEqualTo(Outcome.Kind.REFUSED);
        assertThat(t.shop.state().projects()).isEmpty();
        assertThat(new BeginFit(t.shop)
                        .begin(by("zoe"), "", hatch("hatch", "3 mm"))
                        .stands())
                .isTrue();
        assertThat(t.shop.state().projects()).containsExactly(BeginFit.BENCH);
        assertThat(new TakeReading(t.shop)
                        .take(by("zoe"), BeginFit.BENCH, reading("C"))
                        .stands())
                .isTrue();
        assertThat(new BeginFit(t.shop)
                        .begin(
                                by("zoe"),
                                BeginFit.BENCH,
                                new NewFit(
                                        "door", "Door", Hand.NONE, "3 mm", "1 mm", "0 mm", "1 mm", NewFit.numbered(12)))
                        .stands())
                .isTrue();
        assertThat(t.shop.readDefinition(BeginFit.BENCH).fits().get("door").stations())
                .hasSize(12);
    }

    private static NewFit spread(String id, NewEdge edge, int number) {
        return new NewFit(
                id,
                "Hatch",
                Hand.LEFT,
                "3 mm",
                "0.5 mm",
                "0.2 mm",
                "0.4 mm",
                List.of(),
                Optional.of(edge),
                List.of(),
                number,
                new NewFit.Gauge("taper gauge", "0.05 mm", ""));
    }

    private static Length mm(double value) {
        return Length.ofMillimetres(value);
    }

    @Test
    void should_spread_stations_square_to_the_edge_when_their_number_is_given() {
        Teasel t = Teasel.readIn();
        Outcome outcome = new BeginFit(t.shop)
                .begin(by("ada"), Teasel.PROJECT, spread("hatch", NewEdge.rectangle(mm(600), mm(400), mm(0)), 12));
        assertThat(outcome.problems()).isEmpty();
        Fit fit = t.shop.readDefinition(Teasel.PROJECT).fits().get("hatch");
        assertThat(fit.stations()).hasSize(12);
        // 2000 mm round in steps of 166.7: the first lies 83.3 mm along the lower edge from its front end
        assertThat(fit.stations().get(0).where()).isEqualTo("lower edge, 1 of 4 from the front");
        assertThat(fit.stations().get(0).at().orElseThrow().xMm()).isCloseTo(-216.667, within(1e-3));
        assertThat(fit.stations().get(4).where()).isEqualTo("aft edge, 1 of 2 from below");
        assertThat(fit.marks()).extracting(Fit.Mark::name).containsExactly("upper aft corner", "lower front corner");
        assertThat(fit.marks().get(0).at()).isEqualTo(new Spot(300, 200));
        assertThat(fit.wanted().flush().asTyped()).isEqualTo("0.2 mm");
        assertThat(fit.wanted().flushTolerance().asTyped()).isEqualTo("0.4 mm");
        assertThat(fit.gauge().orElseThrow().deviationMm()).hasValue(0.05);
        assertThat(fit.gauge().orElseThrow().sharedMm()).isEmpty();
    }

    @Test
    void should_keep_a_drawing_beside_the_fit_when_one_is_given_and_neither_when_it_cannot_be_read() {
        Teasel t = Teasel.readIn();
        String svg =
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"600mm\" height=\"400mm\" viewBox=\"0 0 600 400\">"
                        + "<path d=\"M0 0 L600 0 L600 400 L0 400 Z\"/></svg>";
        long before = t.shop.state().head().seq();
        assertThat(new BeginFit(t.shop)
                        .begin(by("ada"), Teasel.PROJECT, spread("bad", NewEdge.drawn("bad", "<svg nothing"), 8))
                        .kind())
                .isEqualTo(Outcome.Kind.REFUSED);
        assertThat(t.shop.state().head().seq()).isEqualTo(before);
        Sent sent = by("ada");
        NewFit drawn = spread("drawn", NewEdge.drawn("drawn", svg), 8);
        assertThat(new BeginFit(t.shop).begin(sent, Teasel.PROJECT, drawn).problems())
                .isEmpty();
        assertThat(t.shop.state().head().seq()).isEqualTo(before + 2);
        assertThat(new BeginFit(t.shop).begin(sent, Teasel.PROJECT, drawn).kind())
                .isEqualTo(Outcome.Kind.ALREADY);
        assertThat(t.shop.state().head().seq()).isEqualTo(before + 2);
        assertThat(t.shop.readDefinition(Teasel.PROJECT).fits().get("drawn").stations())
                .hasSize(8);
    }

    @Test
    void should_make_project_and_fit_in_one_go_when_the_shop_holds_none_and_know_the_form_sent_twice() {
        MemoryLog log = new MemoryLog();
        Teasel t = Teasel.empty(log);
        Sent sent = by("zoe");
        NewFit fit = spread("hatch", NewEdge.traced("0 0, 100 0, 100 60, 0 60", "1, 2, 3, 4", "mm"), 6);
        assertThat(new BeginFit(t.shop).begin(sent, "", fit).kind()).isEqualTo(Outcome.Kind.RECORDED);
        long seq = t.shop.state().head().seq();
        assertThat(t.shop.readDefinition(BeginFit.BENCH).fits().get("hatch").stations())
                .hasSize(6);
        assertThat(new BeginFit(t.shop).begin(sent, BeginFit.BENCH, fit).kind()).isEqualTo(Outcome.Kind.ALREADY);
        assertThat(t.shop.state().head().seq()).isEqualTo(seq);
    }

    @Test
    void should_write_nothing_when_edge_or_stations_cannot_be_made_in_a_shop_without_a_project() {
        Teasel t = Teasel.empty(new MemoryLog());
        assertThat(new BeginFit(t.shop)
                        .begin(by("zoe"), "", spread("hatch", NewEdge.polygon("0 0, 100 0, 0 60, 100 60", "", "mm"), 6))
                        .kind())
                .isEqualTo(Outcome.Kind.REFUSED);
        assertThat(t.shop.state().head().seq()).isZero();
        assertThat(new BeginFit(t.shop).begin(by("zoe"), "", noEdge()).problems())
                .extracting(InputProblem::key)
                .containsExactly("spread");
        assertThat(t.shop.state().head().seq()).isZero();
    }

    private static NewFit noEdge() {
        return new NewFit(
                "hatch",
                "Hatch",
                Hand.LEFT,
                "3 mm",
                "0.5 mm",
                "0 mm",
                "0.5 mm",
                List.of(),
                Optional.empty(),
                List.of(),
                4,
                NewFit.Gauge.NONE);
    }
}
