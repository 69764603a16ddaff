package fayline.flow.project.shop;

import fayline.basis.units.Area;
import fayline.basis.units.TemperatureDifference;
import fayline.flow.project.catalog.Keyed;
import java.util.Optional;

/**
 * A place in the shop where work happens.
 *
 * @param id the id
 * @param name the name
 * @param room the room; dust in a room keeps wet work out of it
 * @param dust whether dusty work may happen here
 * @param wet whether wet work may happen here
 * @param warmer how much warmer than the shop's air this stand is kept
 * @param shelves area of what fits on it at once, where that is known
 */
public record Stand(
        String id,
        String name,
        String room,
        boolean dust,
        boolean wet,
        TemperatureDifference warmer,
        Optional<Area> shelves)
        implements Keyed {
    /** A stand of which nobody has said how much fits on it. */
    public Stand(String id, String name, String room, boolean dust, boolean wet, TemperatureDifference warmer) {
        this(id, name, room, dust, wet, warmer, Optional.empty());
    }
}
