package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.ANGLE;
import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.geometry.Outline;
import fayline.basis.units.Angle;
import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.design.Hand;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitBulge;
import fayline.flow.project.fit.FitGauge;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.FitWanted;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.outline.OutlineShape;
import fayline.method.fitup.space.LiftLimits;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.PlaceText;
import fayline.store.file.shape.Words;
import fayline.store.file.yaml.Tree;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The kind {@code fits}. Places are in the part's frame, seen from outside: x aft on a left part and forward on a right one, y
 * up.
 */
public final class FitKind {
    private static final Keys STATION = Keys.of(
            "a station",
            must("id", Forms.MARK, "Its mark."),
            must("where", Forms.TEXT, "Where it is, in words."),
            may("at", PlaceText.PLACE, "Its place on the part's edge."),
            may(
                    "normal",
                    PlaceText.WAY,
                    "From part to neighbour, where it does not follow from the outline; a third number looks outboard."),
            may(
                    "out",
                    Measure.any(LENGTH),
                    "How far it lies outboard of the part's plane; 0 mm where nothing is said."),
            may(
                    "lean",
                    Measure.any(ANGLE),
                    "How far the surface falls away inboard towards the edge here, negative where it rises; the gap leans with it."),
            may(
                    "surface",
                    PlaceText.WAY_OUT,
                    "Which way the surface looks, instead of a lean; straight outboard where nothing is said."),
            may("edge", Forms.TEXT, "The edge it lies on, in the builder's word or the outline's, such as sill or E3."),
            may("against", Forms.REF, "The neighbour there; the first one where nothing is said."),
            may("gap", Measure.zeroUp(LENGTH), "Gap wanted here, where it differs."),
            may("gap-tolerance", Measure.zeroUp(LENGTH), "Its tolerance here, where it differs."),
            may("weight", Numeral.number(0.001, 1000, ""), "How much a millimetre here counts; 1 if not said."));

    /** How far a part may be moved in its plane. */
    static final Keys ROOM = Keys.of(
            "room",
            may("along", Measure.zeroUp(LENGTH), "Along x, either way; 10 mm where not said."),
            may("up", Measure.zeroUp(LENGTH), "Up or down; 10 mm where not said."),
            may("turn", Measure.zeroUp(ANGLE), "Turned either way; 2 deg where not said."));

    private static final Keys ROOM_IN_SPACE = new Keys(
            "room",
            Stream.concat(
                            ROOM.keys().stream(),
                            Stream.of(
                                    may(
                                            "out",
                                            Measure.zeroUp(LENGTH),
                                            "Of a curved part out or in, either way; 10 mm where not said."),
                                    may(
                                            "tilt",
                                            Measure.zeroUp(ANGLE),
                                            "Of a curved part tilted or swung, either way; 2 deg where not said.")))
                    .toList(),
            List.of());

    static final Keys FIT = Keys.of(
            "a fit",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            may(
                    "hand",
                    Words.of(Fields.words(Hand.class)),
                    "The hand where no part is named yet, for aft and nose-up; left where nothing is said."),
            may("part", Forms.REF, "The part that is fitted; none where the fit was begun on the spot."),
            may(
                    "joint",
                    Forms.REF,
                    "The joint that bonds it: its dry fit and bond lead here; the part's nearest joint where nothing is said."),
            may("against", Listed.of(Forms.REF), "Its neighbours, the first one first."),
            must("gap", Measure.zeroUp(LENGTH), "Nominal gap."),
            must("gap-tolerance", Measure.zeroUp(LENGTH), "Allowed deviation of the gap either way."),
            must("flush", Measure.any(LENGTH), "Nominal flush, positive where the part stands proud."),
            must("flush-tolerance", Measure.zeroUp(LENGTH), "Allowed deviation of the flush either way."),
            may("minimum-gap", Measure.zeroUp(LENGTH), "A gap never to be undercut."),
            must("stations", Listed.some(STATION), "Marked places along the edge, in order."),
            may("outline", FitEdge.OUTLINE, "The part's edge, seen from outside."),
            may(
                    "marks",
                    Listed.of(Keys.of(
                            "a marked place",
                            must("name", Forms.TEXT, "What it is called, such as upper aft corner."),
                            must("at", PlaceText.PLACE, "Where it is on the part."),
                            may("out", Measure.any(LENGTH), "How far it lies outboard of the part's plane."))),
                    "Two places at which a move is told."),
            may("room", ROOM_IN_SPACE, "How far the part may be moved."),
            may(
                    "gauge",
                    Keys.of(
                            "a gauge",
                            must("name", Forms.TEXT, "What gaps are read with."),
                            may("deviation", Measure.above(LENGTH), "Standard uncertainty of one reading."),
                            may(
                                    "shared",
                                    Measure.zeroUp(LENGTH),
                                    "Standard uncertainty that all readings of one hand share.")),
                    "What gaps are read with."),
            may(
                    "states",
                    Listed.some(FitCare.STATE),
                    "The states it goes through, in order; bonded, trimmed, hung, latched, struts, sealed, painted, hot "
                            + "where nothing is said."),
            may("points", Listed.of(FitHolds.POINT), "Places where the part is held off its neighbour and shimmed."),
            may("schemes", Listed.of(FitHolds.SCHEME), "Ways to locate the part, to be compared."),
            may("scheme", Forms.TEXT, "The scheme that was chosen, by name."),
            may("shims", FitHolds.SHIMS, "The pieces at hand."),
            may("cutting", FitCare.CUTTING, "What may be cut: none, or where and how deep; all if nothing is said."),
            may("heat", FitCare.HEAT, "How part and surround grow."),
            may("widths", Listed.of(FitFrames.WIDTH), "Widths of a frame that springs, tried at the bench."),
            may("frame", FitBeams.FRAME, "The frame and what carries it as beams, clamped, bonded and let go."));

    private FitKind() {}

    /**
     * Reads one fit.
     *
     * @param f its fields
     * @param drawings makes an outline of a mapping that names a drawing; empty where that was refused
     */
    public static Fit fit(Fields f, Function<Tree, Optional<Outline>> drawings) {
        Optional<OutlineShape> outline = f.below("outline").flatMap(o -> FitEdge.read(o, drawings));
        List<FitStation> stations =
                f.list("stations").stream().map(FitKind::station).toList();
        return new Fit(
                f.text("id", ""),
                f.text("name", ""),
                f.word("hand", Hand.class).orElse(Hand.NONE),
                f.text("part"),
                f.text("joint"),
                f.texts("against"),
                new FitWanted(
                        length(f, "gap"),
                        length(f, "gap-tolerance"),
                        length(f, "flush"),
                        length(f, "flush-tolerance"),
                        f.entered("minimum-gap", LENGTH)),
                stations,
                outline,
                marks(f),
                f.below("room").map(FitKind::room).orElse(MoveLimits.WIDEST),
                f.below("gauge")
                        .map(g -> new FitGauge(
                                g.text("name", ""), FitHolds.mm(g, "deviation"), FitHolds.mm(g, "shared"))),
                FitCare.states(f),
                FitHolds.read(f, outline),
                FitCare.cutting(f),
                FitCare.heat(f),
                FitFrames.read(f, stations),
                f.below("room").map(FitKind::lift).orElse(LiftLimits.WIDEST));
    }

    private static FitStation station(Fields s) {
        return new FitStation(
                s.text("id", ""),
                s.text("where", ""),
                s.read("at", PlaceText::place),
                s.read("normal", PlaceText::way).map(d -> new FitStation.Normal(d.x(), d.y())),
                s.text("edge", ""),
                s.text("against", ""),
                s.entered("gap", LENGTH),
                s.entered("gap-tolerance", LENGTH),
                s.number("weight", 1),
                new FitBulge(
                        FitHolds.mm(s, "out"),
                        s.measure("lean", ANGLE)
                                .map(a -> OptionalDouble.of(a.radians()))
                                .orElse(OptionalDouble.empty()),
                        s.text("normal")
                                .filter(PlaceText::leadsOut)
                                .flatMap(n -> s.read("normal", PlaceText::way))
                                .map(n -> OptionalDouble.of(n.z()))
                                .orElse(OptionalDouble.empty()),
                        s.read("surface", PlaceText::way)));
    }

    private static List<Fit.Mark> marks(Fields f) {
        return f.list("marks").stream()
                .flatMap(m -> m
                        .read("at", PlaceText::place)
                        .map(at -> new Fit.Mark(
                                m.text("name", ""), at, FitHolds.mm(m, "out").orElse(0)))
                        .stream())
                .toList();
    }

    static MoveLimits room(Fields r) {
        MoveLimits widest = MoveLimits.WIDEST;
        return MoveLimits.of(
                within(FitHolds.mm(r, "along").orElse(widest.dxHighMm()), widest.dxHighMm()),
                within(FitHolds.mm(r, "up").orElse(widest.dyHighMm()), widest.dyHighMm()),
                within(
                        r.measure("turn", ANGLE).map(Angle::radians).orElse(widest.turnHighRad()),
                        widest.turnHighRad()));
    }

    private static LiftLimits lift(Fields r) {
        LiftLimits widest = LiftLimits.WIDEST;
        return new LiftLimits(
                within(FitHolds.mm(r, "out").orElse(widest.outMm()), widest.outMm()),
                within(r.measure("tilt", ANGLE).map(Angle::radians).orElse(widest.tiltRad()), widest.tiltRad()));
    }

    private static double within(double asked, double most) {
        return asked >= 0 && asked <= most ? asked : most;
    }

    private static Entered<Length> length(Fields f, String key) {
        return f.entered(key, LENGTH).orElseGet(() -> QuantityParser.parse("0 mm", LENGTH));
    }
}
