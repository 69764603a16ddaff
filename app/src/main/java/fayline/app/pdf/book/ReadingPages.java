package fayline.app.pdf.book;

import fayline.app.drawing.record.ReadingsDrawing;
import fayline.app.pdf.Markup;
import fayline.app.usecase.book.Chapter;
import fayline.app.usecase.traveller.LeakDowns;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.record.TakenReading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes what was read of a part and its steps, as typed, with small drawings where there is more than one value. */
final class ReadingPages {
    private static final double DRAWN = 0.8;
    private final Markup m;
    private final BookWords words;
    private final Chapter chapter;

    ReadingPages(Markup m, BookWords words, Chapter chapter) {
        this.m = m;
        this.words = words;
        this.chapter = chapter;
    }

    void write() {
        if (chapter.readings().isEmpty()) {
            return;
        }
        m.element("h2", "Readings");
        BookPdf.head(m, "When", "What", "Of", "Value as typed", "Read by", "Entry");
        for (TakenReading r : chapter.readings()) {
            m.open("tr").element("td", words.at(r.at())).element("td", r.kind());
            m.element(
                    "td",
                    words.about(r)
                            + (r.state().isEmpty() ? "" : ", " + r.state().replace('-', ' ')));
            m.element("td", typed(r)).element("td", words.person(r.by()));
            m.element("td", "n", String.valueOf(r.seq())).close();
        }
        m.close().close();
        leakDowns();
        limits();
        m.open("p");
        vacuum().forEach((of, all) -> strip(of, all));
        m.close();
    }

    /** Each leak-down with its verdict and the rule that gave it. */
    private void leakDowns() {
        List<String> told = new ArrayList<>();
        for (Chapter.Done s : chapter.steps()) {
            List<TakenReading> mine = chapter.readings().stream()
                    .filter(r -> r.kind().equals("vacuum")
                            && (r.of().equals(s.step().local())
                                    || r.of().equals(s.step().id())))
                    .toList();
            for (LeakDowns.Test t : LeakDowns.of(s.step(), mine)) {
                told.add((t.tight() ? "TIGHT" : "LEAKS") + ", " + s.step().title() + ", "
                        + words.at(t.end().at()) + ": " + t.sentence() + ". Entries "
                        + t.start().seq() + " and "
                        + t.end().seq() + ".");
            }
        }
        if (!told.isEmpty()) {
            m.element("h3", "Leak-downs").open("ul");
            told.forEach(t -> m.element("li", t));
            m.close();
        }
    }

    private static String typed(TakenReading r) {
        Map<String, String> rest = new TreeMap<>(r.values());
        String value = rest.getOrDefault("value", "");
        rest.remove("value");
        String beside = rest.entrySet().stream()
                .map(v -> v.getKey() + " " + v.getValue())
                .collect(Collectors.joining(", "));
        return value + (beside.isEmpty() ? "" : value.isEmpty() ? beside : " (" + beside + ")");
    }

    /** What the cards ask of the steps that were read, with their limits. */
    private void limits() {
        List<String> asked = chapter.steps().stream()
                .filter(s -> chapter.readings().stream()
                        .anyMatch(r -> r.of().equals(s.step().local())))
                .flatMap(s -> s.step().checks().stream().map(c -> s.step().title() + ": " + c))
                .distinct()
                .toList();
        if (!asked.isEmpty()) {
            m.open("ul");
            asked.forEach(a -> m.element("li", "small", a));
            m.close();
        }
    }

    /** Vacuum readings of each step of which there are several. */
    private Map<String, List<TakenReading>> vacuum() {
        Map<String, List<TakenReading>> of = new LinkedHashMap<>();
        chapter.readings().stream()
                .filter(r -> r.kind().equals("vacuum"))
                .forEach(r -> of.computeIfAbsent(r.of(), k -> new ArrayList<>()).add(r));
        of.values().removeIf(all -> all.size() < 2);
        return of;
    }

    private void strip(String of, List<TakenReading> all) {
        List<ReadingsDrawing.Dot> dots = all.stream()
                .flatMap(r -> bar(r).stream()
                        .mapToObj(v -> new ReadingsDrawing.Dot(r.state().replace('-', ' '), v, r.value())))
                .toList();
        if (dots.size() < 2) {
            return;
        }
        String title = "Vacuum, " + words.about(all.get(0));
        m.openWith("span", "class", "strip").element("span", "small", title).empty("br");
        BookPdf.drawing(m, ReadingsDrawing.of(title, dots, OptionalDouble.empty(), OptionalDouble.empty()), DRAWN);
        m.close();
    }

    private static OptionalDouble bar(TakenReading r) {
        try {
            return OptionalDouble.of(
                    QuantityParser.parse(r.value(), QuantityKind.VACUUM).value().bar());
        } catch (UnreadableQuantityException e) {
            return OptionalDouble.empty();
        }
    }
}
