package fayline.method.fitup.heat;

import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;

/**
 * How far a material grows with temperature. Usual figures, in millionths per kelvin: acrylic 70 to 77 [acrylic-maker1],
 * balanced carbon laminate 1 to 3, glass laminate 10 to 15, aluminium 23 (these from memory).
 *
 * @param xPerK along x, per kelvin
 * @param yPerK along y
 * @param zPerK along z, through the thickness or up a curved part
 */
public record Expansion(double xPerK, double yPerK, double zPerK) {
    private static final double MOST = 1e-3;

    /**
     * Checks the range; a laminate may shrink a little.
     *
     * @throws IllegalArgumentException beyond a thousandth per kelvin either way, which no solid reaches
     */
    public Expansion {
        for (double a : new double[] {xPerK, yPerK, zPerK}) {
            if (!(Math.abs(a) <= MOST)) {
                throw new IllegalArgumentException(
                        "an expansion of " + a + " per kelvin is none of a solid; 70 millionths are written 70e-6");
            }
        }
    }

    /** The same in every direction. */
    public static Expansion even(double perK) {
        return new Expansion(perK, perK, perK);
    }

    /** This less another. */
    Expansion less(Expansion other) {
        return new Expansion(xPerK - other.xPerK, yPerK - other.yPerK, zPerK - other.zPerK);
    }

    /** How far a place moves along a station's normal for one kelvin, the anchor in the plane standing still, in mm. */
    double alongNormalMm(Station station, Vector place, Spot anchor) {
        return station.nx() * xPerK * (place.x() - anchor.xMm())
                + station.ny() * yPerK * (place.y() - anchor.yMm())
                + station.relief().normalZ() * zPerK * place.z();
    }
}
