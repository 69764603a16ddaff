package fayline.flow.project.shop;

import java.time.LocalTime;

/**
 * What a better plan is worth, in hours: how much later the whole may end before that weighs as much. All are zero or more.
 * The usual ones are our own choice; common practice, no source.
 *
 * @param late an hour by which a dated goal is missed, for each goal
 * @param finish an hour by which all work ends later
 * @param parts an hour by which parts and joints are done later, on average over them
 * @param window a person-hour of work that a missed window costs
 * @param idle a person-hour in the coming fortnight in which somebody is in the shop and has nothing that needs doing
 * @param evening a person-hour of hands after {@code eveningFrom}
 * @param moved a step that lies elsewhere, or with others, than the crew was told
 * @param eveningFrom when the evening begins, in the shop's time
 */
public record PlanWeights(
        double late,
        double finish,
        double parts,
        double window,
        double idle,
        double evening,
        double moved,
        LocalTime eveningFrom) {
    /** What counts where the shop says nothing. */
    public static final PlanWeights USUAL = new PlanWeights(4, 1, 2, 6, 0.2, 1, 2, LocalTime.of(18, 0));

    /**
     * Checks the weights.
     *
     * @throws IllegalArgumentException if one is negative or no number
     */
    public PlanWeights {
        for (double w : new double[] {late, finish, parts, window, idle, evening, moved}) {
            if (!(w >= 0) || Double.isInfinite(w)) {
                throw new IllegalArgumentException("a weight is zero or more, not " + w);
            }
        }
    }
}
