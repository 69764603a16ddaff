package fayline.method.fitup.heat;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Free expansion of part and surround about their common anchor: g(T) = g + n · (u_surround(p + g n) − u_part(p)) with
 * u = diag(α)(· − anchor)ΔT. It is linear in temperature, so the temperature of touching is in closed form. Geometry; the
 * coefficients are the caller's.
 */
public final class HeatCalculator {
    private static final String SOURCE = "free expansion about the anchor";
    private static final double COLDEST = -273.15;
    private static final double HOTTEST = 1_000;
    private static final double DARK = 1.4;
    private static final double FAR_OFF_K = 2;
    private static final double ROUNDING_MM = 1e-9;

    private HeatCalculator() {}

    /** Answers the question. */
    public static HeatResult calculate(Heat heat) {
        List<StationHeat> stations =
                heat.rows().stream().map(r -> station(heat, r)).toList();
        List<TemperatureHeat> temperatures = IntStream.range(
                        0, heat.temperaturesDegC().size())
                .mapToObj(k -> temperature(heat, stations, k))
                .toList();
        List<Finding> findings = new ArrayList<>();
        temperatures.forEach(t -> judge(heat, t, stations, findings));
        read(heat, stations, findings);
        dark(heat, stations, findings);
        if (heat.sheet().isAcrylic()) {
            findings.addAll(SheetCareCalculator.calculate(new SheetCare(heat.readAtDegC(), reach(heat)))
                    .findings());
        }
        return new HeatResult(stations, temperatures, List.of(figure(heat, stations)), findings);
    }

    private static StationHeat station(Heat heat, HeatRow row) {
        double rate = perKelvin(heat, row.station(), row.gapMm());
        List<Double> gaps = heat.temperaturesDegC().stream()
                .map(t -> row.gapMm() + rate * (t - heat.readAtDegC()))
                .toList();
        double closure = gaps.stream().mapToDouble(g -> row.gapMm() - g).max().orElse(0);
        double away = heat.referenceDegC() - heat.readAtDegC();
        double free = perKelvin(heat, row.station(), 0);
        double stretch = 1 + perKelvin(heat, row.station(), 1) * away - free * away;
        return new StationHeat(
                row,
                rate,
                gaps,
                row.gapMm() + rate * away,
                (row.nominalMm() - free * away) / stretch,
                heat.minimumGapMm() + Math.max(0, closure),
                touch(heat, row, rate),
                row.heightMm().isPresent()
                        ? OptionalDouble.of(row.heightMm().getAsDouble()
                                * heat.part().less(heat.surround()).zPerK())
                        : OptionalDouble.empty());
    }

    private static double perKelvin(Heat heat, Station station, double gapMm) {
        return perKelvinMm(heat.part(), heat.surround(), heat.anchor(), station, gapMm);
    }

    /**
     * How much a gap widens for one kelvin of warming, in mm.
     *
     * @param part the part's expansion
     * @param surround the surround's
     * @param anchor where they are tied
     * @param station where the gap is
     * @param gapMm the gap, in mm
     */
    public static double perKelvinMm(Expansion part, Expansion surround, Spot anchor, Station station, double gapMm) {
        Vector across = station.place().plus(station.normal().times(gapMm));
        return surround.alongNormalMm(station, across, anchor) - part.alongNormalMm(station, station.place(), anchor);
    }

    private static OptionalDouble touch(Heat heat, HeatRow row, double rate) {
        double at = heat.readAtDegC() - row.gapMm() / rate;
        return at > COLDEST && at < HOTTEST ? OptionalDouble.of(at) : OptionalDouble.empty();
    }

    private static TemperatureHeat temperature(Heat heat, List<StationHeat> stations, int k) {
        List<Double> gaps = stations.stream().map(s -> s.gapsMm().get(k)).toList();
        return new TemperatureHeat(
                heat.temperaturesDegC().get(k),
                gaps,
                gaps.stream().mapToDouble(Double::doubleValue).min().orElseThrow(),
                gaps.stream().mapToDouble(Double::doubleValue).max().orElseThrow(),
                stations.stream()
                        .filter(s -> s.gapsMm().get(k) < heat.minimumGapMm() - ROUNDING_MM)
                        .map(s -> s.row().station().id())
                        .toList());
    }

    private static void judge(Heat heat, TemperatureHeat t, List<StationHeat> stations, List<Finding> findings) {
        if (t.belowMinimum().isEmpty()) {
            return;
        }
        StationHeat worst = stations.get(t.gapsMm().indexOf(t.minimumMm()));
        String id = worst.row().station().id();
        boolean touches = t.minimumMm() <= 0;
        findings.add(new Finding(
                touches ? Severity.STOP : Severity.CAUTION,
                "station " + id,
                Phrase.of(
                        "At %s the gap at %s is %s, the least allowed is %s%s: set at least %s there at %s.",
                        Amount.degC(t.degC()),
                        id,
                        Amount.mm(t.minimumMm(), 2),
                        Amount.bareMm(heat.minimumGapMm(), 2),
                        touches
                                ? Phrase.of(
                                        "; part and surround touch from %s on",
                                        Amount.degC(worst.touchDegC().orElse(t.degC())))
                                : "",
                        Amount.mm(worst.smallestShopGapMm(), 2),
                        Amount.degC(heat.readAtDegC())),
                SOURCE));
    }

    private static void read(Heat heat, List<StationHeat> stations, List<Finding> findings) {
        double away = heat.referenceDegC() - heat.readAtDegC();
        StationHeat most = stations.stream()
                .max(Comparator.comparingDouble(s -> Math.abs(s.perKelvinMm())))
                .orElseThrow();
        if (Math.abs(away) > FAR_OFF_K) {
            findings.add(new Finding(
                    Severity.NOTE,
                    "temperature",
                    Phrase.of(
                            "Read at %s, wanted at %s: the gaps differ by up to %s (at %s). Use the corrected readings.",
                            Amount.degC(heat.readAtDegC()),
                            Amount.degC(heat.referenceDegC()),
                            Amount.mm(Math.abs(most.perKelvinMm() * away), 2),
                            most.row().station().id()),
                    SOURCE));
        }
    }

    private static void dark(Heat heat, List<StationHeat> stations, List<Finding> findings) {
        double hottest = heat.temperaturesDegC().stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
        double warmer = (DARK - 1) * (hottest - heat.readAtDegC());
        if (heat.sheet() != Sheet.DARK_ACRYLIC || !(warmer > 0)) {
            return;
        }
        StationHeat worst = stations.stream()
                .min(Comparator.comparingDouble(s -> darkGap(heat, s, hottest, warmer)))
                .orElseThrow();
        double gap = darkGap(heat, worst, hottest, warmer);
        findings.add(new Finding(
                gap < heat.minimumGapMm() ? Severity.CAUTION : Severity.NOTE,
                "sheet",
                Phrase.of(
                        "A dark sheet grows about 1.4 times as far in the sun: at %s count with a gap of %s at %s.",
                        Amount.degC(hottest),
                        Amount.mm(gap, 2),
                        worst.row().station().id()),
                "[acrylic-maker1]"));
    }

    private static double darkGap(Heat heat, StationHeat s, double hottest, double warmer) {
        Station station = s.row().station();
        return s.row().gapMm()
                + s.perKelvinMm() * (hottest - heat.readAtDegC())
                - heat.part().alongNormalMm(station, station.place(), heat.anchor()) * warmer;
    }

    private static double reach(Heat heat) {
        return heat.rows().stream()
                .mapToDouble(r -> r.station().at().distanceMm(heat.anchor()))
                .max()
                .orElseThrow();
    }

    private static Figure figure(Heat heat, List<StationHeat> stations) {
        double shop = stations.stream()
                .mapToDouble(StationHeat::smallestShopGapMm)
                .max()
                .orElseThrow();
        return new Figure(
                "Smallest gap to set",
                Phrase.of("%s at %s where it closes most", Amount.mm(shop, 2), Amount.degC(heat.readAtDegC())),
                "least gap + largest closure over the temperatures; g(T) = g + n (u_surround - u_part)",
                List.of(
                        new Figure.Input(
                                "least gap", Phrase.of("%s", Amount.mm(heat.minimumGapMm(), 2)), Figure.Origin.ENTERED),
                        expansion("expansion of the part", heat.part()),
                        expansion("expansion of the surround", heat.surround())),
                SOURCE,
                List.of("Free to grow about the anchor; not for a sheet that is bonded all round."));
    }

    static Figure.Input expansion(String name, Expansion e) {
        return new Figure.Input(
                name,
                String.format(Locale.ROOT, "%.1f along x, %.1f along y, e-6 per K", e.xPerK() * 1e6, e.yPerK() * 1e6),
                Figure.Origin.ENTERED);
    }
}
