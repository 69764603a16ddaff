package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static fayline.app.usecase.Teasel.step;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.FinishStep;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.folder.ExportFolder;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.traveller.BenchTime;
import fayline.app.usecase.trouble.RaiseDeviation;
import fayline.app.usecase.trouble.SettleDeviation;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.basis.finding.InputProblem;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.record.trouble.Rework;
import fayline.store.file.DefinitionFolder;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Deviations raised and decided on a machine without accounts. */
class DeviationTest {
    private final Teasel teasel = Teasel.readIn();
    private final String layUp = step("seat/1/lay-up-1");

    private long raise(boolean structural) {
        return new RaiseDeviation(teasel.shop)
                .raise(
                        by("bo"),
                        new RaiseDeviation.Raised(layUp, "Dry spot at the lip.", structural),
                        List.of(),
                        BenchTime.NOW)
                .seq();
    }

    private Outcome settle(String person, long deviation, String disposition, String note, String second) {
        return new SettleDeviation(teasel.shop)
                .settle(
                        by(person),
                        deviation,
                        new SettleDeviation.Decision(
                                disposition,
                                note,
                                false,
                                second,
                                disposition.equals("rework")
                                        ? List.of(new Rework("Grind out, patch two plies.", "90 min", "lay-up"))
                                        : List.of()),
                        Optional.empty());
    }

    private Deviation now(long seq) {
        return teasel.shop.state().trouble().find(seq).orElseThrow();
    }

    private static String said(Outcome o) {
        return o.sentence() + o.problems().stream().map(InputProblem::toString).reduce("", String::concat);
    }

    @Test
    void should_be_decided_once_by_somebody_who_may() {
        long seq = raise(false);
        assertThat(said(settle("bo", seq, "use-as-is", "", ""))).contains("crew list lets sign");
        assertThat(settle("ada", seq, "use-as-is", "", "").stands()).isTrue();
        assertThat(now(seq).isOpen()).isFalse();
        assertThat(said(settle("ada", seq, "scrap", "", ""))).contains("one that is open");
    }

    @Test
    void should_ask_for_a_note_and_a_second_person_where_structure_is_touched() {
        long seq = raise(true);
        assertThat(settle("ada", seq, "use-as-is", "", "").stands()).isFalse();
        assertThat(said(settle("ada", seq, "use-as-is", "Edge outside the load path.", "ada")))
                .contains("the same person twice");
        assertThat(settle("ada", seq, "use-as-is", "Edge outside the load path.", "")
                        .stands())
                .isTrue();
        assertThat(now(seq).isWaitingForSecond()).isTrue();
        assertThat(said(new SettleDeviation(teasel.shop).agree(by("ada"), seq, Optional.empty())))
                .contains("second person");
        assertThat(said(new SettleDeviation(teasel.shop).agree(by("bo"), seq, Optional.empty())))
                .contains("crew list lets sign");
    }

    @Test
    void should_ask_what_is_to_be_done_where_it_is_reworked() {
        long seq = raise(false);
        Outcome nothing = new SettleDeviation(teasel.shop)
                .settle(
                        by("ada"),
                        seq,
                        new SettleDeviation.Decision("rework", "", false, "", List.of()),
                        Optional.empty());
        assertThat(said(nothing)).contains("nothing to do");
        assertThat(settle("ada", seq, "rework", "", "").stands()).isTrue();
        assertThat(now(seq).settled().orElseThrow().rework()).hasSize(1);
    }

    @Test
    void should_never_be_taken_back_but_have_its_text_corrected() {
        long seq = raise(false);
        CorrectStep correct = new CorrectStep(teasel.shop);
        assertThat(said(correct.withdraw(by("bo"), seq, "nothing wrong after all")))
                .contains("not taken back");
        assertThat(correct.correct(by("bo"), seq, Mended.note("Dry spot, 40 mm, at the lip."), "size added")
                        .stands())
                .isTrue();
        assertThat(now(seq).text()).startsWith("Dry spot, 40 mm");
        long decision = settle("ada", seq, "use-as-is", "", "").seq();
        assertThat(correct.withdraw(by("ada"), decision, "looked again").stands())
                .isTrue();
        assertThat(now(seq).isOpen()).isTrue();
    }

    private ShopView look() {
        return new LookAtShop(teasel.shop).look(Teasel.PROJECT).orElseThrow();
    }

    private boolean isPlanned(String step) {
        return look().plan().steps().stream().anyMatch(p -> p.step().equals(step));
    }

    private Outcome start(String step) {
        return new StartStep(teasel.shop)
                .start(by("bo"), step, List.of("bo", "ada"), List.of(), "high edge", Optional.empty());
    }

    @Test
    void should_hold_every_step_that_depends_on_it_until_it_is_decided() {
        String release = step("seat/1/release");
        assertThat(isPlanned(layUp)).isTrue();
        assertThat(isPlanned(step("fairing/1/lay-up-1"))).isTrue();
        start(release);
        long seq = new RaiseDeviation(teasel.shop)
                .raise(
                        by("bo"),
                        new RaiseDeviation.Raised(release, "Scratch in the mould.", false),
                        List.of(),
                        BenchTime.NOW)
                .seq();
        assertThat(isPlanned(layUp)).isFalse();
        // the fairing is made after the seat, a part further on
        assertThat(isPlanned(step("fairing/1/lay-up-1"))).isFalse();
        assertThat(look().plan().unplanned())
                .filteredOn(u -> u.step().equals(layUp))
                .singleElement()
                .satisfies(u -> assertThat(u.reason())
                        .contains("It waits for a decision about deviation " + seq)
                        .contains("Scratch in the mould"));
        assertThat(look().audit()).allMatch(b -> b.admitted());
        assertThat(said(start(layUp))).contains("It waits for a decision about deviation " + seq);
        settle("ada", seq, "use-as-is", "", "");
        assertThat(isPlanned(layUp)).isTrue();
        assertThat(start(layUp).stands()).isTrue();
    }

    @Test
    void should_plan_rework_before_what_depends_on_it() {
        String release = step("seat/1/release");
        start(release);
        new FinishStep(teasel.shop).finish(by("bo"), release, List.of(), "", "", Optional.empty());
        long seq = new RaiseDeviation(teasel.shop)
                .raise(
                        by("bo"),
                        new RaiseDeviation.Raised(release, "Scratch in the mould.", false),
                        List.of(),
                        BenchTime.NOW)
                .seq();
        assertThat(settle("ada", seq, "rework", "", "").stands()).isTrue();
        String rework = step("seat/1/rework-1");
        var plan = look().plan();
        var worked = plan.steps().stream()
                .filter(p -> p.step().equals(rework))
                .findFirst()
                .orElseThrow();
        var laid = plan.steps().stream()
                .filter(p -> p.step().equals(layUp))
                .findFirst()
                .orElseThrow();
        assertThat(laid.start()).isAfterOrEqualTo(worked.end());
        assertThat(look().result().step(rework).orElseThrow().title()).isEqualTo("Rework: Grind out, patch two plies.");
        assertThat(said(start(layUp))).contains("rework that is not finished");
        assertThat(start(rework).stands()).isTrue();
        teasel.clock.plusMinutes(95);
        new FinishStep(teasel.shop).finish(by("bo"), rework, List.of(), "", "", Optional.empty());
        assertThat(start(layUp).stands()).isTrue();
        DefinitionFolder out = new ExportFolder(teasel.shop).files(Teasel.PROJECT);
        Teasel two = Teasel.empty(new MemoryLog());
        two.clock.to("2026-04-20T12:00:00Z");
        assertThat(new ImportFolder(two.shop).of(out, false).taken()).isTrue();
        assertThat(two.shop.state().step(rework).finished()).isPresent();
    }

    @Test
    void should_open_the_steps_of_a_part_again_when_it_is_scrapped() {
        start(layUp);
        long seq = raise(false);
        settle("ada", seq, "scrap", "", "");
        assertThat(teasel.shop.state().step(layUp).started()).isEmpty();
        assertThat(isPlanned(layUp)).isTrue();
        assertThat(start(layUp).stands()).isTrue();
        assertThat(teasel.shop.state().step(layUp).started()).isPresent();
    }

    @Test
    void should_name_what_is_unknown() {
        Outcome lost = new RaiseDeviation(teasel.shop)
                .raise(
                        by("bo"),
                        new RaiseDeviation.Raised(Teasel.PROJECT + "/nothing", "Bent.", false),
                        List.of(),
                        BenchTime.NOW);
        assertThat(said(lost)).contains("a part, joint or step");
        assertThat(said(settle("ada", 1, "scrap", "", ""))).contains("raises no deviation");
    }
}
