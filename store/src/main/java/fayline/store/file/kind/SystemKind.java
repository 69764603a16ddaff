package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.DENSITY;
import static fayline.basis.units.QuantityKind.FRACTION;
import static fayline.basis.units.QuantityKind.MASS;
import static fayline.basis.units.QuantityKind.MOLAR_ENERGY;
import static fayline.basis.units.QuantityKind.TEMPERATURE;
import static fayline.basis.units.QuantityKind.TEMPERATURE_DIFFERENCE;
import static fayline.basis.units.QuantityKind.TIME_SPAN;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.flow.project.stock.ResinSystem;
import fayline.method.cure.CureSheet;
import fayline.method.cure.CureState;
import fayline.method.cure.GlassTransition;
import fayline.method.cure.Kinetics;
import fayline.method.cure.PotShape;
import fayline.method.cure.SheetPoint;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.Words;

/** The kind {@code systems}. */
public final class SystemKind {
    private static final Keys POINT = Keys.of(
            "a data-sheet point",
            must("state", Words.of(Fields.words(CureState.class)), "The state that is reached."),
            must("time", Measure.above(TIME_SPAN), "The time from mixing."),
            must("at", Measure.any(TEMPERATURE), "The temperature at which the time holds."),
            may("mass", Measure.above(MASS), "The mixed mass; a pot life must have it."),
            may("shape", Words.of(Fields.words(PotShape.class)), "How the mass stands; cup where nothing is said."),
            may("source", Forms.TEXT, "Where the point was read."));

    private static final Keys KINETICS = Keys.of(
            "the rate law",
            must("a1", Forms.PER_TIME, "First rate constant."),
            must("e1", Measure.zeroUp(MOLAR_ENERGY), "First activation energy."),
            must("a2", Forms.PER_TIME, "Second rate constant."),
            must("e2", Measure.zeroUp(MOLAR_ENERGY), "Second activation energy."),
            must("m", Numeral.number(0, 10, ""), "Exponent of the degree of cure."),
            must("n", Numeral.number(0, 10, ""), "Exponent of what is left to cure."));

    private static final Keys GLASS = Keys.of(
            "the glass transition",
            must("uncured", Measure.any(TEMPERATURE), "Of the uncured mix."),
            must("full", Measure.any(TEMPERATURE), "At full cure."),
            must("lambda", Numeral.number(0.001, 1, ""), "The shape parameter."),
            must(
                    "stall-above",
                    Measure.zeroUp(TEMPERATURE_DIFFERENCE),
                    "How far it rises above the cure temperature before the reaction stalls."));

    static final Keys SHAPE = Keys.of(
            "a system",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            must("kind", Words.of(Fields.words(ResinSystem.Kind.class)), "What it is for."),
            must("ratio", Forms.RATIO, "Resin to hardener by mass, in quotation marks."),
            must("ratio-tolerance", Measure.share(), "Allowed deviation of the hardener."),
            must("density", Measure.above(DENSITY), "Density of the mix."),
            may("density-resin", Measure.above(DENSITY), "Density of the resin."),
            may("density-hardener", Measure.above(DENSITY), "Density of the hardener."),
            must("largest-pot", Measure.above(MASS), "Most mass to mix in one container."),
            must("use-rate", Forms.USE_RATE, "Mixed mass that one person applies per time."),
            may("coldest", Measure.any(TEMPERATURE), "Least temperature of use."),
            may("dampest", Measure.share(), "Most relative humidity of use."),
            must("points", Listed.some(POINT), "Points from the data sheet."),
            may("activation", Measure.above(MOLAR_ENERGY), "Activation energy, where the maker states it."),
            may("kinetics", KINETICS, "Published rate constants, where they exist."),
            may("glass", GLASS, "Glass transition against degree of cure, where constants exist."),
            may("price", StockKind.PRICE, "Price per kilogram mixed."),
            may("lead-time", Measure.zeroUp(TIME_SPAN), "Time from order to delivery."),
            may(
                    "out-life",
                    Measure.above(TIME_SPAN),
                    "For what is kept in the cold: how long it may be out of it, all together."),
            may("hazards", Listed.of(Forms.NAME), "Keys of the caution table, such as epoxy."));

    private SystemKind() {}

    /** Reads one system. */
    public static ResinSystem read(Fields f) {
        double[] ratio = f.read("ratio", Forms::ratio).orElse(new double[] {1, 1});
        return new ResinSystem(
                f.text("id", ""),
                f.text("name", ""),
                f.word("kind", ResinSystem.Kind.class).orElse(ResinSystem.Kind.LAMINATING),
                ratio[0],
                ratio[1],
                f.measure("ratio-tolerance", FRACTION, "1 %"),
                f.measure("density", DENSITY, "1.1 g/cm3"),
                f.measure("density-resin", DENSITY),
                f.measure("density-hardener", DENSITY),
                cure(f),
                f.measure("coldest", TEMPERATURE),
                f.measure("dampest", FRACTION),
                f.measure("largest-pot", MASS, "100 g"),
                f.read("use-rate", Forms::massRateKgPerS).orElse(0.0004),
                StockKind.price(f),
                f.measure("lead-time", TIME_SPAN),
                f.measure("out-life", TIME_SPAN),
                f.texts("hazards"));
    }

    private static CureSheet cure(Fields f) {
        return new CureSheet(
                f.list("points").stream().map(SystemKind::point).toList(),
                f.measure("activation", MOLAR_ENERGY),
                f.below("kinetics")
                        .map(k -> new Kinetics(
                                k.read("a1", Forms::perSecond).orElse(1.0),
                                k.measure("e1", MOLAR_ENERGY, "50 kJ/mol").si(),
                                k.read("a2", Forms::perSecond).orElse(1.0),
                                k.measure("e2", MOLAR_ENERGY, "50 kJ/mol").si(),
                                k.number("m", 1),
                                k.number("n", 1))),
                f.below("glass")
                        .map(g -> new GlassTransition(
                                g.measure("uncured", TEMPERATURE, "-30 degC"),
                                g.measure("full", TEMPERATURE, "80 degC"),
                                g.number("lambda", 0.5),
                                g.measure("stall-above", TEMPERATURE_DIFFERENCE, "15 K"))));
    }

    private static SheetPoint point(Fields p) {
        return new SheetPoint(
                p.word("state", CureState.class).orElse(CureState.FULL_CURE),
                p.measure("time", TIME_SPAN, "1 h"),
                p.measure("at", TEMPERATURE, "23 degC"),
                p.measure("mass", MASS),
                p.word("shape", PotShape.class).orElse(PotShape.CUP),
                p.text("source", ""));
    }
}
