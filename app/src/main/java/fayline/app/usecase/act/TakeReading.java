package fayline.app.usecase.act;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.Definition;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.WidthReadings;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** One measured value, kept exactly as typed; what is no quantity of its kind is refused with what was expected. */
public final class TakeReading {
    private static final Map<String, QuantityKind<?>> KINDS = Map.of(
            "mass",
            QuantityKind.MASS,
            "mix",
            QuantityKind.MASS,
            "vacuum",
            QuantityKind.VACUUM,
            "gap",
            QuantityKind.LENGTH,
            "flush",
            QuantityKind.LENGTH,
            "casting",
            QuantityKind.LENGTH,
            WidthReadings.KIND,
            QuantityKind.LENGTH,
            "temperature",
            QuantityKind.TEMPERATURE);
    private static final Map<String, QuantityKind<?>> AIR = Map.of(
            "air", QuantityKind.TEMPERATURE,
            "humidity", QuantityKind.FRACTION,
            "surface", QuantityKind.TEMPERATURE);
    private static final Set<String> OF_FITS = Set.of("gap", "flush", "casting", WidthReadings.KIND);
    private static final String CLIMATE = "climate";
    private final ShopRecord shop;

    /** On a shop's record. */
    public TakeReading(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Records a reading.
     *
     * @param sent who sends it under which id
     * @param project the project that is seen; the shop's air is recorded for the shop
     * @param measured the reading
     */
    public Outcome take(Sent sent, String project, Measured measured) {
        return take(sent, project, measured, Optional.empty());
    }

    /**
     * Records a reading.
     *
     * @param sent who sends it under which id
     * @param project the project that is seen; the shop's air is recorded for the shop
     * @param measured the reading
     * @param reckoned the mass that was reckoned for what is weighed; empty where none was
     */
    public Outcome take(Sent sent, String project, Measured measured, Optional<Mass> reckoned) {
        return shop.deciding(() -> {
            Optional<Definition> definition = shop.definition(project);
            if (definition.isEmpty()) {
                return Outcome.refused("The project " + project + " is not in this shop.");
            }
            Instant at = measured.at().orElseGet(() -> shop.timeOf(sent));
            Checks checks = new Checks(definition.get());
            checks.person("by", sent.by());
            checks.time(sent, at, shop.now());
            measured.values().forEach((name, typed) -> checks.text(name, typed, false));
            check(checks, definition.get(), measured);
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("The reading was not recorded.", checks.problems());
            }
            String whose = measured.kind().equals(CLIMATE) ? "" : project;
            Outcome outcome =
                    shop.append(Checks.entry(shop, sent, whose, EntryKind.READING_TAKEN, payload(measured, at)));
            return outcome.stands() && sent.live()
                    ? outcome.with(Doubts.of(definition.get(), measured, reckoned))
                    : outcome;
        });
    }

    /** What is checked of a reading, taken now or put in the place of one that was wrong. */
    static void check(Checks checks, Definition definition, Measured measured) {
        if (measured.kind().equals(CLIMATE)) {
            checkAir(checks, measured);
        } else if (measured.kind().equals(CouponReadingChecks.KIND)) {
            new CouponReadingChecks(checks, measured).check(definition.parts().find(measured.of()));
        } else {
            checkValue(checks, definition, measured);
        }
    }

    private static Value.Fields payload(Measured m, Instant at) {
        Value.Fields values = Value.Fields.NONE;
        for (Map.Entry<String, String> v : new TreeMap<>(m.values()).entrySet()) {
            values = values.withUnlessEmpty(v.getKey(), v.getValue());
        }
        return Value.Fields.NONE
                .with("kind", m.kind())
                .with("at", at.toString())
                .with("values", values)
                .withUnlessEmpty("of", m.of())
                .withUnlessEmpty("station", m.station())
                .withUnlessEmpty("state", m.state());
    }

    private static void checkAir(Checks checks, Measured m) {
        if (m.values().getOrDefault("air", "").isBlank()) {
            checks.stop("air", "nothing", "the air's temperature, such as 19.5 degC", "");
        }
        AIR.forEach((name, kind) -> {
            String typed = m.values().getOrDefault(name, "");
            if (!typed.isBlank()) {
                quantity(checks, name, typed, kind);
            }
        });
    }

    private static void checkValue(Checks checks, Definition d, Measured m) {
        QuantityKind<?> kind = KINDS.get(m.kind());
        if (kind == null) {
            checks.stop(
                    "kind",
                    "\"" + m.kind() + "\"",
                    "climate, mass, vacuum, gap, flush, casting, width, mix, temperature or coupon",
                    "");
            return;
        }
        Optional<Fit> fit = d.fits().find(m.of());
        if (OF_FITS.contains(m.kind())) {
            if (m.kind().equals(WidthReadings.KIND)) {
                new WidthReadingChecks(checks, m).check(fit);
            } else {
                new FitReadingChecks(checks, m).check(fit);
            }
            return;
        }
        quantity(checks, "value", m.values().getOrDefault("value", ""), kind);
        if (fit.isEmpty() && !isWork(d, m.of())) {
            checks.stop("of", "\"" + m.of() + "\"", "a part, joint, fit or step of the definition", "");
        }
    }

    private static boolean isWork(Definition d, String of) {
        String made = of.contains("/") ? of.substring(0, of.indexOf('/')) : of;
        return d.parts().find(made).isPresent() || d.joints().find(made).isPresent();
    }

    static void quantity(Checks checks, String name, String typed, QuantityKind<?> kind) {
        try {
            QuantityParser.parse(typed, kind);
        } catch (UnreadableQuantityException e) {
            checks.stop(name, "\"" + e.found() + "\"", e.expected(), e.suggestion());
        }
    }
}
