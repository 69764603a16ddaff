package fayline.app.pdf.book;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.SvgRenderer;
import fayline.app.pdf.CardStyle;
import fayline.app.pdf.Markup;
import fayline.app.pdf.Paper;
import fayline.app.pdf.PdfPrinter;
import fayline.app.pdf.QrCode;
import fayline.app.usecase.book.Book;
import fayline.app.usecase.book.BookScope;
import fayline.app.usecase.book.Chapter;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Prints a book for keeping: a cover with the head of the record, contents, a chapter for each part, and the same by date. */
public final class BookPdf {
    private static final double CODE_MM = 62;
    private static final String CHANGES = "changes";
    private static final String ORDERS = "made-outside";
    private static final String MORE = """
            h1 { page-break-after: avoid; } .chapter { page-break-before: always; } .cover h1 { font-size: 26pt; margin-top: 6mm; }
            body { font-size: 9.5pt; } table.rows td, table.rows th { padding: 0.5mm 2.2mm 0.5mm 0; }
            table.rows th { border-bottom: 0.25mm solid #000; vertical-align: bottom; }
            .below td { border-top: none; padding-top: 0; color: #333; font-size: 8.5pt; }
            ul.contents { list-style: none; padding: 0; } ul.contents li { margin: 0 0 0.6mm 0; } ul.contents .group { font-weight: 700; margin-top: 2mm; }
            ul.contents a { color: #000; text-decoration: none; } ul.contents a::after { content: leader(dotted) target-counter(attr(href), page); }
            .head-line { font-size: 15pt; font-weight: 700; }
            td.n { white-space: nowrap; } .photo { display: inline-block; width: 86mm; margin: 1mm 3mm 2mm 0; vertical-align: top; page-break-inside: avoid; }
            .photo img { max-width: 84mm; max-height: 90mm; } .strip { display: inline-block; margin: 0 4mm 2mm 0; vertical-align: top; }
            .path { color: #333; margin-bottom: 1.5mm; }
            """;

    private BookPdf() {}

    /**
     * How it is printed.
     *
     * @param paper the paper
     * @param code the text of the square code on the cover: the head in full
     * @param kept where that it was printed is an entry, its number among the printed sheets; empty where it is not
     */
    public record Setting(Paper paper, String code, String kept) {}

    /**
     * Prints.
     *
     * @param book the book
     * @param pictures the pictures of its notes, upright, by hash; empty for one that cannot be read
     * @param setting how
     * @return a PDF/A-2a
     */
    public static byte[] print(Book book, Function<String, Optional<byte[]>> pictures, Setting setting) {
        ChapterPhotos photos = new ChapterPhotos(pictures);
        return PdfPrinter.archive(document(book, photos, setting), photos::again);
    }

    static String document(Book book, ChapterPhotos photos, Setting setting) {
        BookWords words = new BookWords(book);
        Markup m = new Markup();
        String title = title(book, words);
        m.openWith("html", "lang", "en").open("head").element("title", title);
        m.empty("meta", "name", "description", "content", "What was built, as the shop's record holds it");
        m.empty("meta", "name", "subject", "content", "As-built record").empty("meta", "name", "author", "content", "");
        m.element("style", CardStyle.css(setting.paper()) + MORE);
        bookmarks(m, book);
        m.close().open("body");
        m.element("div", "foot", title + " \u00b7 record " + book.head().paper());
        cover(m, book, words, setting);
        contents(m, book);
        for (int i = 0; i < book.begun().size(); i++) {
            new ChapterPdf(m, words, book.begun().get(i), photos).write("c" + i);
        }
        if (!book.changes().isEmpty()) {
            m.openWith("div", "class", "chapter", "id", CHANGES).element("h1", "Changes of the design");
            new ChangePages(m, words).write(book.changes());
            m.close();
        }
        if (!book.orders().isEmpty()) {
            m.openWith("div", "class", "chapter", "id", ORDERS).element("h1", "Made outside");
            new OutsidePages(m, words).orders("For no part alone", book.orders());
            m.close();
        }
        new DatePages(m, words, book).write();
        return m.close().close().toString();
    }

    private static String title(Book book, BookWords words) {
        String of = book.scope().sort() == BookScope.Sort.WHOLE
                ? ""
                : ": " + book.scope().name();
        return "As built, " + words.project() + of;
    }

    private static void bookmarks(Markup m, Book book) {
        m.open("bookmarks");
        m.empty("bookmark", "name", "Contents", "href", "#contents");
        for (int i = 0; i < book.begun().size(); i++) {
            m.empty("bookmark", "name", book.begun().get(i).made().name(), "href", "#c" + i);
        }
        if (!book.changes().isEmpty()) {
            m.empty("bookmark", "name", "Changes of the design", "href", "#" + CHANGES);
        }
        if (!book.orders().isEmpty()) {
            m.empty("bookmark", "name", "Made outside", "href", "#" + ORDERS);
        }
        m.empty("bookmark", "name", "By date", "href", "#by-date").close();
    }

    private static void cover(Markup m, Book book, BookWords words, Setting setting) {
        m.open("div", "cover").element("p", "made", words.definition().shop().name());
        m.element("h1", "As built: " + book.scope().name());
        facts(
                m,
                List.of(
                        List.of("Aircraft", words.project()),
                        List.of(
                                "Design",
                                words.definition().facts().design() + ", revision "
                                        + words.definition().facts().revision()),
                        List.of("Covers", covers(book)),
                        List.of("Told up to", words.at(book.at()) + ", " + words.zone()),
                        List.of("Entries under it", String.valueOf(book.head().seq()))));
        m.open("div", "box").element("p", "label", "The record that this book is printed from ends here");
        m.element("p", "head-line", book.head().paper());
        m.element("p", "small", "Last entry: " + book.lastHash().replaceAll("([0-9a-f]{8})(?=[0-9a-f])", "$1 "));
        m.open("p");
        drawing(m, QrCode.of(setting.code(), CODE_MM), 1);
        m.close();
        m.element(
                "p", "To check it: fayline verify-record --head " + book.head().paper());
        m.element(
                "p",
                "The same line stands at the foot of every page. If any entry under it was altered, left out or put in"
                        + " since, that check says so.");
        m.element(
                "p",
                setting.kept().isEmpty()
                        ? "That this book was printed is not in the record."
                        : "That this book was printed is in the record, as sheet " + setting.kept() + ".");
        m.close();
        how(m, book, words);
        m.open("table", "done").open("tr");
        for (String s : List.of("Date", "Name", "Signed by hand")) {
            m.element("td", s);
        }
        m.close().close().close();
    }

    private static String covers(Book book) {
        long parts = book.chapters().stream().filter(c -> c.part().isPresent()).count();
        long joints = book.chapters().size() - parts;
        return parts + (parts == 1 ? " part, " : " parts, ") + joints + (joints == 1 ? " joint; " : " joints; ")
                + book.begun().size() + " of them begun";
    }

    private static void how(Markup m, Book book, BookWords words) {
        m.element("h2", "How to read it").open("ul");
        for (String s : List.of(
                "Each part has a chapter: its drawings, its plies with who laid them and when, its steps, what was signed,"
                        + " what was read, pictures, and what was corrected. The last pages hold the same by date.",
                "Readings stand as they were typed. Numbers of entries lead to the record.",
                "A signature here is a name in the shop's own record. \"Named, not proven\" means that nobody signed in: the"
                        + " name was picked. It is no licensed signature, and approves nothing.",
                "Nothing was left out of what the record holds of steps, plies, lots, mixes, readings, witness pieces, orders to makers"
                        + " outside, changes of the design and what went wrong. Prices and costs are in the record and not in this book.")) {
            m.element("li", s);
        }
        m.close();
    }

    private static void contents(Markup m, Book book) {
        m.openWith("div", "class", "chapter", "id", "contents").element("h1", "Contents");
        m.open("ul", "contents");
        String group = "";
        for (int i = 0; i < book.begun().size(); i++) {
            Chapter c = book.begun().get(i);
            String above = String.join(" \u203a ", c.above());
            if (!above.equals(group) && !above.isEmpty()) {
                m.element("li", "group", above);
            }
            group = above;
            contentsLine(m, "#c" + i, c.made().name());
        }
        if (!book.changes().isEmpty()) {
            contentsLine(m, "#" + CHANGES, "Changes of the design");
        }
        if (!book.orders().isEmpty()) {
            contentsLine(m, "#" + ORDERS, "Made outside");
        }
        contentsLine(m, "#by-date", "The same by date");
        m.close();
        if (!book.toCome().isEmpty()) {
            m.element("h2", "Not begun");
            m.element("p", book.toCome().stream().map(c -> c.made().name()).collect(Collectors.joining(", ")) + ".");
        }
        m.close();
    }

    private static void contentsLine(Markup m, String to, String name) {
        m.open("li").openWith("a", "href", to, "title", name).text(name).close().close();
    }

    /** A table of names and values. */
    static void facts(Markup m, List<List<String>> facts) {
        m.open("table", "facts");
        for (List<String> f : facts) {
            if (!f.get(1).isEmpty()) {
                m.open("tr").element("th", f.get(0)).element("td", f.get(1)).close();
            }
        }
        m.close();
    }

    /** Begins a table with the heads of its columns. */
    static void head(Markup m, String... columns) {
        m.open("table", "rows").open("thead").open("tr");
        for (String c : columns) {
            m.openWith("th", "scope", "col").text(c).close();
        }
        m.close().close().open("tbody");
    }

    /** A drawing with its title for those who cannot see it. */
    static void drawing(Markup m, Drawing d, double scale) {
        String svg = SvgRenderer.forPaper().render(d, scale);
        m.svg(svg.replaceFirst(
                "<svg ",
                "<svg alt=\"" + java.util.regex.Matcher.quoteReplacement(SvgRenderer.escape(d.title())) + "\" "));
    }
}
