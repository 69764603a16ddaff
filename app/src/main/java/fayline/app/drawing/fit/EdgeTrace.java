package fayline.app.drawing.fit;

import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.outline.EdgePoint;
import fayline.method.fitup.outline.EdgeRun;
import fayline.method.fitup.outline.PartOutline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A stretch of edge with its normals, walked once; a closed one ends where it begins.
 *
 * @param samples the places, in rising arc length
 * @param bridgeMm the longest way between two stations over which a gap is drawn as straight between theirs
 */
record EdgeTrace(List<Sample> samples, double bridgeMm) {
    /** Spacing of stations of which only the names are known. */
    static final double STRIP_STEP_MM = 15;
    /** Stations in a row of them. */
    static final int STRIP_ROW = 6;
    /** Spacing of such rows. */
    static final double STRIP_ROW_MM = 34;

    private static final int STEPS = 240;
    private static final double BESIDE_CORNER_MM = 1e-4;
    private static final double MOST_BRIDGE = 0.4;

    EdgeTrace {
        samples = List.copyOf(samples);
    }

    /**
     * One place.
     *
     * @param at where
     * @param nx x component of the unit outward normal
     * @param ny y component
     * @param sMm how far along
     * @param station which station of the picture it is; -1 for none
     */
    record Sample(Spot at, double nx, double ny, double sMm, int station) {
        Spot out(double mm) {
            return at.plus(mm * nx, mm * ny);
        }
    }

    /** The edge, as well as it is known: the outline, lines from station to station, or level rows. */
    static List<EdgeTrace> of(GapPicture picture) {
        if (picture.outline().isPresent()
                && (picture.placed() || picture.stations().isEmpty())) {
            return List.of(around(picture.outline().get(), picture.stations()));
        }
        return picture.placed()
                ? List.of(joined(picture.stations()))
                : rows(picture.stations().size());
    }

    /** The gap at each sample, straight in the arc length between stations that have one; not a number elsewhere. */
    double[] values(Function<Integer, OptionalDouble> ofStation) {
        double[] values = new double[samples.size()];
        java.util.Arrays.fill(values, Double.NaN);
        int last = -1;
        for (int i = 0; i < samples.size(); i++) {
            int station = samples.get(i).station();
            if (station < 0) {
                continue;
            }
            OptionalDouble here = ofStation.apply(station);
            values[i] = here.orElse(Double.NaN);
            if (last >= 0) {
                between(values, last, i);
            }
            last = i;
        }
        return values;
    }

    private void between(double[] values, int from, int to) {
        double a = samples.get(from).sMm();
        double span = samples.get(to).sMm() - a;
        if (span > bridgeMm) {
            return;
        }
        for (int k = from + 1; k < to; k++) {
            values[k] =
                    values[from] + (values[to] - values[from]) * (samples.get(k).sMm() - a) / span;
        }
    }

    private static EdgeTrace around(PartOutline outline, List<StationPicture> stations) {
        double all = outline.perimeterMm();
        List<Sample> ring = new ArrayList<>();
        for (int i = 0; i < stations.size(); i++) {
            Station s = stations.get(i).place().orElseThrow();
            ring.add(new Sample(s.at(), s.nx(), s.ny(), outline.nearest(s.at()).sMm(), i));
        }
        List<Double> fill = new ArrayList<>();
        for (int k = 0; k < STEPS; k++) {
            fill.add(k * all / STEPS);
        }
        for (EdgeRun run : outline.runs()) {
            fill.add(outline.wrappedMm(run.fromMm() - BESIDE_CORNER_MM));
            fill.add(outline.wrappedMm(run.fromMm() + BESIDE_CORNER_MM));
        }
        for (double s : fill) {
            EdgePoint p = outline.at(s);
            boolean taken = ring.stream().anyMatch(r -> r.station() >= 0 && Math.abs(r.sMm() - s) < BESIDE_CORNER_MM);
            if (!p.sharp() && !taken) {
                ring.add(new Sample(p.at(), p.nx(), p.ny(), s, -1));
            }
        }
        ring.sort(Comparator.comparingDouble(Sample::sMm));
        return closed(ring, all);
    }

    /** Once round from the first station and back to it. */
    private static EdgeTrace closed(List<Sample> ring, double allMm) {
        int first = 0;
        while (first < ring.size() - 1 && ring.get(first).station() < 0) {
            first++;
        }
        List<Sample> walk = new ArrayList<>();
        for (int k = 0; k <= ring.size(); k++) {
            int i = first + k;
            int rounds = i / ring.size();
            Sample s = ring.get(i % ring.size());
            walk.add(new Sample(s.at(), s.nx(), s.ny(), s.sMm() + rounds * allMm, s.station()));
        }
        return new EdgeTrace(walk, MOST_BRIDGE * allMm);
    }

    private static EdgeTrace joined(List<StationPicture> stations) {
        List<Station> places =
                stations.stream().map(s -> s.place().orElseThrow()).toList();
        double sumX = places.stream().mapToDouble(Station::nx).sum();
        double sumY = places.stream().mapToDouble(Station::ny).sum();
        boolean round = stations.size() >= 3 && Math.hypot(sumX, sumY) < stations.size() / 2.0;
        Spot middle = Station.middle(places);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> {
            Spot p = places.get(i).at();
            return round ? Math.atan2(p.yMm() - middle.yMm(), p.xMm() - middle.xMm()) : p.yMm() * sumX - p.xMm() * sumY;
        }));
        List<Sample> walk = new ArrayList<>();
        double s = 0;
        for (int k = 0; k < order.size(); k++) {
            Station here = places.get(order.get(k));
            s += k == 0 ? 0 : here.at().distanceMm(places.get(order.get(k - 1)).at());
            walk.add(new Sample(here.at(), here.nx(), here.ny(), s, order.get(k)));
        }
        double all = s + walk.get(0).at().distanceMm(walk.get(walk.size() - 1).at());
        return round ? closed(walk, all) : new EdgeTrace(walk, Double.POSITIVE_INFINITY);
    }

    private static List<EdgeTrace> rows(int count) {
        List<EdgeTrace> rows = new ArrayList<>();
        for (int from = 0; from < count; from += STRIP_ROW) {
            List<Sample> row = new ArrayList<>();
            for (int i = from; i < Math.min(count, from + STRIP_ROW); i++) {
                double x = (i - from) * STRIP_STEP_MM;
                row.add(new Sample(new Spot(x, -rows.size() * STRIP_ROW_MM), 0, 1, x, i));
            }
            rows.add(new EdgeTrace(row, Double.POSITIVE_INFINITY));
        }
        return rows;
    }
}
