package fayline.app.pdf.book;

import fayline.app.pdf.Markup;
import fayline.flow.record.change.Change;
import fayline.flow.record.change.Verdict;
import fayline.flow.result.change.Touch;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Writes how the design was changed while this aircraft was built, and which of its parts have it. */
final class ChangePages {
    private static final String MADE = "made/";
    private final Markup m;
    private final BookWords words;

    ChangePages(Markup m, BookWords words) {
        this.m = m;
        this.words = words;
    }

    /** All of them, whole. */
    void write(List<Change> changes) {
        m.element("p", "small", "Each says which parts of this aircraft, " + words.project() + ", are made to it.");
        changes.forEach(this::whole);
    }

    /** What chapters say: the changes that altered one part or joint. */
    void brief(String made, List<Change> changes) {
        if (changes.isEmpty()) {
            return;
        }
        m.element("h2", "Changes of the design");
        for (Change c : changes) {
            m.element("p", heading(c) + " Here: " + here(c, made));
        }
    }

    private static String heading(Change c) {
        return c.name() + ", " + c.stage().words() + ": " + c.what();
    }

    private void whole(Change c) {
        m.open("div", "box").element("p", "strong", heading(c));
        m.element(
                "p",
                "small",
                "Raised " + words.at(c.at()) + ", " + words.person(c.by()) + ", entry " + c.seq() + ". Why: "
                        + c.why());
        List<List<String>> facts = new ArrayList<>();
        facts.add(List.of(
                "Alters",
                Touch.allOf(c.touches()).stream()
                        .map(t -> t.name(words.definition()))
                        .collect(Collectors.joining(", "))));
        facts.add(List.of("Touches structure", c.structural() ? "yes" : "not said"));
        c.verdict()
                .ifPresentOrElse(v -> decided(c, v, facts), () -> facts.add(List.of("Decided", "NOT YET: it is open")));
        c.verdict()
                .filter(Verdict::accepted)
                .ifPresent(v -> v.withdraws().forEach(w -> facts.add(List.of(name(w.made()), here(c, w.made())))));
        others(c, facts);
        facts.add(List.of(
                "Closed",
                c.closed()
                        .map(x -> words.at(x.at()) + ", " + words.person(x.by()) + ", entry " + x.seq()
                                + (x.note().isEmpty() ? "" : ". " + x.note()))
                        .orElse(c.isOpen() ? "NOT YET" : "")));
        BookPdf.facts(m, facts);
        m.close();
    }

    private void decided(Change c, Verdict v, List<List<String>> facts) {
        facts.add(List.of(
                "Decided",
                (v.accepted() ? "accepted, " : "refused, ") + words.at(v.at()) + ", " + words.person(v.by())
                        + ", entry " + v.seq() + (v.note().isEmpty() ? "" : ". " + v.note())));
        facts.add(List.of(
                "Second person",
                v.second().isEmpty()
                        ? c.structural() && v.accepted() ? "NOT YET: it waits" : ""
                        : words.person(v.second()) + (v.agreed() > 0 ? ", entry " + v.agreed() : "")));
    }

    /** How one part or joint stands to a change. */
    private String here(Change c, String made) {
        String before = c.verdict().stream()
                .flatMap(v -> v.withdraws().stream())
                .filter(w -> w.made().equals(made) && !w.drawing().isEmpty())
                .map(w -> " It was drawn to " + w.drawing() + " before.")
                .findFirst()
                .orElse("");
        return c.settled(Change.itemOf(made))
                .map(s -> s.how().words() + (s.drawing().isEmpty() ? "" : ", drawing " + s.drawing()) + "; "
                        + words.at(s.at()) + ", " + words.person(s.by()) + ", entry " + s.seq() + "."
                        + (s.note().isEmpty() ? "" : " " + s.note()) + before)
                .orElse((c.isInForce() ? "NOT SETTLED YET." : c.stage().words() + ".") + before);
    }

    private void others(Change c, List<List<String>> facts) {
        String told = c.settled().entrySet().stream()
                .filter(e -> !e.getKey().startsWith(MADE))
                .map(e -> thing(e.getKey()) + ": " + e.getValue().how().words()
                        + (e.getValue().note().isEmpty()
                                ? ""
                                : ", " + bare(e.getValue().note())) + " (entry "
                        + e.getValue().seq() + ")")
                .collect(Collectors.joining("; "));
        facts.add(List.of("What else it touched", told));
    }

    /** A sentence without its last point, to stand in a row of others. */
    private static String bare(String note) {
        return note.strip().replaceFirst("\\.$", "");
    }

    /** What a line of a change is about, as {@code design/laminate/hull-chine} or {@code card/hull-bottom}. */
    private String thing(String item) {
        String of = item.substring(item.indexOf('/') + 1);
        String sort = item.substring(0, item.indexOf('/'));
        return Touch.of(of)
                .map(t -> t.name(words.definition()))
                .orElseGet(() -> sort + " of " + name(of.substring(of.lastIndexOf('/') + 1)));
    }

    private String name(String made) {
        return words.named(" of " + made).replaceFirst(" of ", "").strip();
    }
}
