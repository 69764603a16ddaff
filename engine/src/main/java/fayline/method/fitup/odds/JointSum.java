package fayline.method.fitup.odds;

import fayline.basis.numeric.EvenPoints;
import fayline.basis.numeric.StandardNormal;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Averages the product of the stations' chances over the causes that they share: given those, the rest of each station is
 * independent. The points are even ones under several random shifts, whose scatter tells the error.
 */
final class JointSum {
    private static final int SHIFTS = 8;
    private static final int FIRST = 1024;
    private static final int MOST = 16_384;
    private static final double GOOD = 5e-4;

    private final List<ExpectedGap> gaps;
    private final double[][] effects;
    private final List<Axis> axes;
    private final int dimensions;
    private final long seed;

    JointSum(GapSpread spread, long seed) {
        this.gaps = spread.gaps();
        this.axes = Axis.all(spread.sources());
        this.dimensions = Math.max(1, axes.stream().mapToInt(Axis::dimensions).sum());
        this.effects = Axis.effects(spread);
        this.seed = seed;
    }

    int dimensions() {
        return dimensions;
    }

    /** Averages until the error is small or the points run out. */
    Sum settled() {
        int n = FIRST;
        Sum s = over(EvenPoints.of(dimensions, n));
        while (s.error() > GOOD && n < MOST) {
            n *= 4;
            s = over(EvenPoints.of(dimensions, n));
        }
        return s;
    }

    /** Averages over these points under each shift. */
    Sum over(EvenPoints points) {
        double[] means = IntStream.range(0, SHIFTS)
                .parallel()
                .mapToDouble(shift -> mean(points, shift))
                .toArray();
        double mean = 0;
        for (double m : means) {
            mean += m / SHIFTS;
        }
        double squares = 0;
        for (double m : means) {
            squares += (m - mean) * (m - mean);
        }
        return new Sum(
                Math.min(1, Math.max(0, mean)),
                Math.sqrt(squares / (SHIFTS - 1) / SHIFTS),
                (long) SHIFTS * points.count());
    }

    private double mean(EvenPoints points, int number) {
        EvenPoints.Shift shift = points.shift(seed, number);
        double[] unit = new double[points.dimensions()];
        double[] causes = new double[dimensions];
        double sum = 0;
        for (int p = 0; p < points.count(); p++) {
            shift.point(p, unit);
            int at = 0;
            for (Axis a : axes) {
                a.place(unit, causes, at);
                at += a.dimensions();
            }
            sum += inside(causes);
        }
        return sum / points.count();
    }

    private double inside(double[] causes) {
        double product = 1;
        for (int i = 0; i < effects.length && product > 0; i++) {
            ExpectedGap g = gaps.get(i);
            double middle = g.predictedMm();
            double[] e = effects[i];
            for (int k = 0; k < e.length; k++) {
                middle += e[k] * causes[k];
            }
            double u = g.independentMm();
            product *= u > 0
                    ? StandardNormal.between((g.lowerMm() - middle) / u, (g.upperMm() - middle) / u)
                    : middle >= g.lowerMm() && middle <= g.upperMm() ? 1 : 0;
        }
        return product;
    }

    /**
     * An average.
     *
     * @param value the average
     * @param error its standard error
     * @param points how many points
     */
    record Sum(double value, double error, long points) {}
}
