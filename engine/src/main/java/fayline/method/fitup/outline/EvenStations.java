package fayline.method.fitup.outline;

import java.util.ArrayList;
import java.util.List;

/**
 * Places for stations spread evenly along an edge (common practice, no source): equal steps of arc length, the first half a step
 * in. A place on or close to a sharp corner, where a gauge finds no direction to lie in, moves away from it along the edge: to a
 * quarter of a step, at most 20 mm.
 */
public final class EvenStations {
    /** Most stations that are spread in one go. */
    public static final int MOST = 200;

    private static final double CLEAR_MM = 20;
    private static final double CLEAR_SHARE = 0.25;

    private EvenStations() {}

    /**
     * Places in order of arc length, each with its outward direction.
     *
     * @param outline the edge
     * @param number how many, 1 to {@value #MOST}
     * @throws IllegalArgumentException if the number is outside its range
     */
    public static List<EdgePoint> along(PartOutline outline, int number) {
        if (number < 1 || number > MOST) {
            throw new IllegalArgumentException(number + " stations cannot be spread: 1 to " + MOST);
        }
        double step = outline.perimeterMm() / number;
        double clear = Math.min(CLEAR_MM, CLEAR_SHARE * step);
        List<Double> sharp = outline.runs().stream()
                .map(EdgeRun::fromMm)
                .filter(s -> outline.at(s).sharp())
                .toList();
        List<EdgePoint> all = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            all.add(outline.at(cleared(outline, (i + 0.5) * step, sharp, clear)));
        }
        return all;
    }

    private static double cleared(PartOutline outline, double s, List<Double> sharp, double clear) {
        for (double corner : sharp) {
            double past = Math.IEEEremainder(s - corner, outline.perimeterMm());
            if (Math.abs(past) < clear) {
                return outline.wrappedMm(corner + (past < 0 ? -clear : clear));
            }
        }
        return s;
    }
}
