package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.fit.AttachFit;
import fayline.app.usecase.fit.BeginFit;
import fayline.app.usecase.fit.NewFit;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.basis.finding.InputProblem;
import fayline.flow.project.design.Hand;
import fayline.flow.project.fit.Fit;
import fayline.flow.record.MemoryLog;
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
}
