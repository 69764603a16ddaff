package fayline.method.joint;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Severity;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BondedSheetTest {
    private static final Adherend ACRYLIC = Adherend.isotropic(3.1e9, 0.37, 0.0035, 72e-6);
    private static final Adherend FRAME = new Adherend(45e9, 0, 0.0018, 17e9, 5e-6);
    private static final Adhesive RIGID = Adhesive.elastic(800e6, 2200e6, 0.0004);
    private static final Adhesive SOFT = Adhesive.elastic(0.8e6, 2.3e6, 0.004);

    private static BondedSheetResult of(Adhesive bond, double lengthM, double heatK, boolean flat) {
        return BondedSheetCalculator.calculate(
                new BondedSheet(ACRYLIC, FRAME, bond, lengthM, heatK, flat, false, OptionalDouble.of(0.25)));
    }

    @Test
    void should_agree_in_both_methods_where_the_bond_is_soft() {
        BondedSheetResult flat = of(SOFT, 0.5, -45, true);
        assertEquals(
                flat.closed().shearPa(),
                flat.beams().highestShearPa(),
                0.01 * flat.closed().shearPa());
        assertEquals(
                flat.closed().sheetPa(), flat.sheetPa(), 0.01 * flat.closed().sheetPa());
        BondedSheetResult free = of(SOFT, 0.5, -45, false);
        assertEquals(
                free.closed().shearPa(),
                free.beams().highestShearPa(),
                0.03 * free.closed().shearPa());
        assertEquals(
                free.closed().bowM(),
                Math.abs(free.beams().bowM()),
                0.02 * free.closed().bowM());
    }

    @Test
    void should_come_nearer_to_the_finite_elements_than_the_closed_form_where_the_bond_is_stiff() {
        // Plane finite elements on the bond's mid-line (rows F-10, F-11): 5.627 MPa held flat, 3.469 MPa free to bow.
        BondedSheetResult flat = of(RIGID, 0.4, -45, true);
        BondedSheetResult free = of(RIGID, 0.4, -45, false);
        assertTrue(flat.closed().shearPa() > 2.2 * 5.627e6);
        assertTrue(flat.beams().highestShearPa() > 5.627e6 && flat.beams().highestShearPa() < 1.4 * 5.627e6);
        assertTrue(free.closed().shearPa() > 1.9 * 3.469e6);
        assertTrue(free.beams().highestShearPa() > 0.95 * 3.469e6
                && free.shearPa() < free.closed().shearPa() * 1.05);
    }

    @Test
    void should_balance_the_pull_of_sheet_and_frame_everywhere() {
        BeamAnswer b = of(RIGID, 0.4, -45, false).beams();
        double most = b.pullNPerM().get(0).stream().mapToDouble(Math::abs).max().orElse(0);
        for (int i = 0; i < b.xM().size(); i++) {
            assertEquals(0, b.pullNPerM().get(0).get(i) + b.pullNPerM().get(1).get(i), 1e-3 * most);
        }
        double shear = 0;
        for (double s : b.shearPa()) {
            shear = Math.max(shear, Math.abs(s));
        }
        assertEquals(Math.abs(b.leftShearPa()), Math.abs(b.rightShearPa()), 1e-4 * shear);
    }

    @Test
    void should_turn_its_signs_and_no_more_when_it_grows_warm() {
        BondedSheetResult cold = of(SOFT, 0.5, -30, true);
        BondedSheetResult warm = of(SOFT, 0.5, 30, true);
        assertEquals(cold.closed().sheetPa(), -warm.closed().sheetPa(), 1e-6);
        assertEquals(cold.shearPa(), warm.shearPa(), 1e-6 * cold.shearPa());
        assertTrue(cold.sheetPa() > 0 && warm.sheetPa() < 0);
        assertEquals(0, of(SOFT, 0.5, 0, true).shearPa(), 1e-9);
    }

    @Test
    void should_give_the_bond_line_at_which_the_strain_is_the_working_one() {
        BondedSheetResult r = of(SOFT, 0.6, -45, true);
        double least = r.leastBondM().orElseThrow();
        BondedSheetResult there = of(Adhesive.elastic(0.8e6, 2.3e6, least), 0.6, -45, true);
        assertEquals(0.25, there.closed().shearPa() / 0.8e6, 1e-4);
        assertTrue(least <= r.closed().freeM() / 0.25);
        BondedSheetResult thin = of(Adhesive.elastic(0.8e6, 2.3e6, least * 0.9), 0.6, -45, true);
        assertTrue(thin.findings().stream().anyMatch(f -> f.severity() == Severity.STOP));
        BondedSheetResult thick = of(Adhesive.elastic(0.8e6, 2.3e6, least * 1.1), 0.6, -45, true);
        assertTrue(thick.findings().stream().noneMatch(f -> f.severity() == Severity.STOP));
    }

    @Test
    void should_be_sheared_most_by_geometry_when_the_adhesive_is_very_soft() {
        BondedSheetResult r = of(Adhesive.elastic(100, 290, 0.004), 0.5, -45, true);
        assertEquals(r.closed().freeM() / 0.004, r.closed().shearPa() / 100, 1e-4);
    }

    @Test
    void should_stay_finite_for_a_long_stiff_bond() {
        BondedSheetResult r = of(RIGID, 12, -45, true);
        assertTrue(r.closed().reach() > 700);
        assertTrue(Double.isFinite(r.closed().shearPa())
                && Double.isFinite(r.closed().sheetEndM()));
        assertTrue(Double.isFinite(r.beams().highestShearPa()));
    }

    @Test
    void should_pull_harder_on_a_sheet_that_is_bonded_all_round() {
        BondedSheet strip = new BondedSheet(ACRYLIC, FRAME, RIGID, 0.4, -45, true, false, OptionalDouble.empty());
        BondedSheet round = new BondedSheet(ACRYLIC, FRAME, RIGID, 0.4, -45, true, true, OptionalDouble.empty());
        double more = BondedSheetCalculator.calculate(round).sheetPa()
                / BondedSheetCalculator.calculate(strip).sheetPa();
        assertTrue(more > 1.3 && more < 1 / (1 - 0.37));
    }

    @Test
    void should_warn_of_tension_and_of_a_bow_beyond_the_thickness() {
        BondedSheetResult cold = of(SOFT, 0.5, -45, false);
        assertFalse(cold.straight());
        assertTrue(cold.findings().stream().anyMatch(f -> f.sentence().contains("bows by")));
        assertTrue(cold.findings().stream().anyMatch(f -> f.sentence().contains("crazes")));
        assertTrue(of(SOFT, 0.5, 20, true).findings().stream()
                .noneMatch(f -> f.sentence().contains("crazes")));
    }

    @Test
    void should_refuse_a_strip_shorter_than_four_thicknesses() {
        of(SOFT, 0.014, -45, true);
        assertThatThrownBy(() -> of(SOFT, 0.0139, -45, true))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("four thicknesses");
    }
}
