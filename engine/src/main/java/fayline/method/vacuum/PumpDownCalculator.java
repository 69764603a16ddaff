package fayline.method.vacuum;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Pressure;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Pump-down with a constant speed: p_ult = Q/S, t = V/S ln((p0 - p_ult)/(p1 - p_ult)) (balance of the gas). A lower bound: real
 * pumps lose speed at low pressure, breather and resin give off gas.
 */
public final class PumpDownCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);

    private PumpDownCalculator() {}

    /** Answers the question. */
    public static PumpDownResult calculate(PumpDown pump) {
        double s = pump.pumpM3PerS();
        double p0 = pump.from().pascals();
        if (!(s > 0 && Double.isFinite(s))
                || !(pump.leakPaM3PerS() >= 0 && Double.isFinite(pump.leakPaM3PerS()))
                || !(p0 > 0)
                || pump.volume().map(v -> !(v.cubicMetres() > 0)).orElse(false)) {
            return new PumpDownResult(
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    List.of(stop(
                            "Pumping speed, volume and starting pressure must be positive, the leak not negative: not"
                                    + " covered.")));
        }
        double ultimate = pump.leakPaM3PerS() / s;
        List<Finding> findings = new ArrayList<>();
        List<Figure> figures = new ArrayList<>();
        Optional<TimeSpan> time = Optional.empty();
        if (ultimate >= p0) {
            findings.add(stop("The leak is more than the pump can take: no vacuum at all."));
        } else if (pump.to().isPresent() && pump.volume().isPresent()) {
            time = time(pump, ultimate, findings);
        }
        figures.add(new Figure(
                "Pressure that pump and leak settle at",
                hectopascals(ultimate),
                "leak / pumping speed",
                List.of(
                        new Figure.Input(
                                "leak",
                                String.format(Locale.ROOT, "%.3g hPa L/s", pump.leakPaM3PerS() * 10),
                                Figure.Origin.MEASURED),
                        new Figure.Input(
                                "pumping speed",
                                String.format(Locale.ROOT, "%.2f m3/h", s * 3600),
                                Figure.Origin.ENTERED)),
                "balance of the gas",
                List.of()));
        time.ifPresent(t -> figures.add(new Figure(
                "Pump-down time",
                FORMAT.span(t),
                "V/S ln((p0 - p_ult)/(p1 - p_ult))",
                List.of(
                        new Figure.Input("from", hectopascals(p0), Figure.Origin.ENTERED),
                        new Figure.Input(
                                "to", hectopascals(pump.to().orElse(pump.from()).pascals()), Figure.Origin.ENTERED)),
                "balance of the gas",
                List.of("A lower bound: real pumps are slower at low pressure."))));
        return new PumpDownResult(time, Optional.of(new Pressure(ultimate)), figures, findings);
    }

    private static Optional<TimeSpan> time(PumpDown pump, double ultimate, List<Finding> findings) {
        double p1 = pump.to().orElseThrow().pascals();
        double p0 = pump.from().pascals();
        if (p1 >= p0) {
            return Optional.of(new TimeSpan(0));
        }
        if (!(p1 > ultimate)) {
            findings.add(stop(String.format(
                    Locale.ROOT,
                    "%.1f hPa is never reached: with this leak the pump settles at %.1f hPa.",
                    p1 / 100,
                    ultimate / 100)));
            return Optional.empty();
        }
        return Optional.of(new TimeSpan(pump.volume().orElseThrow().cubicMetres()
                / pump.pumpM3PerS()
                * Math.log((p0 - ultimate) / (p1 - ultimate))));
    }

    private static String hectopascals(double pascals) {
        return String.format(Locale.ROOT, "%.1f hPa", pascals / 100);
    }

    private static Finding stop(String sentence) {
        return new Finding(Severity.STOP, "pump-down", sentence, "balance of the gas");
    }
}
