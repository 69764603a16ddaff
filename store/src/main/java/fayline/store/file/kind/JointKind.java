package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.FRACTION;
import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.design.Fit;
import fayline.flow.project.design.Joint;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.YesNo;

/** The kinds {@code joints} and {@code fits}. */
public final class JointKind {
    static final Keys JOINT = Keys.of(
            "a joint",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            must("in", Forms.REF, "The assembly that comes about."),
            must("between", Listed.some(Forms.REF), "The parts that it joins."),
            must("adhesive", Forms.REF, "The system."),
            must("length", Measure.above(LENGTH), "Length of the joint."),
            must("width", Measure.above(LENGTH), "Width of the overlap."),
            must("bond-line", Measure.above(LENGTH), "Wanted thickness of the adhesive."),
            must("squeeze-out", Measure.share(), "Adhesive beyond what stays, as a share of the latter."),
            may("structural", new YesNo(), "Whether it carries the structure; no where nothing is said."),
            may("sizes", MakeKind.SIZES, "Other measures that rates count by, such as clamps."),
            may("make", Listed.of(MakeKind.MAKE), "The recipes that make it, in order."));

    static final Keys FIT = Keys.of(
            "a fit",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            must("part", Forms.REF, "The part that is fitted."),
            must("against", Listed.some(Forms.REF), "Its neighbours."),
            must("gap", Measure.zeroUp(LENGTH), "Nominal gap."),
            must("gap-tolerance", Measure.zeroUp(LENGTH), "Allowed deviation of the gap either way."),
            must("flush", Measure.any(LENGTH), "Nominal flush, positive where the part stands proud."),
            must("flush-tolerance", Measure.zeroUp(LENGTH), "Allowed deviation of the flush either way."),
            must(
                    "stations",
                    Listed.some(Keys.of(
                            "a station",
                            must("id", Forms.MARK, "Its mark."),
                            must("where", Forms.TEXT, "Where it is, in words."))),
                    "Marked places along the edge."));

    private JointKind() {}

    /** Reads one joint. */
    public static Joint joint(Fields f) {
        return new Joint(
                f.text("id", ""),
                f.text("name", ""),
                f.text("in", ""),
                f.texts("between"),
                f.text("adhesive", ""),
                f.measure("length", LENGTH, "1 m"),
                f.measure("width", LENGTH, "25 mm"),
                f.measure("bond-line", LENGTH, "0.5 mm"),
                f.measure("squeeze-out", FRACTION, "30 %"),
                MakeKind.read(f),
                MakeKind.sizes(f),
                f.yes("structural"));
    }

    /** Reads one fit. */
    public static Fit fit(Fields f) {
        return new Fit(
                f.text("id", ""),
                f.text("name", ""),
                f.text("part", ""),
                f.texts("against"),
                length(f, "gap"),
                length(f, "gap-tolerance"),
                length(f, "flush"),
                length(f, "flush-tolerance"),
                f.list("stations").stream()
                        .map(s -> new Fit.Station(s.text("id", ""), s.text("where", "")))
                        .toList());
    }

    private static Entered<Length> length(Fields f, String key) {
        return f.entered(key, LENGTH).orElseGet(() -> QuantityParser.parse("0 mm", LENGTH));
    }
}
