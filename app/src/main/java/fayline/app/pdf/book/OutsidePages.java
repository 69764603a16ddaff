package fayline.app.pdf.book;

import fayline.app.pdf.Markup;
import fayline.app.usecase.coupon.CouponWords;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.UnitSystem;
import fayline.flow.project.design.CouponMeasure;
import fayline.flow.record.TakenReading;
import fayline.flow.record.stock.Order;
import fayline.flow.result.coupon.CouponResult;
import fayline.flow.result.stock.OrderCheck;
import java.util.List;

/** Writes what was made outside, with its measures against the drawing, and what witness pieces showed. */
final class OutsidePages {
    private static final int COLUMNS = 6;
    private final Markup m;
    private final BookWords words;

    OutsidePages(Markup m, BookWords words) {
        this.m = m;
        this.words = words;
    }

    void coupons(List<CouponResult> coupons) {
        if (coupons.isEmpty()) {
            return;
        }
        UnitSystem units = words.format().system();
        m.element("h2", "Witness pieces");
        BookPdf.head(m, "Piece", "Test", "Tested", "Mean", "Standard deviation", "Variation");
        for (CouponResult c : coupons) {
            CouponMeasure test = c.coupon().test();
            m.open("tr").element("td", "strong", c.coupon().name());
            m.element("td", CouponWords.test(test)).element("td", CouponWords.tested(c));
            m.element("td", "n", CouponWords.told(units, test, c.mean()));
            m.element("td", "n", CouponWords.told(units, test, c.deviation()));
            m.element("td", "n", CouponWords.variation(c)).close();
            c.readings().forEach(r -> below(result(r)));
            String bound = CouponWords.bound(units, c);
            if (!bound.isEmpty()) {
                below("Nine of ten bear at least " + bound + ", by 95 % confidence [cmh17].");
            }
            CouponWords.boundSays(c).forEach(this::below);
            if (!c.coupon().allowable().isEmpty()) {
                below("Speaks for: " + c.coupon().allowable());
            }
        }
        m.close().close();
    }

    private String result(TakenReading r) {
        String with = r.values().getOrDefault("instrument", "");
        return r.state().replace('-', ' ') + ": " + r.value() + ", " + words.person(r.by()) + ", " + words.at(r.at())
                + (with.isEmpty() ? "" : ", with " + with) + ", entry " + r.seq();
    }

    private void below(String text) {
        m.open("tr", "below")
                .openWith("td", "colspan", String.valueOf(COLUMNS))
                .text(text)
                .close()
                .close();
    }

    void orders(String heading, List<Order> orders) {
        if (orders.isEmpty()) {
            return;
        }
        m.element("h2", heading);
        orders.forEach(this::order);
    }

    private void order(Order o) {
        m.open("div", "box").element("p", "strong", o.quantity() + " of " + words.stuff(o.what()) + from(o));
        m.element(
                "p",
                "small",
                "Order " + o.id() + ", " + words.at(o.at()) + ", " + words.person(o.by()) + ", entry " + o.seq()
                        + (o.drawing().isEmpty() ? "" : "; drawing " + o.drawing())
                        + (o.revision().isEmpty() ? "" : " revision " + o.revision()));
        if (o.arrivals().isEmpty()) {
            m.element("p", "NOT HERE YET, promised for " + o.due() + ".");
            toMeasure(o);
        }
        o.arrivals().forEach(a -> arrival(o, a));
        m.close();
    }

    private void toMeasure(Order o) {
        if (!o.features().isEmpty()) {
            m.element("p", "small", "To be measured when it comes:").open("ul");
            o.features().forEach(f -> m.element("li", f.name() + ", drawn " + f.drawn() + " within " + f.within()));
            m.close();
        }
    }

    private static String from(Order o) {
        return o.maker().isEmpty() ? "" : " from " + o.maker();
    }

    private void arrival(Order o, Order.Arrival a) {
        m.element(
                "p",
                (a.accepted() ? "Accepted " : "SENT BACK ") + words.at(a.at()) + ", " + words.person(a.by())
                        + ", entry " + a.seq() + (a.note().isEmpty() ? "" : ": " + a.note()));
        List<Finding> found = OrderCheck.of(o, a.revision(), a.measured());
        if (!found.isEmpty()) {
            m.open("ul");
            for (Finding f : found) {
                String says = f.sentence(words.format().system());
                m.element("li", f.severity() == Severity.STOP ? "OUTSIDE. " + says : "Within. " + says);
            }
            m.close();
        }
        a.measured().stream()
                .filter(x -> found.stream().noneMatch(f -> f.sentence().startsWith(x.name() + " is ")))
                .filter(x -> !x.found().isEmpty())
                .forEach(x -> m.element("p", x.name() + ": " + x.found() + ", not compared."));
    }
}
