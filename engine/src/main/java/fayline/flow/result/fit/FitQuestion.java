package fayline.flow.result.fit;

import fayline.flow.project.fit.Fit;
import fayline.flow.reading.FitReading;
import fayline.method.fitup.motion.Side;
import java.util.List;

/**
 * A fit with everything read at it.
 *
 * @param fit the fit
 * @param side the side of the part
 * @param readings its readings, in the order taken
 * @param learned what the opposite hand taught of states to come, already in this hand's frame
 * @param assume whether uncertainties that nobody gave may be replaced by the named defaults, shown as assumed
 */
public record FitQuestion(Fit fit, Side side, List<FitReading> readings, List<LearnedChange> learned, boolean assume) {
    /** Copies the lists. */
    public FitQuestion {
        readings = List.copyOf(readings);
        learned = List.copyOf(learned);
    }
}
