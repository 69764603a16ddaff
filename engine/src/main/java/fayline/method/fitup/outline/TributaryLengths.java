package fayline.method.fitup.outline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How much of its edge each station speaks for: half the distance along the edge to each neighbouring station on the same run;
 * the ends of the run take the rest. On a smooth closed line it wraps round.
 */
public final class TributaryLengths {
    private static final double WHOLE = 1e-9;

    private TributaryLengths() {}

    /**
     * The lengths.
     *
     * @param outline the edge
     * @param edges the runs to share out, {@link PartOutline#edges()} or {@link PartOutline#runs()} or the builder's own
     * @param stationsMm arc lengths of the stations, in any order
     * @return in mm, one per station, in the order given; 0 for a station on none of the runs
     */
    public static List<Double> of(PartOutline outline, List<EdgeRun> edges, List<Double> stationsMm) {
        double[] lengths = new double[stationsMm.size()];
        for (EdgeRun edge : edges) {
            List<Integer> on = on(outline, edge, stationsMm);
            boolean closed = edge.lengthMm() >= outline.perimeterMm() - WHOLE && edges.size() == 1;
            for (int k = 0; k < on.size(); k++) {
                double here = along(outline, edge, stationsMm.get(on.get(k)));
                double before = k > 0 ? along(outline, edge, stationsMm.get(on.get(k - 1))) : 0;
                double after =
                        k < on.size() - 1 ? along(outline, edge, stationsMm.get(on.get(k + 1))) : edge.lengthMm();
                double low = k > 0 ? (here - before) / 2 : here;
                double high = k < on.size() - 1 ? (after - here) / 2 : after - here;
                if (closed) {
                    double first = along(outline, edge, stationsMm.get(on.get(0)));
                    double last = along(outline, edge, stationsMm.get(on.get(on.size() - 1)));
                    double round = (edge.lengthMm() - last + first) / 2;
                    low = k > 0 ? low : round;
                    high = k < on.size() - 1 ? high : round;
                }
                lengths[on.get(k)] = low + high;
            }
        }
        List<Double> all = new ArrayList<>();
        for (double l : lengths) {
            all.add(l);
        }
        return List.copyOf(all);
    }

    /** How far along a run an arc length lies; from 0 to below the perimeter, more than the run's length if it is not on it. */
    public static double along(PartOutline outline, EdgeRun edge, double sMm) {
        return outline.wrappedMm(sMm - edge.fromMm());
    }

    private static List<Integer> on(PartOutline outline, EdgeRun edge, List<Double> stationsMm) {
        List<Integer> on = new ArrayList<>();
        for (int i = 0; i < stationsMm.size(); i++) {
            if (along(outline, edge, stationsMm.get(i)) < edge.lengthMm()) {
                on.add(i);
            }
        }
        on.sort(Comparator.comparingDouble((Integer i) -> along(outline, edge, stationsMm.get(i)))
                .thenComparingInt(i -> i));
        return on;
    }
}
