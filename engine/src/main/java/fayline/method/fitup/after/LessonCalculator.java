package fayline.method.fitup.after;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.Move;
import java.util.List;

/**
 * Learns from builds by shrinkage: S (S + C/k)^-1 times the mean of the fitted moves, S the covariance that the way of locating
 * was thought to have beforehand, C how well a build tells its move [james-stein1961].
 */
public final class LessonCalculator {
    private LessonCalculator() {}

    /**
     * Learns.
     *
     * @param builds the fitted moves, about one pivot and in one hand's frame; at least one
     * @param prior how much the way of locating was thought to be off, before any build
     * @throws IllegalArgumentException if there is no build, or neither prior nor builds leave any doubt in a direction
     */
    public static Lesson calculate(List<FittedMove> builds, MoveCovariance prior) {
        int k = builds.size();
        if (k == 0) {
            throw new IllegalArgumentException("no build to learn from");
        }
        DenseMatrix noise = DenseMatrix.zero(3, 3);
        double[] mean = new double[3];
        for (FittedMove b : builds) {
            noise = noise.plus(b.covariance().matrix().scaled(1.0 / k / k));
            mean[0] += b.move().dxMm() / k;
            mean[1] += b.move().dyMm() / k;
            mean[2] += b.move().turnRad() / k;
        }
        DenseMatrix s = prior.matrix();
        // Turns are a thousand times smaller than shifts: solve in units in which the sum has ones on its diagonal.
        DenseMatrix sum = s.plus(noise);
        double[] unit = new double[3];
        for (int i = 0; i < 3; i++) {
            unit[i] = 1 / Math.sqrt(sum.get(i, i));
        }
        DenseMatrix scale = DenseMatrix.diagonal(unit);
        DenseMatrix gain = scale.times(sum)
                .times(scale)
                .inverse()
                .map(inverse -> s.times(scale).times(inverse).times(scale))
                .orElseThrow(() -> new IllegalArgumentException(
                        "neither the prior nor the builds leave any doubt: nothing to weigh"));
        double[] q = gain.times(mean);
        return new Lesson(new Move(q[0], q[1], q[2]), MoveCovariance.of(s.minus(gain.times(s))), k);
    }
}
