package fayline.method.fitup.trim;

import fayline.basis.numeric.LinearProgram;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.motion.MoveRows;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The linear program of trimming. Unknowns: the move (turn times Λ), one depth per station that may be cut, and where asked one
 * height per station that is built up, and one more for a bound on them.
 */
final class TrimModel {
    private static final int MOVE = 3;

    private final TrimQuestion question;
    private final MoveRows moving;
    private final Map<Integer, Integer> depthOf = new HashMap<>();
    private final Map<Integer, Integer> heightOf = new HashMap<>();
    private final int unknowns;

    /** A program in which the stations on some edges may be cut; and all built up, or none. */
    TrimModel(TrimQuestion question, MoveRows moving, Set<String> edges, boolean buildUp) {
        this.question = question;
        this.moving = moving;
        int next = MOVE;
        for (int i = 0; i < question.rows().size(); i++) {
            TrimRow r = question.rows().get(i);
            if (edges.contains(r.row().edge()) && r.mostMm() > 0) {
                depthOf.put(i, next++);
            }
        }
        for (int i = 0; buildUp && i < question.rows().size(); i++) {
            heightOf.put(i, next++);
        }
        unknowns = next + 1;
    }

    /** The unknown that bounds others. */
    int bound() {
        return unknowns - 1;
    }

    int unknowns() {
        return unknowns;
    }

    Map<Integer, Integer> depths() {
        return depthOf;
    }

    /** The cost of the area cut. */
    double[] areaCut() {
        return area(depthOf);
    }

    /** The cost of the area added. */
    double[] areaAdded() {
        return area(heightOf);
    }

    double[] one(int unknown) {
        double[] c = new double[unknowns];
        c[unknown] = 1;
        return c;
    }

    LinearProgram.Builder program() {
        LinearProgram.Builder b = LinearProgram.of(unknowns);
        double scale = moving.scaleLengthMm();
        b.bound(0, question.limits().dxLowMm(), question.limits().dxHighMm());
        b.bound(1, question.limits().dyLowMm(), question.limits().dyHighMm());
        b.bound(
                2,
                scale * question.limits().turnLowRad(),
                scale * question.limits().turnHighRad());
        depthOf.forEach((i, k) -> b.bound(k, 0, question.rows().get(i).mostMm()));
        heightOf.values().forEach(k -> b.bound(k, 0, Double.POSITIVE_INFINITY));
        b.bound(bound(), 0, Double.POSITIVE_INFINITY);
        for (int i = 0; i < question.rows().size(); i++) {
            double[] row = removal(i);
            double[] a = moving.coefficients(i);
            for (int k = 0; k < MOVE; k++) {
                row[k] = -a[k];
            }
            b.row(row, lower(i) - moving.levelMm(i), upper(i) - moving.levelMm(i));
        }
        fair(b);
        return b;
    }

    /** The lower limit raised by the guard, but not past the middle of the tolerance; never below the hard minimum. */
    double lower(int i) {
        TrimRow r = question.rows().get(i);
        FitRow f = r.row();
        double guarded = Math.min(
                f.lowerMm() + question.rules().guard() * r.deviationMm(),
                Math.max(f.lowerMm(), (f.lowerMm() + f.upperMm()) / 2));
        return Math.max(guarded, f.minimumMm().orElse(Double.NEGATIVE_INFINITY));
    }

    double upper(int i) {
        return question.rows().get(i).row().upperMm();
    }

    boolean guardCut(int i) {
        TrimRow r = question.rows().get(i);
        return r.row().lowerMm() + question.rules().guard() * r.deviationMm()
                > (r.row().lowerMm() + r.row().upperMm()) / 2 + 1e-12;
    }

    Move move(LinearProgram.Outcome o) {
        return new Move(o.at(0), o.at(1), o.at(2) / moving.scaleLengthMm());
    }

    List<Double> depths(LinearProgram.Outcome o) {
        return values(o, depthOf);
    }

    List<Double> heights(LinearProgram.Outcome o) {
        return values(o, heightOf);
    }

    private List<Double> values(LinearProgram.Outcome o, Map<Integer, Integer> unknownOf) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < question.rows().size(); i++) {
            Integer k = unknownOf.get(i);
            all.add(k == null ? 0.0 : Math.max(0, o.at(k)));
        }
        return all;
    }

    private double[] area(Map<Integer, Integer> unknownOf) {
        double[] c = new double[unknowns];
        unknownOf.forEach((i, k) -> c[k] = question.rows().get(i).tributaryMm());
        return c;
    }

    private double[] removal(int i) {
        double[] row = new double[unknowns];
        Integer depth = depthOf.get(i);
        if (depth != null) {
            row[depth] = 1;
        }
        Integer height = heightOf.get(i);
        if (height != null) {
            row[height] = -1;
        }
        return row;
    }

    private void fair(LinearProgram.Builder b) {
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < question.rows().size(); i++) {
            places.put(question.rows().get(i).row().station().id(), i);
        }
        for (NeighbourPair p : new LinkedHashSet<>(question.pairs())) {
            int one = places.getOrDefault(p.one(), -1);
            int other = places.getOrDefault(p.other(), -1);
            if (depthOf.containsKey(one) || depthOf.containsKey(other) || heightOf.containsKey(one)) {
                double[] row = removal(one);
                double[] minus = removal(other);
                for (int k = 0; k < unknowns; k++) {
                    row[k] -= minus[k];
                }
                double most = question.rules().slope() * p.distanceMm();
                b.row(row, -most, most);
            }
        }
    }
}
