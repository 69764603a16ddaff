package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.AREA;
import static fayline.basis.units.QuantityKind.FRACTION;
import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.basis.units.QuantityKind.TEMPERATURE;
import static fayline.basis.units.QuantityKind.TEMPERATURE_DIFFERENCE;
import static fayline.basis.units.QuantityKind.TIME_SPAN;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.project.shop.Mould;
import fayline.flow.project.shop.Person;
import fayline.flow.project.shop.PlanWeights;
import fayline.flow.project.shop.Port;
import fayline.flow.project.shop.Shop;
import fayline.flow.project.shop.Stand;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.YesNo;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

/** The kind {@code shop}. */
public final class ShopKind {
    private static final Keys LIMITS = Keys.of(
            "the climate limits",
            must("coldest", Measure.any(TEMPERATURE), "Least air temperature for wet work."),
            must("dampest", Measure.share(), "Most relative humidity for wet work."),
            must(
                    "dew-margin",
                    Measure.zeroUp(TEMPERATURE_DIFFERENCE),
                    "Least distance of the coldest surface above the dew point."));

    private static final Keys STAND = Keys.of(
            "a stand",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            must("room", Forms.TEXT, "The room; dust in a room keeps wet work out of it."),
            must("dust", new YesNo(), "Whether dusty work may happen here."),
            must("wet", new YesNo(), "Whether wet work may happen here."),
            may(
                    "warmer",
                    Measure.zeroUp(TEMPERATURE_DIFFERENCE),
                    "How much warmer than the shop's air it is kept; 0 K where nothing is said."),
            may("shelves", Measure.above(AREA), "Area of what fits on it at once; limits a set of pieces."));

    private static final Keys PORT = Keys.of(
            "a vacuum port",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            must("pump", Forms.TEXT, "The pump behind it."));

    private static final Numeral WEIGHT = Numeral.number(0, 1000, "hours of a later end");

    private static final Keys WORTH = Keys.of(
            "what a better plan is worth",
            may("late", WEIGHT, "An hour by which a dated goal is missed; 4 if not said."),
            may("finish", WEIGHT, "An hour by which all work ends later; 1 if not said."),
            may("parts", WEIGHT, "An hour by which parts and joints are done later, on average; 2 if not said."),
            may("window", WEIGHT, "A person-hour of work that a missed window costs; 6 if not said."),
            may("idle", WEIGHT, "A person-hour in the coming fortnight with nothing to do; 0.2 if not said."),
            may("evening", WEIGHT, "A person-hour of hands in the evening; 1 if not said."),
            may("moved", WEIGHT, "A step that lies elsewhere than the crew was told; 2 if not said."),
            may("evening-from", Forms.TIME, "When the evening begins; 18:00 if not said."));

    static final Keys SHAPE = Keys.of(
            "the shop",
            must("name", Forms.TEXT, "Its name."),
            must("zone", Forms.ZONE, "Its time zone; all times in the files are local to it."),
            must("elevation", Measure.any(LENGTH), "Height above the sea, for the pressure that a bag can reach."),
            must("limits", LIMITS, "The climate in which wet work may begin."),
            must(
                    "dust-settles",
                    Measure.zeroUp(TIME_SPAN),
                    "How long after dusty work the air of a room must settle before wet work."),
            must("mixing", Measure.zeroUp(TIME_SPAN), "Hands-on time to weigh and mix one batch."),
            must("life-trusted", Measure.share(), "The share of a pot life on which batches rely."),
            must(
                    "resin-waste",
                    Measure.share(),
                    "Mixed resin beyond what stays in the part, as a share of the latter."),
            must("cloth-waste", Measure.share(), "Cloth beyond the ply area, as a share of it."),
            may(
                    "worth",
                    WORTH,
                    "What a better plan is worth, in hours of a later end; the usual where nothing is said."),
            must("stands", Listed.some(STAND), "Places where work happens."),
            may("ports", Listed.of(PORT), "Vacuum connections."));

    private ShopKind() {}

    /** The shop's time zone; UTC as stand-in. */
    public static ZoneId zone(Fields f) {
        return f.read("zone", ZoneId::of).orElse(ZoneOffset.UTC);
    }

    /** Reads the shop. */
    public static Shop read(Fields f, List<Person> people, List<Mould> moulds, List<LeadWish> wishes) {
        Fields limits = f.below("limits").orElse(f);
        return new Shop(
                f.text("name", ""),
                zone(f),
                f.measure("elevation", LENGTH, "0 m"),
                new Shop.Limits(
                        limits.measure("coldest", TEMPERATURE, "17 degC"),
                        limits.measure("dampest", FRACTION, "70 %"),
                        limits.measure("dew-margin", TEMPERATURE_DIFFERENCE, "3 K")),
                f.measure("dust-settles", TIME_SPAN, "2 h"),
                f.measure("mixing", TIME_SPAN, "5 min"),
                f.measure("life-trusted", FRACTION, "60 %"),
                f.measure("resin-waste", FRACTION, "15 %"),
                f.measure("cloth-waste", FRACTION, "15 %"),
                f.below("worth").map(ShopKind::worth).orElse(PlanWeights.USUAL),
                new Catalog<>(people),
                new Catalog<>(f.list("stands").stream().map(ShopKind::stand).toList()),
                new Catalog<>(f.list("ports").stream().map(ShopKind::port).toList()),
                new Catalog<>(moulds),
                new Catalog<>(wishes));
    }

    private static PlanWeights worth(Fields w) {
        PlanWeights usual = PlanWeights.USUAL;
        return new PlanWeights(
                w.number("late", usual.late()),
                w.number("finish", usual.finish()),
                w.number("parts", usual.parts()),
                w.number("window", usual.window()),
                w.number("idle", usual.idle()),
                w.number("evening", usual.evening()),
                w.number("moved", usual.moved()),
                w.read("evening-from", LocalTime::parse).orElse(usual.eveningFrom()));
    }

    private static Stand stand(Fields s) {
        return new Stand(
                s.text("id", ""),
                s.text("name", ""),
                s.text("room", ""),
                s.yes("dust"),
                s.yes("wet"),
                s.measure("warmer", TEMPERATURE_DIFFERENCE, "0 K"),
                s.measure("shelves", AREA));
    }

    private static Port port(Fields p) {
        return new Port(p.text("id", ""), p.text("name", ""), p.text("pump", ""));
    }
}
