package fayline.method.fitup.shim;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.scheme.Settling;
import java.util.ArrayList;
import java.util.List;

/** Tries combinations of stacks: least worst deviation, of equal ones the fewest pieces, then the lowest total height. */
final class StackSearch {
    private static final double SAME = 1e-9;
    private static final int MOST_POINTS = 6;

    private final ShimQuestion question;
    private final Settling settling;

    StackSearch(ShimQuestion question, Settling settling) {
        this.question = question;
        this.settling = settling;
    }

    ShimResult.Choice best(List<List<ShimStack>> candidates, List<ShimStack> start) {
        if (question.points().size() > MOST_POINTS) {
            return stepByStep(candidates, start);
        }
        int n = candidates.size();
        int[] at = new int[n];
        double least = Double.POSITIVE_INFINITY;
        List<List<ShimStack>> tied = new ArrayList<>();
        List<Double> ofTied = new ArrayList<>();
        while (true) {
            List<ShimStack> combination = new ArrayList<>();
            for (int j = 0; j < n; j++) {
                combination.add(candidates.get(j).get(at[j]));
            }
            double worst = worst(combination);
            if (worst <= least + SAME) {
                least = Math.min(least, worst);
                tied.add(combination);
                ofTied.add(worst);
            }
            int j = 0;
            while (j < n && ++at[j] == candidates.get(j).size()) {
                at[j++] = 0;
            }
            if (j == n) {
                break;
            }
        }
        List<ShimStack> best = List.of();
        int equal = 0;
        for (int k = 0; k < tied.size(); k++) {
            if (ofTied.get(k) <= least + SAME) {
                equal++;
                best = best.isEmpty() || simpler(tied.get(k), best) ? tied.get(k) : best;
            }
        }
        return choice(best, equal == 1, true);
    }

    /** One point after the other, from the rounded choice, until no single change helps. */
    private ShimResult.Choice stepByStep(List<List<ShimStack>> candidates, List<ShimStack> start) {
        List<ShimStack> best = new ArrayList<>(start);
        double least = worst(best);
        boolean better = true;
        while (better) {
            better = false;
            for (int j = 0; j < candidates.size(); j++) {
                for (ShimStack s : candidates.get(j)) {
                    List<ShimStack> other = new ArrayList<>(best);
                    other.set(j, s);
                    double worst = worst(other);
                    if (worst < least - SAME) {
                        best = other;
                        least = worst;
                        better = true;
                    }
                }
            }
        }
        return choice(best, false, false);
    }

    ShimResult.Choice choice(List<ShimStack> stacks, boolean unique, boolean complete) {
        double dx = 0;
        double dy = 0;
        double turn = 0;
        for (int j = 0; j < stacks.size(); j++) {
            double room = room(j, stacks);
            Move m = settling.motion(j);
            dx -= m.dxMm() * room;
            dy -= m.dyMm() * room;
            turn -= m.turnRad() * room;
        }
        List<Double> gaps = new ArrayList<>();
        for (int i = 0; i < question.rows().size(); i++) {
            gaps.add(gap(i, stacks));
        }
        return new ShimResult.Choice(stacks, worst(stacks), new Move(dx, dy, turn), gaps, unique, complete);
    }

    private double worst(List<ShimStack> stacks) {
        double worst = 0;
        for (int i = 0; i < question.rows().size(); i++) {
            FitRow r = question.rows().get(i);
            worst = Math.max(worst, r.weight() * Math.abs(gap(i, stacks) - r.nominalMm()));
        }
        return worst;
    }

    private double gap(int i, List<ShimStack> stacks) {
        double g = question.rows().get(i).gapMm();
        for (int j = 0; j < stacks.size(); j++) {
            g -= settling.weight(i, j) * room(j, stacks);
        }
        return g;
    }

    private double room(int j, List<ShimStack> stacks) {
        return question.points().get(j).clearanceMm() - stacks.get(j).heightMm();
    }

    private static boolean simpler(List<ShimStack> a, List<ShimStack> b) {
        int piecesA = a.stream().mapToInt(s -> s.piecesMm().size()).sum();
        int piecesB = b.stream().mapToInt(s -> s.piecesMm().size()).sum();
        if (piecesA != piecesB) {
            return piecesA < piecesB;
        }
        return a.stream().mapToDouble(ShimStack::heightMm).sum()
                < b.stream().mapToDouble(ShimStack::heightMm).sum() - SAME;
    }
}
