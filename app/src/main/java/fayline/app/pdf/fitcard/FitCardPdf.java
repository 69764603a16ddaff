package fayline.app.pdf.fitcard;

import fayline.app.drawing.Mark;
import fayline.app.drawing.SvgRenderer;
import fayline.app.pdf.CardSheet.Pair;
import fayline.app.pdf.CardStyle;
import fayline.app.pdf.CardsPdf;
import fayline.app.pdf.Markup;
import fayline.app.pdf.PdfPrinter;
import fayline.app.pdf.QrCode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The card of a fit on paper, with a code that opens it on a screen. */
public final class FitCardPdf {
    private static final double DRAWING_SCALE = 0.85;
    private static final double CODE_MM = 24;
    private static final double MARK_SCALE = 0.55;
    private static final double USUAL_PT = 10;
    private static final double LEAST_PT = 7;
    private static final double STEP_PT = 0.5;
    private static final int FEW_PINS = 2;
    /** What a card on paper needs of a width; the page tells the rest. */
    private static final Set<String> ON_PAPER =
            Set.of(WidthWords.WANTED, WidthWords.TO_FIND, WidthWords.BEGIN, WidthWords.SET, WidthWords.BONDED);

    private static final String MORE = """
            body { font-size: %1$spt; line-height: 1.15; } .small { font-size: %2$spt; } h2 { font-size: %3$spt; margin-top: 1.6mm; }
            table.beside { width: 100%%; } table.beside td.half { width: 50%%; padding-right: 5mm; }
            .verdict { font-size: 14pt; font-weight: 700; } .move { font-size: %3$spt; font-weight: 700; }
            table.facts th { width: 42mm; white-space: normal; } td.fig { white-space: nowrap; padding-right: 2mm; }
            .box { margin: 1mm 0; padding: 0.8mm 2.5mm; } table.done { margin-top: 1.5mm; }
            """;

    private FitCardPdf() {}

    /** Prints a card on one page, in the largest letters that fit; on more where even the smallest do not. */
    public static byte[] print(FitSheet sheet, CardsPdf.Setting setting) {
        byte[] pdf = PdfPrinter.print(document(sheet, setting, USUAL_PT));
        for (double pt = USUAL_PT - STEP_PT; pt >= LEAST_PT && pages(pdf) > 1; pt -= STEP_PT) {
            pdf = PdfPrinter.print(document(sheet, setting, pt));
        }
        return pdf;
    }

    private static int pages(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (IOException e) {
            throw new UncheckedIOException("could not read what was printed", e);
        }
    }

    /** The document that is printed, its text in letters of a size in points. */
    private static String document(FitSheet s, CardsPdf.Setting setting, double pt) {
        Markup m = new Markup();
        m.open("html").open("head").element("title", "Fit: " + s.name());
        m.element(
                        "style",
                        CardStyle.css(setting.paper()) + MORE.formatted(pt, Math.min(pt, 0.85 * USUAL_PT), 1.15 * pt))
                .close();
        m.open("body").open("div", "card");
        m.element("div", "foot", s.foot() + " \u00b7 printed " + setting.printed() + " \u00b7 fit " + s.fit());
        head(m, s, setting);
        verdict(m, s);
        move(m, s);
        holds(m, s);
        widths(m, s);
        s.sprung().filter(SprungSheet::told).ifPresent(x -> sprung(m, x));
        m.element("h2", "Adhesive, bond line, working time");
        if (s.adhesive().isEmpty()) {
            m.element("p", "No joint is known.");
        }
        pairs(m, s.adhesive());
        pairs(m, s.working());
        lastChance(m, s);
        cautions(m, s);
        m.open("table", "done").open("tr");
        for (String box : List.of("Read under clamps by", "Date and time", "Go on, signed")) {
            m.element("td", box);
        }
        return m.close().close().close().close().close().toString();
    }

    private static void head(Markup m, FitSheet s, CardsPdf.Setting setting) {
        m.open("table", "head").open("tr").open("td");
        m.element("h1", "Fit: " + s.name()).open("p", "made").text(s.part());
        if (!s.hand().isEmpty()) {
            m.text(" ").element("span", "hand", s.hand().toUpperCase(Locale.ROOT));
        }
        m.close();
        pairs(m, s.facts());
        m.close();
        String address = setting.address().replaceAll("/$", "") + s.path();
        m.open("td", "code").svg(SvgRenderer.forPaper().render(QrCode.of(address, CODE_MM)));
        m.element("div", "small", "opens this card").close();
        m.close().close();
    }

    private static void verdict(Markup m, FitSheet s) {
        m.open("div", s.go() ? "box" : "box hold").open("div", "verdict").open("span", "marked");
        m.svg(mark(s.go() ? Mark.READY : Mark.TROUBLE))
                .close()
                .text(" " + s.verdict())
                .close();
        if (!s.stops().isEmpty()) {
            m.open("ul");
            s.stops().forEach(t -> m.element("li", "strong", t));
            m.close();
        }
        s.notes().forEach(t -> m.element("p", t));
        m.close();
    }

    private static void move(Markup m, FitSheet s) {
        m.open("table", "beside").open("tr").open("td", "half");
        m.element("h2", "Set it");
        m.element("p", "move", s.move().isEmpty() ? "No move can be told yet." : s.move());
        if (!s.atMarks().isEmpty()) {
            m.element("p", String.join("; ", s.atMarks()) + ".");
        }
        pairs(m, s.located());
        m.close().open("td", "half").svg(SvgRenderer.forPaper().render(s.drawing(), DRAWING_SCALE));
        m.close().close().close();
    }

    private static void holds(Markup m, FitSheet s) {
        if (s.holds().isEmpty()) {
            m.element("p", "No index points are named: nothing says where spacers and clamps go.");
            return;
        }
        m.element("h2", "Shims and clamps, at the index points")
                .open("table", "rows")
                .open("thead")
                .open("tr");
        for (String h : List.of("Point", "Where", "Shim", "Clamp")) {
            m.element("th", h);
        }
        m.close().close().open("tbody");
        for (FitSheet.Hold h : s.holds()) {
            m.open("tr").element("td", "strong", h.point()).element("td", h.place());
            m.element("td", "strong", h.shim()).element("td", h.force()).close();
        }
        m.close().close();
        m.element("p", "small", "Forces are not known where it says hand tight: see the frame's trial for this fit.");
    }

    private static void widths(Markup m, FitSheet s) {
        if (s.widths().isEmpty()) {
            return;
        }
        List<String> bonded = s.widths().stream()
                .flatMap(w -> w.facts().stream()
                        .filter(f -> f.name().equals(WidthWords.BONDED))
                        .map(f -> w.id() + " " + f.value()))
                .toList();
        if (bonded.size() == s.widths().size()) {
            pairs(m, List.of(new Pair("Widths as bonded", String.join("; ", bonded))));
            return;
        }
        m.element("h2", "The frame springs: bare width before adhesive");
        pairs(
                m,
                s.widths().stream()
                        .map(w -> new Pair(
                                "Width " + w.id() + ", " + w.where(),
                                w.verdict() + ". "
                                        + w.facts().stream()
                                                .filter(f -> ON_PAPER.contains(f.name()))
                                                .map(f -> f.name() + ": " + f.value())
                                                .collect(Collectors.joining("; "))
                                        + "."))
                        .toList());
    }

    private static void sprung(Markup m, SprungSheet s) {
        m.element("h2", "The frame: clamps, and what they leave");
        List<Pair> all = new ArrayList<>();
        all.add(new Pair(
                "Clamps",
                s.clamps().stream()
                        .map(c -> c.mark() + " at " + c.place() + ": " + c.force()
                                + (c.beyond() ? ", do not pull in" : ""))
                        .collect(Collectors.joining("; "))));
        if (s.pins().stream().anyMatch(p -> p.binds() || s.pins().size() <= FEW_PINS)) {
            all.add(new Pair(
                    "When they come off",
                    s.pins().stream()
                            .filter(p -> p.binds() || s.pins().size() <= FEW_PINS)
                            .map(p -> p.name() + " goes " + p.shift() + (p.binds() ? " and binds" : "") + ", left "
                                    + p.left())
                            .collect(Collectors.joining("; "))));
        }
        String open = s.bonds().stream()
                .filter(SprungSheet.Bond::open)
                .map(b -> b.place() + " " + b.peel())
                .collect(Collectors.joining(", "));
        all.add(new Pair("Bond line", (open.isEmpty() ? "" : "Pulled open at " + open + ". ") + s.strength()));
        if (!s.assumed().isEmpty()) {
            all.add(new Pair("Assumed", "stiffness or strength, see the fit's page"));
        }
        pairs(m, all);
        m.element("p", "small", String.join(" ", s.care()));
    }

    private static void pairs(Markup m, List<Pair> pairs) {
        if (pairs.isEmpty()) {
            return;
        }
        m.open("table", "facts");
        for (Pair p : pairs) {
            m.open("tr").element("th", p.name()).element("td", p.value()).close();
        }
        m.close();
    }

    private static void lastChance(Markup m, FitSheet s) {
        if (s.readings().isEmpty()) {
            return;
        }
        m.element("h2", "The last chance: read before gel").element("p", s.lastChance());
        m.open("table", "rows").open("thead").open("tr");
        for (String h :
                List.of("", "Station", "Gap now", "Gap to find", "Limits", "Read", "Flush to find", "Limits", "Read")) {
            m.element("th", h);
        }
        m.close().close().open("tbody");
        for (FitSheet.Reading r : s.readings()) {
            m.open("tr").open("td", "mark");
            if (r.decides()) {
                m.svg(mark(Mark.HOLD));
            }
            m.close()
                    .open("td")
                    .element("span", "strong", r.station())
                    .text(" " + r.where())
                    .close();
            m.element("td", "fig", r.now()).element("td", "fig strong", r.target());
            m.element("td", "fig", r.limits()).element("td", "fig", "______");
            m.element("td", "fig strong", r.flushTarget()).element("td", "fig", r.flushLimits());
            m.element("td", "fig", "______").close();
        }
        m.close().close();
    }

    private static void cautions(Markup m, FitSheet s) {
        m.open("div", "box").open("table");
        for (Pair p : s.cautions()) {
            m.open("tr").open("td", "mark").svg(mark(Mark.TROUBLE)).close().open("td", "small");
            m.element("span", "strong", p.name() + ". ").text(p.value()).close().close();
        }
        m.close().close();
    }

    private static String mark(Mark mark) {
        return SvgRenderer.forPaper().render(mark.drawing(), MARK_SCALE);
    }
}
