package fayline.method.fitup.trim;

import fayline.basis.numeric.LinearProgram;
import fayline.method.fitup.FitRow;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;

/**
 * Trimming written out as one dense linear program with a depth and a height for every station: the second, independent
 * calculation beside the search over the move alone. Unknowns: dx, dy, turn times a length, depths, heights, a bound on depths.
 */
final class DenseTrim {
    private static final double SLACK = 1e-7;
    private static final int MOVE = 3;

    private final TrimQuestion question;
    private final Set<String> edges;
    private final boolean buildUp;
    private final int count;

    DenseTrim(TrimQuestion question, Set<String> edges, boolean buildUp) {
        this.question = question;
        this.edges = edges;
        this.buildUp = buildUp;
        count = question.rows().size();
    }

    /** The least area cut, nothing added. */
    Optional<Double> leastArea() {
        return value(program().build().minimise(area(0)));
    }

    /** The least area added. */
    Optional<Double> leastAdded() {
        return value(program().build().minimise(area(count)));
    }

    /** The least area cut with no more added than need be. */
    Optional<Double> leastCutAfter(double added) {
        return value(program()
                .row(area(count), Double.NEGATIVE_INFINITY, added + SLACK)
                .build()
                .minimise(area(0)));
    }

    /** The least deepest cut of no more than an area. */
    Optional<Double> deepest(double areaMm2) {
        return value(kept(areaMm2).build().minimise(one(bound())));
    }

    /** How far the depth of a station ranges among cuts of no more than an area. */
    double range(int i, double areaMm2) {
        LinearProgram p = kept(areaMm2).build();
        return p.maximise(one(MOVE + i)).value() - p.minimise(one(MOVE + i)).value();
    }

    private LinearProgram.Builder kept(double areaMm2) {
        LinearProgram.Builder b = program().row(area(0), Double.NEGATIVE_INFINITY, areaMm2 + SLACK);
        for (int i = 0; i < count; i++) {
            double[] row = one(bound());
            row[MOVE + i] = -1;
            b.row(row, 0, Double.POSITIVE_INFINITY);
        }
        return b;
    }

    private int bound() {
        return MOVE + 2 * count;
    }

    private double[] one(int unknown) {
        double[] c = new double[bound() + 1];
        c[unknown] = 1;
        return c;
    }

    private double[] area(int from) {
        double[] c = new double[bound() + 1];
        for (int i = 0; i < count; i++) {
            c[MOVE + from + i] = question.rows().get(i).tributaryMm();
        }
        return c;
    }

    private double[] removal(int i) {
        double[] row = one(MOVE + i);
        row[MOVE + count + i] = -1;
        return row;
    }

    private LinearProgram.Builder program() {
        double scale = 300;
        LinearProgram.Builder b = LinearProgram.of(bound() + 1)
                .bound(0, question.limits().dxLowMm(), question.limits().dxHighMm())
                .bound(1, question.limits().dyLowMm(), question.limits().dyHighMm())
                .bound(
                        2,
                        scale * question.limits().turnLowRad(),
                        scale * question.limits().turnHighRad())
                .bound(bound(), 0, Double.POSITIVE_INFINITY);
        for (int i = 0; i < count; i++) {
            TrimRow r = question.rows().get(i);
            FitRow f = r.row();
            b.bound(MOVE + i, 0, edges.contains(f.edge()) ? r.mostMm() : 0);
            b.bound(MOVE + count + i, 0, buildUp ? Double.POSITIVE_INFINITY : 0);
            double[] row = removal(i);
            row[0] = -f.station().nx();
            row[1] = -f.station().ny();
            row[2] = -f.station().leverMm(question.pivot()) / scale;
            b.row(row, f.lowerMm() - f.gapMm(), f.upperMm() - f.gapMm());
        }
        for (NeighbourPair p : question.pairs()) {
            double[] row = removal(place(p.one()));
            double[] minus = removal(place(p.other()));
            Arrays.setAll(row, k -> row[k] - minus[k]);
            double most = question.rules().slope() * p.distanceMm();
            b.row(row, -most, most);
        }
        return b;
    }

    private int place(String id) {
        return question.rows().stream()
                .map(r -> r.row().station().id())
                .toList()
                .indexOf(id);
    }

    private static Optional<Double> value(LinearProgram.Outcome o) {
        return o.optimal() ? Optional.of(o.value()) : Optional.empty();
    }
}
