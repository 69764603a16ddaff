package fayline.method.sandwich;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Severity;
import fayline.method.sandwich.SandwichBeamResult.ThickFaces;
import org.junit.jupiter.api.Test;

class SandwichTest {
    private static SandwichBeam beam(double faceM, double coreShearPa, BeamLoading loading, double padM) {
        return new SandwichBeam(
                new Core(24e9, faceM, coreShearPa * 2.6, coreShearPa, 0.020), 0.06, 0.3, loading, 200, padM, 0.5);
    }

    @Test
    void should_come_nearer_to_the_finite_elements_when_thick_faces_bend_by_themselves() {
        // Plane finite elements (two meshes) of the same beam, row F-16: 1.805 mm, 2.844 MPa in the middle of the face,
        // 15.27 MPa on its outer side, pads of 8 mm. Thin faces give 2.555 mm and 3.62 MPa.
        SandwichBeamResult r = SandwichBeamCalculator.calculate(beam(0.003, 3.84615e6, BeamLoading.THREE_POINT, 0.008));
        ThickFaces t = r.thickFaces().orElseThrow();
        assertEquals(0.00255, r.deflectionM(), 0.00002);
        assertEquals(0.00181, t.deflectionM(), 0.00025);
        assertTrue(t.deflectionM() > 0.001805);
        assertEquals(2.844e6, t.faceStressPa(), 0.05 * 2.844e6);
        assertTrue(t.outerStressPa() > 15.27e6 && t.outerStressPa() < 1.4 * 15.27e6);
    }

    @Test
    void should_stop_where_the_faces_carry_the_shear() {
        assertFalse(SandwichBeamCalculator.calculate(beam(0.003, 3.84615e6, BeamLoading.THREE_POINT, 0))
                .thinFaces());
        SandwichBeamResult stiff = SandwichBeamCalculator.calculate(beam(0.001, 30e6, BeamLoading.THREE_POINT, 0));
        assertTrue(stiff.thinFaces());
        assertTrue(stiff.band().isPresent());
        assertTrue(stiff.findings().stream().noneMatch(f -> f.severity() == Severity.STOP));
    }

    @Test
    void should_change_over_at_n_2400() {
        SandwichBeamResult r = SandwichBeamCalculator.calculate(beam(0.001, 30e6, BeamLoading.QUARTER_POINT, 0));
        double at = 30e6 * 2400 / r.soft();
        assertTrue(SandwichBeamCalculator.calculate(beam(0.001, at * 1.0001, BeamLoading.QUARTER_POINT, 0))
                .thinFaces());
        SandwichBeamResult below =
                SandwichBeamCalculator.calculate(beam(0.001, at * 0.9999, BeamLoading.QUARTER_POINT, 0));
        assertFalse(below.thinFaces());
        assertTrue(below.band().isEmpty());
    }

    @Test
    void should_agree_with_thin_faces_when_the_core_is_stiff() {
        SandwichBeamResult r = SandwichBeamCalculator.calculate(beam(0.0002, 500e6, BeamLoading.THREE_POINT, 0));
        assertEquals(r.deflectionM(), r.thickFaces().orElseThrow().deflectionM(), 0.01 * r.deflectionM());
    }

    @Test
    void should_split_a_panel_of_even_material_into_bending_and_shear() {
        // With an even core the shear part is that of a membrane: sum of 16 q / (pi^2 m n (x^2 + y^2) S), held here by
        // halving S.
        SandwichPanelResult one = panel(29e6);
        SandwichPanelResult half = panel(14.5e6);
        assertEquals(one.bentM(), half.bentM(), 1e-15);
        assertEquals(2 * one.shearedM(), half.shearedM(), 1e-9 * one.deflectionM());
        assertEquals(one.stress1Pa(), half.stress1Pa(), 1e-6 * one.stress1Pa());
    }

    @Test
    void should_balance_the_pressure_by_shear_in_the_core_of_a_long_panel() {
        // A strip of width b: shear at the edge q b / 2 per length, over d.
        SandwichPanelResult r = SandwichPanelCalculator.calculate(
                new SandwichPanel(4, 0.4, 55e9, 55e9, 0.3, 21e9, 0.0005, 0.010, 29e6, 29e6, 100));
        double wanted = 100 * 0.4 / 2 / 0.0105;
        assertEquals(wanted, r.coreShear2Pa(), 0.01 * wanted);
    }

    private static SandwichPanelResult panel(double coreShearPa) {
        return SandwichPanelCalculator.calculate(new SandwichPanel(
                0.5, 0.4, 55e9, 55e9, 0.3, 55e9 / 2.6, 0.0005, 0.010, coreShearPa, coreShearPa, 2000));
    }

    @Test
    void should_name_the_rule_that_is_broken() {
        assertThrows(IllegalArgumentException.class, () -> new Core(24e9, -0.001, 1e6, 1e6, 0.01));
        assertThrows(
                IllegalArgumentException.class,
                () -> new SandwichBeam(
                        new Core(24e9, 0.001, 1e6, 1e6, 0.01), 0.06, 0.3, BeamLoading.THREE_POINT, 1, 0.3, 0.5));
        assertThatThrownBy(() -> new SandwichPanel(0.5, 0.4, 55e9, 55e9, 0.3, 21e9, 0.0021, 0.010, 29e6, 29e6, 100))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a fifth of their core");
    }

    @Test
    void should_dimple_as_the_square_of_face_over_cell() {
        Core c = new Core(60e9, 0.0006, 75e6, 29e6, 0.010);
        assertEquals(4 * c.dimplingPa(0.3, 0.0064), c.dimplingPa(0.3, 0.0032), 1);
    }
}
