package fayline.method.fitup.frame.spring;

import fayline.method.fitup.frame.NodeFreedom;

/**
 * A clamp, and how far the part stands off there before it is clamped.
 *
 * @param id its name at the bench
 * @param at where it acts and which way
 * @param deviationMm free part less nominal, along the freedom (rad for a turn)
 * @param positionMm where the clamp holds the part, less nominal; 0 where it pulls the part to nominal
 * @param way whether it can push and pull
 */
public record Clamp(String id, NodeFreedom at, double deviationMm, double positionMm, Way way) {
    /** Refuses what is no number. */
    public Clamp {
        if (!Double.isFinite(deviationMm) || !Double.isFinite(positionMm)) {
            throw new IllegalArgumentException(
                    "clamp " + id + ": deviation " + deviationMm + ", position " + positionMm + " mm");
        }
    }

    /** A clamp that pulls or pushes the part to nominal. */
    public static Clamp toNominal(String id, NodeFreedom at, double deviationMm) {
        return new Clamp(id, at, deviationMm, 0, Way.BOTH);
    }

    /** What a clamp can do, along the positive sense of its freedom. */
    public enum Way {
        /** Push and pull. */
        BOTH,
        /** Only force the part along. */
        ALONG_ONLY,
        /** Only force the part against. */
        AGAINST_ONLY
    }
}
