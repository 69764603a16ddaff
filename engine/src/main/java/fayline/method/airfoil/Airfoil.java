package fayline.method.airfoil;

import java.util.List;

/**
 * A section of chord one by points.
 *
 * @param name the name
 * @param upper upper surface from the leading to the trailing edge
 * @param lower lower surface from the leading to the trailing edge
 */
public record Airfoil(String name, List<Station> upper, List<Station> lower) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if a surface has fewer than three points
     */
    public Airfoil {
        upper = List.copyOf(upper);
        lower = List.copyOf(lower);
        if (upper.size() < 3 || lower.size() < 3) {
            throw new IllegalArgumentException("an airfoil needs at least three points on each surface");
        }
    }

    /** Height of the upper surface at a station, straight between points. */
    public double upperAt(double x) {
        return at(upper, x);
    }

    /** Height of the lower surface at a station, straight between points. */
    public double lowerAt(double x) {
        return at(lower, x);
    }

    private static double at(List<Station> surface, double x) {
        for (int i = 1; i < surface.size(); i++) {
            Station b = surface.get(i);
            if (b.x() >= x) {
                Station a = surface.get(i - 1);
                double span = b.x() - a.x();
                return span <= 0 ? b.y() : a.y() + (b.y() - a.y()) * Math.max(0, (x - a.x()) / span);
            }
        }
        return surface.get(surface.size() - 1).y();
    }

    /**
     * A point of a surface, as fractions of the chord.
     *
     * @param x from the leading edge aft
     * @param y up
     */
    public record Station(double x, double y) {}
}
