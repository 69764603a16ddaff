package fayline.method.fitup.trim;

/**
 * Two stations side by side on one edge, whose depths may not differ too much.
 *
 * @param one a station
 * @param other the next
 * @param distanceMm along the edge between them
 */
public record NeighbourPair(String one, String other, double distanceMm) {
    /**
     * Checks the distance.
     *
     * @throws IllegalArgumentException if it is negative or no number
     */
    public NeighbourPair {
        if (!(distanceMm >= 0) || Double.isInfinite(distanceMm)) {
            throw new IllegalArgumentException(one + " and " + other + " are " + distanceMm + " mm apart");
        }
    }
}
