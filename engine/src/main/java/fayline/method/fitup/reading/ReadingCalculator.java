package fayline.method.fitup.reading;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Mean, spread and standard uncertainty of the readings of one station [jcgm100]. The uncertainty of the mean is the larger of what
 * the gauges promise and what the repeats show, s/√n; the shared part stays. Repeats that lie apart by more than three of their own
 * deviations, at least 0.2 mm, are asked for again and none is left out.
 */
public final class ReadingCalculator {
    private static final double APART_MM = 0.2;
    private static final double APART_DEVIATIONS = 3;
    private static final String CP = "common practice, no source";

    private ReadingCalculator() {}

    /** Answers the question. */
    public static StationGap calculate(StationReadings asked) {
        List<GaugeReading> all = asked.readings();
        int n = all.size();
        double mean = all.stream().mapToDouble(GaugeReading::gapMm).average().orElseThrow();
        double promised = promised(all);
        double squares = all.stream()
                .mapToDouble(r -> (r.gapMm() - mean) * (r.gapMm() - mean))
                .sum();
        OptionalDouble spread = n > 1 ? OptionalDouble.of(Math.sqrt(squares / (n - 1))) : OptionalDouble.empty();
        double shown = spread.orElse(0) / Math.sqrt(n);
        long sharing = all.stream().filter(GaugeReading::sharesBias).count();
        boolean oneSided = all.stream().allMatch(GaugeReading::oneSided);
        List<Finding> findings = new ArrayList<>();
        if (apart(all)) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    asked.stationId(),
                    Phrase.of(
                            "Readings at station %s lie between %s and %s. Read it again.",
                            asked.stationId(),
                            Amount.bareMm(
                                    all.stream()
                                            .mapToDouble(GaugeReading::gapMm)
                                            .min()
                                            .orElseThrow(),
                                    2),
                            Amount.mm(
                                    all.stream()
                                            .mapToDouble(GaugeReading::gapMm)
                                            .max()
                                            .orElseThrow(),
                                    2)),
                    CP));
        }
        if (oneSided) {
            findings.add(new Finding(
                    Severity.NOTE,
                    asked.stationId(),
                    "Station " + asked.stationId()
                            + " touches: the gap counts as 0, and how hard it presses is not known.",
                    CP));
        }
        return new StationGap(
                asked.stationId(),
                mean,
                spread,
                Math.max(promised, shown),
                asked.commonMm() * sharing / n,
                n,
                oneSided,
                findings);
    }

    /**
     * What the gauges promise for the mean, u/√n where every look errs for itself. The same two leaves leave the same doubt however
     * often they are tried, so looks between them count as one.
     */
    private static double promised(List<GaugeReading> all) {
        Map<GaugeReading, Double> alike = new HashMap<>();
        double variance = 0;
        for (GaugeReading r : all) {
            if (r.sharesBias()) {
                alike.merge(r, r.deviationMm(), Double::sum);
            } else {
                variance += r.deviationMm() * r.deviationMm();
            }
        }
        variance += alike.values().stream().mapToDouble(u -> u * u).sum();
        return Math.sqrt(variance) / all.size();
    }

    private static boolean apart(List<GaugeReading> all) {
        for (GaugeReading a : all) {
            for (GaugeReading b : all) {
                double limit = Math.max(APART_MM, APART_DEVIATIONS * Math.hypot(a.deviationMm(), b.deviationMm()));
                if (a.gapMm() - b.gapMm() > limit + 1e-9) {
                    return true;
                }
            }
        }
        return false;
    }
}
