package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.frame.FitFrame;
import fayline.flow.project.fit.frame.FrameWidth;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The frame that springs, in the kind {@code fits}. */
public final class FitFrames {
    static final Keys WIDTH = Keys.of(
            "a width",
            must("id", Forms.MARK, "Its mark, which readings name."),
            must("where", Forms.TEXT, "Between what it is measured, in words."),
            must("wanted", Measure.above(LENGTH), "The width wanted with the sheet bonded."),
            must("tolerance", Measure.above(LENGTH), "How far off it may be."),
            must("deviation", Measure.above(LENGTH), "Standard uncertainty of one width as it is measured."),
            may(
                    "bond-takes",
                    Measure.any(LENGTH),
                    "By how much it changes from trial-clamped to bonded, negative where it narrows; as the opposite hand"
                            + " taught where nothing is said."),
            may("between", Listed.of(Forms.MARK), "Two places of the frame between which it is measured."));

    private FitFrames() {}

    static FitFrame read(Fields f, List<FitStation> stations) {
        List<FrameWidth> widths = new ArrayList<>();
        for (Fields w : f.list("widths")) {
            Optional<Entered<Length>> wanted = w.entered("wanted", LENGTH);
            Optional<Entered<Length>> tolerance = w.entered("tolerance", LENGTH);
            Optional<Entered<Length>> deviation = w.entered("deviation", LENGTH);
            if (wanted.isPresent() && tolerance.isPresent() && deviation.isPresent()) {
                widths.add(new FrameWidth(
                        w.text("id", ""),
                        w.text("where", ""),
                        wanted.get(),
                        tolerance.get(),
                        deviation.get(),
                        w.entered("bond-takes", LENGTH),
                        w.texts("between")));
            }
        }
        return new FitFrame(widths, FitBeams.read(f, stations));
    }
}
