package fayline.flow.project.shop;

import fayline.basis.units.TemperatureDifference;
import fayline.flow.project.catalog.Keyed;

/**
 * A place in the shop where work happens.
 *
 * @param id the id
 * @param name the name
 * @param room the room; dust in a room keeps wet work out of it
 * @param dust whether dusty work may happen here
 * @param wet whether wet work may happen here
 * @param warmer how much warmer than the shop's air this stand is kept
 */
public record Stand(String id, String name, String room, boolean dust, boolean wet, TemperatureDifference warmer)
        implements Keyed {}
