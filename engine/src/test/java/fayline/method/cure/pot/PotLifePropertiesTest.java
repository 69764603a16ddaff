package fayline.method.cure.pot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Mass;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.method.cure.CureSheet;
import fayline.method.cure.CureState;
import fayline.method.cure.PotShape;
import fayline.method.cure.SheetPoint;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Numbers invented; the rules are this project's own. */
class PotLifePropertiesTest {
    private static final Temperature T25 = Temperature.ofCelsius(25);
    private final CureSheet two = sheet(point(90, 25, 150), point(45, 25, 500));
    private final CureSheet one = sheet(point(90, 25, 150));

    @Test
    void should_fall_with_mass_and_temperature_when_within_the_sheet() {
        double before = Double.POSITIVE_INFINITY;
        for (double g = 100; g <= 500; g += 10) {
            double t = minutes(two, g, T25, PotShape.CUP, false);
            assertTrue(t <= before);
            before = t;
        }
        assertTrue(minutes(two, 300, Temperature.ofCelsius(18), PotShape.CUP, false)
                > minutes(two, 300, T25, PotShape.CUP, false));
        assertEquals(90, minutes(two, 150, T25, PotShape.CUP, false), 1e-9);
        assertEquals(45, minutes(two, 500, T25, PotShape.CUP, false), 1e-9);
    }

    @Test
    void should_make_no_claim_when_the_mass_lies_above_the_sheet() {
        PotLifeResult above = PotLifeCalculator.calculate(PotLife.inCup(two, Mass.ofGrams(501), T25));
        assertTrue(above.potLife().isEmpty());
        assertTrue(above.findings().get(0).sentence().contains("not covered"));
        assertEquals(500, above.mostMass().orElseThrow().grams(), 1e-9);
        assertTrue(PotLifeCalculator.calculate(PotLife.inCup(one, Mass.ofGrams(601), T25))
                .potLife()
                .isEmpty());
    }

    @Test
    void should_hold_the_smallest_mass_when_less_is_mixed() {
        assertEquals(90, minutes(two, 20, T25, PotShape.CUP, false), 1e-9);
    }

    @Test
    void should_be_marked_and_on_the_safe_side_when_one_mass_is_all_there_is() {
        PotLifeResult estimate = PotLifeCalculator.calculate(PotLife.inCup(one, Mass.ofGrams(300), T25));
        assertTrue(estimate.estimated());
        assertEquals(45, estimate.potLife().orElseThrow().minutes(), 1e-9);
        assertFalse(PotLifeCalculator.calculate(PotLife.inCup(one, Mass.ofGrams(150), T25))
                .estimated());
    }

    @Test
    void should_shorten_and_lengthen_as_marked_estimates_when_container_or_thickener_differ() {
        double cup = minutes(two, 200, T25, PotShape.CUP, false);
        assertEquals(1.2 * cup, minutes(two, 200, T25, PotShape.TRAY, false), 1e-9);
        assertEquals(0.7 * cup, minutes(two, 200, T25, PotShape.CUP, true), 1e-9);
        CureSheet tray = sheet(new SheetPoint(
                CureState.POT_LIFE, TimeSpan.ofMinutes(200), T25, Optional.empty(), PotShape.TRAY, "invented"));
        assertEquals(50, minutes(tray, 200, T25, PotShape.CUP, false), 1e-9);
    }

    @Test
    void should_hold_for_any_mass_when_the_sheet_names_none() {
        CureSheet massless = sheet(new SheetPoint(
                CureState.POT_LIFE, TimeSpan.ofMinutes(40), T25, Optional.empty(), PotShape.CUP, "invented"));
        assertEquals(40, minutes(massless, 5000, T25, PotShape.CUP, false), 1e-9);
        assertTrue(PotLifeCalculator.calculate(PotLife.inCup(sheet(), Mass.ofGrams(1), T25))
                .potLife()
                .isEmpty());
    }

    @Test
    void should_agree_with_the_calculator_when_the_curve_is_asked() {
        for (double g : new double[] {50, 150, 222, 499}) {
            PotLife q = PotLife.inCup(two, Mass.ofGrams(g), Temperature.ofCelsius(19));
            assertEquals(
                    PotLifeCalculator.calculate(q).potLife().orElseThrow().seconds(),
                    PotLifeCurve.of(q).orElseThrow().secondsAt(g / 1000),
                    1e-9);
        }
    }

    private static double minutes(CureSheet s, double grams, Temperature t, PotShape shape, boolean thick) {
        return PotLifeCalculator.calculate(
                        new PotLife(s, Optional.of(Mass.ofGrams(grams)), t, shape, thick, OptionalDouble.empty()))
                .potLife()
                .orElseThrow()
                .minutes();
    }

    private static SheetPoint point(double minutes, double celsius, double grams) {
        return new SheetPoint(
                CureState.POT_LIFE,
                TimeSpan.ofMinutes(minutes),
                Temperature.ofCelsius(celsius),
                Optional.of(Mass.ofGrams(grams)),
                PotShape.CUP,
                "invented");
    }

    private static CureSheet sheet(SheetPoint... points) {
        return new CureSheet(List.of(points), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
