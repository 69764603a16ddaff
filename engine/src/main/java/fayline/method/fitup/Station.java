package fayline.method.fitup;

import java.util.List;

/**
 * One marked place on the part's edge, with the direction in which its gap is measured.
 *
 * @param id the mark at the bench
 * @param at where on the part edge
 * @param nx x component of the unit outward normal, from part to neighbour
 * @param ny y component
 */
public record Station(String id, Spot at, double nx, double ny) {
    private static final double LEAST_NORMAL = 1e-9;

    /**
     * Makes the normal a unit vector.
     *
     * @throws IllegalArgumentException if the normal has no length
     */
    public Station {
        double length = Math.hypot(nx, ny);
        if (!(length > LEAST_NORMAL) || Double.isInfinite(length)) {
            throw new IllegalArgumentException("station " + id + " has no direction: normal " + nx + ", " + ny);
        }
        nx /= length;
        ny /= length;
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
}
