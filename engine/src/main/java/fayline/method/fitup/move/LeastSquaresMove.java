package fayline.method.fitup.move;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.Move;
import java.util.List;
import java.util.Optional;

/**
 * The move of least squares.
 *
 * @param move the move
 * @param sumSquares sum of squares of weight times distance from nominal, in mm² where weights are one
 * @param worstDeviation the largest weight times distance from nominal
 * @param gapsMm gaps after it, straight lines, in the order of the rows
 * @param exactGapsMm gaps of the rigid part
 * @param straightErrorMm largest difference between straight lines and rigid part at the first solution
 * @param rounds how often it was straightened anew; 0 where the first solution was good
 * @param covariance of dx, dy (mm) and turn (rad); empty where uncertainties were not given or a motion is not known
 * @param gapErrorsMm the standard error that the doubt of the move gives to each gap after it; empty as the covariance
 */
public record LeastSquaresMove(
        Move move,
        double sumSquares,
        double worstDeviation,
        List<Double> gapsMm,
        List<Double> exactGapsMm,
        double straightErrorMm,
        int rounds,
        Optional<DenseMatrix> covariance,
        List<Double> gapErrorsMm) {
    /** Keeps its own copies. */
    public LeastSquaresMove {
        gapsMm = List.copyOf(gapsMm);
        exactGapsMm = List.copyOf(exactGapsMm);
        gapErrorsMm = List.copyOf(gapErrorsMm);
    }

    /** The standard errors of the move, where the covariance is known. */
    public Optional<Move> standardError() {
        return covariance.map(c -> new Move(Math.sqrt(c.get(0, 0)), Math.sqrt(c.get(1, 1)), Math.sqrt(c.get(2, 2))));
    }
}
