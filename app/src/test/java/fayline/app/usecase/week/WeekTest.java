package fayline.app.usecase.week;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.pdf.book.SampleBooks;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.hours.LookAtHours;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.app.usecase.week.WeekDraft.Fact;
import fayline.app.usecase.week.WeekDraft.Private;
import fayline.flow.record.payload.Photo;
import fayline.flow.result.hours.BookedTime;
import fayline.flow.result.hours.HoursResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is drafted of the demonstration's weeks, held against its record. */
class WeekTest {
    private static final Path PHOTO = Path.of("../store/src/test/resources/fayline/store/file/picture/with-place.jpg");
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
    private static ShopRecord demo = SampleBooks.none();
    private static List<ShopView> views = List.of();

    @BeforeAll
    static void readIn() throws Exception {
        demo = SampleBooks.demo();
        views = List.of(new LookAtShop(demo).look("").orElseThrow());
    }

    private static WeekDraft draft(LocalDate monday, Private may) {
        return DraftWeek.of(views.get(0), monday, may);
    }

    private static List<WeekDraft> all(Private may) {
        return Stream.iterate(FIRST, d -> d.plusDays(7))
                .limit(9)
                .map(d -> draft(d, may))
                .toList();
    }

    private static List<String> crew() {
        return views.get(0).definition().shop().people().stream()
                .map(p -> p.name())
                .toList();
    }

    @Test
    void should_tell_by_part_what_was_done_on_which_day() {
        String text = draft(FIRST, Private.NOTHING).text();

        assertThat(text)
                .contains("Hull bottom. On Wednesday we cut the kit, released the mould and tested the bag for leaks.")
                .contains("On Thursday we laid up 8 plies and bagged it.")
                .contains("It weighs 11.32 kg")
                .contains("took longer or came later than planned: something failed and was done again");
        // The inner plies went down a week later, and the trim after them.
        assertThat(text.substring(text.indexOf("\n\nHull bottom."), text.indexOf("\n\nMain spar, left.")))
                .doesNotContain("With that it is done.");
        assertThat(draft(FIRST.plusDays(7), Private.NOTHING).text()).contains("With that it is done.");
        assertThat(draft(LocalDate.of(2025, 6, 2), Private.NOTHING).text())
                .isEqualTo("Nothing was recorded in this week.");
        assertThat(draft(LocalDate.of(2026, 3, 2), Private.NOTHING).text()).contains("Planned for the week after: ");
    }

    @Test
    void should_hold_no_figure_that_is_neither_in_an_entry_as_typed_nor_added_up_from_the_record() {
        HoursResult hours = LookAtHours.of(views.get(0));
        int checked = 0;
        for (WeekDraft d : all(new Private(true, true, true))) {
            String known = d.facts().stream().map(Fact::shown).collect(Collectors.joining(" "))
                    + views.get(0).definition().parts().stream()
                            .map(p -> p.name())
                            .collect(Collectors.joining(" "))
                    + views.get(0).result().steps().stream().map(s -> s.title()).collect(Collectors.joining(" "));
            for (String figure : TellWeek.figures(d.text())) {
                assertThat(TellWeek.figures(known))
                        .as(d.monday() + ": " + figure + " in " + d.text())
                        .contains(figure);
                checked++;
            }
            for (Fact f : d.facts()) {
                if (f.entry() > 0) {
                    assertThat(demo.entries(f.entry()).get(0).fields().canonical())
                            .as(f.from())
                            .contains(f.shown().replace("\"", "\\\""));
                }
            }
            double week =
                    LookAtHours.between(
                                    hours,
                                    Optional.of(d.monday()),
                                    Optional.of(d.monday().plusDays(6)))
                            .booked()
                            .stream()
                            .mapToDouble(BookedTime::minutes)
                            .sum();
            if (week > 0) {
                assertThat(d.text()).contains(WeekWords.hours(week) + " hours went into the week");
            }
        }
        assertThat(checked).isGreaterThan(30);
    }

    @Test
    void should_leave_names_and_notes_out_unless_asked_for() {
        for (WeekDraft d : all(Private.NOTHING)) {
            assertThat(TellWeek.names(views.get(0).definition(), new TellWeek.Told(d.title(), d.text(), List.of())))
                    .as(d.text())
                    .isEmpty();
            assertThat(d.text()).doesNotContain("From the notes", "wrote:");
        }
        assertThat(draft(FIRST, new Private(true, false, false)).text())
                .contains("Bram")
                .doesNotContain("wrote:");
        assertThat(draft(FIRST, new Private(false, true, false)).text())
                .contains("From the notes: \"The chine plies want two people on the bow.\"");
        assertThat(draft(FIRST, new Private(true, true, false)).text()).contains("Runa wrote: \"The chine plies");
    }

    @Test
    void should_praise_nothing() {
        all(new Private(true, false, false))
                .forEach(d -> assertThat(d.text().toLowerCase(java.util.Locale.ROOT))
                        .doesNotContain("!", "great", "excellent", "proud", "well done", "success"));
    }

    @Test
    void should_hold_pictures_back_of_which_nobody_said_that_nobody_is_in_them() throws Exception {
        ShopRecord shop = SampleBooks.demo();
        byte[] photo = Files.readAllBytes(PHOTO);
        for (Photo.People people : List.of(Photo.People.UNSAID, Photo.People.NOBODY)) {
            Outcome o = new NoteStep(shop)
                    .note(
                            Sent.once("bram"),
                            "ousel-1/float-shell-left/1/bag-1",
                            "",
                            List.of(new SentPicture(
                                    photo.length, () -> photo, people == Photo.People.NOBODY, false, people)),
                            Optional.empty());
            assertThat(o.stands()).as(o.sentence() + o.problems()).isTrue();
        }
        ShopView view = new LookAtShop(shop).look("").orElseThrow();
        LocalDate week = LocalDate.of(2026, 3, 2);
        WeekDraft careful = DraftWeek.of(view, week, Private.NOTHING);
        WeekDraft all = DraftWeek.of(view, week, new Private(false, false, true));

        assertThat(careful.pictures()).hasSize(1).allMatch(p -> p.photo().people() == Photo.People.NOBODY);
        assertThat(careful.heldBack()).isEqualTo(1);
        assertThat(all.pictures()).hasSize(2);
        TellWeek telling = new TellWeek(shop);
        String held = all.pictures().stream()
                .map(p -> p.photo().sha256())
                .filter(h -> !h.equals(careful.pictures().get(0).photo().sha256()))
                .findFirst()
                .orElseThrow();
        assertThat(telling.tell(
                                Sent.once("runa"),
                                "ousel-1",
                                careful,
                                Private.NOTHING,
                                new TellWeek.Told("A week", "Text.", List.of(held)))
                        .stands())
                .isFalse();
    }

    @Test
    void should_settle_what_was_edited_refuse_a_name_and_ask_about_a_strange_figure() throws Exception {
        ShopRecord shop = SampleBooks.demo();
        WeekDraft d = draft(FIRST, Private.NOTHING);
        TellWeek telling = new TellWeek(shop);

        Outcome named = telling.tell(
                Sent.once("runa"),
                "ousel-1",
                d,
                Private.NOTHING,
                new TellWeek.Told("Week", crew().get(1) + " did it.", List.of()));
        assertThat(named.stands()).isFalse();
        Outcome strange = telling.tell(
                Sent.once("runa"),
                "ousel-1",
                d,
                Private.NOTHING,
                new TellWeek.Told("Week", "It took 777 hours.", List.of()));
        assertThat(strange.stands()).isTrue();
        assertThat(strange.cautions())
                .singleElement()
                .satisfies(c -> assertThat(c.sentence()).contains("777"));
        Outcome plain = telling.tell(
                Sent.once("runa"), "ousel-1", d, Private.NOTHING, new TellWeek.Told(d.title(), d.text(), List.of()));
        assertThat(plain.cautions()).isEmpty();
        assertThat(telling.kept("ousel-1")).hasSize(2);
        assertThat(telling.kept("ousel-1").get(0).told().text()).isEqualTo(d.text());
    }
}
