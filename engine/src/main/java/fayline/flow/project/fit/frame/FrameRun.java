package fayline.flow.project.fit.frame;

import java.util.List;

/**
 * Beams one after the other.
 *
 * @param through the places they go through, in order, at least two
 * @param section what they are made of
 * @param facing which way the section's height out of the plane lies
 */
public record FrameRun(List<String> through, String section, FrameWay facing) {
    /** Copies the list. */
    public FrameRun {
        through = List.copyOf(through);
    }
}
