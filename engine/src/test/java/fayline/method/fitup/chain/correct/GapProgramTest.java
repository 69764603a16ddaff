package fayline.method.fitup.chain.correct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.numeric.DenseMatrix;
import fayline.basis.numeric.LinearProgram;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The search over the moves against one dense linear program with the material of every station as unknowns, seeded. */
class GapProgramTest {
    private static final double SHARE = 1e-3;

    private record Question(List<FitRow> rows, List<Mover> movers, List<Double> off, List<Double> on) {
        int unknowns() {
            return 6 * movers.size() + 2 * rows.size() + 1;
        }

        double[] one(int unknown) {
            double[] c = new double[unknowns()];
            c[unknown] = 1;
            return c;
        }

        LinearProgram dense(double most) {
            int far = unknowns() - 1;
            LinearProgram.Builder p = LinearProgram.of(unknowns()).bound(far, 0, most);
            for (int m = 0; m < movers.size(); m++) {
                MoveLimits room = movers.get(m).room();
                double length = movers.get(m).lengthMm();
                double[] low = {room.dxLowMm(), room.dyLowMm(), room.turnLowRad() * length};
                double[] high = {room.dxHighMm(), room.dyHighMm(), room.turnHighRad() * length};
                for (int k = 6 * m; k < 6 * m + 3; k++) {
                    p.bound(k, low[k - 6 * m], high[k - 6 * m]);
                    for (int side = -1; side <= 1; side += 2) {
                        double[] size = one(k + 3);
                        size[k] = side;
                        p.row(size, 0, Double.POSITIVE_INFINITY);
                    }
                }
            }
            int material = 6 * movers.size();
            for (int i = 0; i < rows.size(); i++) {
                FitRow r = rows.get(i);
                p.bound(material + i, 0, off.get(i)).bound(material + rows.size() + i, 0, on.get(i));
                double[] gap = one(material + i);
                gap[material + rows.size() + i] = -1;
                for (int m = 0; m < movers.size(); m++) {
                    for (int k = 0; k < 3; k++) {
                        gap[6 * m + k] = -movers.get(m).rows().get(i, k)
                                / (k == 2 ? movers.get(m).lengthMm() : 1);
                    }
                }
                p.row(gap, r.minimumMm().orElse(Double.NEGATIVE_INFINITY) - r.gapMm(), Double.POSITIVE_INFINITY);
                for (int side = -1; side <= 1; side += 2) {
                    double[] off = gap.clone();
                    for (int k = 0; k < off.length; k++) {
                        off[k] *= side;
                    }
                    off[far] = 1 / r.weight();
                    p.row(off, side * (r.nominalMm() - r.gapMm()), Double.POSITIVE_INFINITY);
                }
            }
            return p.build();
        }

        double[] effort() {
            double[] c = new double[unknowns()];
            for (int m = 0; m < movers.size(); m++) {
                Arrays.fill(c, 6 * m + 3, 6 * m + 6, SHARE);
            }
            Arrays.fill(c, 6 * movers.size(), unknowns() - 1, 1);
            return c;
        }

        double effort(GapProgram.Reached r) {
            double sum = 0;
            for (int m = 0; m < movers.size(); m++) {
                Move x = r.moves().get(m);
                sum += SHARE
                        * (Math.abs(x.dxMm())
                                + Math.abs(x.dyMm())
                                + Math.abs(x.turnRad()) * movers.get(m).lengthMm());
            }
            for (int i = 0; i < rows.size(); i++) {
                sum += r.offMm().get(i) + r.onMm().get(i);
            }
            return sum;
        }
    }

    private static Question seeded(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<FitRow> rows = new ArrayList<>();
        List<Double> off = new ArrayList<>();
        List<Double> on = new ArrayList<>();
        int n = 6 + random.nextInt(8);
        boolean bare = random.nextInt(3) == 0;
        for (int i = 0; i < n; i++) {
            double turn = 2 * Math.PI * i / n;
            Station s = new Station(
                    "S" + i,
                    new Spot(350 * Math.cos(turn), 230 * Math.sin(turn)),
                    Math.cos(turn),
                    Math.sin(turn) + random.nextDouble(-0.2, 0.2));
            OptionalDouble least = random.nextInt(3) == 0 ? OptionalDouble.of(2.4) : OptionalDouble.empty();
            rows.add(new FitRow(s, random.nextDouble(1.8, 4), 2.5, 3, 3.5, least, random.nextInt(2) == 0 ? 1 : 2, ""));
            off.add(bare || random.nextInt(3) == 0 ? 0.0 : random.nextDouble(0.8));
            on.add(bare || random.nextInt(2) == 0 ? 0.0 : random.nextDouble(0.5));
        }
        List<Mover> movers = new ArrayList<>();
        int bodies = bare ? 1 + random.nextInt(2) : random.nextInt(3);
        for (int m = 0; m < bodies; m++) {
            int body = m;
            List<FitRow> seen = rows;
            Mover all = Mover.of("body " + m, MoveLimits.of(0.7, 0.7, 0.002), new Spot(20 * m, 0), seen);
            double[][] acts = all.rows().toRows();
            for (int i = 0; i < n && body == 1; i += 2) {
                acts[i] = new double[3];
            }
            movers.add(new Mover(all.name(), all.room(), DenseMatrix.of(acts)));
        }
        return new Question(rows, movers, off, on);
    }

    @Test
    void should_reach_what_the_dense_program_reaches_with_no_more_effort() {
        int found = 0;
        for (int seed = 1; seed <= 60; seed++) {
            Question q = seeded(seed);
            LinearProgram.Outcome dense = q.dense(Double.POSITIVE_INFINITY).minimise(q.one(q.unknowns() - 1));
            Optional<GapProgram.Reached> r = new GapProgram(q.rows(), q.movers(), q.off(), q.on()).solve();
            assertEquals(dense.optimal(), r.isPresent(), "seed " + seed);
            if (r.isPresent()) {
                found++;
                assertEquals(dense.value(), r.get().weighted(r.get().worst()), 1e-7, "seed " + seed);
                double effort =
                        q.dense(dense.value() + 1e-9).minimise(q.effort()).value();
                assertEquals(effort, q.effort(r.get()), 1e-6, "seed " + seed);
            }
        }
        assertTrue(found >= 40, found + " found");
    }
}
