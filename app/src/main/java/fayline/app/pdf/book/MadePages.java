package fayline.app.pdf.book;

import fayline.app.pdf.Markup;
import fayline.app.usecase.book.Chapter;
import fayline.app.usecase.book.Chapter.Done;
import fayline.app.usecase.traveller.MixVerdict;
import fayline.flow.record.inspect.FoundFault;
import fayline.flow.record.made.Draw;
import fayline.flow.record.made.Mix;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.record.trouble.Settlement;
import java.util.ArrayList;
import java.util.List;

/** Writes what went into a part, lots and mixes, and what came out other than drawn. */
final class MadePages {
    private final Markup m;
    private final BookWords words;
    private final Chapter chapter;
    private final ChapterPhotos photos;

    MadePages(Markup m, BookWords words, Chapter chapter, ChapterPhotos photos) {
        this.m = m;
        this.words = words;
        this.chapter = chapter;
        this.photos = photos;
    }

    void write() {
        draws();
        mixes();
        deviations();
        faults();
    }

    private void faults() {
        if (chapter.faults().isEmpty()) {
            return;
        }
        m.element("h2", "Found by inspection");
        for (FoundFault f : chapter.faults()) {
            m.open("div", "box")
                    .element("p", "strong", "Finding " + f.number() + (f.isOpen() ? ", OPEN: " : ": ") + f.text());
            String line = "Raised " + words.at(f.at()) + ", " + words.person(f.by()) + ", entry " + f.seq();
            m.element("p", "small", line);
            f.photos().forEach(p -> photos.write(m, p, line));
            for (FoundFault.Step s : f.chain()) {
                String what =
                        f.mended().contains(s) ? "Put right" : s.accepted() ? "Accepted and signed" : "Not accepted";
                String who = s.who().isEmpty() ? words.person(s.by()) : s.who() + " (named, not proven)";
                String told = what + " " + words.at(s.at()) + ", " + who + ", entry " + s.seq();
                m.element("p", told + (s.text().isEmpty() ? "" : ": " + s.text()));
                s.photos().forEach(p -> photos.write(m, p, told));
            }
            m.close();
        }
    }

    private void draws() {
        if (chapter.steps().stream().allMatch(s -> s.made().draws().isEmpty())) {
            return;
        }
        m.element("h2", "Lots");
        BookPdf.head(m, "Lot", "Of", "Amount", "For", "When", "By", "Entry");
        for (Done s : chapter.steps()) {
            for (Draw d : s.made().draws()) {
                m.open("tr").element("td", "strong", d.lot()).element("td", words.lotOf(d.lot(), d.component()));
                m.element("td", d.amount()).element("td", s.step().title());
                m.element("td", words.at(d.at())).element("td", words.person(d.by()));
                m.element("td", "n", String.valueOf(d.seq())).close();
                below(d.override() ? "Out of date, used all the same: " + d.why() : d.why(), 7);
            }
        }
        m.close().close();
    }

    private void below(String text, int columns) {
        if (!text.isBlank()) {
            m.open("tr", "below")
                    .openWith("td", "colspan", String.valueOf(columns))
                    .text(text)
                    .close()
                    .close();
        }
    }

    private void mixes() {
        if (chapter.steps().stream().allMatch(s -> s.made().mixes().isEmpty())) {
            return;
        }
        m.element("h2", "Mixes");
        BookPdf.head(m, "Cup", "System", "Resin", "Hardener", "Ratio", "When", "By", "Entry");
        for (Done s : chapter.steps()) {
            for (Mix x : s.made().mixes()) {
                m.open("tr").element("td", s.step().title() + ", " + x.batch()).element("td", words.stuff(x.system()));
                m.element("td", amount(x.resin(), x.resinLot())).element("td", amount(x.hardener(), x.hardenerLot()));
                m.element("td", ratio(x)).element("td", words.at(x.at())).element("td", words.person(x.by()));
                m.element("td", "n", String.valueOf(x.seq())).close();
                below(x.why(), 8);
            }
        }
        m.close().close();
    }

    private static String amount(String typed, String lot) {
        return (typed.isEmpty() ? "not weighed" : typed) + (lot.isEmpty() ? "" : ", lot " + lot);
    }

    private String ratio(Mix x) {
        return words.definition()
                .systems()
                .find(x.system())
                .flatMap(s -> MixVerdict.of(s, x.resin(), x.hardener()))
                .map(v -> (v.inTolerance() ? "" : "OUTSIDE: ") + v.sentence())
                .orElse("no scale reading");
    }

    private void deviations() {
        if (chapter.deviations().isEmpty()) {
            return;
        }
        m.element("h2", "Deviations");
        for (Deviation d : chapter.deviations()) {
            String line = "Deviation, entry " + d.seq() + ", " + words.at(d.at()) + ", " + words.person(d.by())
                    + (d.isOfStep() ? ", at " + words.step(d.about()) : "");
            m.open("div", "box").element("p", "strong", d.text().isEmpty() ? "Told by pictures" : d.text());
            m.element("p", "small", line);
            BookPdf.facts(m, facts(d));
            d.photos().forEach(p -> photos.write(m, p, line));
            m.close();
        }
    }

    private List<List<String>> facts(Deviation d) {
        List<List<String>> facts = new ArrayList<>();
        facts.add(List.of("Touches structure", d.structural() ? "yes" : "not said"));
        if (d.settled().isEmpty()) {
            facts.add(List.of("Decided", "NOT YET: it is open"));
            return facts;
        }
        Settlement s = d.settled().get();
        facts.add(List.of(
                "Decided",
                s.disposition().words() + ", " + words.at(s.at()) + ", " + words.person(s.by()) + ", entry "
                        + s.seq()));
        facts.add(List.of("Note", s.note()));
        facts.add(List.of(
                "Second person",
                s.second().isEmpty()
                        ? d.structural() ? "NOT YET: it is open" : ""
                        : words.person(s.second()) + (s.agreed() > 0 ? ", entry " + s.agreed() : "")));
        s.rework().forEach(r -> facts.add(List.of("Work that puts it right", r.what() + ", " + r.time())));
        return facts;
    }
}
