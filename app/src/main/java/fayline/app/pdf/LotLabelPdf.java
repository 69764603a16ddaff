package fayline.app.pdf;

import fayline.app.drawing.SvgRenderer;
import java.util.List;

/** Labels for lots: the number large, what it is, its last day, and a square code that opens its page. */
public final class LotLabelPdf {
    private static final double CODE_MM = 30;

    private LotLabelPdf() {}

    /**
     * A label.
     *
     * @param lot the lot's number
     * @param what of what
     * @param received how much came and when
     * @param until its last day, in words
     * @param opens the address that its code opens
     */
    public record Label(String lot, String what, String received, String until, String opens) {}

    /** Prints labels, to be cut out along their frames. */
    public static byte[] print(List<Label> labels, Paper paper) {
        return PdfPrinter.print(document(labels, paper));
    }

    static String document(List<Label> labels, Paper paper) {
        Markup m = new Markup();
        m.open("html").open("head").element("title", "Labels of lots");
        m.element("style", CardStyle.css(paper)).close();
        m.open("body").open("div", "card");
        m.element("div", "foot", "Cut along the frame.");
        for (Label l : labels) {
            m.open("div", "box").open("table").open("tr").open("td");
            m.element("h1", l.lot());
            m.element("p", l.what());
            m.element("p", l.received());
            m.element("p", "label", l.until()).close();
            m.open("td")
                    .svg(SvgRenderer.forPaper().render(QrCode.of(l.opens(), CODE_MM)))
                    .close();
            m.close().close().close();
        }
        return m.close().close().close().toString();
    }
}
