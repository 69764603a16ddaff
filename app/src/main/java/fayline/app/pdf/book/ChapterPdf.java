package fayline.app.pdf.book;

import fayline.app.drawing.MassBar;
import fayline.app.drawing.PlyStackDrawing;
import fayline.app.drawing.ZoneDrawing;
import fayline.app.pdf.Markup;
import fayline.app.usecase.book.Chapter;
import fayline.app.usecase.book.Chapter.Done;
import fayline.basis.units.Entered;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.Zone;
import fayline.flow.record.StepRecord;
import fayline.flow.record.made.Laid;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.quantity.PlyCut;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes the chapter of one part or joint. */
final class ChapterPdf {
    private static final double DRAWN = 0.9;
    private static final int MOST_LISTED = 12;
    private final Markup m;
    private final BookWords words;
    private final Chapter chapter;
    private final ChapterPhotos photos;

    ChapterPdf(Markup m, BookWords words, Chapter chapter, ChapterPhotos photos) {
        this.m = m;
        this.words = words;
        this.chapter = chapter;
        this.photos = photos;
    }

    void write(String id) {
        m.openWith("div", "class", "chapter", "id", id)
                .element("h1", chapter.made().name());
        m.element("p", "path", String.join(" \u203a ", chapter.above()));
        facts();
        new ChangePages(m, words).brief(chapter.made().id(), chapter.changes());
        zones();
        plies();
        steps();
        signed();
        new MadePages(m, words, chapter, photos).write();
        new ReadingPages(m, words, chapter).write();
        OutsidePages outside = new OutsidePages(m, words);
        outside.coupons(chapter.coupons());
        outside.orders("Made outside", chapter.orders());
        mass();
        chapter.fits().forEach(f -> new FitPages(m, words, f).write());
        notes();
        mendings();
        late();
        m.close();
    }

    private void facts() {
        List<List<String>> facts = new ArrayList<>();
        if (chapter.made() instanceof Part p) {
            facts.add(List.of("Hand", p.hand() == Hand.NONE ? "" : p.hand().key()));
            facts.add(List.of(
                    "Mould", p.mould().map(x -> words.places(List.of(x))).orElse("")));
            facts.add(List.of("Drawing", p.drawing()));
            facts.add(List.of("Lies", p.orient()));
        } else if (chapter.made() instanceof Joint j) {
            facts.add(List.of(
                    "Joins",
                    words.named(" of " + String.join(" and of ", j.between()))
                            .replace(" of ", " ")
                            .strip()));
            facts.add(List.of("Adhesive", words.stuff(j.adhesive())));
            facts.add(List.of(
                    "Bond line",
                    words.format().length(j.bondLine()) + " thick, "
                            + words.format().length(j.length()) + " long, "
                            + words.format().length(j.width()) + " wide, as drawn"));
            facts.add(List.of("Carries structure", j.structural() ? "yes" : "no"));
        }
        facts.add(List.of(
                "Made by",
                chapter.made().make().stream()
                        .map(x -> x.recipe().replace('-', ' '))
                        .collect(Collectors.joining(", then "))));
        BookPdf.facts(m, facts);
    }

    private void zones() {
        if (!(chapter.made() instanceof Part p) || p.zones().isEmpty()) {
            return;
        }
        m.element("h2", "Drawings");
        for (Zone z : p.zones()) {
            Laminate laminate = words.definition().laminates().get(z.laminate());
            List<Double> angles = laminate.plies().stream()
                    .filter(x -> !x.core())
                    .map(x -> x.angle().degrees())
                    .toList();
            m.open("table", "pictures").open("tr").open("td", "beside");
            m.element("p", "strong", z.name() + ": " + laminate.name());
            m.element(
                    "p",
                    "small",
                    words.format().area(z.area()) + ", edge " + words.format().length(z.edge()));
            BookPdf.drawing(m, ZoneDrawing.of(z, angles), DRAWN);
            m.close().open("td", "beside");
            BookPdf.drawing(m, PlyStackDrawing.of(laminate, words.definition().materials(), words.format()), DRAWN);
            m.close().close().close();
        }
    }

    private void plies() {
        List<PlyCut> plies = chapter.part().map(PartResult::plies).orElse(List.of());
        if (plies.isEmpty()) {
            return;
        }
        m.element("h2", "Plies");
        BookPdf.head(m, "Ply", "Zone", "Material", "Fibres", "Laid", "By", "Lot", "Step");
        plies.forEach(this::ply);
        m.close().close();
    }

    private void ply(PlyCut p) {
        Optional<Done> step = chapter.ofPly(p);
        Optional<Laid> laid = step.flatMap(s -> s.laid(p));
        StepRecord record = step.map(Done::record).orElse(StepRecord.none(""));
        m.open("tr").element("td", "n", String.valueOf(p.order())).element("td", zone(p.zone()));
        m.element("td", words.stuff(p.material()));
        m.element("td", "n", p.core() ? "core" : BookWords.angle(p.angle().degrees()));
        // A tick of the ply itself says more than the step in which it lies.
        String when = laid.map(l -> (l.skipped() ? "LEFT OUT " : "") + words.at(l.at()))
                .orElse(words.when(record));
        m.element("td", when.isEmpty() ? "not yet" : when);
        m.element("td", laid.map(l -> words.person(l.by())).orElse(words.people(record.people())));
        m.element("td", laid.map(Laid::lot).orElse(""));
        m.element("td", step.map(s -> s.step().title()).orElse("")).close();
        laid.filter(l -> !l.why().isEmpty())
                .ifPresent(l -> m.open("tr", "below")
                        .openWith("td", "colspan", "8")
                        .text("Why: " + l.why())
                        .close()
                        .close());
    }

    private String zone(String id) {
        return chapter.made() instanceof Part p
                ? p.zones().stream()
                        .filter(z -> z.id().equals(id))
                        .map(Zone::name)
                        .findFirst()
                        .orElse(id)
                : id;
    }

    private void steps() {
        m.element("h2", "Steps");
        List<Done> begun = chapter.steps().stream().filter(Done::begun).toList();
        if (!begun.isEmpty()) {
            BookPdf.head(m, "Step", "When", "By", "Where", "Entries");
            begun.forEach(this::step);
            m.close().close();
        }
        List<String> open = chapter.steps().stream()
                .filter(s -> !s.begun())
                .map(s -> s.step().title())
                .toList();
        m.element("p", open.isEmpty() ? "Every step is recorded." : "Not recorded: " + String.join("; ", open) + ".");
    }

    private void step(Done s) {
        StepRecord r = s.record();
        m.open("tr").element("td", "strong", s.step().title()).element("td", words.when(r));
        m.element("td", words.people(r.people())).element("td", words.places(r.places()));
        m.element("td", "n", entries(r)).close();
        List<String> more = new ArrayList<>();
        if (!r.whichWay().isEmpty()) {
            more.add("Which way round: " + r.whichWay());
        }
        r.slip().ifPresent(slip -> more.add("Longer or later than planned: " + slip.words() + "."));
        if (!s.air().isEmpty()) {
            more.add("Air: " + s.air().stream().map(words::air).collect(Collectors.joining("; ")) + ".");
        }
        if (!more.isEmpty()) {
            m.open("tr", "below")
                    .openWith("td", "colspan", "5")
                    .text(String.join(" ", more))
                    .close()
                    .close();
        }
    }

    private static String entries(StepRecord r) {
        List<String> all = new ArrayList<>();
        if (r.startedBy() > 0) {
            all.add(String.valueOf(r.startedBy()));
        }
        if (r.finishedBy() > 0) {
            all.add(String.valueOf(r.finishedBy()));
        }
        return String.join(", ", all);
    }

    private void signed() {
        List<Done> holds =
                chapter.steps().stream().filter(s -> s.step().signed()).toList();
        if (holds.isEmpty()) {
            return;
        }
        m.element("h2", "Hold points");
        BookPdf.head(m, "Hold point", "Signed by", "When", "How it is known");
        for (Done s : holds) {
            m.open("tr").element("td", "strong", s.step().title());
            if (s.signature().isPresent()) {
                Chapter.Signature sign = s.signature().get();
                m.element("td", words.person(sign.by())).element("td", words.at(sign.at()));
                m.element(
                        "td",
                        (sign.signIn().isPresent()
                                        ? "signed in before, as entry "
                                                + sign.signIn().get() + " says"
                                        : "named, not proven")
                                + " (entry " + sign.entry() + ")");
            } else {
                m.element("td", "").element("td", "");
                m.element("td", s.record().finished().isPresent() ? "ended without a signature" : "not reached");
            }
            m.close();
        }
        m.close().close();
    }

    private void mass() {
        if (chapter.part().isEmpty()) {
            return;
        }
        PartResult r = chapter.part().get();
        m.element("h2", "Mass");
        BookPdf.facts(
                m,
                List.of(
                        List.of("Weighed", r.weighed().map(Entered::asTyped).orElse("not yet")),
                        List.of("Should be", r.target().map(Entered::asTyped).orElse("")),
                        List.of(
                                "As computed",
                                r.asMade().kilograms() > 0 ? words.format().mass(r.asMade()) : "")));
        if (r.basis() != PartResult.MassBasis.BUDGETED) {
            r.target()
                    .filter(t -> t.value().kilograms() > 0)
                    .ifPresent(t -> BookPdf.drawing(
                            m, MassBar.of(r.best(), t.value(), r.weighed().isPresent(), words.format()), 1));
        }
    }

    private void notes() {
        List<Done> noted = chapter.steps().stream()
                .filter(s -> !s.record().notes().isEmpty())
                .toList();
        if (noted.isEmpty()) {
            return;
        }
        m.element("h2", "Notes and pictures");
        for (Done s : noted) {
            for (StepRecord.Note n : s.record().notes()) {
                String line =
                        s.step().title() + ", " + words.at(n.at()) + ", " + words.person(n.by()) + ", entry " + n.seq();
                m.open("div").element("p", "small", line);
                if (!words.note(n).isEmpty()) {
                    m.element("p", words.note(n));
                }
                n.photos().forEach(p -> photos.write(m, p, line));
                m.close();
            }
        }
    }

    private void mendings() {
        if (chapter.mendings().isEmpty()) {
            return;
        }
        m.element("h2", "Corrected");
        BookPdf.head(m, "When", "By", "What", "Why", "Entry");
        for (Chapter.Mending c : chapter.mendings()) {
            m.open("tr").element("td", words.at(c.at())).element("td", words.person(c.by()));
            m.element(
                    "td",
                    c.what().replace('-', ' ') + ", " + words.step(c.about()) + ", entry " + c.of()
                            + (c.withdrawn() ? ", taken back" : ""));
            m.element("td", c.why())
                    .element("td", "n", String.valueOf(c.entry()))
                    .close();
        }
        m.close().close();
    }

    /** Entries that were made long after what they tell, together where they were made together. */
    private void late() {
        Map<String, List<Long>> together = new TreeMap<>();
        chapter.late()
                .forEach(l -> together.computeIfAbsent(l.told().toString(), t -> new ArrayList<>())
                        .add(l.entry()));
        together.forEach((told, entries) -> m.element(
                "p",
                "small",
                "Entered only on " + words.at(java.time.Instant.parse(told)) + ", long after what they tell: "
                        + listed(entries) + "."));
    }

    private static String listed(List<Long> entries) {
        return entries.size() > MOST_LISTED
                ? entries.size() + " entries from " + entries.get(0) + " to " + entries.get(entries.size() - 1)
                : (entries.size() == 1 ? "entry " : "entries ")
                        + entries.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
