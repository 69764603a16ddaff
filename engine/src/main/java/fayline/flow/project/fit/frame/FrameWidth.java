package fayline.flow.project.fit.frame;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.flow.project.catalog.Keyed;
import java.util.List;
import java.util.Optional;

/**
 * A width of a frame between two marks, wanted with the sheet bonded.
 *
 * @param id its mark
 * @param where between what it is measured, in words
 * @param wanted the width wanted once bonded
 * @param tolerance how far off it may be; above nothing
 * @param deviation standard uncertainty of one width as it is measured; above nothing
 * @param bondTakes by how much the width changes from trial-clamped to bonded, where that is entered; negative where it narrows
 * @param between two places of the frame's beams between which it is measured; empty where they are not named
 */
public record FrameWidth(
        String id,
        String where,
        Entered<Length> wanted,
        Entered<Length> tolerance,
        Entered<Length> deviation,
        Optional<Entered<Length>> bondTakes,
        List<String> between)
        implements Keyed {
    /** Copies the list. */
    public FrameWidth {
        between = List.copyOf(between);
    }
}
