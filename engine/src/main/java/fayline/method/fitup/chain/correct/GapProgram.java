package fayline.method.fitup.chain.correct;

import fayline.basis.numeric.optimum.GrowingRows;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * Least largest weighted deviation from nominal by moves of several bodies together and by material taken off or put on at each
 * station; among all that reach it, the least material and then the least total motion, a turn counting at the distance of the
 * stations. For given moves the material at each station is known, and its sum is convex in the moves: only moves are sought, by
 * rows and tangents taken in as they are broken [kelley1960].
 *
 * <p>Unknowns: for each mover dx, dy, turn times length; the largest deviation; the sizes of the first; the mean of what is taken
 * off and put on.
 */
final class GapProgram {
    private static final double SLACK = 1e-9;
    private static final double MOTION_SHARE = 1e-3;
    private static final double FAR_MM = 1e6;
    private static final double BROKEN = 1e-10;
    private static final double BROKEN_MEAN = 1e-11;

    private final List<FitRow> rows;
    private final List<Mover> movers;
    private final List<Double> offMm;
    private final List<Double> onMm;
    /** How much each unknown of the movers closes each gap. */
    private final double[][] closing;
    /** Place of the largest deviation; the sizes of the unknowns before it follow. */
    private final int largest;
    /** Place of the mean of what is taken off and put on. */
    private final int material;

    GapProgram(List<FitRow> rows, List<Mover> movers, List<Double> offMm, List<Double> onMm) {
        this.rows = rows;
        this.movers = movers;
        this.offMm = offMm;
        this.onMm = onMm;
        largest = 3 * movers.size();
        material = 2 * largest + 1;
        closing = new double[rows.size()][largest];
        for (int i = 0; i < rows.size(); i++) {
            for (int m = 0; m < movers.size(); m++) {
                Mover mover = movers.get(m);
                closing[i][3 * m] = mover.rows().get(i, 0);
                closing[i][3 * m + 1] = mover.rows().get(i, 1);
                closing[i][3 * m + 2] = mover.rows().get(i, 2) / mover.lengthMm();
            }
        }
    }

    static List<Double> none(int count) {
        return Collections.nCopies(count, 0.0);
    }

    /** Solves it; empty where bounds and minimum gaps contradict each other. */
    Optional<Reached> solve() {
        GrowingRows all = new GrowingRows(material + 1, this::broken);
        return all.least(one(largest, 1), low(FAR_MM), high(FAR_MM)).map(first -> {
            double[] cost = one(material, 1);
            Arrays.fill(cost, largest + 1, material, MOTION_SHARE / rows.size());
            double most = Math.max(0, first.value()) + SLACK;
            double[] low = low(0);
            double[] high = high(FAR_MM);
            low[largest] = most;
            high[largest] = most;
            return reached(all.least(cost, low, high).orElse(first).point().stream()
                    .mapToDouble(v -> v)
                    .toArray());
        });
    }

    /** Least of each unknown; sizes and material do not count where they are as large as may be. */
    private double[] low(double sizesMm) {
        double[] low = new double[material + 1];
        for (int m = 0; m < movers.size(); m++) {
            MoveLimits room = movers.get(m).room();
            low[3 * m] = room.dxLowMm();
            low[3 * m + 1] = room.dyLowMm();
            low[3 * m + 2] = room.turnLowRad() * movers.get(m).lengthMm();
        }
        Arrays.fill(low, largest + 1, low.length, sizesMm);
        return finite(low);
    }

    private double[] high(double sizesMm) {
        double[] high = new double[material + 1];
        for (int m = 0; m < movers.size(); m++) {
            MoveLimits room = movers.get(m).room();
            high[3 * m] = room.dxHighMm();
            high[3 * m + 1] = room.dyHighMm();
            high[3 * m + 2] = room.turnHighRad() * movers.get(m).lengthMm();
        }
        Arrays.fill(high, largest, high.length, sizesMm);
        return finite(high);
    }

    private static double[] finite(double[] limits) {
        return Arrays.stream(limits)
                .map(v -> Math.max(-FAR_MM, Math.min(FAR_MM, v)))
                .toArray();
    }

    private double[] one(int unknown, double value) {
        double[] c = new double[material + 1];
        c[unknown] = value;
        return c;
    }

    /** The worst rows broken of each kind: gaps too small or too large whatever is cut or put on, sizes, and the material. */
    private List<GrowingRows.Row> broken(double[] x) {
        List<GrowingRows.Row> all = new ArrayList<>();
        worst(x, i -> least(i, x) - gap(i, x) - offMm.get(i), 1).ifPresent(all::add);
        worst(x, i -> gap(i, x) - most(i, x) - onMm.get(i), -1).ifPresent(all::add);
        for (FitRow r : rows) {
            double need = r.weight() * (r.minimumMm().orElse(Double.NEGATIVE_INFINITY) - r.nominalMm());
            if (need > x[largest] + BROKEN) {
                all.add(new GrowingRows.Row(one(largest, -1), -need));
            }
        }
        for (int j = 0; j < largest; j++) {
            if (Math.abs(x[j]) > x[largest + 1 + j] + BROKEN) {
                double[] a = one(largest + 1 + j, -1);
                a[j] = Math.signum(x[j]);
                all.add(new GrowingRows.Row(a, 0));
            }
        }
        material(x).ifPresent(all::add);
        return all;
    }

    /** The row of the station where a need is largest, if that is not met. */
    private Optional<GrowingRows.Row> worst(double[] x, IntToDoubleFunction need, int side) {
        int worst = -1;
        double most = BROKEN;
        for (int i = 0; i < rows.size(); i++) {
            if (need.applyAsDouble(i) > most) {
                most = need.applyAsDouble(i);
                worst = i;
            }
        }
        if (worst < 0) {
            return Optional.empty();
        }
        FitRow r = rows.get(worst);
        double[] a = side > 0 ? closing(worst) : opening(worst);
        double room =
                side > 0 ? r.gapMm() + offMm.get(worst) - r.nominalMm() : onMm.get(worst) + r.nominalMm() - r.gapMm();
        if (side > 0 && least(worst, x) > r.nominalMm() - x[largest] / r.weight()) {
            return Optional.of(new GrowingRows.Row(
                    a, r.gapMm() + offMm.get(worst) - r.minimumMm().orElseThrow()));
        }
        a[largest] = -1 / r.weight();
        return Optional.of(new GrowingRows.Row(a, room));
    }

    /** The mean of what is taken off and put on as a straight line, where the last unknown says less; at a given deviation. */
    private Optional<GrowingRows.Row> material(double[] x) {
        double[] a = one(material, -1);
        double level = 0;
        double mean = 0;
        for (int i = 0; i < rows.size(); i++) {
            double off = least(i, x) - gap(i, x);
            double on = gap(i, x) - most(i, x);
            double moreMm = Math.max(off, on);
            if (moreMm > 0) {
                double[] slope = off > on ? closing(i) : opening(i);
                double here = 0;
                for (int j = 0; j < largest; j++) {
                    a[j] += slope[j] / rows.size();
                    here += slope[j] * x[j];
                }
                level += (moreMm - here) / rows.size();
                mean += moreMm / rows.size();
            }
        }
        return mean > x[material] + BROKEN_MEAN ? Optional.of(new GrowingRows.Row(a, -level)) : Optional.empty();
    }

    /** The least that a gap may be at a largest deviation. */
    private double least(int i, double[] x) {
        FitRow r = rows.get(i);
        return Math.max(r.nominalMm() - x[largest] / r.weight(), r.minimumMm().orElse(Double.NEGATIVE_INFINITY));
    }

    private double most(int i, double[] x) {
        return rows.get(i).nominalMm() + x[largest] / rows.get(i).weight();
    }

    private double gap(int i, double[] x) {
        double gap = rows.get(i).gapMm();
        for (int j = 0; j < largest; j++) {
            gap -= closing[i][j] * x[j];
        }
        return gap;
    }

    private double[] closing(int i) {
        return Arrays.copyOf(closing[i], material + 1);
    }

    private double[] opening(int i) {
        return Arrays.stream(closing(i)).map(v -> 0 - v).toArray();
    }

    private Reached reached(double[] x) {
        List<Move> moves = new ArrayList<>();
        for (int m = 0; m < movers.size(); m++) {
            moves.add(new Move(
                    x[3 * m], x[3 * m + 1], x[3 * m + 2] / movers.get(m).lengthMm()));
        }
        List<Double> gaps = new ArrayList<>();
        List<Double> off = new ArrayList<>();
        List<Double> on = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            double cut = Math.min(offMm.get(i), Math.max(0, least(i, x) - gap(i, x)));
            double put = Math.min(onMm.get(i), Math.max(0, gap(i, x) - most(i, x)));
            off.add(cut);
            on.add(put);
            gaps.add(gap(i, x) + cut - put);
        }
        return new Reached(rows, moves, gaps, off, on);
    }

    /** What a solution reaches. */
    record Reached(List<FitRow> rows, List<Move> moves, List<Double> gapsMm, List<Double> offMm, List<Double> onMm) {
        private static final double INSIDE = 1e-6;

        Reached {
            rows = List.copyOf(rows);
            moves = List.copyOf(moves);
            gapsMm = List.copyOf(gapsMm);
            offMm = List.copyOf(offMm);
            onMm = List.copyOf(onMm);
        }

        double weighted(int i) {
            return rows.get(i).weight() * Math.abs(gapsMm.get(i) - rows.get(i).nominalMm());
        }

        int worst() {
            int worst = 0;
            for (int i = 1; i < rows.size(); i++) {
                worst = weighted(i) > weighted(worst) + INSIDE ? i : worst;
            }
            return worst;
        }

        List<String> outside() {
            List<String> ids = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                double g = gapsMm.get(i);
                if (g < rows.get(i).lowerMm() - INSIDE || g > rows.get(i).upperMm() + INSIDE) {
                    ids.add(rows.get(i).station().id());
                }
            }
            return ids;
        }
    }
}
