package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.Fit;
import fayline.flow.reading.WidthReading;
import java.util.List;

/**
 * A frame with every width read at it.
 *
 * @param fit the fit it belongs to
 * @param readings its widths, in the order taken
 * @param taught what the opposite hand's frame taught
 */
public record WidthsQuestion(Fit fit, List<WidthReading> readings, List<WidthLesson> taught) {
    /** Copies the lists. */
    public WidthsQuestion {
        readings = List.copyOf(readings);
        taught = List.copyOf(taught);
    }
}
