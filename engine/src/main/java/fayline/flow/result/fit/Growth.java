package fayline.flow.result.fit;

import fayline.basis.finding.Phrase;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitHeat;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import fayline.method.fitup.heat.HeatCalculator;
import fayline.method.fitup.odds.GapSource;
import fayline.method.uncertainty.Distribution;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the gaps of a fit grow with heat, by free expansion about the anchor. Nothing grows where the expansions are not given, and
 * a part that is bonded all round keeps the gap at which its adhesive set. A thermometer is taken to be good to 1 K and an
 * expansion to a tenth of itself (common practice, no source).
 */
final class Growth {
    private static final double THERMOMETER_K = 1;
    private static final double EXPANSION_SHARE = 0.1;
    private static final String HEAT = "temperature";

    /** What is taken of thermometer and expansions, in words. */
    static final Phrase ASSUMED = Phrase.of(
            "the thermometer beside the part is right to a standard deviation of %.0f K, each expansion to %.0f %% of itself",
            THERMOMETER_K, 100 * EXPANSION_SHARE);

    private final Fit fit;
    private final FitPlaces places;

    Growth(Fit fit, FitPlaces places) {
        this.fit = fit;
        this.places = places;
    }

    /** Whether somebody said how part and surround grow. */
    boolean known() {
        return fit.heat().isPresent();
    }

    /** Whether the part is, or will be, bonded all round. */
    boolean bondedAllRound() {
        return fit.heat().filter(h -> h.bondMm().isPresent()).isPresent();
    }

    /** Whether the part grows freely in a state. */
    boolean freeIn(String state) {
        return known() && !(bondedAllRound() && FitResult.isSet(fit, state));
    }

    /**
     * The temperature at which the limits hold and a move is sought; empty where gaps count as they were read: because nobody said
     * how they grow, or because the part keeps the gap at which its adhesive sets.
     */
    OptionalDouble soughtDegC() {
        return known() && !bondedAllRound()
                ? OptionalDouble.of(fit.heat().orElseThrow().referenceDegC())
                : OptionalDouble.empty();
    }

    /** By how much a gap at a station widens for one kelvin; the gap is as it is before. */
    double perKelvinMm(Station at, double gapMm) {
        FitHeat heat = fit.heat().orElseThrow();
        return HeatCalculator.perKelvinMm(heat.part(), heat.surround(), places.anchor(heat), at, gapMm);
    }

    /** Standard uncertainty of a shift between two temperatures, both of them read. */
    double doubtMm(double perKelvinMm, double shiftMm) {
        return Math.hypot(perKelvinMm * THERMOMETER_K * Math.sqrt(2), EXPANSION_SHARE * shiftMm);
    }

    /** Standard uncertainty that one reading of the thermometer brings to a gap. */
    double thermometerMm(Station at, double gapMm) {
        return Math.abs(perKelvinMm(at, gapMm)) * THERMOMETER_K;
    }

    /** A gap read at one temperature as it would be at another, the part being free; itself where its place is not known. */
    double broughtMm(String station, double gapMm, double fromDegC, double toDegC) {
        return Optional.ofNullable(places.stations().get(station))
                .map(at -> gapMm + perKelvinMm(at, gapMm) * (toDegC - fromDegC))
                .orElse(gapMm);
    }

    /** What a state's temperature makes of rows whose gaps are at the temperature sought. */
    ShopHeat shop(List<FitRow> rows, OptionalDouble noted) {
        OptionalDouble sought = soughtDegC();
        List<String> ids = rows.stream().map(r -> r.station().id()).toList();
        if (sought.isEmpty()) {
            return new ShopHeat(ids, noted, sought, rows.stream().map(r -> 0.0).toList(), List.of(), List.of());
        }
        double away = noted.orElse(sought.getAsDouble()) - sought.getAsDouble();
        List<Double> perKelvin =
                rows.stream().map(r -> perKelvinMm(r.station(), r.gapMm())).toList();
        List<Double> shifts =
                rows.stream().map(r -> backMm(r.station(), r.gapMm(), away)).toList();
        return new ShopHeat(
                ids, noted, sought, shifts, perKelvin, noted.isPresent() ? doubts(perKelvin, shifts) : List.of());
    }

    /** What to add to a gap that was brought to a temperature so many kelvin lower to have it again as it was read. */
    private double backMm(Station at, double gapMm, double awayK) {
        double ofNone = perKelvinMm(at, 0);
        double more = perKelvinMm(at, 1) - ofNone;
        return (ofNone + more * gapMm) * awayK / (1 - more * awayK);
    }

    /** Both act on all gaps at once: a thermometer that shows too much makes every gap wrong the same way. */
    private static List<GapSource> doubts(List<Double> perKelvinMm, List<Double> shiftMm) {
        return List.of(
                new GapSource.Along("the thermometer", HEAT, Distribution.normal(0, THERMOMETER_K), perKelvinMm),
                new GapSource.Along("the expansions", HEAT, Distribution.normal(0, EXPANSION_SHARE), shiftMm));
    }
}
