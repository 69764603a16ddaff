package fayline.app.usecase.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.pdf.book.SampleBooks;
import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.InputProblem;
import fayline.flow.project.Definition;
import fayline.flow.project.local.LocalStage;
import fayline.flow.record.inspect.FoundFault;
import fayline.flow.record.inspect.StageGate;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Visits, findings and what comes of them, on the demonstration's record. */
class InspectTest {
    private static final Path PHOTO = Path.of("../store/src/test/resources/fayline/store/file/picture/with-place.jpg");
    private static final String CLOSING = "ousel-1/deck-to-hull/1/list";
    private ShopRecord shop = SampleBooks.none();

    @BeforeEach
    void readIn() throws Exception {
        shop = SampleBooks.demo();
    }

    private static String said(Outcome o) {
        return o.sentence() + o.problems().stream().map(InputProblem::sentence).reduce("", String::concat);
    }

    private Outcome visit(Sent sent, String who, boolean own, Pictures pictures) {
        return new HoldVisit(shop)
                .hold(
                        sent,
                        "ousel-1",
                        new HoldVisit.Held("st-hull", who, own, "Bonds looked at.", "steel rule", "aft, left side up"),
                        pictures,
                        Optional.empty());
    }

    private Pictures pictures(Sent sent, int n) throws Exception {
        byte[] photo = Files.readAllBytes(PHOTO);
        return Pictures.sent(java.util.Collections.nCopies(n, SentPicture.of(photo, false, false)), shop, sent);
    }

    private Outcome raise(long visit, String text) {
        return new RaiseFinding(shop)
                .raise(Sent.once("runa"), visit, "hull-bottom", text, Pictures.NONE, Optional.empty());
    }

    private Outcome mend(String by, long finding) {
        return new AnswerFinding(shop)
                .mend(Sent.once(by), finding, "Ground out and bonded anew.", Pictures.NONE, Optional.empty());
    }

    private Outcome sign(String by, long finding, String who, boolean accepted) {
        return new AnswerFinding(shop)
                .sign(Sent.once(by), finding, who, accepted, accepted ? "" : "Still hollow.", Optional.empty());
    }

    private FoundFault fault(long seq) {
        return shop.state().inspect().fault(seq).orElseThrow();
    }

    private String closing() {
        Outcome o = new StartStep(shop)
                .start(Sent.once("runa"), CLOSING, List.of("runa", "tove"), List.of(), "", Optional.empty());
        return o.kind() == Outcome.Kind.RECORDED ? "begun" : said(o);
    }

    @Test
    void should_number_findings_by_visit_and_lead_from_finding_to_mending_to_signature() {
        long visit =
                visit(Sent.once("runa"), "An inspector", false, Pictures.NONE).seq();
        long first = raise(visit, "Hollow at frame 4.").seq();
        long second = raise(visit, "A screw lies in the bilge.").seq();

        assertThat(fault(first).number()).isEqualTo("2.1");
        assertThat(fault(second).number()).isEqualTo("2.2");
        assertThat(said(sign("runa", first, "", true))).contains("one that was put right");
        assertThat(mend("bram", first).stands()).isTrue();
        assertThat(fault(first).waitsForSignature()).isTrue();
        assertThat(said(sign("bram", first, "", true))).contains("somebody other than Bram");
        assertThat(said(sign("runa", first, "bram", true))).contains("somebody other than Bram");
        assertThat(said(sign("ned", first, "", true))).contains("crew list lets sign");
        assertThat(sign("runa", first, "An inspector", false).stands()).isTrue();
        assertThat(fault(first).isOpen()).isTrue();
        assertThat(mend("bram", first).stands()).isTrue();
        assertThat(sign("runa", first, "An inspector", true).stands()).isTrue();
        assertThat(fault(first).isOpen()).isFalse();
        assertThat(fault(first).chain()).hasSize(4);
        assertThat(fault(second).isOpen()).isTrue();
    }

    @Test
    void should_give_no_number_twice_and_take_what_is_sent_twice_once() {
        Sent sent = Sent.once("runa");
        long visit = visit(sent, "An inspector", false, Pictures.NONE).seq();
        assertThat(visit(sent, "An inspector", false, Pictures.NONE).kind()).isEqualTo(Outcome.Kind.ALREADY);
        long first = raise(visit, "Hollow.").seq();
        assertThat(said(new CorrectStep(shop).withdraw(Sent.once("runa"), first, "no such thing")))
                .contains("A finding is not taken back");
        assertThat(fault(raise(visit, "Another.").seq()).number()).isEqualTo("2.2");
        mend("bram", first);
        long signature = sign("runa", first, "An inspector", true).seq();
        assertThat(fault(first).isOpen()).isFalse();
        assertThat(new CorrectStep(shop)
                        .withdraw(Sent.once("runa"), signature, "signed on the wrong line")
                        .stands())
                .isTrue();
        assertThat(fault(first).isOpen()).isTrue();
        assertThat(said(visit(Sent.once("runa"), "", false, Pictures.NONE))).contains("who");
    }

    @Test
    void should_hold_the_closing_until_somebody_looked_pictures_are_there_and_nothing_is_open() throws Exception {
        assertThat(closing()).contains("Nobody from outside has looked", "asks for 4 pictures", "there are 0");
        Sent own = Sent.once("runa");
        assertThat(visit(own, "", true, pictures(own, 4)).stands()).isTrue();
        assertThat(closing()).contains("Nobody from outside has looked").doesNotContain("asks for 4");
        long visit =
                visit(Sent.once("runa"), "An inspector", false, Pictures.NONE).seq();
        long found = raise(visit, "Hollow at frame 4.").seq();
        assertThat(closing()).contains("Finding 3.1 is open: Hollow at frame 4.");
        mend("bram", found);
        assertThat(closing()).contains("Finding 3.1 is open");
        sign("runa", found, "An inspector", true);

        Definition d = shop.definition("ousel-1").orElseThrow();
        LocalStage stage = d.local().stage("st-hull").orElseThrow();
        assertThat(new StageGate(d, shop.state().inspect()).missing(stage)).isEmpty();
        assertThat(closing()).doesNotContain("Finding", "looked", "pictures");
    }

    @Test
    void should_not_count_pictures_that_tell_no_scale_or_direction() throws Exception {
        Sent sent = Sent.once("runa");
        new HoldVisit(shop)
                .hold(
                        sent,
                        "ousel-1",
                        new HoldVisit.Held("st-hull", "", true, "", "", "aft"),
                        pictures(sent, 4),
                        Optional.empty());
        assertThat(closing()).contains("there are 0");
    }
}
