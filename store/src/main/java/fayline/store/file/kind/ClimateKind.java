package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.FRACTION;
import static fayline.basis.units.QuantityKind.TEMPERATURE;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.flow.project.Climate;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;

/** The kind {@code climate}. */
public final class ClimateKind {
    static final Keys SHAPE = Keys.of(
            "the climate",
            must(
                    "usual",
                    Keys.of(
                            "the usual air",
                            must("day", Measure.any(TEMPERATURE), "Air by day, 07:00 to 19:00."),
                            must("night", Measure.any(TEMPERATURE), "Air by night."),
                            must("humidity", Measure.share(), "Relative humidity.")),
                    "The shop's air on a day of which nothing is known; shown as assumed."),
            may(
                    "readings",
                    Listed.of(Keys.of(
                            "a climate reading",
                            must("at", Forms.MOMENT, "When."),
                            must("probe", Forms.REF, "Which probe or place."),
                            must("air", Measure.any(TEMPERATURE), "Air temperature."),
                            may("humidity", Measure.share(), "Relative humidity."),
                            may("surface", Measure.any(TEMPERATURE), "Coldest surface."))),
                    "What was read."),
            may(
                    "forecast",
                    Listed.of(Keys.of(
                            "a forecast day",
                            must("date", Forms.DATE, "The day."),
                            must("day", Measure.any(TEMPERATURE), "Air by day."),
                            must("night", Measure.any(TEMPERATURE), "Air in the night that ends on the next morning."),
                            must("humidity", Measure.share(), "Relative humidity."))),
                    "The shop's air expected on the coming days."));

    private ClimateKind() {}

    /** Reads the climate; readings come out in the order of time. */
    public static Climate read(Fields f, ZoneId zone) {
        Fields usual = f.below("usual").orElse(f);
        return new Climate(
                f.list("readings").stream()
                        .map(r -> new Climate.Reading(
                                r.moment("at")
                                        .map(t -> t.atZone(zone).toInstant())
                                        .orElse(Instant.EPOCH),
                                r.text("probe", ""),
                                r.measure("air", TEMPERATURE, "20 degC"),
                                r.measure("humidity", FRACTION),
                                r.measure("surface", TEMPERATURE)))
                        .sorted(Comparator.comparing(Climate.Reading::at))
                        .toList(),
                f.list("forecast").stream()
                        .map(d -> new Climate.Day(
                                d.day("date"),
                                d.measure("day", TEMPERATURE, "20 degC"),
                                d.measure("night", TEMPERATURE, "20 degC"),
                                d.measure("humidity", FRACTION, "50 %")))
                        .toList(),
                new Climate.Usual(
                        usual.measure("day", TEMPERATURE, "20 degC"),
                        usual.measure("night", TEMPERATURE, "20 degC"),
                        usual.measure("humidity", FRACTION, "50 %")));
    }
}
