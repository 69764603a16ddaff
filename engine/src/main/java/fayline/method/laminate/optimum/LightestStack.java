package fayline.method.laminate.optimum;

import java.util.List;

/**
 * The question for the lightest stack.
 *
 * @param choices plies that may be used, each in one direction; at least one
 * @param rules how they may be stacked
 * @param wanted what the stack must be and bear
 * @param mostNodes how many part stacks may be looked at before the search gives up without proof; positive
 */
public record LightestStack(List<PlyChoice> choices, StackRules rules, Wanted wanted, long mostNodes) {
    /** A search of a few seconds. */
    public static final long USUAL_NODES = 3_000_000;

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there is no choice or no node, or a load is asked of plies without strengths
     */
    public LightestStack {
        choices = List.copyOf(choices);
        if (choices.isEmpty() || mostNodes < 1) {
            throw new IllegalArgumentException("no ply to choose from, or no node to look at");
        }
        if (!wanted.loads().isEmpty()
                && choices.stream().anyMatch(c -> c.ply().strength().isEmpty())) {
            throw new IllegalArgumentException("a load is asked, and a ply to choose from has no strengths");
        }
    }
}
