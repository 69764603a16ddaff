package fayline.method.vacuum;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Vacuum;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Leak-down with the source valved off: rate = drop/minutes against the limits, and the leak Q = V dp/dt, which alone compares
 * bags of different size. Published limits: not more than 1 inHg in a minute and at least 20 inHg, not more than 5 inHg in five
 * minutes for a double bag [tm1-1500-204-23]; at least 22 inHg [ac43-13-1b] par. 3-4. Shops set tighter ones (common practice).
 */
public final class LeakDownCalculator {
    private static final double ROUNDING = 1e-9;

    private LeakDownCalculator() {}

    /** Answers the question. */
    public static LeakDownResult calculate(LeakDown test) {
        double minutes = test.elapsed().minutes();
        if (!(minutes > 0) || test.volume().map(v -> !(v.cubicMetres() > 0)).orElse(false)) {
            return new LeakDownResult(
                    Optional.empty(),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    List.of(),
                    List.of(finding(
                            Severity.STOP,
                            "The time between the readings and the volume must be above zero: not" + " covered.")));
        }
        Vacuum drop = test.start().minus(test.end());
        Vacuum rate = drop.times(1 / minutes);
        List<Finding> findings = new ArrayList<>();
        judge(test, drop, rate, findings);
        boolean limited = test.mostPerMinute().isPresent()
                || test.mostInFiveMinutes().isPresent()
                || test.least().isPresent();
        Optional<Boolean> ok = limited
                ? Optional.of(findings.stream().noneMatch(f -> f.severity() == Severity.STOP))
                : Optional.empty();
        if (drop.pascalsBelowAmbient() < 0) {
            findings.add(
                    finding(Severity.CAUTION, "The vacuum rose during the test: is the source really valved off?"));
        }
        OptionalDouble leak = test.volume().isPresent()
                ? OptionalDouble.of(test.volume().get().cubicMetres()
                        * drop.pascalsBelowAmbient()
                        / test.elapsed().seconds())
                : OptionalDouble.empty();
        return new LeakDownResult(
                Optional.of(drop), Optional.of(rate), leak, ok, List.of(figure(test, drop, rate)), findings);
    }

    private static void judge(LeakDown test, Vacuum drop, Vacuum rate, List<Finding> findings) {
        test.mostPerMinute()
                .filter(most -> exceeds(rate, most))
                .ifPresent(most -> findings.add(finding(
                        Severity.STOP,
                        "The bag loses " + inches(rate) + " in a minute, " + inches(most)
                                + " is allowed: find the leak before" + " resin is mixed.")));
        Vacuum inFive = rate.times(5);
        test.mostInFiveMinutes()
                .filter(most -> exceeds(inFive, most))
                .ifPresent(most -> findings.add(finding(
                        Severity.STOP,
                        "The bag loses " + inches(inFive) + " in five minutes, " + inches(most)
                                + " is allowed: find the leak" + " before resin is mixed.")));
        test.least()
                .filter(least -> test.end().pascalsBelowAmbient() < least.pascalsBelowAmbient() * (1 - ROUNDING))
                .ifPresent(least -> findings.add(finding(
                        Severity.STOP,
                        "The bag holds " + inches(test.end()) + ", at least " + inches(least)
                                + " is asked for; mind that a high shop cannot reach a sea-level number.")));
    }

    private static boolean exceeds(Vacuum value, Vacuum most) {
        return value.pascalsBelowAmbient() > most.pascalsBelowAmbient() * (1 + ROUNDING);
    }

    private static Figure figure(LeakDown test, Vacuum drop, Vacuum rate) {
        return new Figure(
                "Leak-down rate",
                inches(rate) + " per minute",
                "(start - end)/minutes, source valved off",
                List.of(
                        new Figure.Input("start", inches(test.start()), Figure.Origin.MEASURED),
                        new Figure.Input("end", inches(test.end()), Figure.Origin.MEASURED),
                        new Figure.Input("drop", inches(drop), Figure.Origin.COMPUTED),
                        new Figure.Input(
                                "time",
                                String.format(
                                        Locale.ROOT, "%.1f min", test.elapsed().minutes()),
                                Figure.Origin.MEASURED)),
                "[tm1-1500-204-23]",
                List.of("A large bag hides a large leak: compare the leak per volume between bags."));
    }

    private static String inches(Vacuum v) {
        return String.format(Locale.ROOT, "%.2f inHg (%.1f hPa)", v.inchesOfMercury(), v.hectopascals());
    }

    private static Finding finding(Severity severity, String sentence) {
        return new Finding(severity, "leak-down", sentence, "[tm1-1500-204-23]");
    }
}
