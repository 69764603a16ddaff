package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.Fit;
import java.util.List;

/**
 * What the widths of a frame amount to.
 *
 * @param fit the fit
 * @param widths one for each width of its frame, in order
 */
public record WidthsResult(Fit fit, List<WidthAnswer> widths) {
    /** Copies the list. */
    public WidthsResult {
        widths = List.copyOf(widths);
    }

    /** Whether the adhesive must wait for a trial that is missing or did not come out. */
    public boolean waits() {
        return widths.stream().anyMatch(w -> w.stage() == WidthAnswer.Stage.WAIT);
    }
}
