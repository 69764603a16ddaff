package fayline.app.usecase.calc.topic;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.method.cure.TemperatureHistory;
import java.util.List;

/** The temperatures a mix has seen, from whichever of {@code profile}, {@code spans}, {@code temp}, {@code shopTemp} is given. */
final class Warmth {
    private static final double ANY_KELVINS = 296.15;

    private Warmth() {}

    static boolean isKnown(Known k) {
        return k.has("profile") || k.has("spans") || k.has("temp") || k.has("shopTemp");
    }

    /** Whether the history ends, so that nothing is known of later. */
    static boolean ends(Known k) {
        return k.has("profile") || k.has("spans");
    }

    /** The history; where rate constants hold at one temperature only, any will do. */
    static TemperatureHistory history(Known k, boolean oneTemperature) {
        return oneTemperature && !isKnown(k) ? TemperatureHistory.constant(new Temperature(ANY_KELVINS)) : history(k);
    }

    static TemperatureHistory history(Known k) {
        if (k.has("profile")) {
            List<TemperatureHistory.Point> points = k.rows("profile").stream()
                    .map(r -> new TemperatureHistory.Point(new TimeSpan(r.get(0)), new Temperature(r.get(1))))
                    .toList();
            for (int i = 1; i < points.size(); i++) {
                if (points.get(i).at().compareTo(points.get(i - 1).at()) < 0) {
                    throw CalcInputException.of("profile", "a time before the one above it", "times that rise");
                }
            }
            return TemperatureHistory.lines(points);
        }
        if (k.has("spans")) {
            List<TemperatureHistory.Step> steps = k.rows("spans").stream()
                    .map(r -> new TemperatureHistory.Step(new TimeSpan(r.get(0)), new Temperature(r.get(1))))
                    .toList();
            if (steps.stream().anyMatch(s -> s.span().seconds() < 0)) {
                throw CalcInputException.of("spans", "a time below zero", "times of zero or more");
            }
            return TemperatureHistory.steps(steps);
        }
        for (String at : List.of("temp", "shopTemp")) {
            if (k.has(at)) {
                return TemperatureHistory.constant(k.as(at, Temperature::new));
            }
        }
        throw new NotCoveredException("a temperature is needed: temp, profile or spans");
    }
}
