package fayline.app.pdf;

import fayline.app.drawing.SvgRenderer;
import java.util.List;

/** A sheet of paper that keeps the head of the record outside the machine: to be signed by hand and filed. */
public final class RecordSheetPdf {
    private static final double CODE_MM = 62;

    private RecordSheetPdf() {}

    /**
     * What stands on a sheet.
     *
     * @param shop whose record it is
     * @param number its number
     * @param made when the head was taken and by whom, in words
     * @param entries how many entries stand under it
     * @param paper the head in short, as it is typed
     * @param hash the last entry's head in full
     * @param before the short head of the sheet before; empty on the first
     * @param code the text of the square code
     * @param key the fingerprint of the shop's key
     */
    public record Content(
            String shop,
            long number,
            String made,
            long entries,
            String paper,
            String hash,
            String before,
            String code,
            String key) {}

    /** Prints it. */
    public static byte[] print(Content c, Paper paper) {
        return PdfPrinter.print(document(c, paper));
    }

    static String document(Content c, Paper paper) {
        Markup m = new Markup();
        m.open("html").open("head").element("title", "Record sheet " + c.number() + ", " + c.shop());
        m.element("style", CardStyle.css(paper)).close();
        m.open("body").open("div", "card");
        m.element("div", "foot", "Record sheet " + c.number() + " \u00b7 " + c.shop() + " \u00b7 " + c.paper());
        m.element("h1", "Record sheet " + c.number()).element("p", "made", c.shop());
        m.element("p", c.made());
        m.open("div", "box").element("p", "label", "The record ends here");
        m.element("h1", c.paper());
        m.element("p", c.entries() + " entries stand under it.").close();
        m.open("table", "facts");
        fact(m, "Last entry in full", grouped(c.hash()));
        fact(m, "Sheet before", c.before().isEmpty() ? "none: this is the first" : c.before());
        fact(m, "Key of the shop's machine", c.key());
        m.close();
        m.element("h2", "In full, with the machine's signature");
        m.open("p")
                .svg(SvgRenderer.forPaper().render(QrCode.of(c.code(), CODE_MM)))
                .close();
        m.element("h2", "What it is for").open("ul");
        for (String s : List.of(
                "Sign it, and keep it where nobody who keeps the record can change it: in a folder, with a partner, with the inspector.",
                "Later, type the line in the box: fayline verify-record --head " + c.paper(),
                "If any entry up to number " + c.entries()
                        + " was altered, left out or put in since, that check says so.",
                "The machine's signature binds nobody by itself; this paper does, with the hands that signed it.")) {
            m.element("li", s);
        }
        m.close();
        m.open("table", "done").open("tr");
        for (String s : List.of("Date", "Name", "Signed by hand")) {
            m.element("td", s);
        }
        return m.close().close().close().close().close().toString();
    }

    private static void fact(Markup m, String name, String value) {
        m.open("tr").element("th", name).element("td", value).close();
    }

    /** Digits in groups of eight, so that they can be compared by eye. */
    private static String grouped(String hash) {
        return hash.replaceAll("([0-9a-f]{8})(?=[0-9a-f])", "$1 ");
    }
}
