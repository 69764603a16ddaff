package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.ANGLE;
import static fayline.basis.units.QuantityKind.BENDING_STIFFNESS;
import static fayline.basis.units.QuantityKind.FORCE;
import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.basis.units.QuantityKind.STRESS;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.Angle;
import fayline.basis.units.BendingStiffness;
import fayline.basis.units.Force;
import fayline.basis.units.Stress;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.frame.FrameAdhesive;
import fayline.flow.project.fit.frame.FrameBeams;
import fayline.flow.project.fit.frame.FrameClamp;
import fayline.flow.project.fit.frame.FrameFitting;
import fayline.flow.project.fit.frame.FrameHold;
import fayline.flow.project.fit.frame.FramePlace;
import fayline.flow.project.fit.frame.FrameRun;
import fayline.flow.project.fit.frame.FrameSection;
import fayline.flow.project.fit.frame.FrameWay;
import fayline.method.fitup.Spot;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.spring.Clamp;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Key;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.PlaceText;
import fayline.store.file.shape.Words;
import fayline.store.file.shape.YesNo;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The frame told as beams, in the kind {@code fits}. */
public final class FitBeams {
    private static final Words SHIFTS =
            Words.of(Arrays.stream(FrameWay.values()).filter(FrameWay::isShift).map(FrameWay::key));
    private static final Words WAYS = Words.of(Arrays.stream(FrameWay.values()).map(FrameWay::key));
    private static final Words BODIES = Words.of("part", "carrier");

    private static final Keys SECTION = Keys.of(
                    "a section",
                    must("id", Forms.ID, "Its id."),
                    may(
                            "stiffness",
                            Keys.of(
                                    "a stiffness",
                                    must("stretch", Measure.above(FORCE), "Modulus times area."),
                                    must(
                                            "in-plane",
                                            Measure.above(BENDING_STIFFNESS),
                                            "Modulus times second moment, bending in the plane of the part."),
                                    may(
                                            "out",
                                            Measure.above(BENDING_STIFFNESS),
                                            "The same, bending out of that plane; needed where anything goes out of it."),
                                    may(
                                            "twist",
                                            Measure.above(BENDING_STIFFNESS),
                                            "Shear modulus times torsion constant; needed where anything goes out of it.")),
                            "Its stiffness as entered."),
                    may("solid", shape("a solid section", false), "A solid rectangle."),
                    may("box", shape("a box", true), "A closed box of one wall all round."),
                    may(
                            "tube",
                            Keys.of(
                                    "a tube",
                                    must("outside", Measure.above(LENGTH), "Outer diameter."),
                                    must("wall", Measure.above(LENGTH), "Wall, at most half of it."),
                                    must("modulus", Measure.above(STRESS), "Modulus along the beam."),
                                    must("shear", Measure.above(STRESS), "Shear modulus.")),
                            "A round tube."),
                    may(
                            "laid",
                            Keys.of(
                                    "a laid section",
                                    must(
                                            "laminate",
                                            Forms.REF,
                                            "The laminate; its materials must say how stiff they are laid."),
                                    may(
                                            "axis",
                                            Measure.any(ANGLE),
                                            "Direction of the beam against the laminate's; 0 if not said."),
                                    must("across", Measure.above(LENGTH), "Width in the plane of the part."),
                                    may(
                                            "out",
                                            Measure.above(LENGTH),
                                            "Outer height of a box; a flat strip if not said.")),
                            "A flat strip of a laminate, or a box with a wall of it."),
                    must("origin", Forms.TEXT, "Where its figures are from."),
                    may("assumed", new YesNo(), "Whether they are assumed; then they are shown so."))
            .oneOf("stiffness", "solid", "box", "tube", "laid");

    private static final Listed RUNS = Listed.of(Keys.of(
            "a run of beams",
            must("through", Listed.some(Forms.MARK), "The places it goes through, in order, two at least."),
            must("section", Forms.ID, "What it is made of."),
            may("facing", SHIFTS, "Which way the section's height lies; out where nothing is said.")));

    private static final Listed HOLDS = Listed.some(Keys.of(
            "a hold",
            must("at", Forms.MARK, "The place."),
            must("ways", Listed.some(WAYS), "The ways in which it cannot go.")));

    private static final Keys CLAMP = Keys.of(
                    "a clamp",
                    must("id", Forms.MARK, "Its mark."),
                    must("at", Forms.MARK, "The place where it acts on the part."),
                    must(
                            "way",
                            SHIFTS,
                            "Which way it acts: along is aft on a left part, out is away from the aircraft."),
                    may("off", Measure.any(LENGTH), "How far the free part stands off its place, positive that way."),
                    may(
                            "station",
                            Forms.MARK,
                            "The station whose gap tells it, or its flush where the clamp acts out."),
                    may("sure", Measure.above(LENGTH), "Standard uncertainty of it."),
                    may("closes-to", Measure.any(LENGTH), "Where it holds the part, off its place; 0 if not said."),
                    may("only", Words.of("plus", "minus"), "Where it can force the part one way only: that way."))
            .oneOf("off", "station");

    private static final Keys ADHESIVE = Keys.of(
            "an adhesive of a frame",
            must("thickness", Measure.above(LENGTH), "Thickness of the bond line."),
            must("width", Measure.above(LENGTH), "Its width."),
            must("shear", Measure.above(STRESS), "Shear modulus of the adhesive."),
            must(
                    "peel",
                    Measure.above(STRESS),
                    "Modulus square to the film, which cannot contract; above the plain one."),
            must("opens", SHIFTS, "The way in which it is pulled open."),
            may(
                    "shear-strength",
                    Measure.above(STRESS),
                    "What it may carry in shear; without it nothing is said of a margin."),
            may("peel-strength", Measure.above(STRESS), "What it may carry square to the film."),
            must("origin", Forms.TEXT, "Where its figures are from."),
            may("assumed", new YesNo(), "Whether they are assumed; an assumed strength gives no verdict."));

    private static final Keys FITTING = Keys.of(
            "a latch pin or hinge point",
            must("id", Forms.MARK, "Its mark."),
            must("name", Forms.TEXT, "What it is called."),
            must("at", Forms.MARK, "The place to which it is fixed."),
            may("arm", PlaceText.PLACE, "From that place to the pin; 0 0 if not said."),
            may("arm-out", Measure.any(LENGTH), "The same outwards."),
            must("on", BODIES, "What it is fixed to."),
            must("axis", SHIFTS, "The way the pin slides in, or the hinge's axis."),
            must("clearance", Measure.zeroUp(LENGTH), "Free play all round."),
            may("hole", Words.of("part", "carrier", "still"), "What its hole is fixed to; still if not said."));

    static final Keys FRAME = Keys.of(
            "a frame",
            must("origin", Forms.TEXT, "Who says so, and from what."),
            may("creeps", new YesNo(), "Whether the part gives with time under load, as acrylic does."),
            may(
                    "read-in",
                    Forms.NAME,
                    "The state whose readings tell how far it stands off; the last before the bond if not said."),
            must(
                    "places",
                    Listed.some(Keys.of(
                                    "a place",
                                    must("id", Forms.MARK, "Its mark."),
                                    may("at", PlaceText.PLACE, "Where it is."),
                                    may("station", Forms.MARK, "The station at which it is."),
                                    may("out", Measure.any(LENGTH), "How far out of the plane; 0 if not said."),
                                    may(
                                            "run",
                                            Measure.above(LENGTH),
                                            "Length of bond line it stands for; half the carrier's beams there if not said."))
                            .oneOf("at", "station")),
                    "Places where beams meet."),
            must("sections", Listed.some(SECTION), "What the beams are made of."),
            must("part", RUNS, "Beams of the part."),
            may("carrier", RUNS, "Beams of what it is bonded to. Where both go through a place they are bonded there."),
            must("rests", HOLDS, "What holds the part while it is clamped."),
            must("held", HOLDS, "What holds part and carrier afterwards."),
            must("clamps", Listed.some(CLAMP), "Where the part is pulled or pushed to its place."),
            may("adhesive", ADHESIVE, "What lies between; tied hard where nothing is said."),
            may("fittings", Listed.of(FITTING), "Latch pins and hinge points."));

    private FitBeams() {}

    private static Keys shape(String what, boolean wall) {
        Stream<Key> keys = Stream.of(
                must("across", Measure.above(LENGTH), "Size in the plane of the part."),
                must("out", Measure.above(LENGTH), "Size out of that plane."),
                must("modulus", Measure.above(STRESS), "Modulus along the beam."),
                must("shear", Measure.above(STRESS), "Shear modulus."));
        Stream<Key> more = wall
                ? Stream.of(must("wall", Measure.above(LENGTH), "Wall, less than half the shorter side."))
                : Stream.empty();
        return Keys.of(what, Stream.concat(keys, more).toArray(Key[]::new));
    }

    /** The frame of a fit; empty where there is none, or where something was refused. */
    static Optional<FrameBeams> read(Fields fit, List<FitStation> stations) {
        return fit.below("frame").flatMap(f -> Fields.attempt("", t -> beams(f, stations)));
    }

    private static FrameBeams beams(Fields f, List<FitStation> stations) {
        return new FrameBeams(
                f.text("origin", ""),
                f.yes("creeps"),
                f.text("read-in", ""),
                f.list("places").stream().map(p -> place(p, stations)).toList(),
                f.list("sections").stream().map(FitBeams::section).toList(),
                runs(f, "part"),
                runs(f, "carrier"),
                holds(f, "rests"),
                holds(f, "held"),
                f.list("clamps").stream().map(FitBeams::clamp).toList(),
                f.below("adhesive").map(FitBeams::adhesive),
                f.list("fittings").stream().map(FitBeams::fitting).toList());
    }

    private static FramePlace place(Fields p, List<FitStation> stations) {
        Spot at = p.read("at", PlaceText::place)
                .or(() -> stations.stream()
                        .filter(s -> s.id().equals(p.text("station", "")))
                        .findFirst()
                        .flatMap(FitStation::at))
                .orElseThrow();
        return new FramePlace(
                p.text("id", ""),
                new FramePoint(at.xMm(), at.yMm(), FitHolds.mm(p, "out").orElse(0)),
                FitHolds.mm(p, "run"));
    }

    private static FrameSection section(Fields s) {
        return new FrameSection(
                s.text("id", ""),
                s.below("laid").map(FitBeams::laid).orElseGet(() -> new FrameSection.Plain(plain(s))),
                s.text("origin", ""),
                s.yes("assumed"));
    }

    private static FrameSection.Form laid(Fields l) {
        return new FrameSection.Laid(
                l.text("laminate", ""),
                l.measure("axis", ANGLE).map(Angle::radians).orElse(0.0),
                FitHolds.mm(l, "across").orElseThrow(),
                FitHolds.mm(l, "out"));
    }

    private static BeamSection plain(Fields s) {
        if (s.has("stiffness")) {
            Fields e = s.below("stiffness").orElseThrow();
            return BeamSection.entered(
                    1,
                    1,
                    e.measure("stretch", FORCE).map(Force::newtons).orElseThrow(),
                    bending(e, "out"),
                    bending(e, "in-plane"),
                    bending(e, "twist"));
        }
        if (s.has("tube")) {
            Fields t = s.below("tube").orElseThrow();
            return BeamSection.tube(
                    mpa(t, "modulus").orElseThrow(),
                    mpa(t, "shear").orElseThrow(),
                    FitHolds.mm(t, "outside").orElseThrow(),
                    FitHolds.mm(t, "wall").orElseThrow());
        }
        boolean box = s.has("box");
        Fields r = s.below(box ? "box" : "solid").orElseThrow();
        double e = mpa(r, "modulus").orElseThrow();
        double g = mpa(r, "shear").orElseThrow();
        double across = FitHolds.mm(r, "across").orElseThrow();
        double out = FitHolds.mm(r, "out").orElseThrow();
        return box
                ? BeamSection.box(e, g, across, out, FitHolds.mm(r, "wall").orElseThrow())
                : BeamSection.rectangle(e, g, across, out);
    }

    private static double bending(Fields f, String key) {
        return f.measure(key, BENDING_STIFFNESS)
                .map(BendingStiffness::newtonMillimetresSquared)
                .orElse(0.0);
    }

    private static OptionalDouble mpa(Fields f, String key) {
        Optional<Stress> v = f.measure(key, STRESS);
        return v.isPresent() ? OptionalDouble.of(v.get().megapascals()) : OptionalDouble.empty();
    }

    private static List<FrameRun> runs(Fields f, String key) {
        return f.list(key).stream()
                .map(r -> new FrameRun(
                        r.texts("through"),
                        r.text("section", ""),
                        way(r, "facing").orElse(FrameWay.OUT)))
                .toList();
    }

    private static Optional<FrameWay> way(Fields f, String key) {
        return f.word(key, FrameWay.class);
    }

    private static List<FrameHold> holds(Fields f, String key) {
        return f.list(key).stream()
                .map(h -> new FrameHold(
                        h.text("at", ""),
                        h.texts("ways").stream()
                                .map(w -> Fields.constant(w, FrameWay.class))
                                .toList()))
                .toList();
    }

    private static FrameClamp clamp(Fields c) {
        return new FrameClamp(
                c.text("id", ""),
                c.text("at", ""),
                way(c, "way").orElseThrow(),
                FitHolds.mm(c, "off"),
                FitHolds.mm(c, "sure"),
                c.text("station", ""),
                FitHolds.mm(c, "closes-to").orElse(0),
                Map.of("plus", Clamp.Way.ALONG_ONLY, "minus", Clamp.Way.AGAINST_ONLY)
                        .getOrDefault(c.text("only", ""), Clamp.Way.BOTH));
    }

    private static FrameAdhesive adhesive(Fields a) {
        return new FrameAdhesive(
                FitHolds.mm(a, "thickness").orElseThrow(),
                FitHolds.mm(a, "width").orElseThrow(),
                mpa(a, "shear").orElseThrow(),
                mpa(a, "peel").orElseThrow(),
                way(a, "opens").orElseThrow(),
                mpa(a, "shear-strength"),
                mpa(a, "peel-strength"),
                a.text("origin", ""),
                a.yes("assumed"));
    }

    private static FrameFitting fitting(Fields p) {
        Spot arm = p.read("arm", PlaceText::place).orElse(new Spot(0, 0));
        return new FrameFitting(
                p.text("id", ""),
                p.text("name", ""),
                p.text("at", ""),
                new FramePoint(arm.xMm(), arm.yMm(), FitHolds.mm(p, "arm-out").orElse(0)),
                p.word("on", FrameFitting.Body.class).orElseThrow(),
                way(p, "axis").orElseThrow(),
                FitHolds.mm(p, "clearance").orElseThrow(),
                p.word("hole", FrameFitting.Body.class).orElse(FrameFitting.Body.STILL));
    }
}
