package fayline.method.plate;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class FlatPlateTest {
    private static final double E = 3e9;
    private static final double NU = 0.37;

    private static FlatPlateResult plate(double a, double b, double t, double q, Edges edges) {
        return FlatPlateCalculator.calculate(new FlatPlate(a, b, t, PlateStiffness.isotropic(E, NU, t), q, edges));
    }

    @Test
    void should_not_care_which_side_is_named_first() {
        for (Edges e : Edges.values()) {
            FlatPlateResult one = plate(0.5, 0.3, 0.006, 900, e);
            FlatPlateResult other = plate(0.3, 0.5, 0.006, 900, e);
            assertEquals(one.deflectionM(), other.deflectionM(), 1e-9 * one.deflectionM());
            assertEquals(one.stress1Pa(), other.stress2Pa(), 1e-6 * one.highestStressPa());
            assertEquals(one.edgeStressPa(), other.edgeStressPa(), 1e-6 * one.highestStressPa());
        }
    }

    @Test
    void should_grow_with_the_pressure_in_proportion() {
        FlatPlateResult one = plate(0.5, 0.3, 0.006, 300, Edges.CLAMPED);
        FlatPlateResult three = plate(0.5, 0.3, 0.006, 900, Edges.CLAMPED);
        assertEquals(3 * one.deflectionM(), three.deflectionM(), 1e-12);
        assertEquals(3 * one.edgeStressPa(), three.edgeStressPa(), 1e-3);
    }

    @Test
    void should_become_a_strip_when_it_is_long() {
        // A strip of width b: 5 q b^4 / 384 D free to turn, q b^4 / 384 D clamped, edge moment q b^2 / 12.
        assertEquals(5.0 / 384, Coefficients.of(8, 0.3, Edges.SUPPORTED).deflection(), 1e-5);
        assertEquals(1.0 / 8, Coefficients.of(8, 0.3, Edges.SUPPORTED).momentShort(), 2e-4);
        assertEquals(1.0 / 384, Coefficients.of(4, 0.3, Edges.CLAMPED).deflection(), 1e-5);
        assertEquals(-1.0 / 12, Coefficients.of(4, 0.3, Edges.CLAMPED).momentEdge(), 4e-4);
    }

    @Test
    void should_take_the_worse_of_both_when_the_edge_is_between() {
        FlatPlateResult free = plate(0.4, 0.3, 0.006, 500, Edges.SUPPORTED);
        FlatPlateResult held = plate(0.4, 0.3, 0.006, 500, Edges.CLAMPED);
        FlatPlateResult between = plate(0.4, 0.3, 0.006, 500, Edges.BETWEEN);
        assertEquals(free.deflectionM(), between.deflectionM());
        assertEquals(held.edgeStressPa(), between.edgeStressPa());
        assertEquals(free.stress2Pa(), between.stress2Pa());
    }

    @Test
    void should_be_usable_up_to_half_a_thickness_of_deflection_and_no_further() {
        double t = 0.004;
        double q = 100;
        double w = plate(0.4, 0.3, t, q, Edges.SUPPORTED).deflectionM();
        double limit = q * t / 2 / w;
        assertTrue(plate(0.4, 0.3, t, limit * 0.9999, Edges.SUPPORTED).smallDeflection());
        FlatPlateResult past = plate(0.4, 0.3, t, limit * 1.0001, Edges.SUPPORTED);
        assertFalse(past.smallDeflection());
        assertEquals(1, past.findings().size());
        assertTrue(past.findings().get(0).sentence().contains("must not be used"));
    }

    @Test
    void should_refuse_a_thick_plate() {
        plate(0.4, 0.3, 0.03, 1000, Edges.CLAMPED);
        assertThatThrownBy(() -> plate(0.4, 0.3, 0.0301, 1000, Edges.CLAMPED))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a tenth of its shorter side");
    }

    @Test
    void should_name_the_rule_that_a_material_breaks() {
        assertThatThrownBy(() -> PlateStiffness.isotropic(E, 0.5, 0.004))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("below 0.5");
        assertThatThrownBy(() -> PlateStiffness.orthotropic(40e9, 10e9, 2.01, 4e9, 0.004))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("square root of E1/E2");
        assertThrows(IllegalArgumentException.class, () -> PlateStiffness.isotropic(E, 0.3, -0.004));
        assertThrows(
                IllegalArgumentException.class,
                () -> new FlatPlate(-1, 1, 0.001, PlateStiffness.isotropic(E, 0.3, 0.001), 1, Edges.CLAMPED));
    }

    @Test
    void should_buckle_as_long_plates_of_even_material_do() {
        // Timoshenko and Gere, Theory of Elastic Stability, 9.2: k = 4 pi^2 D / b^2 at whole ratios (from memory).
        PlateStiffness d = PlateStiffness.isotropic(70e9, 0.3, 0.002);
        double wanted = 4 * Math.PI * Math.PI * d.d11Nm() / (0.2 * 0.2);
        assertEquals(wanted, BucklingCalculator.calculate(d, 0.6, 0.2, 0).loadNPerM(), 1e-6 * wanted);
        assertEquals(3, BucklingCalculator.calculate(d, 0.6, 0.2, 0).wavesA());
        assertEquals(wanted / 2, BucklingCalculator.calculate(d, 0.2, 0.2, 1).loadNPerM(), 1e-6 * wanted);
    }

    @Test
    void should_refuse_pressure_from_outside_on_a_curved_sheet() {
        assertThrows(IllegalArgumentException.class, () -> new CurvedSheet(0.5, 0.004, E, NU, -1));
        assertThrows(IllegalArgumentException.class, () -> new CurvedSheet(0.03, 0.004, E, NU, 1));
        assertThrows(IllegalArgumentException.class, () -> new CircularPlate(0.01, 0.004, E, NU, 1));
    }
}
