package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.AREA;
import static fayline.basis.units.QuantityKind.AREAL_MASS;
import static fayline.basis.units.QuantityKind.DENSITY;
import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.basis.units.QuantityKind.MASS;
import static fayline.basis.units.QuantityKind.STRESS;
import static fayline.basis.units.QuantityKind.TEMPERATURE;
import static fayline.basis.units.QuantityKind.TIME_SPAN;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.Entered;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.stock.Delivery;
import fayline.flow.project.stock.Lamina;
import fayline.flow.project.stock.Lot;
import fayline.flow.project.stock.Material;
import fayline.flow.project.stock.Price;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.Words;
import fayline.store.file.shape.YesNo;
import java.util.Optional;
import java.util.OptionalDouble;

/** The kinds {@code materials}, {@code lots} and {@code deliveries}. */
public final class StockKind {
    static final Keys PRICE = Keys.of(
            "a price",
            must("amount", Numeral.number(0, 1e8, "the project's currency"), "The amount."),
            must(
                    "per",
                    Words.of("kg", "g", "lb", "oz", "m2", "ft2", "yd2", "m", "ft", "yd", "in", "each"),
                    "The unit that it buys."));

    private static final Keys BEARS = Keys.of(
            "strengths",
            must("pulled-along", Measure.above(STRESS), "Pulled along the fibres."),
            must("pressed-along", Measure.above(STRESS), "Pressed along them."),
            must("pulled-across", Measure.above(STRESS), "Pulled across."),
            must("pressed-across", Measure.above(STRESS), "Pressed across."),
            must("shear", Measure.above(STRESS), "Sheared in the plane."));

    private static final double MILLIONTH = 1e-6;

    private static final Keys LAMINA = Keys.of(
            "a lamina",
            must("along", Measure.above(STRESS), "Modulus along the fibres."),
            must("across", Measure.above(STRESS), "Modulus across them; of a balanced cloth the same."),
            must("shear", Measure.above(STRESS), "Shear modulus in the plane."),
            must("poisson", Numeral.number(0, 1, ""), "Contraction across when pulled along."),
            must("origin", Forms.TEXT, "Where the figures are from."),
            may("assumed", new YesNo(), "Whether they are assumed; then they are shown so."),
            may("status", Words.of("measured", "data-sheet", "assumed"), "How far they are to be trusted."),
            may("at", Measure.any(TEMPERATURE), "The temperature they hold at."),
            may(
                    "expansion-along",
                    Numeral.number(-100, 500, "millionths per kelvin"),
                    "How it grows along the fibres, in millionths per kelvin."),
            may(
                    "expansion-across",
                    Numeral.number(-100, 500, "millionths per kelvin"),
                    "How it grows across them, in millionths per kelvin."),
            may("bears", BEARS, "What it bears until it fails, in its own directions; each above nought."));

    static final Keys MATERIAL = Keys.of(
            "a material",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            must("kind", Words.of(Fields.words(Material.Kind.class)), "What it is."),
            may("areal-mass", Measure.above(AREAL_MASS), "Mass per area of cloth, film or sheet."),
            may("thickness", Measure.above(LENGTH), "Thickness of core and sheet; of cloth as laid where known."),
            may("density", Measure.above(DENSITY), "Density of the fibre for cloth, of the sheet for core and panes."),
            may("roll-width", Measure.above(LENGTH), "Usable width of the roll or sheet."),
            may("roll-length", Measure.above(LENGTH), "Length of a roll or sheet."),
            may("price", PRICE, "Its price."),
            may("lead-time", Measure.zeroUp(TIME_SPAN), "Time from order to delivery."),
            may(
                    "out-life",
                    Measure.above(TIME_SPAN),
                    "For what is kept in the cold: how long it may be out of it, all together."),
            may("lamina", LAMINA, "How stiff cloth or tape is once laid and cured, in its own directions."));

    static final Keys LOT = Keys.of(
            "a lot",
            must("id", Forms.MARK, "The number on it."),
            must("of", Forms.REF, "The material or system."),
            may("component", Words.of("resin", "hardener"), "Which component of a system it is."),
            must(
                    "quantity",
                    new Measure(java.util.List.of(MASS, AREA, LENGTH), Measure.Range.NOT_NEGATIVE, false),
                    "What there was when it was received."),
            must("received", Forms.DATE, "When it came."),
            may("expires", Forms.DATE, "The date on it."),
            may("opened", Forms.DATE, "When it was opened."),
            may("opened-life", Measure.above(TIME_SPAN), "How long it keeps once opened."),
            may(
                    "weighed",
                    new YesNo(),
                    "Whether the quantity was weighed as it came; otherwise it is what the label says."),
            may("price", PRICE, "What it cost; else the price of the material or system counts."));

    static final Keys DELIVERY = Keys.of(
            "a delivery",
            must("id", Forms.ID, "Its id."),
            must(
                    "what",
                    Forms.TEXT,
                    "The material, system or part that was ordered, by id; or in words what is made outside."),
            must("quantity", Forms.TEXT, "How much, such as 20 kg or 2 pieces."),
            must("due", Forms.DATE, "The promised day."),
            may("latest", Forms.DATE, "The day it may slip to; plans count with it."),
            may("arrived", Forms.DATE, "The day it came."),
            may("needed", Listed.of(Forms.WORK_REF), "The parts, joints or steps that wait for it."));

    private StockKind() {}

    static Optional<Price> price(Fields f) {
        return f.below("price").map(p -> Price.of(p.number("amount", 0), p.text("per", "each")));
    }

    /** Reads one material. */
    public static Material material(Fields f) {
        return new Material(
                f.text("id", ""),
                f.text("name", ""),
                f.word("kind", Material.Kind.class).orElse(Material.Kind.OTHER),
                f.entered("areal-mass", AREAL_MASS),
                f.entered("thickness", LENGTH),
                f.entered("density", DENSITY),
                f.entered("roll-width", LENGTH),
                f.entered("roll-length", LENGTH),
                price(f),
                f.measure("lead-time", TIME_SPAN),
                f.measure("out-life", TIME_SPAN),
                f.below("lamina").flatMap(l -> Fields.attempt("", t -> lamina(l))));
    }

    private static Lamina lamina(Fields l) {
        return new Lamina(
                l.measure("along", STRESS).orElseThrow(),
                l.measure("across", STRESS).orElseThrow(),
                l.measure("shear", STRESS).orElseThrow(),
                l.number("poisson", 0),
                expansion(l, "expansion-along"),
                expansion(l, "expansion-across"),
                l.below("bears").flatMap(b -> Fields.attempt("", t -> bears(b))),
                l.text("origin", ""),
                l.word("status", Lamina.Status.class)
                        .orElse(l.yes("assumed") ? Lamina.Status.ASSUMED : Lamina.Status.UNSAID),
                l.measure("at", TEMPERATURE));
    }

    private static OptionalDouble expansion(Fields l, String key) {
        OptionalDouble v = l.maybe(key);
        return v.isPresent() ? OptionalDouble.of(v.getAsDouble() * MILLIONTH) : v;
    }

    private static Lamina.Bears bears(Fields b) {
        return new Lamina.Bears(
                b.measure("pulled-along", STRESS).orElseThrow(),
                b.measure("pressed-along", STRESS).orElseThrow(),
                b.measure("pulled-across", STRESS).orElseThrow(),
                b.measure("pressed-across", STRESS).orElseThrow(),
                b.measure("shear", STRESS).orElseThrow());
    }

    /** Reads one lot. */
    public static Lot lot(Fields f) {
        return new Lot(
                f.text("id", ""),
                f.text("of", ""),
                f.text("component", ""),
                quantity(f),
                f.day("received"),
                f.date("expires"),
                f.date("opened"),
                f.measure("opened-life", TIME_SPAN),
                f.yes("weighed"),
                price(f));
    }

    private static Entered<? extends Quantity> quantity(Fields f) {
        Optional<? extends Entered<? extends Quantity>> q = f.entered("quantity", MASS);
        if (q.isEmpty()) {
            q = f.entered("quantity", AREA);
        }
        if (q.isEmpty()) {
            q = f.entered("quantity", LENGTH);
        }
        return q.isPresent() ? q.get() : QuantityParser.parse("0 kg", MASS);
    }

    /** Reads one delivery. */
    public static Delivery delivery(Fields f) {
        return new Delivery(
                f.text("id", ""),
                f.text("what", ""),
                f.text("quantity", ""),
                f.day("due"),
                f.date("latest"),
                f.date("arrived"),
                f.texts("needed"));
    }
}
