package fayline.app.pdf.book;

import fayline.app.pdf.CardStyle;
import fayline.app.pdf.Markup;
import fayline.app.pdf.Paper;
import fayline.app.pdf.PdfPrinter;
import fayline.app.usecase.week.TellWeek;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Prints what was settled to be told of a week: its text and its pictures, and nothing else of the record. */
public final class WeekPdf {
    private static final String MORE = """
            body { font-size: 11.5pt; line-height: 1.4; } p { margin: 0 0 3mm 0; }
            .photo { display: inline-block; width: 86mm; margin: 1mm 3mm 2mm 0; page-break-inside: avoid; }
            .photo img { max-width: 84mm; max-height: 90mm; }
            """;

    private WeekPdf() {}

    /**
     * Prints.
     *
     * @param shop whose week it is
     * @param told what is told
     * @param pictures pictures by hash, upright; empty for one that may no longer be shown
     * @param paper the paper
     * @return a PDF/A-2a
     */
    public static byte[] print(
            String shop, TellWeek.Told told, Function<String, Optional<byte[]>> pictures, Paper paper) {
        Map<String, byte[]> ready = new HashMap<>();
        told.photos().forEach(h -> pictures.apply(h).ifPresent(b -> ready.put(h, b)));
        Markup m = new Markup();
        m.openWith("html", "lang", "en").open("head").element("title", told.title());
        m.empty("meta", "name", "description", "content", "What was done in a week")
                .element("style", CardStyle.css(paper) + MORE)
                .close();
        m.open("body").element("div", "foot", shop).element("h1", told.title());
        for (String paragraph : told.text().split("\n\\s*\n")) {
            m.element("p", paragraph.strip());
        }
        for (String h : told.photos()) {
            if (ready.containsKey(h)) {
                m.open("div", "photo")
                        .empty("img", "src", "picture:" + h, "alt", "A picture of the week")
                        .close();
            }
        }
        String document = m.close().close().toString();
        return PdfPrinter.archive(document, h -> Optional.ofNullable(ready.get(h)));
    }
}
