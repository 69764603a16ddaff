package fayline.flow.result.fit;

import fayline.flow.project.fit.FitHolding;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.Stop;
import java.util.Comparator;
import java.util.List;

/**
 * Stops of a part that may be curved. A stop of which nothing is said stands as the two nearest stations do that look the same way,
 * on the straight line between them.
 */
final class HeldPoints {
    private static final double SAME_WAY = 0.9;

    private final FitPlaces places;

    HeldPoints(FitPlaces places) {
        this.places = places;
    }

    /** Where a point touches its neighbour, and which way. */
    Station contact(FitHolding.Point point) {
        return held(point.stop()).contact();
    }

    /** A scheme with its stops standing so. */
    Scheme held(Scheme scheme) {
        return places.curved() ? scheme.withStops(this::held) : scheme;
    }

    private Stop held(Stop stop) {
        return stop.contact().isCurved() || !places.curved()
                ? stop
                : new Stop(between(stop.contact()), stop.travelMm(), stop.stiffness());
    }

    private Station between(Station place) {
        List<Station> near = alike(place, List.copyOf(places.stations().values()));
        if (near.isEmpty()) {
            return place;
        }
        Station a = near.get(0);
        Station b = near.get(near.size() - 1);
        double share = share(place, a, b);
        return Station.inSpace(
                place.id(),
                Vector.of(place.at(), mixed(a.place(), b.place(), share).z()),
                mixed(a.normal(), b.normal(), share),
                mixed(a.relief().surface(), b.relief().surface(), share));
    }

    private static Vector mixed(Vector a, Vector b, double share) {
        return a.times(1 - share).plus(b.times(share));
    }

    /** The two nearest of some stations that look the same way as a place, nearest first; fewer where there are no more. */
    static List<Station> alike(Station place, List<Station> stations) {
        Station looks = place.drawn();
        return stations.stream()
                .filter(s -> s.drawn().nx() * looks.nx() + s.drawn().ny() * looks.ny() > SAME_WAY)
                .sorted(Comparator.comparingDouble(s -> s.at().distanceMm(place.at())))
                .limit(2)
                .toList();
    }

    /** How far a place lies from one station to another: 0 at the one, 1 at the other. */
    static double share(Station place, Station a, Station b) {
        double dx = b.at().xMm() - a.at().xMm();
        double dy = b.at().yMm() - a.at().yMm();
        double length = dx * dx + dy * dy;
        double t = length == 0
                ? 0
                : ((place.at().xMm() - a.at().xMm()) * dx + (place.at().yMm() - a.at().yMm()) * dy) / length;
        return Math.max(0, Math.min(1, t));
    }

    /** What the part of a move that leads out of the plane takes from the room along a station's normal, in mm. */
    static double liftedMm(Station at, SpaceMove move, Vector pivot) {
        return move.outOfPlane().alongMm(at.place(), at.normal(), pivot);
    }
}
