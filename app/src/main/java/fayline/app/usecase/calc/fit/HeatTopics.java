package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.fitup.Station;
import fayline.method.fitup.heat.BondedHeat;
import fayline.method.fitup.heat.BondedHeatCalculator;
import fayline.method.fitup.heat.BondedHeatResult;
import fayline.method.fitup.heat.Expansion;
import fayline.method.fitup.heat.Heat;
import fayline.method.fitup.heat.HeatCalculator;
import fayline.method.fitup.heat.HeatResult;
import fayline.method.fitup.heat.HeatRow;
import fayline.method.fitup.heat.Sheet;
import fayline.method.fitup.heat.StationHeat;
import fayline.method.fitup.heat.TemperatureHeat;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** What heat does to gaps, and to the adhesive of a sheet bonded all round. */
final class HeatTopics {
    private static final String TEMPERATURES = "temperatures asked, degC";
    private static final String ALPHA = "expansion along x and y, per K";

    private HeatTopics() {}

    static List<CalcTopic> all() {
        return List.of(free(), bonded());
    }

    private static CalcTopic free() {
        Form station = Shapes.wanted(Shapes.station()).needs("gap", Kind.number(), "gap as read, mm");
        return new FitTopic(
                "thermal",
                "Gaps of a part that is free to grow in its surround, at other temperatures.",
                Form.empty()
                        .needs("anchor", Kind.plane(), "where part and surround are tied, mm")
                        .needs("alphaPart", Kind.plane(), ALPHA)
                        .needs("alphaSurround", Kind.plane(), ALPHA)
                        .needs("shopTemperature", Kind.number(), "temperature of reading and setting, degC")
                        .needs("temperatures", Kind.list(Kind.number(), 1), TEMPERATURES)
                        .needs("minimumGap", Kind.number(), "least gap at any temperature, mm")
                        .needs("stations", Kind.list(station.asKind(), 1), "where gaps were read")
                        .takes(
                                "referenceTemperature",
                                Kind.number(),
                                "where the nominal gaps are wanted, degC; the shop's where it is not given")
                        .takes("sheet", Kind.word("other", "acrylic", "darkAcrylic"), "what the part is, for cautions"),
                g -> FitAnswers.refusing(() -> gaps(g)));
    }

    private static CalcTopic bonded() {
        return new FitTopic(
                "thermal.bonded",
                "Shear of the adhesive under a sheet that is bonded all round, whose gaps do not follow the temperature.",
                Form.empty()
                        .needs("middle", Kind.plane(), "middle of the sheet, mm")
                        .needs("alphaPart", Kind.plane(), ALPHA)
                        .needs("alphaSurround", Kind.plane(), ALPHA)
                        .needs("setTemperature", Kind.number(), "temperature at which the adhesive set, degC")
                        .needs("temperatures", Kind.list(Kind.number(), 1), TEMPERATURES)
                        .needs("bondThickness", Kind.positive(), "thickness of the adhesive, mm")
                        .needs("stations", Kind.list(Shapes.station().asKind(), 1), "where it is asked")
                        .takes("shearModulus", Kind.positive(), "of the adhesive, MPa")
                        .takes("allowedStrain", Kind.positive(), "most shear strain of the adhesive, as a fraction"),
                g -> FitAnswers.refusing(() -> shear(g)));
    }

    private static CalcAnswer gaps(Given g) {
        List<Double> temperatures = g.numbers("temperatures");
        requireDistinct(temperatures);
        boolean nominal = g.objects("stations").stream().allMatch(s -> s.has("nominal"));
        List<HeatRow> rows = g.objects("stations").stream()
                .map(s -> HeatRow.of(Shapes.station(s), s.number("gap"), s.number("nominal", s.number("gap"))))
                .toList();
        double shop = g.number("shopTemperature");
        HeatResult r = HeatCalculator.calculate(new Heat(
                Shapes.spot(g.numbers("anchor")),
                expansion(g, "alphaPart"),
                expansion(g, "alphaSurround"),
                shop,
                g.number("referenceTemperature", shop),
                temperatures,
                g.number("minimumGap"),
                rows,
                sheet(g)));
        ObjectNode out = Json.object();
        ObjectNode by = out.putObject("byTemperature");
        for (TemperatureHeat t : r.temperatures()) {
            ObjectNode one = by.putObject(key(t.degC()));
            one.set("gaps", Shapes.json(t.gapsMm()));
            one.put("minimum", t.minimumMm()).put("maximum", t.maximumMm());
            t.belowMinimum().forEach(one.putArray("belowMinimum")::add);
        }
        out.set(
                "smallestShopGap",
                Shapes.json(r.stations().stream()
                        .map(StationHeat::smallestShopGapMm)
                        .toList()));
        out.set(
                "gapsAtReference",
                Shapes.json(
                        r.stations().stream().map(StationHeat::atReferenceMm).toList()));
        if (nominal) {
            out.set(
                    "gapsToSet",
                    Shapes.json(r.stations().stream().map(StationHeat::setNowMm).toList()));
        }
        out.set(
                "changePerKelvin",
                Shapes.json(r.stations().stream().map(StationHeat::perKelvinMm).toList()));
        ArrayNode touch = out.putArray("touchTemperature");
        r.stations().forEach(s -> FitAnswers.add(touch, s.touchDegC()));
        return FitAnswers.of(
                out,
                Map.of(
                        "byTemperature", "mm",
                        "smallestShopGap", "mm",
                        "gapsAtReference", "mm",
                        "gapsToSet", "mm",
                        "changePerKelvin", "mm/K",
                        "touchTemperature", "degC"),
                r.figures(),
                r.findings());
    }

    private static CalcAnswer shear(Given g) {
        List<Double> temperatures = g.numbers("temperatures");
        requireDistinct(temperatures);
        List<Station> stations = Shapes.stations(g, "stations");
        BondedHeatResult r = BondedHeatCalculator.calculate(new BondedHeat(
                Shapes.spot(g.numbers("middle")),
                expansion(g, "alphaPart"),
                expansion(g, "alphaSurround"),
                g.number("setTemperature"),
                temperatures,
                g.number("bondThickness"),
                stations,
                g.maybe("shearModulus"),
                g.maybe("allowedStrain")));
        ObjectNode out = Json.object();
        ObjectNode by = out.putObject("byTemperature");
        for (int k = 0; k < temperatures.size(); k++) {
            int at = k;
            ObjectNode one = by.putObject(key(temperatures.get(k)));
            one.set(
                    "shearStrain",
                    Shapes.json(
                            r.strains().stream().map(s -> s.strains().get(at)).toList()));
            if (g.has("shearModulus")) {
                one.set(
                        "shearStress",
                        Shapes.json(r.strains().stream()
                                .map(s -> s.stressesMpa().get(at))
                                .toList()));
            }
        }
        out.put("highestStrain", r.highestStrain());
        OptionalDouble thickness = r.thicknessForAllowedMm();
        thickness.ifPresent(t -> out.put("thicknessForAllowedStrain", t));
        return FitAnswers.of(out, Map.of("thicknessForAllowedStrain", "mm"), r.figures(), r.findings());
    }

    private static void requireDistinct(List<Double> temperatures) {
        Set<String> keys = new HashSet<>();
        for (double t : temperatures) {
            if (!keys.add(key(t))) {
                throw CalcInputException.of("temperatures", key(t) + " twice", "temperatures that differ by 0.1 degC");
            }
        }
    }

    private static String key(double degC) {
        return String.format(Locale.ROOT, "%.1f", degC + 0.0);
    }

    private static Expansion expansion(Given g, String name) {
        return new Expansion(g.numbers(name).get(0), g.numbers(name).get(1), 0);
    }

    private static Sheet sheet(Given g) {
        return switch (g.text("sheet", "other")) {
            case "acrylic" -> Sheet.ACRYLIC;
            case "darkAcrylic" -> Sheet.DARK_ACRYLIC;
            default -> Sheet.OTHER;
        };
    }
}
