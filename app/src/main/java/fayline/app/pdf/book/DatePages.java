package fayline.app.pdf.book;

import fayline.app.pdf.Markup;
import fayline.app.usecase.book.Book;
import fayline.app.usecase.book.Chapter;
import fayline.flow.reading.FitReading;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.flow.record.made.Draw;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.Mix;
import fayline.flow.record.trouble.Deviation;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes the same once more in the order of time: what inspectors ask for who look for a reasonable span of work. */
final class DatePages {
    private final Markup m;
    private final BookWords words;
    private final Book book;

    DatePages(Markup m, BookWords words, Book book) {
        this.m = m;
        this.words = words;
        this.book = book;
    }

    private record Line(Instant at, long seq, String by, String what) {}

    void write() {
        m.openWith("div", "class", "chapter", "id", "by-date").element("h1", "By date");
        List<Line> lines = new ArrayList<>();
        book.begun().forEach(c -> lines(c, lines));
        lines.sort(Comparator.comparing(Line::at).thenComparing(Line::seq));
        BookPdf.head(m, "Time", "Who", "What", "Entry");
        String day = "";
        for (Line l : lines) {
            if (!words.day(l.at()).equals(day)) {
                day = words.day(l.at());
                m.open("tr")
                        .openWith("td", "colspan", "4", "class", "strong")
                        .text(day)
                        .close()
                        .close();
            }
            m.open("tr").element("td", "n", words.clock(l.at())).element("td", l.by());
            m.element("td", l.what())
                    .element("td", "n", l.seq() == 0 ? "" : String.valueOf(l.seq()))
                    .close();
        }
        m.close().close().close();
    }

    private void lines(Chapter c, List<Line> lines) {
        String made = c.made().name();
        for (Chapter.Done s : c.steps()) {
            String step = s.step().title() + ", " + made;
            StepRecord r = s.record();
            r.started()
                    .ifPresent(t -> lines.add(new Line(t, r.startedBy(), words.people(r.people()), "began " + step)));
            r.finished()
                    .ifPresent(t -> lines.add(new Line(
                            t,
                            r.finishedBy(),
                            words.people(r.people()),
                            "ended " + step
                                    + (r.signed().isEmpty() ? "" : ", signed by " + words.person(r.signed())))));
            r.notes()
                    .forEach(n -> lines.add(new Line(
                            n.at(),
                            n.seq(),
                            words.person(n.by()),
                            "noted on " + step + ": " + words.note(n)
                                    + (n.photos().isEmpty()
                                            ? ""
                                            : " [pictures: " + n.photos().size() + "]"))));
        }
        for (Chapter.Done s : c.steps()) {
            made(s, s.step().title() + ", " + made, lines);
        }
        for (Deviation d : c.deviations()) {
            lines.add(new Line(d.at(), d.seq(), words.person(d.by()), "raised on " + made + ": " + d.text()));
            d.settled()
                    .ifPresent(x -> lines.add(new Line(
                            x.at(),
                            x.seq(),
                            words.person(x.by()),
                            "decided about entry " + d.seq() + ": "
                                    + x.disposition().words())));
        }
        for (TakenReading r : c.readings()) {
            lines.add(new Line(
                    r.at(),
                    r.seq(),
                    words.person(r.by()),
                    "read " + r.kind() + " of " + made + ", " + words.about(r) + ": " + r.value()));
        }
        c.fits()
                .forEach(f -> f.states()
                        .forEach(s -> s.stations()
                                .forEach(v -> v.typed()
                                        .forEach(t -> lines.add(
                                                fit(t, f.fit().name(), s.state().name()))))));
    }

    private void made(Chapter.Done s, String step, List<Line> lines) {
        for (Draw d : s.made().draws()) {
            lines.add(new Line(
                    d.at(), d.seq(), words.person(d.by()), "drew lot " + d.lot() + " " + d.amount() + " for " + step));
        }
        for (Mix x : s.made().mixes()) {
            String cup = x.resin().isEmpty() ? "not weighed" : x.resin() + " and " + x.hardener();
            lines.add(new Line(
                    x.at(),
                    x.seq(),
                    words.person(x.by()),
                    "mixed " + words.stuff(x.system()) + ", " + cup + ", for " + step));
        }
        for (Laid l : s.made().plies()) {
            lines.add(new Line(
                    l.at(),
                    l.seq(),
                    words.person(l.by()),
                    (l.skipped() ? "left out ply " : "laid ply ") + l.ply() + " of " + step));
        }
    }

    private Line fit(FitReading t, String fit, String state) {
        return new Line(
                t.at(),
                t.seq(),
                words.person(t.by()),
                "read " + t.kind().word() + " at " + t.station() + ", " + fit + ", " + state + ": " + t.typed());
    }
}
