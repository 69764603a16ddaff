package fayline.flow.result.fit;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitGauge;
import fayline.flow.project.fit.FitHeat;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.FitWanted;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.heat.Expansion;
import fayline.method.fitup.heat.Sheet;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.reading.StationGap;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.Stop;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An invented acrylic pane of 900 by 400 mm in carbon, tied in its middle, wanted with 3 mm at 20 degC: one kelvin of warming closes
 * the aft gap of 3 mm by 72e-6 * 450 - 2e-6 * 453 = 0.031494 mm, and the upper one by 72e-6 * 200 - 2e-6 * 203 = 0.013994 mm.
 */
final class WarmPane {
    static final double AFT_MM_PER_K = 72e-6 * 450 - 2e-6 * 453;
    static final double UPPER_MM_PER_K = 72e-6 * 200 - 2e-6 * 203;
    static final double NEAR = 1e-9;

    private WarmPane() {}

    static Entered<Length> mm(String text) {
        return QuantityParser.parse(text, QuantityKind.LENGTH);
    }

    static FitStation station(String id, double x, double y, double nx, double ny) {
        return new FitStation(
                id,
                "",
                Optional.of(new Spot(x, y)),
                Optional.of(new FitStation.Normal(nx, ny)),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                1);
    }

    static FitHeat heat(OptionalDouble bondMm) {
        return new FitHeat(
                Optional.of(new Spot(0, 0)),
                Expansion.even(72e-6),
                Expansion.even(2e-6),
                20,
                List.of(-30.0, 70.0),
                Sheet.ACRYLIC,
                bondMm);
    }

    static Fit fit(Optional<FitHeat> heat) {
        return new Fit(
                "pane",
                "Pane",
                Optional.empty(),
                List.of(),
                new FitWanted(mm("3 mm"), mm("0.5 mm"), mm("0 mm"), mm("0.5 mm"), Optional.empty()),
                List.of(
                        station("A", 450, 0, 1, 0),
                        station("W", 450, 150, 1, 0),
                        station("F", -450, 0, -1, 0),
                        station("U", 0, 200, 0, 1),
                        station("L", 0, -200, 0, -1)),
                Optional.empty(),
                List.of(),
                MoveLimits.of(5, 5, Math.toRadians(1)),
                Optional.of(new FitGauge("taper gauge", OptionalDouble.of(0.06), OptionalDouble.of(0))),
                List.of(FitState.of("dry", "Dry"), FitState.of("bonded", "Bonded")),
                FitHolding.NONE,
                FitCutting.ANY,
                heat);
    }

    /** The same on three spacers, with what all readings share. */
    static Fit held(Optional<FitHeat> heat) {
        Fit free = fit(heat);
        List<Stop> stops = List.of(
                Stop.fixed(new Station("P1", new Spot(-300, -200), 0, -1)),
                Stop.fixed(new Station("P2", new Spot(300, -200), 0, -1)),
                Stop.fixed(new Station("P3", new Spot(-450, 0), -1, 0)));
        List<Locator> spacers = stops.stream()
                .<Locator>map(s -> new Locator.Spacer(s, OptionalDouble.of(0.06), 0))
                .toList();
        return new Fit(
                free.id(),
                free.name(),
                free.part(),
                free.against(),
                free.wanted(),
                free.stations(),
                free.outline(),
                free.marks(),
                free.room(),
                Optional.of(new FitGauge("taper gauge", OptionalDouble.of(0.06), OptionalDouble.of(0.05))),
                free.states(),
                new FitHolding(List.of(), List.of(Scheme.of("Spacers", spacers)), "Spacers", Optional.empty()),
                free.cutting(),
                heat);
    }

    static FitReading gap(long seq, String station, String state, double mm, OptionalDouble degC) {
        return new FitReading(
                seq,
                Instant.EPOCH,
                "runa",
                Kind.GAP,
                station,
                state,
                mm + " mm",
                mm,
                OptionalDouble.empty(),
                "",
                degC,
                1);
    }

    static FitResult answer(Fit fit, List<FitReading> readings) {
        return FitCalculator.calculate(new FitQuestion(fit, Side.LEFT, readings, List.of(), false));
    }

    static StationGap at(FitResult r, String station) {
        return r.now().orElseThrow().stations().stream()
                .filter(v -> v.station().id().equals(station))
                .findFirst()
                .flatMap(StationValue::gap)
                .orElseThrow();
    }
}
