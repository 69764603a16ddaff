package fayline.method.fitup.heat;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What heat does at one station.
 *
 * @param row the station
 * @param perKelvinMm change of the gap for one kelvin; negative where warmth closes it. Times the uncertainty of the
 *     temperature it is the uncertainty that a reading gets from it
 * @param gapsMm the gap at each temperature asked, in their order; negative is overlap
 * @param atReferenceMm the reading brought to the reference temperature
 * @param setNowMm the gap to set at the temperature of reading so that the nominal one stands at the reference temperature
 * @param smallestShopGapMm the least gap to set at the temperature of reading so that the least gap is kept at every temperature
 * @param touchDegC the temperature at which part and surround touch, where they do above absolute zero and below 1000 degC
 * @param flushPerKelvinMm change of the flush for one kelvin, where the height is known
 */
public record StationHeat(
        HeatRow row,
        double perKelvinMm,
        List<Double> gapsMm,
        double atReferenceMm,
        double setNowMm,
        double smallestShopGapMm,
        OptionalDouble touchDegC,
        OptionalDouble flushPerKelvinMm) {
    /** Copies the list. */
    public StationHeat {
        gapsMm = List.copyOf(gapsMm);
    }
}
