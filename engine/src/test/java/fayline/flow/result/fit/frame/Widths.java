package fayline.flow.result.fit.frame;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.design.Hand;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.FitWanted;
import fayline.flow.project.fit.frame.FitFrame;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.space.LiftLimits;
import java.util.List;
import java.util.Optional;

/** Fits for the tests of frames. */
final class Widths {
    private Widths() {}

    static Entered<Length> mm(String typed) {
        return QuantityParser.parse(typed, QuantityKind.LENGTH);
    }

    /** A fit of which nothing but its frame and stations matter. */
    static Fit fit(FitFrame frame, FitStation... stations) {
        return new Fit(
                "pane",
                "Pane",
                Hand.LEFT,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                new FitWanted(mm("3 mm"), mm("0.5 mm"), mm("0 mm"), mm("0.5 mm"), Optional.empty()),
                List.of(stations),
                Optional.empty(),
                List.of(),
                MoveLimits.WIDEST,
                Optional.empty(),
                FitState.USUAL,
                FitHolding.NONE,
                FitCutting.ANY,
                Optional.empty(),
                frame,
                LiftLimits.WIDEST);
    }
}
