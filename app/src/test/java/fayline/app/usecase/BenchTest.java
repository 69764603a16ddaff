package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static fayline.app.usecase.Teasel.step;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.FinishStep;
import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.act.SaveFile;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.forecast.Slips;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.view.LookAtShop;
import fayline.basis.finding.InputProblem;
import fayline.flow.record.Chain;
import fayline.flow.record.Slip;
import fayline.flow.record.StepRecord;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What people do at the bench. */
class BenchTest {
    private final Teasel teasel = Teasel.readIn();
    private final String first = step("seat/1/lay-up-1");

    private Outcome start(Sent sent, String step, String... people) {
        return new StartStep(teasel.shop)
                .start(sent, step, List.of(people), List.of(), "high edge to the door", Optional.empty());
    }

    private Outcome finish(Sent sent, String step) {
        return new FinishStep(teasel.shop).finish(sent, step, List.of(), "", "", Optional.empty());
    }

    private StepRecord now(String step) {
        return teasel.shop.state().step(step);
    }

    @Test
    void should_record_what_happened_when_a_step_is_started_and_finished() {
        Outcome started = start(by("ada"), first, "ada", "bo");
        assertThat(started.kind()).isEqualTo(Outcome.Kind.RECORDED);
        assertThat(now(first).started()).contains(Teasel.START);
        teasel.clock.plusMinutes(95);
        assertThat(finish(by("bo"), first).stands()).isTrue();
        assertThat(now(first).finished()).contains(Teasel.START.plusSeconds(95 * 60));
        assertThat(now(first).people()).containsExactly("ada", "bo");
        assertThat(Chain.check(teasel.log.read(1), Optional.empty())).isEmpty();
    }

    @Test
    void should_make_no_second_entry_when_the_same_thing_is_sent_again_later() {
        Sent sent = by("ada");
        long seq = start(sent, first, "ada").seq();
        teasel.clock.plusMinutes(3);
        Outcome again = start(sent, first, "ada");
        assertThat(again.kind()).isEqualTo(Outcome.Kind.ALREADY);
        assertThat(again.seq()).isEqualTo(seq);
        assertThat(start(sent, first, "bo").kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(teasel.log.head().seq()).isEqualTo(seq);
    }

    @Test
    void should_keep_one_start_and_show_the_other_as_conflict_when_two_screens_start_one_step() {
        Outcome one = start(by("ada"), first, "ada");
        Outcome two = start(by("bo"), first, "bo");
        assertThat(two.stands()).isTrue();
        assertThat(two.cautions()).anyMatch(c -> c.sentence().contains("already started"));
        assertThat(now(first).startedBy()).isEqualTo(one.seq());
        assertThat(teasel.shop.state().conflicts()).hasSize(1);
        assertThat(teasel.shop.state().conflicts().get(0).seq()).isEqualTo(two.seq());
    }

    @Test
    void should_caution_and_still_record_when_the_step_before_is_not_finished() {
        Outcome outcome = start(by("ada"), step("seat/1/bag-1"), "ada");
        assertThat(outcome.stands()).isTrue();
        assertThat(outcome.cautions()).isNotEmpty();
    }

    @Test
    void should_refuse_with_every_problem_when_nobody_known_does_something_unknown() {
        long before = teasel.log.head().seq();
        Outcome outcome = start(by("zoe"), step("seat/1/polish"));
        assertThat(outcome.kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(outcome.problems()).extracting(InputProblem::key).containsExactly("step", "by", "people");
        assertThat(start(by("ada"), "other-9/seat/1/bag-1", "ada").kind()).isEqualTo(Outcome.Kind.REFUSED);
        Outcome ahead = new StartStep(teasel.shop)
                .start(
                        by("ada"),
                        first,
                        List.of("ada"),
                        List.of("nowhere"),
                        "",
                        Optional.of(Teasel.START.plusSeconds(3600)));
        assertThat(ahead.problems()).extracting(InputProblem::key).containsExactly("places", "at");
        assertThat(teasel.log.head().seq()).isEqualTo(before);
    }

    @Test
    void should_refuse_a_finish_when_it_lies_before_the_start() {
        start(by("ada"), first, "ada");
        Outcome outcome = new FinishStep(teasel.shop)
                .finish(by("ada"), first, List.of(), "", "", Optional.of(Teasel.START.minusSeconds(600)));
        assertThat(outcome.problems()).extracting(InputProblem::key).containsExactly("at");
    }

    @Test
    void should_keep_why_a_step_slipped_and_refuse_a_reason_that_is_none() {
        start(by("ada"), first, "ada");
        Outcome refused =
                new FinishStep(teasel.shop).finish(by("ada"), first, List.of(), "", "bad luck", Optional.empty());
        assertThat(refused.problems()).extracting(InputProblem::key).containsExactly("slip");
        assertThat(now(first).finished()).isEmpty();
        new FinishStep(teasel.shop).finish(by("ada"), first, List.of(), "", "cold", Optional.empty());
        assertThat(now(first).slip()).contains(Slip.COLD);
        assertThat(Slips.of(new LookAtShop(teasel.shop).look("").orElseThrow()))
                .singleElement()
                .satisfies(r -> assertThat(r.why()).isEqualTo(Slip.COLD));
    }

    @Test
    void should_follow_the_correction_when_a_time_and_a_note_were_wrong() {
        long seq = start(by("ada"), first, "ada").seq();
        Outcome fixed = new CorrectStep(teasel.shop)
                .correct(by("ada"), seq, Mended.time(Instant.parse("2026-03-03T07:05:00Z")), "began earlier");
        assertThat(fixed.stands()).isTrue();
        assertThat(now(first).started()).contains(Instant.parse("2026-03-03T07:05:00Z"));
        long note = new NoteStep(teasel.shop)
                .note(by("bo"), first, "Ply 2 creased", Optional.empty())
                .seq();
        new CorrectStep(teasel.shop).correct(by("bo"), note, Mended.note("Ply 3 creased"), "miscounted");
        assertThat(now(first).notes())
                .singleElement()
                .satisfies(n -> assertThat(n.text()).isEqualTo("Ply 3 creased"));
        assertThat(new CorrectStep(teasel.shop)
                        .withdraw(by("ada"), seq, "other part")
                        .stands())
                .isTrue();
        assertThat(now(first).started()).isEmpty();
        assertThat(new CorrectStep(teasel.shop).withdraw(by("ada"), 1, "no").kind())
                .isEqualTo(Outcome.Kind.REFUSED);
        assertThat(teasel.log.read(seq).get(0).fields().text("at")).isEqualTo(Teasel.START.toString());
    }

    @Test
    void should_keep_a_reading_as_typed_and_refuse_what_is_no_quantity() {
        TakeReading take = new TakeReading(teasel.shop);
        Measured gap = new Measured("gap", "fairing-edge", "B", "dry", Map.of("value", ".050 in"), Optional.empty());
        assertThat(take.take(by("bo"), Teasel.PROJECT, gap).stands()).isTrue();
        assertThat(teasel.shop.state().readings(Teasel.PROJECT))
                .anyMatch(r -> r.value().equals(".050 in") && r.station().equals("B"));
        Measured wrong = new Measured("gap", "fairing-edge", "Z", "dry", Map.of("value", "5 kg"), Optional.empty());
        assertThat(take.take(by("bo"), Teasel.PROJECT, wrong).problems())
                .extracting(InputProblem::key)
                .containsExactlyInAnyOrder("value", "station");
        Measured air =
                new Measured("climate", "", "", "", Map.of("air", "19 degC", "humidity", "wet"), Optional.empty());
        assertThat(take.take(by("bo"), Teasel.PROJECT, air).problems())
                .extracting(InputProblem::key)
                .containsExactly("humidity");
    }

    @Test
    void should_take_castings_feeler_pairs_and_touching_parts_and_refuse_what_a_fit_cannot_have() {
        TakeReading take = new TakeReading(teasel.shop);
        assertThat(gap(take, "casting", "hung", Map.of("value", "1.4 mm")).stands())
                .isTrue();
        assertThat(gap(take, "gap", "", Map.of("value", "touches")).stands()).isTrue();
        assertThat(gap(take, "gap", "dry", Map.of("value", "0 mm")).stands()).isTrue();
        assertThat(gap(take, "gap", "dry", Map.of("value", "2.4 mm", "nogo", "2.5 mm", "temperature", "19 degC"))
                        .stands())
                .isTrue();
        assertThat(sentences(gap(take, "gap", "dry", Map.of("value", "-0.2 mm"))))
                .containsExactly(
                        "value: found \"-0.2 mm\", expected a gap of nought or more; write 0 mm or touches where the "
                                + "part touches; it cannot be read further");
        assertThat(sentences(gap(take, "casting", "painted", Map.of("value", "2 mm"))))
                .containsExactly(
                        "state: found \"painted\", expected a state of fairing-round: dry, hung; a fit goes through "
                                + "its own states, see fits.yaml");
        assertThat(sentences(gap(take, "gap", "dry", Map.of("value", "2.5 mm", "nogo", "2.4 mm"))))
                .containsExactly(
                        "nogo: found \"2.4 mm\", expected more than the thickest leaf that entered, 2.5 mm; value is "
                                + "the leaf that enters, nogo the next one that does not");
        assertThat(gap(take, "flush", "dry", Map.of("value", "-0.2 mm")).stands())
                .isTrue();
        assertThat(gap(take, "flush", "dry", Map.of("value", "0 mm", "temperature", "warm"))
                        .problems())
                .extracting(InputProblem::key)
                .containsExactly("temperature");
    }

    private static Outcome gap(TakeReading take, String kind, String state, Map<String, String> values) {
        return take.take(
                by("bo"), Teasel.PROJECT, new Measured(kind, "fairing-round", "A", state, values, Optional.empty()));
    }

    private static List<String> sentences(Outcome outcome) {
        return outcome.problems().stream().map(InputProblem::sentence).toList();
    }

    @Test
    void should_save_a_definition_file_only_when_the_definition_can_be_read_with_it() {
        SaveFile save = new SaveFile(teasel.shop);
        String people = teasel.shop.folder(Teasel.PROJECT).text("people.yaml").orElseThrow();
        String hash = teasel.shop.readDefinition(Teasel.PROJECT).hash();
        Outcome broken = save.save(by("ada"), Teasel.PROJECT, "people.yaml", people.replace("[laminate,", "[juggle,"));
        assertThat(broken.kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(broken.problems())
                .anyMatch(p -> p.file().equals("people.yaml")
                        && p.line() > 0
                        && p.found().contains("juggle"));
        assertThat(teasel.shop.readDefinition(Teasel.PROJECT).hash()).isEqualTo(hash);
        assertThat(save.save(by("ada"), Teasel.PROJECT, "people.yaml", people).kind())
                .isEqualTo(Outcome.Kind.NOTHING);
        Sent sent = by("ada");
        String longer = people.replace("name: Bo", "name: Bo Longer");
        assertThat(save.save(sent, Teasel.PROJECT, "people.yaml", longer).stands())
                .isTrue();
        assertThat(save.save(sent, Teasel.PROJECT, "people.yaml", longer).kind())
                .isEqualTo(Outcome.Kind.ALREADY);
        assertThat(teasel.shop
                        .readDefinition(Teasel.PROJECT)
                        .shop()
                        .people()
                        .get("bo")
                        .name())
                .isEqualTo("Bo Longer");
        assertThat(save.save(by("bo"), Teasel.PROJECT, "people.yaml", people, "0".repeat(64))
                        .sentence())
                .contains("somebody else");
        assertThat(save.save(by("bo"), Teasel.PROJECT, "history/more.yaml", "history: []")
                        .kind())
                .isEqualTo(Outcome.Kind.REFUSED);
        assertThat(save.remove(by("bo"), Teasel.PROJECT, "recipes/skin.yaml").problems())
                .isNotEmpty();
    }
}
