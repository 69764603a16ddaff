package fayline.flow.plan;

import java.util.List;

/**
 * Which pieces are made together, and how they might be otherwise.
 *
 * @param groups the groups with their sets in this work
 * @param otherwise the same work with its pieces in other sets, each without others of its own; a planner may take any
 */
public record SetChoice(List<PieceGroup> groups, List<Work> otherwise) {
    /** Nothing is made in sets that may be chosen. */
    public static final SetChoice NONE = new SetChoice(List.of(), List.of());

    /** Copies the lists. */
    public SetChoice {
        groups = List.copyOf(groups);
        otherwise = List.copyOf(otherwise);
    }
}
