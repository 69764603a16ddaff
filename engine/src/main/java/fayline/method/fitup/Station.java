package fayline.method.fitup;

import java.util.List;

/**
 * One marked place on the part's edge, with the direction in which its gap is measured. On a curved part the normal may look out of
 * the plane; its components in the plane are then shorter than a unit, so what a move in the plane takes from a gap is right there too.
 *
 * @param id the mark at the bench
 * @param at where on the part edge
 * @param nx x component of the unit outward normal, from part to neighbour
 * @param ny y component
 * @param relief how it stands out of the plane
 */
public record Station(String id, Spot at, double nx, double ny, Relief relief) {
    private static final double LEAST_NORMAL = 1e-9;

    /**
     * Makes the normal a unit vector.
     *
     * @throws IllegalArgumentException if the normal has no length
     */
    public Station {
        double length = Math.hypot(Math.hypot(nx, ny), relief.normalZ());
        if (!(length > LEAST_NORMAL) || Double.isInfinite(length)) {
            throw new IllegalArgumentException("station " + id + " has no direction: normal " + nx + ", " + ny);
        }
        nx /= length;
        ny /= length;
        relief = new Relief(relief.heightMm(), relief.normalZ() / length, relief.surface());
    }

    /**
     * A station in the plane of the part.
     *
     * @throws IllegalArgumentException if the normal has no length
     */
    public Station(String id, Spot at, double nx, double ny) {
        this(id, at, nx, ny, Relief.FLAT);
    }

    /**
     * A station in space.
     *
     * @param id the mark at the bench
     * @param at where, in mm
     * @param normal from part to neighbour, of any length but zero
     * @param surface normal of the surface, outboard, of any length but zero
     * @throws IllegalArgumentException if one of them has no length
     */
    public static Station inSpace(String id, Vector at, Vector normal, Vector surface) {
        return new Station(
                id, new Spot(at.x(), at.y()), normal.x(), normal.y(), new Relief(at.z(), normal.z(), surface));
    }

    /** Whether it stands out of the plane, or its gap or surface looks out of it. */
    public boolean isCurved() {
        return !relief.isFlat();
    }

    /** Where it is in space, in mm. */
    public Vector place() {
        return Vector.of(at, relief.heightMm());
    }

    /** The unit outward normal, from part to neighbour. */
    public Vector normal() {
        return new Vector(nx, ny, relief.normalZ());
    }

    /**
     * As it is drawn seen from outside: in the plane, looking where the edge looks there, which is the way in the plane that gap and
     * surface normal span.
     */
    public Station drawn() {
        if (relief.isFlat()) {
            return this;
        }
        Vector s = relief.surface();
        double x = s.z() * nx - relief.normalZ() * s.x();
        double y = s.z() * ny - relief.normalZ() * s.y();
        return Math.hypot(x, y) > LEAST_NORMAL ? new Station(id, at, x, y) : new Station(id, at, nx, ny);
    }

    /**
     * The moment of the normal about a pivot, (p − c) × n: how much a turn of one radian closes the gap.
     *
     * @param pivot c
     * @return in mm
     */
    public double leverMm(Spot pivot) {
        return (at.xMm() - pivot.xMm()) * ny - (at.yMm() - pivot.yMm()) * nx;
    }

    /** The mean of the places of stations, the usual pivot. */
    public static Spot middle(List<Station> stations) {
        if (stations.isEmpty()) {
            throw new IllegalArgumentException("no stations, so no middle");
        }
        return new Spot(
                stations.stream().mapToDouble(s -> s.at().xMm()).average().orElseThrow(),
                stations.stream().mapToDouble(s -> s.at().yMm()).average().orElseThrow());
    }

    /** The same with the mean of their heights, in mm; nought where there is no station. */
    public static Vector middleInSpace(List<Station> stations) {
        return stations.isEmpty()
                ? Vector.ZERO
                : Vector.of(
                        middle(stations),
                        stations.stream()
                                .mapToDouble(s -> s.relief().heightMm())
                                .average()
                                .orElseThrow());
    }
}
