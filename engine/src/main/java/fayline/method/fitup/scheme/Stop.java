package fayline.method.fitup.scheme;

import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;

/**
 * A place where the part is held off its neighbour.
 *
 * @param contact where, and the direction in which it holds, from part to neighbour
 * @param travelMm how far along the edge it could be set elsewhere, either way; zero where it is fixed
 * @param stiffness how hard it holds against other stops, where there are more than three; one for equal stops
 */
public record Stop(Station contact, double travelMm, double stiffness) {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException naming the stop
     */
    public Stop {
        if (!(travelMm >= 0) || Double.isInfinite(travelMm) || !(stiffness > 0) || Double.isInfinite(stiffness)) {
            throw new IllegalArgumentException(
                    "stop " + contact.id() + ": travel " + travelMm + ", stiffness " + stiffness);
        }
    }

    /** A stop that stays where it is. */
    public static Stop fixed(Station contact) {
        return new Stop(contact, 0, 1);
    }

    /** Its name. */
    public String id() {
        return contact.id();
    }

    /** The same stop set along its edge, counter-clockwise seen from outside. */
    public Stop along(double byMm) {
        Station edge = contact.drawn();
        Spot at = contact.at().plus(-edge.ny() * byMm, edge.nx() * byMm);
        return new Stop(
                new Station(contact.id(), at, contact.nx(), contact.ny(), contact.relief()), travelMm, stiffness);
    }
}
