package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.fit.AttachFit;
import fayline.app.usecase.fit.BeginFit;
import fayline.app.usecase.fit.NewFit;
import fayline.app.usecase.shop.Outcome;
import fayline.basis.finding.InputProblem;
import fayline.flow.project.design.Hand;
import fayline.flow.record.MendedReading;
import fayline.flow.record.TakenReading;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A reading of a fit is put right or taken back; what was typed first stays, and what does not belong to the fit is refused. */
class CorrectReadingTest {
    private final Teasel teasel = Teasel.readIn();
    private final CorrectStep correct = new CorrectStep(teasel.shop);

    private long read(String value) {
        return new TakeReading(teasel.shop)
                .take(
                        by("bo"),
                        Teasel.PROJECT,
                        new Measured(
                                "gap",
                                "fairing-edge",
                                "A",
                                "dry",
                                Map.of("value", value, "nogo", "2.5 mm"),
                                Optional.empty()))
                .seq();
    }

    private static Mended mended(String station, String state, Map<String, String> values) {
        return new Mended(Optional.empty(), List.of(), List.of(), "", "", "", "", station, state, values);
    }

    private List<MendedReading> mended(long seq) {
        return teasel.shop.state().mended().stream()
                .filter(m -> m.before().seq() == seq)
                .toList();
    }

    private TakenReading now(long seq) {
        return teasel.shop.state().readings().stream()
                .filter(r -> r.seq() == seq)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_keep_what_was_typed_first_when_a_reading_is_corrected() {
        long seq = read("2.4 mm");
        Outcome outcome = correct.correct(by("ada"), seq, mended("B", "", Map.of("value", "2.3 mm")), "wrong station");
        assertThat(outcome.problems()).isEmpty();
        assertThat(now(seq).station()).isEqualTo("B");
        assertThat(now(seq).values()).containsEntry("value", "2.3 mm").containsEntry("nogo", "2.5 mm");
        assertThat(mended(seq)).singleElement().satisfies(m -> {
            assertThat(m.before().station()).isEqualTo("A");
            assertThat(m.before().value()).isEqualTo("2.4 mm");
            assertThat(m.by()).isEqualTo("ada");
            assertThat(m.why()).isEqualTo("wrong station");
            assertThat(m.withdrawn()).isFalse();
        });
    }

    @Test
    void should_refuse_a_station_a_state_and_a_value_when_they_are_none_of_the_fit() {
        long seq = read("2.4 mm");
        assertThat(keys(correct.correct(by("ada"), seq, mended("Z9", "", Map.of()), "x")))
                .containsExactly("station");
        assertThat(keys(correct.correct(by("ada"), seq, mended("", "flying", Map.of()), "x")))
                .containsExactly("state");
        assertThat(keys(correct.correct(by("ada"), seq, mended("", "", Map.of("value", "-1 mm")), "x")))
                .containsExactly("value");
        assertThat(keys(correct.correct(by("ada"), seq, mended("", "", Map.of("value", "2.6 mm")), "x")))
                .containsExactly("nogo");
        assertThat(mended(seq)).isEmpty();
        assertThat(now(seq).value()).isEqualTo("2.4 mm");
    }

    @Test
    void should_count_again_when_a_withdrawn_reading_is_brought_back_and_drop_a_leaf_left_empty() {
        long seq = read("2.4 mm");
        assertThat(correct.withdraw(by("ada"), seq, "gauge was bent").stands()).isTrue();
        assertThat(teasel.shop.state().readings()).noneMatch(r -> r.seq() == seq);
        assertThat(teasel.shop.state().reading(seq).orElseThrow().value()).isEqualTo("2.4 mm");
        assertThat(correct.correct(
                                by("ada"),
                                seq,
                                mended("", "", Map.of("value", "2.45 mm", "nogo", "")),
                                "it was straight")
                        .problems())
                .isEmpty();
        assertThat(now(seq).values()).isEqualTo(Map.of("value", "2.45 mm"));
        assertThat(mended(seq)).extracting(MendedReading::withdrawn).containsExactly(true);
    }

    private static List<String> keys(Outcome outcome) {
        return outcome.problems().stream().map(InputProblem::key).toList();
    }

    @Test
    void should_keep_readings_and_hand_when_a_fit_is_attached_and_detached() {
        new BeginFit(teasel.shop)
                .begin(
                        by("ada"),
                        Teasel.PROJECT,
                        new NewFit("hatch", "Hatch", Hand.LEFT, "3 mm", "1 mm", "0 mm", "1 mm", NewFit.numbered(3)));
        new TakeReading(teasel.shop)
                .take(
                        by("bo"),
                        Teasel.PROJECT,
                        new Measured("gap", "hatch", "1", "", Map.of("value", "3 mm"), Optional.empty()));
        AttachFit attach = new AttachFit(teasel.shop);
        assertThat(attach.detach(by("ada"), Teasel.PROJECT, "hatch").kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(attach.attach(by("ada"), Teasel.PROJECT, "hatch", "fairing").stands())
                .isTrue();
        assertThat(attach.detach(by("ada"), Teasel.PROJECT, "hatch").stands()).isTrue();
        assertThat(teasel.shop
                        .readDefinition(Teasel.PROJECT)
                        .fits()
                        .get("hatch")
                        .part())
                .isEmpty();
        assertThat(teasel.shop
                        .readDefinition(Teasel.PROJECT)
                        .fits()
                        .get("hatch")
                        .hand())
                .isEqualTo(Hand.LEFT);
        assertThat(teasel.shop.state().readings(Teasel.PROJECT)).anyMatch(r -> r.of().equals("hatch"));
    }
}
