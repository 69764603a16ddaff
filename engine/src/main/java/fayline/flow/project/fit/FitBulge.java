package fayline.flow.project.fit;

import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a part stands out of its plane at a station, as far as somebody said. A gap is read along the surface, square to the edge: so
 * of the gap's direction and the way the surface looks either gives the other, and a lean gives both.
 *
 * @param outMm how far outboard of the plane; nought where nothing is said
 * @param leanRad how far the surface falls away inboard towards the edge; negative where it rises
 * @param normalZ how far the gap's direction looks outboard, beside its numbers along x and up
 * @param surface which way the surface looks
 */
public record FitBulge(OptionalDouble outMm, OptionalDouble leanRad, OptionalDouble normalZ, Optional<Vector> surface) {
    /** Nothing said: in the plane, the surface looking straight outboard. */
    public static final FitBulge NONE =
            new FitBulge(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    private static final Vector OUT = new Vector(0, 0, 1);
    private static final double LEAST = 1e-6;

    /** Whether anything was said. */
    public boolean isSaid() {
        return !equals(NONE);
    }

    /** Whether it was said which way the gap or the surface looks, else only how far out it lies or nothing. */
    public boolean isFacing() {
        return leanRad.isPresent() || normalZ.isPresent() || surface.isPresent();
    }

    /**
     * A station that stands so.
     *
     * @param id its mark
     * @param at its place seen from outside
     * @param nx direction of the gap along x, of any length but zero together with ny
     * @param ny the same up
     */
    public Station station(String id, Spot at, double nx, double ny) {
        if (!isSaid()) {
            return new Station(id, at, nx, ny);
        }
        Vector place = Vector.of(at, outMm.orElse(0));
        Vector flat = new Vector(nx, ny, 0);
        if (leanRad.isPresent()) {
            double c = Math.cos(leanRad.getAsDouble());
            double s = Math.sin(leanRad.getAsDouble());
            Vector edge = flat.times(1 / flat.length());
            return Station.inSpace(
                    id, place, edge.times(c).minus(OUT.times(s)), edge.times(s).plus(OUT.times(c)));
        }
        if (normalZ.isPresent()) {
            Vector normal = new Vector(nx, ny, normalZ.getAsDouble());
            return Station.inSpace(id, place, normal, surface.orElseGet(() -> square(OUT, normal)));
        }
        Vector looks = surface.orElse(OUT);
        return Station.inSpace(id, place, square(flat, looks), looks);
    }

    /** What of one direction is square to another; itself where that is nothing. */
    private static Vector square(Vector one, Vector other) {
        Vector unit = other.times(1 / other.length());
        Vector rest = one.minus(unit.times(one.dot(unit)));
        return rest.length() > LEAST ? rest : one;
    }
}
