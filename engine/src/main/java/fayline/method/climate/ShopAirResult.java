package fayline.method.climate;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Fraction;
import fayline.basis.units.Pressure;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import java.util.List;
import java.util.Optional;

/**
 * Whether the shop's air allows wet work. A figure is empty where its inputs are missing or outside the formula's range; a
 * finding then says so.
 *
 * @param saturation saturation pressure at the air temperature
 * @param dewPoint dew point of the air
 * @param margin distance of the surface above the dew point; negative where it is wet
 * @param humidityAtSurface relative humidity in the film of air at the surface, over 1 where water condenses: this, not the
 *     room's, drives amine bloom
 * @param surfaceNeeded the coldest surface that keeps the margin
 * @param ok whether every limit that is given is kept
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record ShopAirResult(
        Optional<Pressure> saturation,
        Optional<Temperature> dewPoint,
        Optional<TemperatureDifference> margin,
        Optional<Fraction> humidityAtSurface,
        Optional<Temperature> surfaceNeeded,
        boolean ok,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public ShopAirResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
