package fayline.app.drawing.fit;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What is drawn of a chain of bonds.
 *
 * @param title its name
 * @param bonds the bonds, from the part outward
 * @param ground what does not move, at the end
 * @param moving neighbours that move in the correction
 * @param rest what else spreads the gap: readings, states to come; empty where no share is told
 * @param station the station whose spread is shared out; empty where no share is told
 */
public record ChainPicture(
        String title, List<Bond> bonds, String ground, List<String> moving, List<Rest> rest, String station) {
    /** Copies the lists. */
    public ChainPicture {
        moving = List.copyOf(moving);
        bonds = List.copyOf(bonds);
        rest = List.copyOf(rest);
    }

    /** Whether the spread is shared out. */
    public boolean isShared() {
        return !station.isEmpty();
    }

    /**
     * A bond with the part that it holds.
     *
     * @param name what it is called
     * @param part what is bonded
     * @param where where it is bonded and whether it is, in words
     * @param made whether it is bonded
     * @param share its part of the spread, from 0 to 1; empty where it is not told
     * @param most whether it spends most
     * @param corrected whether the correction goes there
     */
    public record Bond(
            String name,
            String part,
            String where,
            boolean made,
            OptionalDouble share,
            boolean most,
            boolean corrected) {}

    /**
     * Something else that spreads the gap.
     *
     * @param name what it is
     * @param share its part, from 0 to 1
     */
    public record Rest(String name, double share) {}
}
