package fayline.method.vacuum;

import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Pressure;
import fayline.basis.units.Vacuum;
import java.util.Optional;

/**
 * The question how hard a bag presses. One of gauge, absolute bag pressure or clamp pressure is given; with none of them the
 * best possible bag (absolute zero) is taken.
 *
 * @param ambient air pressure, where it was read; else it follows from the elevation, else standard pressure at sea level
 * @param elevation height above the sea
 * @param gauge reading below ambient
 * @param bagAbsolute absolute pressure in the bag
 * @param area area under pressure, for the force
 * @param hollow whether something hollow lies in the bag
 */
public record ClampPressure(
        Optional<Pressure> ambient,
        Optional<Length> elevation,
        Optional<Vacuum> gauge,
        Optional<Pressure> bagAbsolute,
        Optional<Area> area,
        boolean hollow) {
    /** A gauge reading on an area. */
    public static ClampPressure ofGauge(Vacuum gauge, Area area) {
        return new ClampPressure(
                Optional.empty(), Optional.empty(), Optional.of(gauge), Optional.empty(), Optional.of(area), false);
    }
}
