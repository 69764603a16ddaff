package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.ANGLE;
import static fayline.basis.units.QuantityKind.AREA;
import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.basis.units.QuantityKind.MASS;
import static fayline.basis.units.QuantityKind.TIME_SPAN;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.geometry.Outline;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.flow.project.design.AfterOpposite;
import fayline.flow.project.design.Coupon;
import fayline.flow.project.design.CouponMeasure;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.PieceSets;
import fayline.flow.project.design.Zone;
import fayline.flow.project.recipe.StepKind;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.Text;
import fayline.store.file.shape.Words;
import fayline.store.file.shape.YesNo;
import fayline.store.file.yaml.Tree;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The kind {@code parts}. */
public final class PartKind {
    private static final Keys CUTOUT = Keys.of(
            "a cut-out",
            must("x", Measure.any(LENGTH), "Centre, along the chord or x."),
            must("y", Measure.any(LENGTH), "Centre, across."),
            must("diameter", Measure.above(LENGTH), "Diameter of the hole."));

    /** An outline; exactly one of a vertex list, a file and an airfoil number. */
    static final Keys OUTLINE = Keys.of(
                    "an outline",
                    may(
                            "vertices",
                            Text.of(
                                    "corners as x y, x y, ... without units, at least three",
                                    "\\s*-?[0-9.eE+-]+\\s+-?[0-9.eE+-]+\\s*(?:,\\s*-?[0-9.eE+-]+\\s+-?[0-9.eE+-]+\\s*){2,}"),
                            "Corners in order, in the unit below."),
                    may(
                            "file",
                            Text.of(
                                    "a file in outlines/ ending in .dxf, .svg or .dat",
                                    "outlines/[A-Za-z0-9._/-]+\\.(?:dxf|svg|dat|DXF|SVG|DAT)"),
                            "A drawing: DXF, SVG or airfoil coordinates."),
                    may(
                            "naca",
                            Text.of(
                                    "a NACA number of 4 or 5 digits in quotation marks, such as \"2412\"",
                                    "[0-9]{4,5}"),
                            "A NACA number."),
                    may(
                            "unit",
                            Words.of("mm", "cm", "m", "in", "ft"),
                            "The unit of the numbers; for DXF and SVG what the file says, else mm."),
                    may(
                            "layer",
                            Forms.TEXT,
                            "The layer of a DXF, or the id of an SVG's group, that holds the outline; all where nothing is said."),
                    may("chord", Measure.above(LENGTH), "Chord of an airfoil."),
                    may("from", Numeral.number(0, 1, "chord lengths"), "Where a rib begins, as a share of the chord."),
                    may("to", Numeral.number(0, 1, "chord lengths"), "Where it ends."),
                    may("points", Numeral.count(10, 2000), "Points on each face; 80 where nothing is said."),
                    may("flange", Measure.above(LENGTH), "Flange folded all round: the flat is that much larger."),
                    may("cutouts", Listed.of(CUTOUT), "Round holes."))
            .oneOf("vertices", "file", "naca");

    private static final Keys ZONE = Keys.of(
            "a zone",
            must("id", Forms.ID, "Its id within the part."),
            may("name", Forms.TEXT, "Its name; the id where nothing is said."),
            must("laminate", Forms.REF, "Its stack."),
            may("area", Measure.above(AREA), "True surface; else that of the outline."),
            may("edge", Measure.above(LENGTH), "Length of its edge; else that of the outline."),
            may("corners", Numeral.count(0, 1000), "Inside corners that cloth is worked into."),
            may("axis", Measure.any(ANGLE), "Direction from which ply angles count, against the part's axis."),
            may("outline", OUTLINE, "Its plane outline."));

    private static final int USUAL_COUPONS = 5;
    private static final String[] KINDS = Fields.words(StepKind.class);

    private static final Keys AFTER_OPPOSITE = Keys.of(
            "what a part asks for because its opposite is made first",
            may(
                    "lessons-of",
                    Forms.WORK_REF,
                    "The part, joint or step of the first hand with which its lessons are known."),
            may("lessons-before", Listed.some(Words.of(KINDS)), "Kinds of steps that do not begin before that."),
            may(
                    "crew",
                    Words.of(Fields.words(AfterOpposite.Crew.class)),
                    "Whose hands do the same step again: the same people, at least one of them, or any; any where nothing is said."),
            may(
                    "steps",
                    Listed.some(Words.of(KINDS)),
                    "Kinds of steps that crew and within concern; all with hands where nothing is said."),
            may(
                    "within",
                    Measure.above(TIME_SPAN),
                    "How soon after the first hand's step the same step finds practised hands."),
            may(
                    "again",
                    Measure.zeroUp(TIME_SPAN),
                    "What it costs to get into it again later, in time of one person."));

    private static final Keys SETS = Keys.of(
                    "pieces made in sets",
                    may("pieces", Numeral.count(2, 500), "How many pieces; all that the part states is for one."),
                    may("mark", Forms.TEXT, "What stands before a piece's number, such as B."),
                    may("least", Numeral.count(1, 500), "How many are worth a set; 1 where nothing is said."),
                    may("most", Numeral.count(1, 500), "How many may be in one; all where nothing is said."),
                    may(
                            "limit",
                            Words.of(Fields.words(PieceSets.Limit.class)),
                            "What limits a set: the shelves of a stand, one pot of each mix, or other; other where nothing is said."),
                    may("why", Forms.TEXT, "The limit in words."),
                    may("in-turn", new YesNo(), "Whether a set waits for the one before it; no where nothing is said."),
                    may("as", Forms.REF, "The part whose sets these follow, each made with what that one makes."))
            .oneOf("pieces", "as");

    private static final Keys COUPON = Keys.of(
            "witness pieces",
            must("id", Forms.ID, "Their id within the part."),
            may("name", Forms.TEXT, "Their name; the id where nothing is said."),
            must("test", Words.of(Fields.words(CouponMeasure.class)), "How they are tested."),
            may("count", Numeral.count(1, 200), "How many results are planned; 5 where nothing is said."),
            may("allowable", Forms.TEXT, "The allowable that the results speak for, by its name."));

    static final Keys SHAPE = Keys.of(
            "a part",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            must("in", Forms.REF, "The assembly that it belongs to."),
            may(
                    "hand",
                    Words.of(Fields.words(Hand.class)),
                    "Left or right seen from the pilot's seat looking forward; none where nothing is said."),
            may("opposite", Forms.REF, "The part of the other hand."),
            may("after-opposite", AFTER_OPPOSITE, "What it asks for because its opposite is made first."),
            may("sets", SETS, "Where it stands for like pieces that are made in sets."),
            may("mould", Forms.REF, "The mould that it comes from."),
            may("target", Measure.above(MASS), "The mass that it should have."),
            may(
                    "budget",
                    Numeral.number(0, 1e9, "the project's currency"),
                    "What it may cost; one piece, where there are several."),
            may("arm", Measure.any(LENGTH), "Where its mass acts, aft of the datum."),
            may("drawing", Forms.TEXT, "The drawing that it follows."),
            may("orient", Forms.TEXT, "How it lies: which way round, for the card."),
            may("sizes", MakeKind.SIZES, "Other measures that rates count by: plain counts, lengths, areas."),
            may("zones", Listed.of(ZONE), "Areas with their own stack."),
            may("make", Listed.of(MakeKind.MAKE), "The recipes that make it, in order."),
            may("coupons", Listed.of(COUPON), "Witness pieces laid up with it and tested for it."),
            may("lessons", Listed.of(Forms.TEXT), "What earlier parts taught."));

    private PartKind() {}

    /**
     * Reads one part.
     *
     * @param f its fields
     * @param outlines makes an outline of its mapping; empty where that was refused
     */
    public static Part read(Fields f, Function<Tree, Optional<Outline>> outlines) {
        return new Part(
                f.text("id", ""),
                f.text("name", ""),
                f.text("in", ""),
                f.word("hand", Hand.class).orElse(Hand.NONE),
                f.text("opposite"),
                f.text("mould"),
                f.list("zones").stream().map(z -> zone(z, outlines)).toList(),
                MakeKind.read(f),
                f.entered("target", MASS),
                f.entered("arm", LENGTH),
                MakeKind.sizes(f),
                f.text("drawing", ""),
                f.text("orient", ""),
                f.texts("lessons"),
                f.below("after-opposite").map(PartKind::afterOpposite),
                f.below("sets").map(PartKind::sets),
                Optional.empty(),
                f.list("coupons").stream().map(PartKind::coupon).toList(),
                f.maybe("budget"));
    }

    private static Coupon coupon(Fields c) {
        String id = c.text("id", "");
        return new Coupon(
                id,
                c.text("name", id),
                c.word("test", CouponMeasure.class).orElse(CouponMeasure.BARCOL),
                c.whole("count", USUAL_COUPONS),
                c.text("allowable", ""));
    }

    private static AfterOpposite afterOpposite(Fields o) {
        return new AfterOpposite(
                o.text("lessons-of"),
                kinds(o, "lessons-before"),
                o.word("crew", AfterOpposite.Crew.class).orElse(AfterOpposite.Crew.ANY),
                kinds(o, "steps"),
                o.measure("within", TIME_SPAN),
                o.measure("again", TIME_SPAN, "0 min"));
    }

    private static List<StepKind> kinds(Fields o, String key) {
        return o.texts(key).stream()
                .filter(k -> List.of(KINDS).contains(k))
                .map(k -> Fields.constant(k, StepKind.class))
                .toList();
    }

    private static PieceSets sets(Fields s) {
        int pieces = s.whole("pieces", 0);
        return new PieceSets(
                pieces,
                s.text("mark", ""),
                s.whole("least", 1),
                s.whole("most", Math.max(1, pieces)),
                s.word("limit", PieceSets.Limit.class).orElse(PieceSets.Limit.OTHER),
                s.text("why", ""),
                s.yes("in-turn"),
                s.text("as"));
    }

    private static Zone zone(Fields z, Function<Tree, Optional<Outline>> outlines) {
        Optional<Outline> outline = z.below("outline").map(Fields::tree).flatMap(outlines);
        Optional<Area> area = z.measure("area", AREA).or(() -> outline.map(Outline::area));
        Optional<Length> edge = z.measure("edge", LENGTH).or(() -> outline.map(Outline::perimeter));
        return new Zone(
                z.text("id", ""),
                z.text("name").orElse(z.text("id", "")),
                z.text("laminate", ""),
                area.orElse(new Area(1)),
                edge.orElse(new Length(4)),
                z.whole("corners", 0),
                z.measure("axis", ANGLE, "0 deg"),
                outline);
    }
}
