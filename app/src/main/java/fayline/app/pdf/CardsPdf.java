package fayline.app.pdf;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Mark;
import fayline.app.drawing.SvgRenderer;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Cards on paper: one after another, each on a page of its own, with a code that opens it on a screen. */
public final class CardsPdf {
    private static final double CODE_MM = 24;
    private static final double MOST_DRAWING_MM = 190;
    private static final double MARK_SCALE = 0.55;
    private static final int MOST_BESIDE = 7;

    private CardsPdf() {}

    /**
     * What stands at the foot and head of every page.
     *
     * @param address the address at which the program answers, as {@code http://127.0.0.1:7423/}
     * @param printed when it was printed, in words
     * @param day the day the cards are for, in words
     * @param paper the paper
     */
    public record Setting(String address, String printed, String day, Paper paper) {}

    /** Prints cards; where there are none, a page says so. */
    public static byte[] print(List<CardSheet> cards, Setting setting) {
        return PdfPrinter.print(document(cards, setting));
    }

    /** The document that is printed. */
    static String document(List<CardSheet> cards, Setting setting) {
        Markup m = new Markup();
        m.open("html").open("head").element("title", "Cards for " + setting.day());
        m.element("style", CardStyle.css(setting.paper())).close();
        m.open("body");
        if (cards.isEmpty()) {
            m.open("div", "card").element("h1", "No cards for " + setting.day());
            m.element("p", "Nothing is planned on that day. The plan is on the page Weeks.")
                    .close();
        }
        for (CardSheet card : cards) {
            card(m, card, setting);
        }
        return m.close().close().toString();
    }

    private static void card(Markup m, CardSheet c, Setting setting) {
        m.open("div", "card");
        m.element(
                "div",
                "foot",
                c.revision() + " \u00b7 printed " + setting.printed() + " \u00b7 " + c.step() + " \u00b7 mark "
                        + c.mark());
        head(m, c, setting);
        if (!c.unplanned().isEmpty()) {
            m.element("p", "box", "Not planned: " + c.unplanned());
        }
        c.whichWay().ifPresent(w -> {
            m.open("div", "box hold");
            label(m, Mark.HOLD, "Hold before the hands begin: which way round?");
            m.element("p", "strong", w.name()).element("p", w.value());
            m.element("p", "sign", "Answered by ______________________   checked by ______________________")
                    .close();
        });
        cautions(m, c);
        findings(m, c.findings());
        pairs(
                m,
                "Windows",
                c.windows().stream()
                        .map(w -> new CardSheet.Pair(w.name(), w.times()))
                        .toList());
        pairs(
                m,
                "Clocks running when this was printed",
                c.clocks().stream()
                        .map(k -> new CardSheet.Pair(k.what(), k.at()))
                        .toList());
        mixes(m, c);
        drawings(m, c);
        rows(m, "Plies to lay, in order from below", c.plies(), "Angle against the part's axis, zone");
        rows(m, "Bag, from the part outward", c.bagRows(), "");
        rows(m, "Fetch", c.fetch(), "For, lots in the order to take them");
        if (!besides(c)) {
            list(m, "Do", "ol", c.say());
        }
        ticks(m, "Check", c.checks());
        ticks(m, "Write down", c.readings());
        list(m, "Lessons", "ul", c.lessons());
        if (c.signed()) {
            m.open("div", "box hold");
            label(m, Mark.HOLD, "Hold point: nothing that follows begins before this is signed");
            m.element("p", "sign", "Signed ______________________   date and time ______________________");
            m.element(
                    "p",
                    "small",
                    "A signature in the shop's record. It is not a licensed release; local rules decide who signs that.");
            m.close();
        }
        m.open("table", "done").open("tr");
        for (String s : List.of("Started", "Finished", "By")) {
            m.element("td", s);
        }
        m.close().close();
        m.close();
    }

    private static void label(Markup m, Mark mark, String text) {
        m.open("div", "label")
                .open("span", "marked")
                .svg(mark(mark))
                .close()
                .text(" " + text)
                .close();
    }

    /** A mark as large as the letters beside it; the font has none of these signs. */
    private static String mark(Mark mark) {
        return SvgRenderer.forPaper().render(mark.drawing(), MARK_SCALE);
    }

    private static void head(Markup m, CardSheet c, Setting setting) {
        m.open("table", "head").open("tr").open("td");
        m.element("h1", c.title());
        m.open("p", "made").text(c.made());
        if (!c.hand().isEmpty()) {
            m.text(" ").element("span", "hand", c.hand().toUpperCase(java.util.Locale.ROOT));
        }
        m.close();
        m.open("table", "facts");
        for (CardSheet.Pair p : c.when()) {
            m.open("tr").element("th", p.name()).element("td", p.value()).close();
        }
        for (CardSheet.Pair p : c.facts()) {
            m.open("tr").element("th", p.name()).element("td", p.value()).close();
        }
        m.close().close();
        String address =
                setting.address().replaceAll("/$", "") + c.path() + (c.path().contains("?") ? "&" : "?") + "printed="
                        + URLEncoder.encode(c.mark(), StandardCharsets.UTF_8);
        m.open("td", "code").svg(SvgRenderer.forPaper().render(QrCode.of(address, CODE_MM)));
        m.element("div", "small", "opens this card").close();
        m.close().close();
    }

    private static void cautions(Markup m, CardSheet c) {
        if (c.cautions().isEmpty()) {
            return;
        }
        m.open("div", "box caution").open("table");
        for (CardSheet.Pair p : c.cautions()) {
            m.open("tr").open("td", "mark").svg(mark(Mark.TROUBLE)).close();
            m.open("td")
                    .element("span", "strong", p.name() + ". ")
                    .text(p.value())
                    .close()
                    .close();
        }
        m.close().close();
    }

    private static void findings(Markup m, List<String> findings) {
        if (!findings.isEmpty()) {
            m.open("div", "box");
            findings.forEach(f -> m.element("p", f));
            m.close();
        }
    }

    private static void pairs(Markup m, String title, List<CardSheet.Pair> pairs) {
        if (pairs.isEmpty()) {
            return;
        }
        m.element("h2", title).open("table", "facts wrapped");
        for (CardSheet.Pair p : pairs) {
            m.open("tr").element("th", p.name()).element("td", p.value()).close();
        }
        m.close();
    }

    private static void mixes(Markup m, CardSheet c) {
        for (CardSheet.Mix x : c.mixes()) {
            m.open("div", "whole");
            m.element("h2", "Scale: " + x.name() + ", for " + x.purpose());
            scale(m, x);
            m.open("table", "facts");
            for (CardSheet.Pair p : x.facts()) {
                m.open("tr").element("th", p.name()).element("td", p.value()).close();
            }
            m.close();
            x.findings().forEach(f -> m.element("p", "strong", f));
            m.close();
        }
    }

    private static void scale(Markup m, CardSheet.Mix x) {
        if (x.batches().isEmpty()) {
            return;
        }
        m.open("table", "scale").open("thead").open("tr").element("th", "Batch").element("th", "Resin");
        m.element("th", "Hardener").element("th", "within");
        if (x.thickened()) {
            m.element("th", "Thickener");
        }
        for (String h : List.of("Whole", "Weigh at", "Used up by", "Mixed at")) {
            m.element("th", h);
        }
        m.close().close().open("tbody");
        for (CardSheet.Batch b : x.batches()) {
            m.open("tr").element("td", String.valueOf(b.number())).element("td", "strong", b.resin());
            m.element("td", "strong", b.hardener()).element("td", b.tolerance());
            if (x.thickened()) {
                m.element("td", "strong", b.thickener());
            }
            m.element("td", b.mass()).element("td", b.mixAt()).element("td", b.usableUntil());
            m.element("td", "____:____").close();
        }
        m.close().close();
        m.element("p", "small", "In all " + x.total() + ". Times are hours and minutes from the first mixing.");
    }

    /** Whether the instructions stand beside the one drawing, which would otherwise leave half the page white. */
    private static boolean besides(CardSheet c) {
        int drawings = c.stacks().size() + (c.bag().isPresent() ? 1 : 0);
        return drawings == 1 && !c.say().isEmpty() && c.say().size() <= MOST_BESIDE;
    }

    private static void drawings(Markup m, CardSheet c) {
        List<Drawing> all = new java.util.ArrayList<>(c.stacks());
        c.bag().ifPresent(all::add);
        for (int i = 0; i < all.size(); i += 2) {
            m.open("table", "pictures").open("tr");
            picture(m, all.get(i), c, i);
            if (i + 1 < all.size()) {
                picture(m, all.get(i + 1), c, i + 1);
            } else if (besides(c)) {
                m.open("td", "beside");
                list(m, "Do", "ol", c.say());
                m.close();
            }
            m.close().close();
        }
    }

    private static void picture(Markup m, Drawing d, CardSheet c, int index) {
        double scale = Math.min(0.94, MOST_DRAWING_MM / d.heightMm());
        m.open("td")
                .element(
                        "div",
                        "small",
                        index < c.stacks().size()
                                ? "Plies: "
                                        + d.title()
                                                .replaceAll(", from the mould face:.*", "")
                                                .replace("Ply stack of ", "")
                                : "Bag");
        m.svg(SvgRenderer.forPaper().render(d, scale)).close();
    }

    private static void rows(Markup m, String title, List<CardSheet.Row> rows, String note) {
        if (rows.isEmpty()) {
            return;
        }
        m.element("h2", title).open("table", "rows");
        m.open("thead").open("tr").element("th", "").element("th", "What").element("th", "num", "Amount");
        m.element("th", note).close().close().open("tbody");
        for (CardSheet.Row r : rows) {
            m.open("tr").element("td", "mark", r.mark()).element("td", r.what()).element("td", "num", r.amount());
            m.element("td", r.note()).close();
        }
        m.close().close();
    }

    private static void list(Markup m, String title, String element, List<String> items) {
        if (items.isEmpty()) {
            return;
        }
        m.element("h2", title).open(element);
        items.forEach(i -> m.element("li", i));
        m.close();
    }

    private static void ticks(Markup m, String title, List<String> items) {
        if (items.isEmpty()) {
            return;
        }
        m.element("h2", title).open("table", "ticked");
        items.forEach(i -> m.open("tr")
                .open("td", "mark")
                .svg(mark(Mark.WAITING))
                .close()
                .element("td", i)
                .element("td", "line", "")
                .close());
        m.close();
    }
}
