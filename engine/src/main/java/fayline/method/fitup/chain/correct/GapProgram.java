package fayline.method.fitup.chain.correct;

import fayline.basis.numeric.LinearProgram;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Least largest weighted deviation from nominal by moves of several bodies together and by material taken off or put on at each
 * station, as a linear program; among all that reach it, the least material and then the least total motion, a turn counting at
 * the distance of the stations.
 *
 * <p>Unknowns: for each mover dx, dy, turn times length and the sizes of these; taken off and put on at each station; the
 * largest deviation.
 */
final class GapProgram {
    private static final double SLACK = 1e-9;
    private static final double MOTION_SHARE = 1e-3;
    private static final int PER_MOVER = 6;

    private final List<FitRow> rows;
    private final List<Mover> movers;
    private final List<Double> offMm;
    private final List<Double> onMm;

    GapProgram(List<FitRow> rows, List<Mover> movers, List<Double> offMm, List<Double> onMm) {
        this.rows = rows;
        this.movers = movers;
        this.offMm = offMm;
        this.onMm = onMm;
    }

    static List<Double> none(int count) {
        return Collections.nCopies(count, 0.0);
    }

    /** Solves it; empty where bounds and minimum gaps contradict each other. */
    Optional<Reached> solve() {
        int unknowns = PER_MOVER * movers.size() + 2 * rows.size() + 1;
        int largest = unknowns - 1;
        double[] objective = new double[unknowns];
        objective[largest] = 1;
        LinearProgram.Outcome first = program(Double.POSITIVE_INFINITY).minimise(objective);
        if (!first.optimal()) {
            return Optional.empty();
        }
        double[] least = new double[unknowns];
        for (int m = 0; m < movers.size(); m++) {
            Arrays.fill(least, PER_MOVER * m + 3, PER_MOVER * m + PER_MOVER, MOTION_SHARE);
        }
        Arrays.fill(least, PER_MOVER * movers.size(), largest, 1);
        double best = Math.max(0, first.at(largest));
        LinearProgram.Outcome second = program(best + SLACK).minimise(least);
        return Optional.of(reached(second.optimal() ? second : first));
    }

    private LinearProgram program(double most) {
        int materials = PER_MOVER * movers.size();
        int unknowns = materials + 2 * rows.size() + 1;
        int largest = unknowns - 1;
        LinearProgram.Builder p = LinearProgram.of(unknowns);
        for (int m = 0; m < movers.size(); m++) {
            MoveLimits room = movers.get(m).room();
            double length = movers.get(m).lengthMm();
            int at = PER_MOVER * m;
            p.bound(at, room.dxLowMm(), room.dxHighMm());
            p.bound(at + 1, room.dyLowMm(), room.dyHighMm());
            p.bound(at + 2, room.turnLowRad() * length, room.turnHighRad() * length);
            for (int k = 0; k < 3; k++) {
                p.bound(at + 3 + k, 0, Double.POSITIVE_INFINITY);
                p.row(pair(unknowns, at + 3 + k, at + k, -1), 0, Double.POSITIVE_INFINITY);
                p.row(pair(unknowns, at + 3 + k, at + k, 1), 0, Double.POSITIVE_INFINITY);
            }
        }
        p.bound(largest, 0, most);
        for (int i = 0; i < rows.size(); i++) {
            p.bound(materials + i, 0, offMm.get(i));
            p.bound(materials + rows.size() + i, 0, onMm.get(i));
            FitRow row = rows.get(i);
            double[] gap = change(unknowns, i);
            double miss = row.gapMm() - row.nominalMm();
            for (int side = -1; side <= 1; side += 2) {
                double[] deviation = new double[unknowns];
                for (int k = 0; k < unknowns; k++) {
                    deviation[k] = -side * row.weight() * gap[k];
                }
                deviation[largest] = 1;
                p.row(deviation, side * row.weight() * miss, Double.POSITIVE_INFINITY);
            }
            if (row.minimumMm().isPresent()) {
                p.row(gap, row.minimumMm().getAsDouble() - row.gapMm(), Double.POSITIVE_INFINITY);
            }
        }
        return p.build();
    }

    private static double[] pair(int unknowns, int one, int other, double factor) {
        double[] row = new double[unknowns];
        row[one] = 1;
        row[other] = factor;
        return row;
    }

    /** How a gap changes with each unknown. */
    private double[] change(int unknowns, int i) {
        double[] row = new double[unknowns];
        for (int m = 0; m < movers.size(); m++) {
            Mover mover = movers.get(m);
            row[PER_MOVER * m] = -mover.rows().get(i, 0);
            row[PER_MOVER * m + 1] = -mover.rows().get(i, 1);
            row[PER_MOVER * m + 2] = -mover.rows().get(i, 2) / mover.lengthMm();
        }
        int materials = PER_MOVER * movers.size();
        row[materials + i] = 1;
        row[materials + rows.size() + i] = -1;
        return row;
    }

    private Reached reached(LinearProgram.Outcome outcome) {
        int materials = PER_MOVER * movers.size();
        int unknowns = materials + 2 * rows.size() + 1;
        List<Move> moves = new ArrayList<>();
        for (int m = 0; m < movers.size(); m++) {
            int at = PER_MOVER * m;
            moves.add(new Move(
                    outcome.at(at),
                    outcome.at(at + 1),
                    outcome.at(at + 2) / movers.get(m).lengthMm()));
        }
        List<Double> gaps = new ArrayList<>();
        List<Double> off = new ArrayList<>();
        List<Double> on = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            double gap = rows.get(i).gapMm();
            double[] row = change(unknowns, i);
            for (int k = 0; k < unknowns; k++) {
                gap += row[k] * outcome.at(k);
            }
            gaps.add(gap);
            off.add(Math.max(0, outcome.at(materials + i)));
            on.add(Math.max(0, outcome.at(materials + rows.size() + i)));
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
