package fayline.flow.result.quantity;

import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import java.util.Optional;

/**
 * What goes into one zone.
 *
 * @param zone the zone
 * @param laminate its stack
 * @param area its true surface
 * @param fibre mass of cloth in the part
 * @param core mass of core in the part
 * @param resin mass of resin in the part, core bedding and coats apart
 * @param thickness thickness as laid, core included, where densities are known; voids taken as none
 */
public record ZoneResult(
        String zone, String laminate, Area area, Mass fibre, Mass core, Mass resin, Optional<Length> thickness) {}
