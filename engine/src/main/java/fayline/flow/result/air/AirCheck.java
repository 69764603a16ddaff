package fayline.flow.result.air;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Fraction;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.Climate;
import fayline.flow.project.Definition;
import fayline.flow.project.shop.Shop;
import fayline.method.climate.AirLimits;
import fayline.method.climate.ShopAirCalculator;
import fayline.method.climate.ShopAirResult;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether wet work may begin in the shop's air as last read. A reading older than two hours is stale (common practice, no
 * source): read again before coating or bonding.
 */
public final class AirCheck {
    private static final Duration STALE_AFTER = Duration.ofHours(2);

    private AirCheck() {}

    /**
     * Judges the air.
     *
     * @param definition limits of the shop
     * @param air the shop's air
     */
    public static AirNow check(Definition definition, ShopAir air) {
        Shop shop = definition.shop();
        Instant now = air.now();
        LocalDate today = now.atZone(shop.zone()).toLocalDate();
        Optional<Climate.Reading> last = air.latest();
        Temperature temperature = last.map(Climate.Reading::air).orElse(air.expected(now));
        Fraction humidity = last.flatMap(Climate.Reading::humidity).orElse(air.expectedHumidity(today));
        Optional<Temperature> surfaceRead = last.flatMap(Climate.Reading::surface);
        Temperature surface = surfaceRead.orElse(temperature);
        ShopAirResult result = ShopAirCalculator.calculate(fayline.method.climate.ShopAir.of(
                temperature,
                humidity,
                surface,
                new AirLimits(
                        Optional.of(shop.limits().coldest()),
                        Optional.of(shop.limits().dampest()),
                        Optional.of(shop.limits().dewMargin()))));
        boolean stale = last.isEmpty() || Duration.between(last.get().at(), now).compareTo(STALE_AFTER) > 0;
        List<Finding> findings = new ArrayList<>(result.findings());
        if (stale) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    "air",
                    last.map(r -> "The air was last read "
                                    + new QuantityFormat(definition.facts().units()).span(TimeSpan.ofSeconds((double)
                                            Duration.between(r.at(), now).toSeconds()))
                                    + " ago: read air, humidity and the coldest surface again before wet work.")
                            .orElse("The air was never read; what is shown is only expected. Read it before wet work."),
                    "common practice, no source"));
        }
        if (surfaceRead.isEmpty()) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    "surface",
                    "No surface temperature was read; the air's is taken, but a mould is often colder in the morning.",
                    "common practice, no source"));
        }
        Temperature dew = result.dewPoint().orElse(surface);
        return new AirNow(
                last.map(Climate.Reading::at),
                stale,
                temperature,
                humidity,
                surface,
                dew,
                surface.minus(dew),
                result.ok() && !stale,
                result.figures(),
                findings);
    }
}
