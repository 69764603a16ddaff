package fayline.checks;

import java.util.Map;

/** The units of the check tables, from exact definitions, written anew for the tests. */
final class CheckUnits {
    private static final double INCH = 0.0254;
    private static final Map<String, Double> FACTORS = Map.ofEntries(
            Map.entry("-", 1.0),
            Map.entry("s", 1.0),
            Map.entry("min", 60.0),
            Map.entry("h", 3600.0),
            Map.entry("h at 23 degC", 3600.0),
            Map.entry("K", 1.0),
            Map.entry("J/mol", 1.0),
            Map.entry("J/(mol K)", 1.0),
            Map.entry("1/min", 1 / 60.0),
            Map.entry("m", 1.0),
            Map.entry("mm", 1e-3),
            Map.entry("m2", 1.0),
            Map.entry("g", 1e-3),
            Map.entry("kg", 1.0),
            Map.entry("g/m2", 1e-3),
            Map.entry("kg/L", 1000.0),
            Map.entry("g/cm3", 1000.0),
            Map.entry("kg/m3", 1.0),
            Map.entry("g/min", 1e-3 / 60),
            Map.entry("percent", 0.01),
            Map.entry("percent of nominal hardener", 0.01),
            Map.entry("per 100", 0.01),
            Map.entry("per 100 by weight", 0.01),
            Map.entry("pbw", 1.0),
            Map.entry("hPa", 100.0),
            Map.entry("kPa", 1000.0),
            Map.entry("inHg", 3386.389),
            Map.entry("inHg/min", 3386.389 / 60),
            Map.entry("L", 1e-3),
            Map.entry("m3/h", 1 / 3600.0),
            Map.entry("hPa L/s", 0.1),
            Map.entry("in", INCH));

    private CheckUnits() {}

    static double toSi(double value, String unit) {
        return switch (unit) {
            case "degC" -> value + 273.15;
            case "degF" -> (value - 32) * 5 / 9 + 273.15;
            default -> {
                Double factor = FACTORS.get(unit);
                if (factor == null) {
                    throw new IllegalArgumentException("no unit " + unit);
                }
                yield value * factor;
            }
        };
    }
}
