package fayline.flow.project.fit.frame;

import java.util.List;

/**
 * A place that is held.
 *
 * @param at the place
 * @param ways the ways in which it cannot go
 */
public record FrameHold(String at, List<FrameWay> ways) {
    /** Copies the list. */
    public FrameHold {
        ways = List.copyOf(ways);
    }
}
