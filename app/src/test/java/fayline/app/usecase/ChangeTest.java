package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static fayline.app.usecase.Teasel.step;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.SaveFile;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.change.CheckPrint;
import fayline.app.usecase.change.DecideChange;
import fayline.app.usecase.change.FollowChange;
import fayline.app.usecase.change.Followed;
import fayline.app.usecase.change.RaiseChange;
import fayline.app.usecase.change.SettleChange;
import fayline.app.usecase.folder.ExportFolder;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.trouble.SettleDeviation;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.basis.finding.InputProblem;
import fayline.flow.card.PrintMark;
import fayline.flow.project.Definition;
import fayline.flow.record.Entry;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.change.Change;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.record.trouble.Rework;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A change of the design from raising to closing, on a machine without accounts. */
class ChangeTest {
    private static final String SEAT = "parts/seat.yaml";
    private static final String RIBS = "parts/ribs.yaml";
    private final Teasel teasel = Teasel.readIn();
    /** The seat's release is finished; of the ribs nothing is begun. */
    private final String rib = step("rib-left/1/release");

    private long raise(boolean structural, String... touches) {
        return new RaiseChange(teasel.shop)
                .raise(
                        by("bo"),
                        Teasel.PROJECT,
                        new RaiseChange.Raised(
                                "", "A thicker lip.", "The first one cracked.", List.of(touches), structural),
                        Optional.empty())
                .seq();
    }

    private Outcome decide(String person, long change, boolean accepted, String second) {
        return new DecideChange(teasel.shop)
                .decide(
                        by(person),
                        change,
                        new DecideChange.Decision(accepted, "By the load at the corner.", false, second),
                        Optional.empty());
    }

    private Outcome settle(long change, String how, String note, String... items) {
        return new SettleChange(teasel.shop)
                .settle(by("ada"), change, new SettleChange.Settling(List.of(items), how, note, ""), Optional.empty());
    }

    private Outcome close(long change) {
        return new SettleChange(teasel.shop).close(by("ada"), change, "", Optional.empty());
    }

    private Outcome start(String step, long seen, String by, String despite) {
        return new StartStep(teasel.shop)
                .start(
                        by(by).seeing(seen),
                        step,
                        new StartStep.Beginning(List.of("bo", "ada"), List.of(), "high edge", despite),
                        Optional.empty());
    }

    private Outcome start(String step) {
        return start(step, 0, "bo", "");
    }

    private void edit(String path, String from, String to) {
        String text = new String(
                Objects.requireNonNull(teasel.shop.state().files(Teasel.PROJECT).get(path))
                        .bytes(),
                StandardCharsets.UTF_8);
        assertThat(text).contains(from);
        assertThat(new SaveFile(teasel.shop)
                        .save(by("ada"), Teasel.PROJECT, path, text.replace(from, to))
                        .stands())
                .isTrue();
    }

    private void newDrawing() {
        edit(SEAT, "TE-100 rev B", "TE-100 rev C");
    }

    private Outcome dispose(String disposition, List<Rework> rework) {
        Deviation d = teasel.shop.state().trouble().open().get(0);
        return new SettleDeviation(teasel.shop)
                .settle(
                        by("ada"),
                        d.seq(),
                        new SettleDeviation.Decision(disposition, "", false, "", rework),
                        Optional.empty());
    }

    private Definition definition() {
        return teasel.shop.readDefinition(Teasel.PROJECT);
    }

    private Change now(long seq) {
        return teasel.shop.state().change().find(seq).orElseThrow();
    }

    private Followed followed(long seq) {
        return FollowChange.now(teasel.shop, definition(), now(seq));
    }

    private ShopView look() {
        return new LookAtShop(teasel.shop).look(Teasel.PROJECT).orElseThrow();
    }

    private boolean isPlanned(String step) {
        return look().plan().steps().stream().anyMatch(p -> p.step().equals(step));
    }

    private CheckPrint.Standing standing(PrintMark mark) {
        return new CheckPrint(teasel.shop).of(definition(), mark).standing();
    }

    private static String said(Outcome o) {
        return o.sentence() + o.problems().stream().map(InputProblem::toString).reduce("", String::concat);
    }

    private List<String> openItems(long change) {
        return followed(change).open().stream().map(l -> l.reached().item()).toList();
    }

    @Test
    void should_be_raised_by_anybody_and_say_what_is_missing() {
        long seq = raise(false, "part/seat");
        assertThat(now(seq).name()).isEqualTo("C-01");
        assertThat(now(raise(false, "laminate/thin")).name()).isEqualTo("C-02");
        Outcome nothing = new RaiseChange(teasel.shop)
                .raise(
                        by("bo"),
                        Teasel.PROJECT,
                        new RaiseChange.Raised("C-01", "", "", List.of("part/wing"), false),
                        Optional.empty());
        assertThat(said(nothing)).contains("which another change has", "\"part/wing\"", "write it down");
        assertThat(teasel.shop.state().change().changes()).hasSize(2);
    }

    @Test
    void should_be_decided_by_somebody_who_may_and_be_agreed_to_where_structure_is_touched() {
        long seq = raise(true, "part/seat");
        assertThat(said(decide("bo", seq, true, ""))).contains("crew list lets sign");
        assertThat(said(decide("ada", seq, true, "ada"))).contains("the same person twice");
        assertThat(decide("ada", seq, true, "").stands()).isTrue();
        assertThat(now(seq).stage()).isEqualTo(Change.Stage.WAITS_FOR_SECOND);
        assertThat(said(new DecideChange(teasel.shop).agree(by("ada"), seq, Optional.empty())))
                .contains("second person");
        assertThat(said(decide("ada", seq, false, ""))).contains("one that is open");
        assertThat(said(settle(seq, "unchanged", "Same.", "weight/seat"))).contains("waits for a second person");
        assertThat(said(close(seq))).contains("cannot be closed yet");
    }

    @Test
    void should_let_only_the_lead_begin_a_step_while_it_is_undecided() {
        long seq = raise(false, "part/rib-left");
        assertThat(isPlanned(rib)).isTrue();
        assertThat(said(start(rib))).contains("C-01", "to be decided", "Only the lead");
        assertThat(said(start(rib, 0, "bo", "It is urgent."))).contains("Only the lead");
        assertThat(start(rib, 0, "ada", "The release does not depend on it.").stands())
                .isTrue();
        Entry entry = teasel.shop.entry(teasel.log.head().seq()).orElseThrow();
        assertThat(entry.fields().text("despite")).startsWith("The release");
        decide("ada", seq, false, "");
        assertThat(start(step("rib-left/1/lay-up-1")).stands()).isTrue();
    }

    @Test
    void should_hold_steps_until_the_new_revision_is_in_the_definition() {
        long seq = raise(false, "part/rib-left");
        decide("ada", seq, true, "");
        assertThat(isPlanned(rib)).isFalse();
        // the other rib is made after it, a part further on
        assertThat(isPlanned(step("rib-right/1/lay-up-1"))).isFalse();
        assertThat(look().plan().unplanned())
                .filteredOn(u -> u.step().equals(rib))
                .singleElement()
                .satisfies(u -> assertThat(u.reason()).contains("new revision of", "under change C-01"));
        assertThat(look().audit()).allMatch(b -> b.admitted());
        assertThat(said(start(rib))).contains("C-01 is accepted", "not in the definition");

        assertThat(said(settle(seq, "revised", "", "made/rib-left"))).contains("as it was when the change was decided");
        assertThat(said(settle(seq, "done", "Done.", "made/rib-left"))).contains("of what stands in the definition");
        assertThat(said(settle(seq, "unchanged", "", "made/rib-left"))).contains("write it down");
        edit(RIBS, "flange: 15 mm", "flange: 18 mm");
        assertThat(settle(seq, "revised", "", "made/rib-left").stands()).isTrue();
        assertThat(isPlanned(rib)).isTrue();
        assertThat(start(rib).stands()).isTrue();
    }

    @Test
    void should_want_the_new_drawing_where_there_is_one() {
        long seq = raise(false, "part/seat");
        decide("ada", seq, true, "");
        edit(RIBS, "flange: 15 mm", "flange: 18 mm");
        assertThat(said(settle(seq, "revised", "", "made/seat"))).contains("still to drawing TE-100 rev B");
        newDrawing();
        assertThat(settle(seq, "revised", "", "made/seat").stands()).isTrue();
        assertThat(now(seq).settled("made/seat").orElseThrow().drawing()).isEqualTo("TE-100 rev C");
    }

    @Test
    void should_open_a_disposition_of_what_is_begun_and_plan_its_rework() {
        long seq = raise(false, "part/seat");
        Sent sent = by("ada");
        DecideChange.Decision accepted = new DecideChange.Decision(true, "By the load.", false, "");
        assertThat(new DecideChange(teasel.shop)
                        .decide(sent, seq, accepted, Optional.empty())
                        .stands())
                .isTrue();
        long head = teasel.log.head().seq();
        assertThat(new DecideChange(teasel.shop)
                        .decide(sent, seq, accepted, Optional.empty())
                        .stands())
                .isTrue();
        assertThat(teasel.log.head().seq()).as("sent twice").isEqualTo(head);

        Deviation d = teasel.shop.state().trouble().open().get(0);
        assertThat(d.made()).isEqualTo(step("seat"));
        assertThat(d.change()).isEqualTo(seq);
        assertThat(d.text()).isEqualTo("Made before change C-01: A thicker lip.");
        assertThat(followed(seq).missing()).anyMatch(m -> m.contains("its disposition is to be decided"));
        dispose("rework", List.of(new Rework("Two plies on the lip.", "1 h", "lay-up")));
        assertThat(followed(seq).missing()).anyMatch(m -> m.contains("its rework is not finished"));
        newDrawing();
        settle(seq, "revised", "", "made/seat");
        assertThat(isPlanned(step("seat/1/rework-1"))).isTrue();
    }

    @Test
    void should_be_closed_only_when_every_line_is_settled() {
        long seq = raise(false, "part/seat");
        decide("ada", seq, true, "");
        assertThat(said(close(seq))).contains("Weights, not settled", "Parts and joints made otherwise, not settled");
        newDrawing();
        settle(seq, "revised", "", "made/seat");
        assertThat(said(settle(seq, "unchanged", "Same.", "weight/nothing"))).contains("something that C-01 touches");
        List<String> open = openItems(seq);
        assertThat(open).contains("weight/seat", "mould/m-seat", "beside/fairing", "card/seat");
        settle(seq, "unchanged", "Looked at.", open.toArray(String[]::new));
        assertThat(openItems(seq)).isEmpty();
        assertThat(said(close(seq))).contains("Seat pan: its disposition is to be decided");
        dispose("use-as-is", List.of());
        assertThat(close(seq).stands()).isTrue();
        assertThat(now(seq).stage()).isEqualTo(Change.Stage.CLOSED);
        assertThat(said(close(seq))).contains("closed");
    }

    @Test
    void should_know_a_withdrawn_print_by_its_mark() {
        PrintMark old = PrintMark.of(definition(), "seat");
        assertThat(standing(old)).isEqualTo(CheckPrint.Standing.HOLDS);
        long seq = raise(false, "part/seat", "part/fairing");
        assertThat(standing(old)).isEqualTo(CheckPrint.Standing.HOLDS);
        PrintMark fairing = PrintMark.of(definition(), "fairing");
        assertThat(fairing.drawing()).isEmpty();
        decide("ada", seq, true, "");
        assertThat(standing(old)).isEqualTo(CheckPrint.Standing.WITHDRAWN);
        assertThat(standing(fairing)).isEqualTo(CheckPrint.Standing.WITHDRAWN);
        newDrawing();
        settle(seq, "revised", "", "made/seat", "made/fairing");
        assertThat(standing(old)).isEqualTo(CheckPrint.Standing.WITHDRAWN);
        assertThat(standing(PrintMark.of(definition(), "seat"))).isEqualTo(CheckPrint.Standing.HOLDS);
        // without a drawing the definition tells what was printed before the new revision
        assertThat(standing(fairing)).isEqualTo(CheckPrint.Standing.WITHDRAWN);
        assertThat(standing(PrintMark.of(definition(), "fairing"))).isEqualTo(CheckPrint.Standing.HOLDS);
        assertThat(standing(PrintMark.of("rib-left", "", old.definition()))).isEqualTo(CheckPrint.Standing.OLDER);
        assertThat(standing(PrintMark.of("seat", "TE-100 rev C", "0123456789ab")))
                .isEqualTo(CheckPrint.Standing.NOT_OURS);
        assertThat(standing(PrintMark.of("wing", "", old.definition()))).isEqualTo(CheckPrint.Standing.NO_SUCH_PART);
    }

    @Test
    void should_read_back_the_mark_that_it_prints() {
        PrintMark mark = PrintMark.of(definition(), "seat");
        assertThat(PrintMark.parse("  " + mark.text() + " ")).contains(mark);
        assertThat(PrintMark.parse(PrintMark.of(definition(), "fairing").text()))
                .contains(PrintMark.of(definition(), "fairing"));
        assertThat(PrintMark.parse("seat | TE-100 rev B")).isEmpty();
        assertThat(PrintMark.parse("seat | TE-100 rev B | xyz")).isEmpty();
    }

    @Test
    void should_refuse_a_start_from_a_card_that_was_opened_before_the_change() {
        long seen = teasel.log.head().seq();
        long seq = raise(false, "part/rib-left");
        decide("ada", seq, true, "");
        edit(RIBS, "flange: 15 mm", "flange: 18 mm");
        settle(seq, "revised", "", "made/rib-left");
        assertThat(said(start(rib, seen, "bo", ""))).contains("withdrawn by change C-01", "Do not use it");
        assertThat(start(rib, teasel.log.head().seq(), "bo", "").stands()).isTrue();
    }

    @Test
    void should_be_taken_back_whole_and_never_altered() {
        long seq = raise(false, "part/seat");
        long decision = decide("ada", seq, false, "").seq();
        CorrectStep correct = new CorrectStep(teasel.shop);
        assertThat(correct.withdraw(by("ada"), decision, "Looked again.").stands())
                .isTrue();
        assertThat(now(seq).stage()).isEqualTo(Change.Stage.RAISED);
    }

    @Test
    void should_be_the_same_when_a_folder_is_carried_away_and_read_in_elsewhere() {
        long seq = raise(false, "part/seat");
        decide("ada", seq, true, "");
        newDrawing();
        settle(seq, "revised", "", "made/seat");
        settle(seq, "done", "Weighed anew.", "weight/seat");

        Teasel two = Teasel.empty(new MemoryLog());
        two.clock.to("2026-04-20T12:00:00Z");
        assertThat(new ImportFolder(two.shop)
                        .of(new ExportFolder(teasel.shop).files(Teasel.PROJECT), false)
                        .taken())
                .isTrue();
        Change there = two.shop.state().change().find(Teasel.PROJECT, "C-01").orElseThrow();
        Change here = now(seq);
        assertThat(there.stage()).isEqualTo(here.stage());
        assertThat(there.touches()).isEqualTo(here.touches());
        assertThat(there.verdict().orElseThrow().items())
                .isEqualTo(here.verdict().orElseThrow().items());
        assertThat(there.verdict().orElseThrow().withdraws())
                .isEqualTo(here.verdict().orElseThrow().withdraws());
        assertThat(there.settled().keySet()).isEqualTo(here.settled().keySet());
        assertThat(there.settled("made/seat").orElseThrow().drawing()).isEqualTo("TE-100 rev C");
        assertThat(two.shop.state().trouble().open())
                .singleElement()
                .satisfies(d -> assertThat(d.change()).isEqualTo(there.seq()));
    }
}
