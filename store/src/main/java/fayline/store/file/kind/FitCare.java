package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.ANGLE;
import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.basis.units.QuantityKind.TEMPERATURE;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.Angle;
import fayline.basis.units.Temperature;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitHeat;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.KnownExpansion;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;
import fayline.method.fitup.heat.Expansion;
import fayline.method.fitup.heat.Sheet;
import fayline.method.fitup.trim.cut.CutSide;
import fayline.store.file.shape.Either;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.PlaceText;
import fayline.store.file.shape.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What becomes of a fit, in the kind {@code fits}: its states, what may be cut, and heat. */
public final class FitCare {
    static final Keys STATE = Keys.of(
            "a state",
            must("id", Forms.NAME, "Its id, which readings name."),
            must("name", Forms.TEXT, "Its name."),
            may(
                    "disturbs",
                    Keys.of(
                            "a disturbance",
                            may("along", Measure.any(LENGTH), "How the part goes along x: aft on a left part."),
                            may("up", Measure.any(LENGTH), "How it goes up."),
                            may("turn", Measure.any(ANGLE), "How it turns, counter-clockwise seen from outside."),
                            may(
                                    "out",
                                    Measure.any(LENGTH),
                                    "How it goes outboard; it counts where the part is curved."),
                            may("gap", Measure.any(LENGTH), "What every gap changes by beside; negative closes."),
                            may("deviation", Measure.above(LENGTH), "Standard uncertainty of it at a station."),
                            must("origin", Forms.TEXT, "Who says so, and from what.")),
                    "What coming into this state does to the part, where it is known beforehand."));

    private static final Numeral PER_MILLION = new Numeral(false, -1000, 1000, "millionths per kelvin");

    private static final Either EXPANSION = Either.of(
            Words.of(KnownExpansion.keys().stream()),
            Keys.of(
                    "an expansion",
                    must("along", PER_MILLION, "Along x."),
                    may("up", PER_MILLION, "Up; as along where nothing is said."),
                    may("out", PER_MILLION, "Outwards; as along where nothing is said."),
                    must("origin", Forms.TEXT, "Where the figure is from.")));

    static final Keys HEAT = Keys.of(
            "heat",
            may("anchor", PlaceText.PLACE, "Where part and surround are tied; the middle of the stations if not said."),
            must("part", EXPANSION, "How the part grows: a material, which counts as assumed, or figures."),
            must("surround", EXPANSION, "How the surround grows."),
            must("reference", Measure.any(TEMPERATURE), "The temperature at which the nominal gap is wanted."),
            must("coldest", Measure.any(TEMPERATURE), "The lowest temperature in service."),
            must("hottest", Measure.any(TEMPERATURE), "The highest."),
            may("sheet", Words.of(Fields.words(Sheet.class)), "What the part is, for cautions."),
            may("bond", Measure.above(LENGTH), "Thickness of the bond where it is bonded all round."));

    static final Either CUTTING = Either.of(
            Words.of("none"),
            Keys.of(
                    "cutting",
                    may("edges", Listed.some(Forms.TEXT), "The edges that may be cut, the first one first."),
                    may("most", Measure.above(LENGTH), "The deepest cut."),
                    may(
                            "from",
                            Words.of(Fields.words(CutSide.class)),
                            "Which side is cut; part where nothing is said."),
                    may("leave-on", Measure.zeroUp(LENGTH), "What to leave on at the first cut.")));

    private FitCare() {}

    static List<FitState> states(Fields f) {
        List<FitState> all = f.list("states").stream()
                .map(s -> new FitState(
                        s.text("id", ""),
                        s.text("name", ""),
                        s.below("disturbs").map(FitCare::disturbance)))
                .toList();
        return all.isEmpty() ? FitState.USUAL : all;
    }

    private static FitState.Disturbance disturbance(Fields d) {
        return new FitState.Disturbance(
                new SpaceMove(
                        new Vector(
                                FitHolds.mm(d, "along").orElse(0),
                                FitHolds.mm(d, "up").orElse(0),
                                FitHolds.mm(d, "out").orElse(0)),
                        new Vector(
                                0,
                                0,
                                d.measure("turn", ANGLE).map(Angle::radians).orElse(0.0))),
                FitHolds.mm(d, "gap").orElse(0),
                FitHolds.mm(d, "deviation"),
                d.text("origin", ""));
    }

    static FitCutting cutting(Fields f) {
        if (f.text("cutting").filter("none"::equals).isPresent()) {
            return new FitCutting(List.of(), FitCutting.ANY.mostMm(), CutSide.PART, FitCutting.ANY.leaveOnMm(), true);
        }
        return f.below("cutting")
                .map(c -> new FitCutting(
                        c.texts("edges"),
                        FitHolds.mm(c, "most"),
                        c.word("from", CutSide.class).orElse(CutSide.PART),
                        FitHolds.mm(c, "leave-on"),
                        false))
                .orElse(FitCutting.ANY);
    }

    static Optional<FitHeat> heat(Fields f) {
        return f.below("heat").flatMap(h -> {
            List<String> origins = new ArrayList<>();
            Optional<Expansion> part = expansion(h, "part", origins);
            Optional<Expansion> surround = expansion(h, "surround", origins);
            Optional<Double> reference = degC(h, "reference");
            Optional<Double> coldest = degC(h, "coldest");
            Optional<Double> hottest = degC(h, "hottest");
            if (part.isEmpty()
                    || surround.isEmpty()
                    || reference.isEmpty()
                    || coldest.isEmpty()
                    || hottest.isEmpty()
                    || !(coldest.get() < hottest.get())) {
                return Optional.empty();
            }
            return Optional.of(new FitHeat(
                    h.read("anchor", PlaceText::place),
                    part.get(),
                    surround.get(),
                    reference.get(),
                    List.of(coldest.get(), hottest.get()),
                    h.word("sheet", Sheet.class).orElse(Sheet.OTHER),
                    FitHolds.mm(h, "bond"),
                    origins));
        });
    }

    private static Optional<Double> degC(Fields f, String key) {
        return f.measure(key, TEMPERATURE).map(Temperature::celsius);
    }

    private static Optional<Expansion> expansion(Fields f, String key, List<String> origins) {
        Optional<KnownExpansion> known = f.text(key).flatMap(KnownExpansion::named);
        if (known.isPresent()) {
            origins.add(known.get().sentence());
            return known.map(KnownExpansion::expansion);
        }
        return f.below(key).flatMap(e -> {
            origins.add(e.text("origin", ""));
            double along = e.number("along", 0);
            return Fields.attempt(
                    "", t -> new Expansion(along * 1e-6, e.number("up", along) * 1e-6, e.number("out", along) * 1e-6));
        });
    }
}
