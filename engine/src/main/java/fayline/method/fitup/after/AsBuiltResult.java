package fayline.method.fitup.after;

import fayline.basis.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * How a bonded part compares with its prediction.
 *
 * @param stations each gap, in order
 * @param chiSquare sum of the squares of the residuals in their uncertainties, with the full covariance where there is one
 * @param degrees its degrees of freedom
 * @param pValue how likely a sum so large is if the prediction was right
 * @param motion the part's motion as a whole; empty where the stations do not tell it
 * @param reading what this means
 * @param findings what must be said
 */
public record AsBuiltResult(
        List<Deviation> stations,
        double chiSquare,
        int degrees,
        double pValue,
        Optional<Motion> motion,
        Reading reading,
        List<Finding> findings) {
    /** Copies the lists. */
    public AsBuiltResult {
        stations = List.copyOf(stations);
        findings = List.copyOf(findings);
    }

    /** The stations whose residual is more than twice its uncertainty. */
    public List<String> flagged() {
        return stations.stream().filter(Deviation::isFlagged).map(Deviation::id).toList();
    }

    /**
     * One gap.
     *
     * @param id the station
     * @param residualMm measured less predicted
     * @param uncertaintyMm standard uncertainty of that
     * @param z residual over uncertainty
     */
    public record Deviation(String id, double residualMm, double uncertaintyMm, double z) {
        private static final double MUCH = 2;

        /** Whether it is more than twice its uncertainty. */
        public boolean isFlagged() {
            return Math.abs(z) > MUCH;
        }
    }

    /**
     * The motion of the part as a whole, and what is left without it.
     *
     * @param fitted the move
     * @param residualsMm what is left at each station
     * @param chiSquare of what is left
     * @param degrees its degrees of freedom
     * @param pValue how likely a sum so large is if the part only moved as a whole; 1 without degrees of freedom
     */
    public record Motion(FittedMove fitted, List<Double> residualsMm, double chiSquare, int degrees, double pValue) {
        /** Copies the list. */
        public Motion {
            residualsMm = List.copyOf(residualsMm);
        }
    }

    /** What the two chances together mean. */
    public enum Reading {
        /** Nothing unexpected. */
        AS_PREDICTED("The part sits as predicted, within what the uncertainties allow."),
        /** Moved as a whole. */
        MOVED("The part moved as a whole: look at how it was located."),
        /** Something local. */
        LOCAL("No motion of the whole part explains it: look at single stations, for shape, trim or a wrong reading."),
        /** Better than it should be. */
        TOO_GOOD("It agrees better than the uncertainties allow: they are set too large."),
        /** The gaps cannot tell motion from shape. */
        UNTOLD("It is not as predicted, and the stations cannot tell whether the part moved or its shape is off.");

        private final String words;

        Reading(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }
}
