package fayline.method.fitup.after;

import fayline.method.fitup.Spot;
import java.util.List;

/**
 * The question how a bonded part compares with its prediction.
 *
 * @param pivot pivot of the fitted move
 * @param gaps at least one
 * @param predictedCovarianceMm2 covariance of the predicted gaps, row by row, which then stands for their single uncertainties;
 *     empty where those are independent
 */
public record AsBuilt(Spot pivot, List<BuiltGap> gaps, List<List<Double>> predictedCovarianceMm2) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there are no gaps or the covariance has another size
     */
    public AsBuilt {
        gaps = List.copyOf(gaps);
        predictedCovarianceMm2 =
                predictedCovarianceMm2.stream().map(List::copyOf).toList();
        int n = gaps.size();
        if (n == 0) {
            throw new IllegalArgumentException("no gaps as built");
        }
        if (!predictedCovarianceMm2.isEmpty()
                && (predictedCovarianceMm2.size() != n
                        || predictedCovarianceMm2.stream().anyMatch(r -> r.size() != n))) {
            throw new IllegalArgumentException("the covariance of the predicted gaps is not " + n + " by " + n);
        }
    }
}
