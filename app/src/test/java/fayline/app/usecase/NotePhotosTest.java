package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static fayline.app.usecase.Teasel.step;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.folder.ExportFolder;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.folder.Imported;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.Photos;
import fayline.basis.finding.InputProblem;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.StepRecord;
import fayline.flow.record.payload.Photo;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos that go with a note: kept before the entry, once, and found again wherever the record goes. */
class NotePhotosTest {
    private static final String STEP = step("seat/1/bag-1");

    @TempDir
    Path temp;

    private final Teasel teasel = Teasel.readIn();
    private byte[] photo = {};

    @BeforeEach
    void takePhoto() throws IOException {
        photo = photo();
    }

    /** The photo with a place that the store's tests made. */
    private static byte[] photo() throws IOException {
        return Files.readAllBytes(
                Teasel.root().resolve("store/src/test/resources/fayline/store/file/picture/with-place.jpg"));
    }

    private static Outcome note(ShopRecord shop, Sent sent, String text, SentPicture... pictures) {
        return new NoteStep(shop).note(sent, STEP, text, List.of(pictures), Optional.empty());
    }

    private List<StepRecord.Note> notes() {
        return teasel.shop.state().step(STEP).notes();
    }

    @Test
    void should_keep_the_file_before_the_entry_and_name_it_in_it() {
        Outcome outcome = note(teasel.shop, by("ada"), "resin starved", SentPicture.of(photo, false, false));
        assertThat(outcome.kind()).isEqualTo(Outcome.Kind.RECORDED);
        Photo kept = notes().get(0).photos().get(0);
        assertThat(teasel.shop.entries(outcome.seq()).get(0).files()).containsExactly(kept.sha256());
        assertThat(teasel.shop.files().get(kept.sha256())).isPresent();
        assertThat(kept.widthPx()).isEqualTo(2000);
        assertThat(kept.heightPx()).isEqualTo(1500);
        assertThat(kept.bytes())
                .isEqualTo(teasel.shop.files().get(kept.sha256()).orElseThrow().length);
        assertThat(kept.original()).isFalse();
    }

    @Test
    void should_make_one_entry_and_one_file_when_the_same_note_is_sent_again() {
        Sent sent = by("ada");
        long seq = note(teasel.shop, sent, "one", SentPicture.of(photo, false, false))
                .seq();
        Outcome again = note(teasel.shop, sent, "one", SentPicture.of(photo, false, false));
        assertThat(again.kind()).isEqualTo(Outcome.Kind.ALREADY);
        assertThat(again.seq()).isEqualTo(seq);
        note(teasel.shop, by("bo"), "the same photo again", SentPicture.of(photo, false, false));
        assertThat(teasel.shop.files().hashes()).hasSize(1);
        assertThat(notes()).hasSize(2);
        Outcome other = note(teasel.shop, sent, "one", SentPicture.of(photo, true, false));
        assertThat(other.kind()).as("the same id saying something else").isEqualTo(Outcome.Kind.REFUSED);
        assertThat(note(teasel.shop, sent, "one").kind()).isEqualTo(Outcome.Kind.REFUSED);
    }

    @Test
    void should_take_a_photo_without_a_word_but_no_empty_note() {
        assertThat(note(teasel.shop, by("ada"), "", SentPicture.of(photo, false, false))
                        .stands())
                .isTrue();
        assertThat(note(teasel.shop, by("ada"), "").kind()).isEqualTo(Outcome.Kind.REFUSED);
    }

    @Test
    void should_record_nothing_when_one_of_several_photos_is_refused() {
        long before = teasel.log.head().seq();
        byte[] cut = Arrays.copyOf(photo, photo.length - 100);
        Outcome outcome = note(
                teasel.shop,
                by("ada"),
                "two",
                SentPicture.of(photo, false, false),
                SentPicture.of(cut, false, false),
                new SentPicture(
                        40_000_000,
                        () -> {
                            throw new IllegalStateException("read though it is too long");
                        },
                        true,
                        false,
                        Photo.People.UNSAID));
        assertThat(outcome.kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(outcome.problems()).extracting(InputProblem::key).containsExactly("photo 2", "photo 3");
        assertThat(outcome.problems().get(0).found()).contains("breaks off");
        assertThat(outcome.problems().get(1).found()).isEqualTo("a file of 40.0 MB");
        assertThat(outcome.problems().get(1).expected()).isEqualTo("at most 12 MB");
        assertThat(teasel.log.head().seq()).isEqualTo(before);
        assertThat(teasel.shop.files().hashes()).isEmpty();
        SentPicture[] seven =
                Collections.nCopies(7, SentPicture.of(photo, false, false)).toArray(SentPicture[]::new);
        assertThat(note(teasel.shop, by("ada"), "seven", seven).problems())
                .extracting(InputProblem::expected)
                .containsExactly("at most 6 with one note");
        assertThat(note(teasel.shop, by("nobody"), "x", SentPicture.of(photo, false, false))
                        .stands())
                .isFalse();
        assertThat(teasel.shop.files().hashes())
                .as("what is refused for another reason leaves no file either")
                .isEmpty();
    }

    @Test
    void should_add_no_entry_when_the_file_cannot_be_kept() {
        long before = teasel.log.head().seq();
        ShopRecord full = new ShopRecord(teasel.log, new Full(), teasel.clock);
        Sent sent = by("ada");
        Outcome outcome = note(full, sent, "x", SentPicture.of(photo, false, false));
        assertThat(outcome.kind()).isEqualTo(Outcome.Kind.UNKNOWN);
        assertThat(outcome.sentence()).contains("disk is full");
        assertThat(teasel.log.head().seq()).isEqualTo(before);
        assertThat(note(teasel.shop, sent, "x", SentPicture.of(photo, false, false))
                        .stands())
                .as("sent again once there is room")
                .isTrue();
    }

    /** A place with no room left. */
    private static final class Full implements EntryFiles {
        @Override
        public String put(byte[] content) {
            throw new CannotKeepException("The disk is full.", new IOException("no space"));
        }

        @Override
        public Optional<byte[]> get(String sha256) {
            return Optional.empty();
        }

        @Override
        public void remove(String sha256) {
            throw new CannotKeepException("The disk is full.", new IOException("no space"));
        }

        @Override
        public SortedSet<String> hashes() {
            return new TreeSet<>();
        }
    }

    @Test
    void should_keep_the_photos_when_the_words_are_corrected_and_show_none_of_a_note_taken_back() {
        long seq = note(teasel.shop, by("ada"), "wrong", SentPicture.of(photo, false, false))
                .seq();
        String hash = notes().get(0).photos().get(0).sha256();
        Photos photos = new Photos(teasel.shop);
        assertThat(photos.whole(hash)).isPresent();
        assertThat(photos.small(hash).orElseThrow().bytes()).hasSizeLessThan(60_000);
        new CorrectStep(teasel.shop).correct(by("ada"), seq, Mended.note("right"), "misheard");
        assertThat(notes().get(0).text()).isEqualTo("right");
        assertThat(notes().get(0).photos()).hasSize(1);
        new CorrectStep(teasel.shop).withdraw(by("ada"), seq, "somebody in it does not agree");
        assertThat(notes()).isEmpty();
        assertThat(photos.whole(hash)).isEmpty();
        assertThat(photos.small(hash)).isEmpty();
    }

    @Test
    void should_be_there_again_when_an_exported_folder_is_read_in_elsewhere() throws IOException {
        Sent sent = by("ada");
        new NoteStep(teasel.shop)
                .note(
                        sent,
                        STEP,
                        "",
                        List.of(
                                new SentPicture(photo.length, () -> photo, true, true, Photo.People.AGREED),
                                new SentPicture(photo.length, () -> photo, false, false, Photo.People.NOBODY)),
                        Optional.empty());
        Path out = temp.resolve("out");
        int files = new ExportFolder(teasel.shop).to(Teasel.PROJECT, out);
        try (Stream<Path> written = Files.walk(out).filter(Files::isRegularFile)) {
            assertThat(written.count()).isEqualTo(files);
        }
        Teasel other = Teasel.empty(new MemoryLog());
        other.clock.to("2026-04-20T12:00:00Z");
        Imported imported = new ImportFolder(other.shop).from(out, false);
        assertThat(imported.problems()).isEmpty();
        assertThat(other.shop.state().step(STEP).notes().get(0).photos())
                .isEqualTo(notes().get(0).photos())
                .hasSize(2);
        assertThat(other.shop.files().hashes()).isEqualTo(teasel.shop.files().hashes());
        assertThat(new ImportFolder(teasel.shop).from(out, false).events())
                .as("and where it came from it is known")
                .isZero();
    }

    @Test
    void should_read_nothing_in_when_a_photo_is_missing_or_was_changed() throws IOException {
        note(teasel.shop, by("ada"), "", SentPicture.of(photo, false, false));
        Path out = temp.resolve("out");
        new ExportFolder(teasel.shop).to(Teasel.PROJECT, out);
        Path file = out.resolve("history/photos")
                .resolve(notes().get(0).photos().get(0).sha256() + ".jpg");
        for (byte[] instead : new byte[][] {"<html>".getBytes(StandardCharsets.UTF_8), {}}) {
            if (instead.length == 0) {
                Files.delete(file);
            } else {
                Files.write(file, instead);
            }
            Teasel other = Teasel.empty(new MemoryLog());
            other.clock.to("2026-04-20T12:00:00Z");
            Imported imported = new ImportFolder(other.shop).from(out, false);
            assertThat(imported.taken()).isFalse();
            assertThat(imported.problems())
                    .anyMatch(p -> p.file().equals("history/record.yaml")
                            && p.line() > 0
                            && p.key().equals("photos")
                            && p.found().contains("no such file"));
            assertThat(other.shop.files().hashes()).isEmpty();
            assertThat(other.log.head().seq()).isZero();
        }
    }
}
