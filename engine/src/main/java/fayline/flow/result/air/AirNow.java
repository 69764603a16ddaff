package fayline.flow.result.air;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Fraction;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The shop's air as last read, and whether wet work may begin in it.
 *
 * @param at when it was read; empty where nothing was ever read, and then the figures are the expected ones
 * @param stale whether the reading is too old to begin coating or bonding on (or there is none)
 * @param air air temperature
 * @param humidity relative humidity
 * @param surface the coldest surface; the air's own temperature, shown as assumed, where none was read
 * @param dewPoint dew point of the air
 * @param margin coldest surface above the dew point
 * @param fit whether wet work may begin: not stale and within the shop's limits
 * @param figures the figures behind it
 * @param findings what is outside a limit, or too old
 */
public record AirNow(
        Optional<Instant> at,
        boolean stale,
        Temperature air,
        Fraction humidity,
        Temperature surface,
        Temperature dewPoint,
        TemperatureDifference margin,
        boolean fit,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public AirNow {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
