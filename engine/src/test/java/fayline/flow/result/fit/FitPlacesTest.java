package fayline.flow.result.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.FitWanted;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A panel without an outline, its stations in the middle of edges of 600 by 800 mm: from one to the next it is 500 mm. */
class FitPlacesTest {
    private static Entered<Length> mm(String text) {
        return QuantityParser.parse(text, QuantityKind.LENGTH);
    }

    private static FitStation station(String id, String edge, double x, double y) {
        double length = Math.hypot(x, y);
        return new FitStation(
                id,
                "",
                Optional.of(new Spot(x, y)),
                Optional.of(new FitStation.Normal(x / length, y / length)),
                edge,
                "",
                Optional.empty(),
                Optional.empty(),
                1);
    }

    private static FitPlaces places(FitStation... stations) {
        return FitPlaces.of(new Fit(
                "panel",
                "Panel",
                Optional.empty(),
                List.of(),
                new FitWanted(mm("3 mm"), mm("0.5 mm"), mm("0 mm"), mm("0.5 mm"), Optional.empty()),
                List.of(stations),
                Optional.empty(),
                List.of(),
                MoveLimits.of(5, 5, Math.toRadians(1)),
                Optional.empty(),
                List.of(),
                FitHolding.NONE,
                FitCutting.ANY,
                Optional.empty()));
    }

    @Test
    void should_give_a_station_alone_on_its_edge_half_the_way_to_those_beside_it() {
        FitPlaces p = places(
                station("F", "front", -300, 0),
                station("L", "lower", 0, -400),
                station("A", "aft", 300, 0),
                station("U", "upper", 0, 400));
        assertThat(p.tributaryMm(List.of("F", "L", "A", "U"))).containsExactly(250.0, 500.0, 500.0, 250.0);
    }

    @Test
    void should_keep_to_the_edge_when_there_is_another_station_on_it() {
        FitPlaces p = places(
                station("F", "front", -300, 0), station("L1", "lower", 0, -400), station("L2", "lower", 90, -400));
        List<Double> lengths = p.tributaryMm(List.of("F", "L1", "L2"));
        assertThat(lengths.get(0)).isCloseTo(250, within(1e-9));
        assertThat(lengths.get(1)).isCloseTo(45, within(1e-9));
        assertThat(lengths.get(2)).isCloseTo(45, within(1e-9));
    }
}
