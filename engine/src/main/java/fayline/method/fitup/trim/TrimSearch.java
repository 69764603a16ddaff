package fayline.method.fitup.trim;

import fayline.basis.numeric.optimum.CornerSearch;
import fayline.basis.numeric.optimum.GrowingRows;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The least cut with some edges free, as a search over the move alone. For a given move the least fair depth at every station at
 * once is a {@link FairEnvelope}, so with lengths that are not negative it has the least area; that area, the deepest depth and
 * each limit are convex in the move and made of straight pieces, which are taken in one by one [kelley1960]. Unknowns: shifts,
 * turns times Λ, mean depth (area over the sum of lengths), deepest depth; all in mm.
 */
final class TrimSearch {
    private static final double FAR_MM = 1e6;
    private static final double BROKEN_MM = 1e-10;
    private static final double BROKEN_MEAN_MM = 1e-11;
    /** By how much more mean depth, or depth, still counts as the same. */
    private static final double SAME_MM = 1e-10;

    private final TrimLines lines;
    private final FairEnvelope depths;
    private final double[] most;
    private final double[] share;
    private final double lengthMm;
    private final int moves;
    private final int mean;
    private final int deepest;
    private final int unknowns;
    private final GrowingRows rows;

    TrimSearch(TrimLines lines, Set<String> edges) {
        this.lines = lines;
        moves = lines.unknowns();
        mean = moves;
        deepest = mean + 1;
        unknowns = deepest + 1;
        rows = new GrowingRows(unknowns, this::broken);
        depths = lines.depths();
        most = lines.most(edges);
        double[] lengths = lines.lengthsMm();
        double sum = Arrays.stream(lengths).sum();
        lengthMm = sum > 0 ? sum : 1;
        share = Arrays.stream(lengths).map(l -> l / lengthMm).toArray();
    }

    /** A move (shifts, turns times Λ), the least fair depths of this move, and the area they cut. */
    static final class Found {
        private final double areaMm2;
        private final double[] move;
        private final double[] depthsMm;

        private Found(double areaMm2, double[] move, double[] depthsMm) {
            this.areaMm2 = areaMm2;
            this.move = move;
            this.depthsMm = depthsMm;
        }

        double areaMm2() {
            return areaMm2;
        }

        double[] move() {
            return move.clone();
        }

        double[] depthsMm() {
            return depthsMm.clone();
        }
    }

    /** A move of least area, unless that is more than a given one. */
    Optional<Found> leastArea(double mostMm2) {
        return rows.least(one(mean), low(), high(Math.min(FAR_MM, mostMm2 / lengthMm + SAME_MM), FAR_MM))
                .map(this::found);
    }

    /** Of the moves of no more than an area, the one whose deepest cut is least, and of these the shortest. */
    Found shallowest(Found area) {
        double sought = area.areaMm2 / lengthMm;
        Optional<Found> shallow =
                rows.least(one(deepest), low(0), high(sought + SAME_MM, FAR_MM)).map(this::found);
        double deep = Arrays.stream(shallow.orElse(area).depthsMm).max().orElse(0);
        return lines.shortest(rows, sought, deep).map(this::found).orElse(shallow.orElse(area));
    }

    /**
     * Whether every move of no more than an area has the same depths. On the moves of least area every depth is a straight line,
     * for all are convex and their weighted sum stands still; so it is enough that they agree at moves that span these moves.
     *
     * @param sameMm how far depths may differ
     */
    boolean unique(Found area, double sameMm) {
        if (loose(area, sameMm)) {
            return false;
        }
        List<double[]> seen = new ArrayList<>();
        for (int k = 0; k < moves; k++) {
            double[] way = square(seen);
            Found there = farthest(area, way, 1);
            Found back = farthest(area, way, -1);
            for (Found f : List.of(there, back)) {
                if (apart(f.depthsMm, area.depthsMm) > sameMm || loose(f, sameMm)) {
                    return false;
                }
            }
            double[] across = new double[moves];
            Arrays.setAll(across, j -> there.move[j] - back.move[j]);
            seen.add(dot(across, way) > SAME_MM ? across : way);
        }
        return true;
    }

    private Found farthest(Found area, double[] way, double sign) {
        double[] cost = new double[unknowns];
        for (int j = 0; j < moves; j++) {
            cost[j] = -sign * way[j];
        }
        return rows.least(cost, low(), high(area.areaMm2 / lengthMm + SAME_MM, FAR_MM))
                .map(this::found)
                .orElse(area);
    }

    /** A unit direction square to others, which are fewer than the unknowns of a move. */
    private double[] square(List<double[]> others) {
        List<double[]> clean = new ArrayList<>();
        others.forEach(o -> clean.add(cleaned(o, clean)));
        double[] best = new double[moves];
        double most = 0;
        for (int j = 0; j < moves; j++) {
            double[] axis = new double[moves];
            axis[j] = 1;
            for (double[] c : clean) {
                double s = dot(axis, c);
                for (int k = 0; k < axis.length; k++) {
                    axis[k] -= s * c[k];
                }
            }
            if (dot(axis, axis) > most) {
                most = dot(axis, axis);
                best = axis;
            }
        }
        return cleaned(best, clean);
    }

    private double[] cleaned(double[] vector, List<double[]> units) {
        double[] v = vector.clone();
        for (double[] c : units) {
            double s = dot(v, c);
            for (int k = 0; k < v.length; k++) {
                v[k] -= s * c[k];
            }
        }
        double size = Math.sqrt(dot(v, v));
        return Arrays.stream(v).map(x -> x / size).toArray();
    }

    /** Whether a station that speaks for no length, so that cutting it costs nothing, could also be cut deeper. */
    private boolean loose(Found f, double sameMm) {
        double[] room = lines.room(f.move);
        double[] ceiling = new double[share.length];
        boolean any = false;
        for (int i = 0; i < share.length; i++) {
            boolean free = share[i] == 0 && most[i] > 0;
            any |= free;
            ceiling[i] = free ? -Math.min(most[i], room[i]) : -f.depthsMm[i];
        }
        return any && apart(lines.fair(ceiling), f.depthsMm) > sameMm;
    }

    private static double apart(double[] a, double[] b) {
        double most = 0;
        for (int i = 0; i < a.length; i++) {
            most = Math.max(most, Math.abs(Math.abs(a[i]) - b[i]));
        }
        return most;
    }

    private Found found(CornerSearch.Corner corner) {
        return found(corner.point());
    }

    private Found found(List<Double> point) {
        double[] q = point.stream().limit(moves).mapToDouble(v -> v).toArray();
        FairEnvelope.At at = depths.at(q);
        double sum = 0;
        for (int i = 0; i < share.length; i++) {
            sum += share[i] * at.value(i);
        }
        return new Found(sum * lengthMm, q, at.values());
    }

    private List<GrowingRows.Row> broken(double[] x) {
        double[] q = Arrays.copyOf(x, moves);
        FairEnvelope.At at = depths.at(q);
        List<GrowingRows.Row> all = lines.flushesBroken(q, unknowns);
        double[] sum = at.sumAbove(share);
        if (dot(sum, q) + sum[moves] > x[mean] + BROKEN_MEAN_MM) {
            all.add(row(sum, OptionalInt.of(mean), -sum[moves]));
        }
        int deep = at.worst(new double[most.length]);
        if (at.value(deep) > x[deepest] + BROKEN_MM) {
            all.add(row(at.slope(deep), OptionalInt.of(deepest), -at.level(deep)));
        }
        int over = at.worst(most);
        if (at.value(over) > most[over] + BROKEN_MM) {
            all.add(row(at.slope(over), OptionalInt.empty(), most[over] - at.level(over)));
        }
        double[] room = lines.room(q);
        int wide = at.worst(room);
        if (at.value(wide) > room[wide] + BROKEN_MM) {
            double[] a = at.slope(wide);
            for (int k = 0; k < a.length; k++) {
                a[k] -= lines.slope(wide)[k];
            }
            all.add(row(a, OptionalInt.empty(), lines.roomLevel(wide) - at.level(wide)));
        }
        return all;
    }

    private GrowingRows.Row row(double[] slope, OptionalInt other, double most) {
        return lines.row(slope, other, most, unknowns);
    }

    private double[] one(int unknown) {
        double[] c = new double[unknowns];
        c[unknown] = 1;
        return c;
    }

    /** Lower bounds while the deepest depth does not count. */
    private double[] low() {
        return low(FAR_MM);
    }

    private double[] low(double deepestMm) {
        double[] low = Arrays.copyOf(lines.limit(false), unknowns);
        low[deepest] = deepestMm;
        return low;
    }

    private double[] high(double meanMm, double deepestMm) {
        double[] high = Arrays.copyOf(lines.limit(true), unknowns);
        high[mean] = meanMm;
        high[deepest] = deepestMm;
        return high;
    }

    private double dot(double[] a, double[] b) {
        double s = 0;
        for (int j = 0; j < moves; j++) {
            s += a[j] * b[j];
        }
        return s;
    }
}
