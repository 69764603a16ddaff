package fayline.flow.result.fit;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitHeat;
import fayline.flow.project.fit.FitStation;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import fayline.method.fitup.outline.EdgePoint;
import fayline.method.fitup.outline.EdgeRun;
import fayline.method.fitup.outline.OutlineCalculator;
import fayline.method.fitup.outline.OutlineResult;
import fayline.method.fitup.outline.PartOutline;
import fayline.method.fitup.outline.StationNormals;
import fayline.method.fitup.outline.TributaryLengths;
import fayline.method.fitup.trim.NeighbourPair;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where the stations of a fit lie on the part's edge, and which edge that is. */
final class FitPlaces {
    private static final String GEOMETRY = "plane geometry";
    private final Map<String, Station> stations = new LinkedHashMap<>();
    private final Map<String, String> edgeOf = new LinkedHashMap<>();
    private final Map<String, Double> arcMm = new LinkedHashMap<>();
    private final List<EdgeRun> edges = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Optional<PartOutline> outline;

    private FitPlaces(Optional<PartOutline> outline) {
        this.outline = outline;
    }

    static FitPlaces of(Fit fit) {
        Optional<OutlineResult> drawn = fit.outline().map(OutlineCalculator::calculate);
        FitPlaces p = new FitPlaces(drawn.flatMap(OutlineResult::outline));
        drawn.ifPresent(r -> p.findings.addAll(r.findings()));
        for (FitStation s : fit.stations()) {
            s.at().ifPresent(at -> p.place(s, at));
        }
        p.outline.ifPresent(o -> p.nameEdges(o, fit));
        StationNormals.inwards(List.copyOf(p.stations.values())).ifPresent(p.findings::add);
        return p;
    }

    private void place(FitStation s, Spot at) {
        Optional<EdgePoint> nearest = outline.map(o -> o.nearest(at));
        nearest.ifPresent(e -> arcMm.put(s.id(), e.sMm()));
        if (s.normal().isPresent()) {
            FitStation.Normal n = s.normal().get();
            stations.put(s.id(), s.bulge().station(s.id(), at, n.nx(), n.ny()));
        } else if (nearest.isPresent()) {
            Optional<Station> on =
                    outline.orElseThrow().station(s.id(), nearest.get().sMm(), s.edge());
            if (on.isPresent()) {
                Station flat = on.get();
                stations.put(s.id(), s.bulge().station(s.id(), flat.at(), flat.nx(), flat.ny()));
            } else {
                caution(s, "lies on a sharp corner: name the edge it belongs to");
            }
        } else {
            caution(s, "has a place but no direction: draw the outline, or give its normal");
        }
        if (stations.containsKey(s.id())) {
            edgeOf.put(s.id(), s.edge());
        }
    }

    private void caution(FitStation s, String what) {
        findings.add(new Finding(Severity.CAUTION, s.id(), "Station " + s.id() + " " + what + ".", GEOMETRY));
    }

    /** Every edge gets the name that the first of its stations uses, or keeps its own; a station belongs to the edge it lies on. */
    private void nameEdges(PartOutline o, Fit fit) {
        for (EdgeRun e : o.edges()) {
            List<String> on = fit.stations().stream()
                    .map(FitStation::id)
                    .filter(id -> arcMm.containsKey(id) && TributaryLengths.along(o, e, arcMm.get(id)) < e.lengthMm())
                    .toList();
            String name = on.stream()
                    .map(id -> edgeOf.getOrDefault(id, ""))
                    .filter(n -> !n.isEmpty())
                    .filter(n -> edges.stream().noneMatch(other -> other.name().equals(n)))
                    .findFirst()
                    .orElse(e.name());
            edges.add(new EdgeRun(name, e.fromMm(), e.lengthMm()));
            on.stream().filter(edgeOf::containsKey).forEach(id -> edgeOf.put(id, name));
        }
    }

    Optional<PartOutline> outline() {
        return outline;
    }

    /** Where part and surround are tied: as said, else in the middle of the stations. */
    Spot anchor(FitHeat heat) {
        return heat.anchor().orElseGet(this::middle);
    }

    /** The middle of the stations, about which moves are told; nought where none has a place. */
    Spot middle() {
        return stations.isEmpty() ? new Spot(0, 0) : Station.middle(List.copyOf(stations.values()));
    }

    /** The middle of the stations with their height. */
    Vector middleInSpace() {
        return Station.middleInSpace(List.copyOf(stations.values()));
    }

    /** Whether any station stands out of the plane: then every motion of the part counts, and the flush beside the gap. */
    boolean curved() {
        return stations.values().stream().anyMatch(Station::isCurved);
    }

    Map<String, Station> stations() {
        return stations;
    }

    Map<String, String> edgeOf() {
        return edgeOf;
    }

    List<EdgeRun> edges() {
        return List.copyOf(edges);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    double arcMm(String station) {
        return arcMm.getOrDefault(station, 0.0);
    }

    /**
     * How much of its edge each of these stations speaks for. Without an outline it is half the way to its neighbours on the same
     * edge; one alone on its edge takes half the way to those before and after it, round the corner, lest trim there weigh nothing.
     */
    List<Double> tributaryMm(List<String> ids) {
        if (outline.isPresent()) {
            return TributaryLengths.of(
                    outline.get(), edges, ids.stream().map(this::arcMm).toList());
        }
        double[] lengths = new double[ids.size()];
        for (NeighbourPair pair : pairs(ids)) {
            lengths[ids.indexOf(pair.one())] += pair.distanceMm() / 2;
            lengths[ids.indexOf(pair.other())] += pair.distanceMm() / 2;
        }
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            all.add(lengths[i] > 0 ? lengths[i] : roundTheCornerMm(ids, i));
        }
        return all;
    }

    private double roundTheCornerMm(List<String> ids, int i) {
        double before = i > 0 ? distanceMm(ids.get(i - 1), ids.get(i)) : 0;
        double after = i + 1 < ids.size() ? distanceMm(ids.get(i), ids.get(i + 1)) : 0;
        return (before + after) / 2;
    }

    /** Stations side by side on one edge. */
    List<NeighbourPair> pairs(List<String> ids) {
        List<NeighbourPair> pairs = new ArrayList<>();
        for (int i = 1; i < ids.size(); i++) {
            String a = ids.get(i - 1);
            String b = ids.get(i);
            String edge = edgeOf.getOrDefault(a, "");
            double distance = distanceMm(a, b);
            if (!edge.isEmpty() && edge.equals(edgeOf.getOrDefault(b, "")) && distance > 0) {
                pairs.add(new NeighbourPair(a, b, distance));
            }
        }
        return pairs;
    }

    private double distanceMm(String a, String b) {
        Station one = stations.get(a);
        Station other = stations.get(b);
        return one == null || other == null
                ? 0
                : one.place().minus(other.place()).length();
    }
}
