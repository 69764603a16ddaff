package fayline.method.fitup.move;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.numeric.LinearProgram;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.MoveRows;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The least sum of easings against one dense linear program with an easing for every station, seeded. */
class RelaxationAgainstDenseTest {
    private static final MoveLimits LIMITS = MoveLimits.of(0.5, 0.5, 0.001);

    private static List<FitRow> seeded(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<FitRow> rows = new ArrayList<>();
        int n = 6 + random.nextInt(12);
        double size = random.nextDouble(2.4, 3.2);
        for (int i = 0; i < n; i++) {
            double turn = 2 * Math.PI * i / n;
            Station s = new Station(
                    "S" + i, new Spot(350 * Math.cos(turn), 230 * Math.sin(turn)), Math.cos(turn), Math.sin(turn));
            OptionalDouble least = random.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(2.5);
            rows.add(new FitRow(s, size + random.nextDouble(-0.5, 0.5), 2.5, 3, 3.5, least, 1, ""));
        }
        return rows;
    }

    private static double dense(MoveRows lines) {
        int n = lines.count();
        LinearProgram.Builder p = LinearProgram.of(3 + n)
                .bound(0, LIMITS.dxLowMm(), LIMITS.dxHighMm())
                .bound(1, LIMITS.dyLowMm(), LIMITS.dyHighMm())
                .bound(2, LIMITS.turnLowRad() * lines.scaleLengthMm(), LIMITS.turnHighRad() * lines.scaleLengthMm());
        double[] cost = new double[3 + n];
        Arrays.fill(cost, 3, 3 + n, 1);
        for (int i = 0; i < n; i++) {
            double[] row = Arrays.copyOf(lines.coefficients(i), 3 + n);
            row[3 + i] = -1;
            p.bound(3 + i, 0, Double.POSITIVE_INFINITY)
                    .row(
                            row,
                            Double.NEGATIVE_INFINITY,
                            lines.levelMm(i) - lines.rows().get(i).minimumMm().orElse(Double.NEGATIVE_INFINITY));
        }
        return p.build().minimise(cost).value();
    }

    @Test
    void should_ease_as_little_as_the_dense_program() {
        int eased = 0;
        for (int seed = 1; seed <= 60; seed++) {
            MoveRows lines = MoveRows.of(seeded(seed), new Spot(0, 0));
            Relaxation<Move> r = RelaxationCalculator.calculate(lines, lines.box(LIMITS));
            assertEquals(dense(lines), r.totalMm(), 1e-6, "seed " + seed);
            assertEquals(
                    r.totalMm(),
                    r.shares().stream().mapToDouble(Relaxation.Share::easedMm).sum(),
                    1e-12);
            assertEquals(r.shares().isEmpty(), r.status() == MoveStatus.OK);
            eased += r.shares().isEmpty() ? 0 : 1;
        }
        assertTrue(eased >= 20 && eased <= 55, eased + " eased");
    }
}
