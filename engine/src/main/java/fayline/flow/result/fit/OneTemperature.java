package fayline.flow.result.fit;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.FitReading;
import fayline.method.fitup.Station;
import fayline.method.fitup.reading.GaugeReading;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Brings the gaps of one state, read at several temperatures, to the last one noted, by free expansion about the anchor. Where the
 * expansions are not known, or the part is bonded all round and cannot move freely, gaps stay as read and a finding says so.
 */
final class OneTemperature {
    private static final double SAME_K = 2;
    private static final String SOURCE =
            "free expansion about the anchor; common practice, no source, for how sure it is";

    private final Fit fit;
    private final FitPlaces places;
    private final Growth growth;
    private final boolean free;
    private final List<FitReading> gaps;
    private final OptionalDouble toDegC;
    private double mostMm;
    private String mostAt = "";

    /**
     * For one state.
     *
     * @param growth how its gaps grow
     * @param state the state
     * @param gaps the readings of gaps that count in it, in the order taken
     */
    OneTemperature(Fit fit, FitPlaces places, Growth growth, String state, List<FitReading> gaps) {
        this.fit = fit;
        this.places = places;
        this.growth = growth;
        this.free = growth.freeIn(state);
        this.gaps = gaps;
        this.toDegC = last(gaps);
    }

    private static OptionalDouble last(List<FitReading> readings) {
        return readings.stream()
                .filter(r -> r.temperatureDegC().isPresent())
                .mapToDouble(r -> r.temperatureDegC().getAsDouble())
                .reduce((a, b) -> b);
    }

    /** The state's temperature: the last one noted with a gap that counts, else with any reading. */
    OptionalDouble temperatureDegC(List<FitReading> all) {
        return toDegC.isPresent() ? toDegC : last(all);
    }

    /** A reading as it would have been at the state's temperature; itself where that cannot be told. */
    GaugeReading brought(FitReading r, GaugeReading read) {
        Optional<Station> at = Optional.ofNullable(places.stations().get(r.station()));
        if (!known() || at.isEmpty() || r.temperatureDegC().isEmpty()) {
            return read;
        }
        double away = toDegC.orElseThrow() - r.temperatureDegC().getAsDouble();
        if (away == 0) {
            return read;
        }
        double rate = growth.perKelvinMm(at.get(), read.gapMm());
        double shift = rate * away;
        if (Math.abs(shift) > Math.abs(mostMm)) {
            mostMm = shift;
            mostAt = r.station();
        }
        return new GaugeReading.Warmed(read, shift, growth.doubtMm(rate, shift));
    }

    /** What is to be said once all are brought there. */
    List<Finding> findings() {
        double low = gaps.stream()
                .mapToDouble(r -> r.temperatureDegC().orElse(toDegC.orElse(0)))
                .min()
                .orElse(0);
        double high = gaps.stream()
                .mapToDouble(r -> r.temperatureDegC().orElse(toDegC.orElse(0)))
                .max()
                .orElse(0);
        if (known() && !mostAt.isEmpty()) {
            return List.of(new Finding(
                    Severity.NOTE,
                    fit.id(),
                    Phrase.of(
                            "Gaps were read at %s to %s. Each is brought to %s; the most that makes is %s, at station %s.",
                            Amount.degC(low),
                            Amount.degC(high),
                            Amount.degC(toDegC.orElseThrow()),
                            Amount.mm(mostMm, 2),
                            mostAt),
                    SOURCE));
        }
        return known() || high - low <= SAME_K
                ? List.of()
                : List.of(new Finding(
                        Severity.CAUTION,
                        fit.id(),
                        Phrase.of(
                                "Gaps were read at %s to %s and are taken as they are: %s. Read them again at one temperature.",
                                Amount.degC(low),
                                Amount.degC(high),
                                growth.known()
                                        ? "a part bonded all round does not grow freely"
                                        : "how part and surround grow is not said"),
                        SOURCE));
    }

    private boolean known() {
        return toDegC.isPresent() && free;
    }
}
