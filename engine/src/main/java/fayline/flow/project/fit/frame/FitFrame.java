package fayline.flow.project.fit.frame;

import java.util.List;
import java.util.Optional;

/**
 * A frame that springs when its sheet is clamped on, or that is pulled in to its place.
 *
 * @param widths the widths that are tried at the bench, in order
 * @param beams the frame as beams, where it is told so
 */
public record FitFrame(List<FrameWidth> widths, Optional<FrameBeams> beams) {
    /** A frame of which nothing is said. */
    public static final FitFrame NONE = new FitFrame(List.of(), Optional.empty());

    /** Copies the list. */
    public FitFrame {
        widths = List.copyOf(widths);
    }

    /** A width by its mark. */
    public Optional<FrameWidth> width(String mark) {
        return widths.stream().filter(w -> w.id().equals(mark)).findFirst();
    }
}
