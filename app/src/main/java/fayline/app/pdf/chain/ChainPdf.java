package fayline.app.pdf.chain;

import fayline.app.drawing.SvgRenderer;
import fayline.app.pdf.CardStyle;
import fayline.app.pdf.CardsPdf;
import fayline.app.pdf.Markup;
import fayline.app.pdf.PdfPrinter;
import fayline.app.pdf.QrCode;

/** The sheet of a chain on paper, with a code that opens its page on a screen. */
public final class ChainPdf {
    private static final double CODE_MM = 24;
    private static final String MORE = """
            .move { font-size: 12pt; font-weight: 700; } table.beside { width: 100%; } table.beside td.half { width: 50%; padding-right: 4mm; }
            table.rows th { text-align: left; }
            """;

    private ChainPdf() {}

    /** Prints it. */
    public static byte[] print(ChainSheet sheet, CardsPdf.Setting setting) {
        return PdfPrinter.print(document(sheet, setting));
    }

    private static String document(ChainSheet s, CardsPdf.Setting setting) {
        Markup m = new Markup();
        m.open("html").open("head").element("title", "Chain of bonds: " + s.name());
        m.element("style", CardStyle.css(setting.paper()) + MORE).close();
        m.open("body").open("div", "card");
        m.element("div", "foot", "Chain of bonds \u00b7 printed " + setting.printed());
        head(m, s, setting);
        m.open("table", "beside").open("tr").open("td", "half");
        m.svg(SvgRenderer.forPaper().render(s.drawing(), 0.9)).close().open("td", "half");
        moves(m, s);
        m.close().close().close();
        s.tables().forEach(t -> table(m, t));
        m.element("h2", "Cautions").open("ul");
        s.cautions().forEach(c -> m.element("li", c));
        return m.close().close().close().close().toString();
    }

    private static void head(Markup m, ChainSheet s, CardsPdf.Setting setting) {
        m.open("table", "head").open("tr").open("td").element("h1", s.name()).close();
        String address = setting.address().replaceAll("/$", "") + s.path();
        m.open("td", "code").svg(SvgRenderer.forPaper().render(QrCode.of(address, CODE_MM)));
        m.element("div", "small", "opens this page").close().close().close();
    }

    private static void moves(Markup m, ChainSheet s) {
        m.element("h2", "Where to put the correction");
        m.element("p", "strong", s.verdict().isEmpty() ? "No correction is told." : s.verdict());
        for (ChainSheet.Moved w : s.moves()) {
            m.element("p", "label", w.name()).element("p", "move", w.move());
            w.more().forEach(t -> m.element("p", t));
        }
        if (!s.sure().isEmpty()) {
            m.element("h2", "How sure");
            s.sure().forEach(t -> m.element("p", t));
        }
    }

    private static void table(Markup m, ChainSheet.Table t) {
        m.element("h2", t.title());
        if (!t.said().isEmpty()) {
            m.element("p", t.said());
        }
        m.open("table", "rows").open("thead").open("tr");
        t.head().forEach(h -> m.element("th", h));
        m.close().close().open("tbody");
        for (var row : t.rows()) {
            m.open("tr");
            row.forEach(c -> m.element("td", c));
            m.close();
        }
        m.close().close();
    }
}
