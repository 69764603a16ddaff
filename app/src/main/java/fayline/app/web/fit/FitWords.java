package fayline.app.web.fit;

import fayline.app.web.frame.Sight;
import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.basis.units.Length;
import fayline.basis.units.Measure;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitStation;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import fayline.method.fitup.Move;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Vector;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.motion.SpaceWords;

/** Words and figures of a fit in the screen's units. */
public final class FitWords {
    private FitWords() {}

    static String kind(Kind kind) {
        return switch (kind) {
            case GAP -> "Gap";
            case FLUSH -> "Flush";
            case CASTING -> "Test casting";
        };
    }

    /** A computed length of so many millimetres in the screen's units: to 0.1 mm or 1 thou. */
    public static String length(Sight sight, double mm) {
        return sight.format().gap(Length.ofMillimetres(mm));
    }

    /** A standard deviation: to 0.01 mm, or a tenth of a thou. */
    public static String fine(Sight sight, double mm) {
        return sight.format().fineGap(Length.ofMillimetres(mm));
    }

    /** A place in a frame, in the screen's units. */
    public static String place(Sight sight, Spot at) {
        return sight.say(Phrase.of(
                "x %s, y %s", new Amount(Measure.PLACE, at.xMm(), 1, Amount.Manner.BARE), Amount.placeMm(at.yMm(), 1)));
    }

    /** What is wanted at a station, as typed in the definition. */
    static String wanted(Fit fit, FitStation station, Kind kind) {
        return switch (kind) {
            case GAP, CASTING ->
                fit.gapAt(station).asTyped() + " ± "
                        + fit.gapToleranceAt(station).asTyped();
            case FLUSH ->
                fit.wanted().flush().asTyped() + " ± "
                        + fit.wanted().flushTolerance().asTyped();
        };
    }

    /** A reading exactly as typed, with the leaf that did not enter. */
    static String typed(FitReading r) {
        return r.noGoMm().isPresent() ? r.typed() + " goes in, the next leaf does not" : r.typed();
    }

    /** A move in the screen's units. */
    public static String move(Sight sight, Side side, SpaceMove move, Vector pivot, String pivotName) {
        return sight.say(new SpaceWords(side, pivot, pivotName).sentence(move));
    }

    /** A move in the plane in the screen's units. */
    public static String move(Sight sight, Side side, Move move, Spot pivot, String pivotName) {
        return move(sight, side, SpaceMove.of(move), Vector.of(pivot, 0), pivotName);
    }
}
