package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.FRACTION;
import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.flow.project.design.Joint;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.YesNo;

/** The kind {@code joints}. */
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
}
