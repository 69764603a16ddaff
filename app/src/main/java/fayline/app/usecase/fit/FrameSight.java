package fayline.app.usecase.fit;

import fayline.flow.result.fit.frame.SprungResult;
import fayline.flow.result.fit.frame.WidthLesson;
import fayline.flow.result.fit.frame.WidthsResult;
import java.util.List;
import java.util.Optional;

/**
 * The frame of a fit as it stands.
 *
 * @param widths what its widths amount to
 * @param opposite the same of the opposite hand's frame, where there is one
 * @param sprung what it does clamped, bonded and let go; empty where it is not told as beams
 * @param taught what the opposite hand's frame taught
 */
public record FrameSight(
        WidthsResult widths, Optional<WidthsResult> opposite, Optional<SprungResult> sprung, List<WidthLesson> taught) {
    /** Copies the list. */
    public FrameSight {
        taught = List.copyOf(taught);
    }
}
