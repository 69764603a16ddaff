package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static fayline.app.usecase.Teasel.step;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.EraseEntry;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.folder.ExportFolder;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.journal.Journal;
import fayline.app.usecase.journal.RecordTree;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.view.Photos;
import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.StepRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Personal text and pictures taken out of the record, and all that goes on without them. */
class EraseEntryTest {
    private static final String STEP = step("seat/1/bag-1");
    private static final String SECRET = "Bo has the flu";

    @TempDir
    Path temp;

    private final Teasel teasel = Teasel.readIn();
    private final EraseEntry erase = new EraseEntry(teasel.shop);

    private long note(Sent sent, String text, SentPicture... pictures) {
        Outcome outcome = new NoteStep(teasel.shop).note(sent, STEP, text, List.of(pictures), Optional.empty());
        assertThat(outcome.stands()).as(outcome.sentence()).isTrue();
        return outcome.seq();
    }

    private Outcome mend(long seq, String text) {
        return new CorrectStep(teasel.shop).correct(by("ada"), seq, Mended.note(text), "said more of Bo");
    }

    private StepRecord.Note onlyNote() {
        return teasel.shop.state().step(STEP).notes().get(0);
    }

    @Test
    void should_take_out_text_picture_and_corrections_and_say_who_when_and_why() throws IOException {
        byte[] photo = Files.readAllBytes(
                Teasel.root().resolve("store/src/test/resources/fayline/store/file/picture/with-place.jpg"));
        Sent sent = by("ada");
        long seq = note(sent, SECRET, SentPicture.of(photo, false, false));
        String hash = onlyNote().photos().get(0).sha256();
        assertThat(mend(seq, SECRET + " again").stands()).isTrue();
        Sent once = by("ada");
        Outcome outcome = erase.erase(once, seq, "Because Bo asked for it");

        assertThat(outcome.kind()).isEqualTo(Outcome.Kind.RECORDED);
        assertThat(onlyNote().shown(java.time.ZoneOffset.UTC)).matches("erased on .* because Bo asked for it");
        assertThat(onlyNote().erased().orElseThrow().by()).isEqualTo("ada");
        assertThat(teasel.shop.entries(1).toString()).doesNotContain(SECRET, "said more of Bo");
        assertThat(new Photos(teasel.shop).whole(hash)).isEmpty();
        assertThat(Chain.check(teasel.shop.entries(1), Optional.empty())).isEmpty();
        long end = teasel.log.head().seq();
        assertThat(erase.erase(once, seq, "Because Bo asked for it")).isEqualTo(Outcome.already(outcome.seq()));
        assertThat(erase.erase(once, 1, "other").kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(erase.erase(by("ada"), seq, "twice").sentence()).contains("erased before");
        assertThat(mend(seq, SECRET).sentence()).contains("was erased");
        assertThat(mend(seq + 1, SECRET).sentence()).contains("was erased");
        assertThat(teasel.log.head().seq()).isEqualTo(end);
        Outcome resent = new NoteStep(teasel.shop)
                .note(sent, STEP, SECRET, List.of(SentPicture.of(photo, false, false)), Optional.empty());
        assertThat(resent.kind()).as("a phone that sends it again").isEqualTo(Outcome.Kind.ALREADY);
        assertThat(teasel.shop.entries(1).toString()).doesNotContain(SECRET);
    }

    @Test
    void should_refuse_when_it_is_work_a_correction_absent_or_without_a_reason() {
        long seq = note(by("ada"), SECRET);
        long fix = mend(seq, "better").seq();
        long file = teasel.shop.entries(1).stream()
                .filter(e -> e.kind().equals(EntryKind.FILE_SAVED.key()))
                .findFirst()
                .orElseThrow()
                .seq();
        long end = teasel.log.head().seq();
        assertThat(erase.erase(by("ada"), file, "x").sentence()).contains("never erased");
        assertThat(erase.erase(by("ada"), fix, "x").sentence()).contains("corrects entry " + seq);
        assertThat(erase.erase(by("ada"), 9999, "x").sentence()).contains("no entry 9999");
        assertThat(erase.erase(by("ada"), seq, " ").problems()).hasSize(1);
        assertThat(erase.erase(by("nobody"), seq, "x").problems()).hasSize(1);
        assertThat(teasel.log.head().seq()).isEqualTo(end);
    }

    @Test
    void should_be_found_no_more_by_words_and_be_told_by_the_journal() {
        long seq = note(by("ada"), SECRET);
        Journal journal = new Journal(teasel.shop, new RecordTree(teasel.shop));
        assertThat(journal.leaf(0, List.of(), "the flu", 9).entries()).hasSize(1);
        assertThat(journal.entry(seq).orElseThrow().mayErase()).isTrue();
        erase.erase(by("ada"), seq, "Bo asked");
        assertThat(journal.leaf(0, List.of(), "the flu", 9).entries()).isEmpty();
        assertThat(journal.entry(seq).orElseThrow().mayErase()).isFalse();
        assertThat(journal.leaf(0, List.of(EntryKind.ERASED), "", 9).entries())
                .extracting(Entry::by)
                .containsExactly("ada");
    }

    @Test
    void should_be_left_out_of_an_exported_folder_and_not_come_back_from_an_older_one() throws IOException {
        long seq = note(by("ada"), SECRET);
        note(by("bo"), "bag leaks");
        Path old = temp.resolve("old");
        new ExportFolder(teasel.shop).to(Teasel.PROJECT, old);
        erase.erase(by("ada"), seq, "Bo asked");
        Path fresh = temp.resolve("fresh");
        new ExportFolder(teasel.shop).to(Teasel.PROJECT, fresh);
        assertThat(texts(old)).contains(SECRET);
        assertThat(texts(fresh)).doesNotContain(SECRET).contains("bag leaks");
        long end = teasel.log.head().seq();
        new ImportFolder(teasel.shop).from(old, false);
        assertThat(teasel.shop.entries(1).toString()).doesNotContain(SECRET);
        assertThat(teasel.shop.state().step(STEP).notes()).hasSize(2);
        assertThat(teasel.shop.entries(end + 1)).noneMatch(e -> e.kind().equals(EntryKind.STEP_NOTED.key()));
    }

    private static String texts(Path folder) throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path p : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
                all.append(Files.readString(p, StandardCharsets.UTF_8));
            }
        }
        return all.toString();
    }
}
