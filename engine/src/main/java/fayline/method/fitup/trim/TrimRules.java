package fayline.method.fitup.trim;

import java.util.List;

/**
 * What trimming may do.
 *
 * @param edges the edges that may be cut, the one to cut first at its head; at most six count for the choice of edges
 * @param slope most change of depth per length along an edge, in mm per mm
 * @param guard how many standard uncertainties the lower limit is raised by
 * @param goal what to spare
 */
public record TrimRules(List<String> edges, double slope, double guard, TrimGoal goal) {
    /** 4 mm per metre. */
    public static final double SLOPE = 0.004;

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if slope or guard is negative
     */
    public TrimRules {
        edges = List.copyOf(edges);
        if (!(slope >= 0) || !(guard >= 0) || Double.isInfinite(guard)) {
            throw new IllegalArgumentException("a slope of " + slope + " and a guard of " + guard + " deviations");
        }
    }

    /** The usual rules: least area, 4 mm per metre, one standard uncertainty. */
    public static TrimRules usual(List<String> edges) {
        return new TrimRules(edges, SLOPE, 1, TrimGoal.LEAST_AREA);
    }
}
