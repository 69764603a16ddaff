package fayline.method.fitup.trim.cut;

import fayline.method.fitup.outline.EdgeRun;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What is asked: the cut lines for these depths.
 *
 * @param stations every station, cut or not; those between two cut ones end or join the cuts
 * @param edges the edges under the names that the stations use
 * @param perimeterMm of the outline
 * @param sides which side each edge is cut on; the part where it is not named
 * @param leaveOnMm what to leave on at first; empty for the usual, the larger of 0.3 mm and two standard uncertainties
 * @param uncut edges that must not be touched, not even by the run-out of a cut beside them
 */
public record CutPlan(
        List<CutStation> stations,
        List<EdgeRun> edges,
        double perimeterMm,
        Map<String, CutSide> sides,
        OptionalDouble leaveOnMm,
        Set<String> uncut) {
    /** What is usually left on at least (common practice, no source). */
    public static final double LEAVE_ON_MM = 0.3;

    private static final double LEAVE_ON_DEVIATIONS = 2;

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if a station's edge is not named, or a number is out of range
     */
    public CutPlan {
        stations = List.copyOf(stations);
        edges = List.copyOf(edges);
        sides = Map.copyOf(sides);
        uncut = Set.copyOf(uncut);
        if (!(perimeterMm > 0) || (leaveOnMm.isPresent() && !(leaveOnMm.getAsDouble() >= 0))) {
            throw new IllegalArgumentException("a perimeter of " + perimeterMm + " mm, leaving on " + leaveOnMm);
        }
        for (CutStation s : stations) {
            if (edges.stream().noneMatch(e -> e.name().equals(s.edge()))) {
                throw new IllegalArgumentException("station " + s.id() + " lies on no edge named " + s.edge());
            }
        }
    }

    /** A plan in which every edge may be touched. */
    public CutPlan(
            List<CutStation> stations,
            List<EdgeRun> edges,
            double perimeterMm,
            Map<String, CutSide> sides,
            OptionalDouble leaveOnMm) {
        this(stations, edges, perimeterMm, sides, leaveOnMm, Set.of());
    }

    /** Arc length of a station counted on from the start of its edge, so that it rises along it. */
    double placeMm(EdgeRun edge, CutStation s) {
        double along = s.sMm() - edge.fromMm();
        return edge.fromMm() + along - perimeterMm * Math.floor(along / perimeterMm);
    }

    /** What is left on at first at a station. */
    double leaveOnMm(CutStation s) {
        return leaveOnMm.orElse(Math.max(LEAVE_ON_MM, LEAVE_ON_DEVIATIONS * s.deviationMm()));
    }
}
