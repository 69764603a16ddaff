package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.Fraction;
import fayline.basis.units.Pressure;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.method.climate.AirLimits;
import fayline.method.climate.MoistAir;
import fayline.method.climate.MoistAirCalculator;
import fayline.method.climate.MoistAirResult;
import fayline.method.climate.Saturation;
import fayline.method.climate.ShopAir;
import fayline.method.climate.ShopAirCalculator;
import fayline.method.climate.ShopAirResult;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Dew point and its margin at a cold surface, humidity there, and the state of moist air. */
final class ClimateTopic {
    private static final double STANDARD_PASCALS = 101_325;

    /** What coating practice asks for [iso8502-4]. */
    private static final double USUAL_MARGIN = 3;

    private ClimateTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "climate",
                "Dew point, its margin at the coldest surface and the humidity there; moist air from wet bulb or humidity.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                number("air", "degC", "air temperature"),
                number("rh", "percent", "relative humidity"),
                number("surface", "degC", "the coldest surface"),
                number(
                        "requiredMargin",
                        "K",
                        "least distance of the surface above the dew point; 3 K where it is not given"),
                number("wetBulb", "degC", "wet-bulb temperature"),
                number("pressure", "kPa", "air pressure; 101.325 kPa where it is not given"),
                Term.text("formula", "saturation formula: magnus, buck or hyland-wexler; magnus where it is not given"),
                number("saturation", "hPa", "saturation pressure at the air temperature"),
                number("dewPoint", "degC", "dew point"),
                number("margin", "K", "how far the surface lies above the dew point"),
                number("surfaceNeeded", "degC", "the coldest surface that keeps the margin"),
                number("rhAtSurface", "percent", "relative humidity at the surface"),
                Term.yesNo("ok", "whether the surface keeps the margin"),
                number("humidityRatio", "-", "kilograms of water per kilogram of dry air"),
                number("enthalpy", "kJ/kg", "enthalpy per kilogram of dry air"),
                number("specificVolume", "m3/kg", "volume per kilogram of dry air"));
    }

    private static List<Relation> relations() {
        return List.of(
                giving("saturation", "air [formula]", k -> {
                    ShopAirResult r = shop(k);
                    k.by("saturation pressure over water", source(k));
                    return k.take(r.saturation(), r.findings()).si();
                }),
                giving("rh", "air wetBulb [pressure]", k -> {
                    MoistAirResult r = moist(k);
                    return k.take(r.humidity(), r.findings()).si();
                }),
                giving("dewPoint", "air wetBulb [pressure]", k -> {
                    MoistAirResult r = moist(k);
                    return k.take(r.dewPoint(), r.findings()).si();
                }),
                giving(
                        "dewPoint",
                        "air rh [formula]",
                        k -> shopFigure(k, ShopAirResult::dewPoint).si()),
                giving(
                        "margin",
                        "air rh surface [formula] [requiredMargin]",
                        k -> shopFigure(k, ShopAirResult::margin).si()),
                giving(
                        "surfaceNeeded",
                        "air rh [requiredMargin] [formula]",
                        k -> shopFigure(k, ShopAirResult::surfaceNeeded).si()),
                giving(
                        "rhAtSurface",
                        "air rh surface [formula]",
                        k -> shopFigure(k, ShopAirResult::humidityAtSurface).si()),
                giving("ok", "air rh surface [requiredMargin] [formula]", k -> {
                    shopFigure(k, ShopAirResult::margin);
                    return shop(k).ok();
                }),
                moistAir("humidityRatio", "wetBulb", MoistAirResult::humidityRatio),
                moistAir("humidityRatio", "rh", MoistAirResult::humidityRatio),
                moistAir("enthalpy", "wetBulb", MoistAirResult::enthalpyJPerKg),
                moistAir("enthalpy", "rh", MoistAirResult::enthalpyJPerKg),
                moistAir("specificVolume", "wetBulb", MoistAirResult::specificVolumeM3PerKg),
                moistAir("specificVolume", "rh", MoistAirResult::specificVolumeM3PerKg));
    }

    private static Relation moistAir(String gives, String from, Function<MoistAirResult, OptionalDouble> figure) {
        return giving(gives, "air " + from + " [pressure]", k -> {
            MoistAirResult r = moist(k);
            OptionalDouble v = figure.apply(r);
            return k.take(v.isPresent() ? Optional.of(v.getAsDouble()) : Optional.empty(), r.findings());
        });
    }

    private static <V> V shopFigure(Known k, Function<ShopAirResult, Optional<V>> figure) {
        ShopAirResult r = shop(k);
        r.figures().forEach(k::by);
        return k.take(figure.apply(r), r.findings());
    }

    private static ShopAirResult shop(Known k) {
        return ShopAirCalculator.calculate(new ShopAir(
                k.as("air", Temperature::new),
                k.maybe("rh", Fraction::new),
                k.maybe("surface", Temperature::new),
                new AirLimits(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new TemperatureDifference(k.si("requiredMargin", USUAL_MARGIN)))),
                formula(k)));
    }

    private static MoistAirResult moist(Known k) {
        if (!k.has("pressure")) {
            k.caution("The air pressure is taken as 101.325 kPa, that of the sea in standard weather.");
        }
        MoistAirResult r = MoistAirCalculator.calculate(new MoistAir(
                k.as("air", Temperature::new),
                k.maybe("wetBulb", Temperature::new),
                k.maybe("rh", Fraction::new),
                new Pressure(k.si("pressure", STANDARD_PASCALS))));
        r.figures().forEach(k::by);
        return r;
    }

    private static Saturation formula(Known k) {
        if (!k.has("formula")) {
            return Saturation.MAGNUS;
        }
        return switch (k.text("formula").toLowerCase(Locale.ROOT)) {
            case "magnus" -> Saturation.MAGNUS;
            case "buck" -> Saturation.BUCK;
            case "hyland-wexler" -> Saturation.HYLAND_WEXLER;
            default -> throw CalcInputException.of("formula", k.text("formula"), "magnus, buck or hyland-wexler");
        };
    }

    private static String source(Known k) {
        return switch (formula(k)) {
            case MAGNUS -> "[wmo8]";
            case BUCK -> "[buck1996]";
            case HYLAND_WEXLER -> "[ashrae-f2017]";
        };
    }
}
