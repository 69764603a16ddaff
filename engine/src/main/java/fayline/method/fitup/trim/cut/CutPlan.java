package fayline.method.fitup.trim.cut;

import fayline.method.fitup.outline.EdgeRun;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What is asked: the cut lines for these depths.
 *
 * @param stations every station, cut or not; those between two cut ones end or join the cuts
 * @param edges the edges under the names that the stations use
 * @param perimeterMm of the outline
 * @param sides which side each edge is cut on; the part where it is not named
 * @param leaveOnMm what to leave on at first; empty for the usual, the larger of 0.3 mm and two standard uncertainties
 */
public record CutPlan(
        List<CutStation> stations,
        List<EdgeRun> edges,
        double perimeterMm,
        Map<String, CutSide> sides,
        OptionalDouble leaveOnMm) {
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
        if (!(perimeterMm > 0) || (leaveOnMm.isPresent() && !(leaveOnMm.getAsDouble() >= 0))) {
            throw new IllegalArgumentException("a perimeter of " + perimeterMm + " mm, leaving on " + leaveOnMm);
        }
        for (CutStation s : stations) {
            if (edges.stream().noneMatch(e -> e.name().equals(s.edge()))) {
                throw new IllegalArgumentException("station " + s.id() + " lies on no edge named " + s.edge());
            }
        }
    }

    /** What is left on at first at a station. */
    double leaveOnMm(CutStation s) {
        return leaveOnMm.orElse(Math.max(LEAVE_ON_MM, LEAVE_ON_DEVIATIONS * s.deviationMm()));
    }
}
