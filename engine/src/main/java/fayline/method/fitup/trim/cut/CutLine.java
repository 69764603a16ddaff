package fayline.method.fitup.trim.cut;

import fayline.method.fitup.outline.DepthAt;
import java.util.List;

/**
 * One cut along one edge, from where it begins to where it ends.
 *
 * @param edge which
 * @param side what is cut
 * @param stops at least two, in rising arc length
 */
public record CutLine(String edge, CutSide side, List<Stop> stops) {
    /** Copies the list. */
    public CutLine {
        stops = List.copyOf(stops);
    }

    /**
     * A place on the line.
     *
     * @param name the station's mark, or which end of the edge
     * @param isStation whether it is a station; else the end of the edge
     * @param sMm arc length; may run past the perimeter
     * @param depthMm how deep in the end
     * @param firstMm how deep at first, the allowance left on
     */
    public record Stop(String name, boolean isStation, double sMm, double depthMm, double firstMm) {}

    /** The finished line. */
    public List<DepthAt> finished() {
        return stops.stream().map(s -> new DepthAt(s.sMm(), s.depthMm())).toList();
    }

    /** The line to cut to first. */
    public List<DepthAt> first() {
        return stops.stream().map(s -> new DepthAt(s.sMm(), s.firstMm())).toList();
    }

    /** What the finished cut takes off, in mm². */
    public double areaMm2() {
        double area = 0;
        for (int i = 1; i < stops.size(); i++) {
            area += (stops.get(i).sMm() - stops.get(i - 1).sMm())
                    * (stops.get(i).depthMm() + stops.get(i - 1).depthMm())
                    / 2;
        }
        return area;
    }

    /** The deepest place, in mm. */
    public double deepestMm() {
        return stops.stream().mapToDouble(Stop::depthMm).max().orElse(0);
    }
}
