package fayline.method.fitup.odds;

import fayline.method.uncertainty.Chance;
import java.util.List;

/**
 * Gaps as trials found them.
 *
 * @param stations each gap, in order
 * @param joint the chance that all end inside together
 * @param blocks how many blocks were drawn
 * @param settled whether means, standard deviations and interval ends stand still in their second digit, and the chance to
 *     half a hundredth
 */
public record GapTrialsResult(List<StationTrials> stations, Chance joint, int blocks, boolean settled) {
    /** Copies the list. */
    public GapTrialsResult {
        stations = List.copyOf(stations);
    }

    /**
     * One gap.
     *
     * @param id the station
     * @param meanMm mean of the trials
     * @param deviationMm standard deviation
     * @param lowMm 2.5 % of the trials lie below
     * @param highMm 2.5 % lie above
     * @param chance to end inside
     * @param picture how often the gap lay in each of equal steps, as parts of one, for drawing
     * @param pictureFromMm where the first step begins
     * @param pictureStepMm how wide a step is
     */
    public record StationTrials(
            String id,
            double meanMm,
            double deviationMm,
            double lowMm,
            double highMm,
            Chance chance,
            List<Double> picture,
            double pictureFromMm,
            double pictureStepMm) {
        /** Copies the list. */
        public StationTrials {
            picture = List.copyOf(picture);
        }
    }
}
