package fayline.store.file.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitHeat;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Vector;
import fayline.method.fitup.heat.Sheet;
import fayline.method.fitup.outline.RoundedPolygon;
import fayline.method.fitup.outline.TracedLine;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.space.LiftLimits;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionReader;
import fayline.store.file.Teasel;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FitKindTest {
    private static Fit fit(DefinitionFolder folder, String id) {
        return DefinitionReader.read(folder).definition().orElseThrow().fits().get(id);
    }

    private static Fit round() {
        return fit(Teasel.folder(), "fairing-round");
    }

    @Test
    void should_read_stations_with_place_direction_and_their_own_gap() {
        FitStation a = round().stations().get(0);
        assertThat(a.at()).contains(new Spot(200, 10));
        assertThat(a.edge()).isEqualTo("aft");
        assertThat(a.against()).isEqualTo("seat");
        assertThat(a.gap().orElseThrow().asTyped()).isEqualTo("2.5 mm");
        assertThat(a.weight()).isEqualTo(2);
        FitStation b = round().stations().get(1);
        assertThat(b.at().orElseThrow().xMm()).isEqualTo(25.4, within(1e-9));
        assertThat(b.at().orElseThrow().yMm()).isEqualTo(101.6, within(1e-9));
        assertThat(b.normal()).contains(new FitStation.Normal(0, 1));
        assertThat(round().part()).isEmpty();
        assertThat(round().wanted().minimumGap().orElseThrow().asTyped()).isEqualTo("1.5 mm");
    }

    @Test
    void should_read_the_edge_from_corners_or_traced_points() {
        RoundedPolygon p = (RoundedPolygon) round().outline().orElseThrow();
        assertThat(p.radiiMm()).containsExactly(20.0, 20.0, 30.0, 0.0);
        assertThat(p.corners().get(2)).isEqualTo(new Spot(200, 100));
        TracedLine t =
                (TracedLine) fit(Teasel.folder(), "fairing-tip").outline().orElseThrow();
        assertThat(t.corners()).containsExactly(0, 1, 2, 3);
        assertThat(fit(Teasel.folder(), "fairing-tip").cutting().forbidden()).isTrue();
    }

    @Test
    void should_take_one_radius_for_all_corners_and_the_unit_of_the_outline() {
        Fit inch = fit(
                Teasel.changed(
                        "fits.yaml",
                        "traced: \"-10 -5, 10 -5, 10 5, -10 5\"\n      corners: \"1, 2, 3, 4\"",
                        "vertices: \"-1 -1, 1 -1, 1 1, -1 1\"\n      radii: 0.5\n      unit: in"),
                "fairing-tip");
        RoundedPolygon p = (RoundedPolygon) inch.outline().orElseThrow();
        assertThat(p.radiiMm()).containsExactly(12.7, 12.7, 12.7, 12.7);
        assertThat(p.corners().get(0)).isEqualTo(new Spot(-25.4, -25.4));
    }

    @Test
    void should_read_the_edge_from_a_drawing_with_its_corners() {
        String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"40mm\" height=\"20mm\" viewBox=\"0 0 40 20\">"
                + "<path d=\"M-10 -5 L10 -5 L10 5 L-10 5 Z\"/></svg>";
        Fit drawn = fit(
                Teasel.changed(
                                "fits.yaml",
                                "traced: \"-10 -5, 10 -5, 10 5, -10 5\"\n      corners: \"1, 2, 3, 4\"",
                                "file: outlines/tip.svg")
                        .with("outlines/tip.svg", svg),
                "fairing-tip");
        TracedLine t = (TracedLine) drawn.outline().orElseThrow();
        assertThat(t.points()).hasSize(4);
        assertThat(t.corners()).hasSize(4);
    }

    @Test
    void should_take_the_direction_of_a_point_from_the_outline_and_leave_what_was_not_given_empty() {
        List<Scheme> schemes = round().holding().schemes();
        assertThat(schemes).extracting(Scheme::name).containsExactly("Tape", "Spacers", "Pins", "Block");
        Locator.TapeMark tape = (Locator.TapeMark) schemes.get(0).locators().get(0);
        assertThat(tape.stop().contact().ny()).isEqualTo(-1, within(1e-12));
        assertThat(tape.stop().travelMm()).isEqualTo(20);
        Locator.Spacer third = (Locator.Spacer) schemes.get(1).locators().get(2);
        assertThat(third.deviationMm()).isEmpty();
        assertThat(third.stop().contact().nx()).isEqualTo(-1);
        assertThat(schemes.get(1).creepMm()).hasValue(0.1);
        assertThat(((Locator.Pins) schemes.get(2).locators().get(0)).playMm()).hasValue(0.05);
        assertThat(((Locator.Block) schemes.get(3).locators().get(0)).stops()).hasSize(3);
        assertThat(round().holding().chosen()).isEqualTo("Spacers");
        assertThat(round().holding().shims().orElseThrow().piecesMm()).containsExactly(0.5, 1.0, 1.5875);
        assertThat(round().holding().points().get(2).clearanceMm()).isEmpty();
    }

    @Test
    void should_read_states_with_what_they_disturb_and_the_usual_ones_where_none_are_named() {
        FitState hung = round().states().get(1);
        FitState.Disturbance d = hung.disturbs().orElseThrow();
        assertThat(d.move().inPlane().dxMm()).isEqualTo(-0.3, within(1e-12));
        assertThat(d.move().inPlane().turnDeg()).isEqualTo(0.02, within(1e-12));
        assertThat(d.gapMm()).isEqualTo(-0.2, within(1e-12));
        assertThat(d.origin()).isEqualTo("the first fairing");
        assertThat(fit(Teasel.folder(), "fairing-tip").states()).isEqualTo(FitState.USUAL);
    }

    @Test
    void should_call_a_named_expansion_assumed_and_keep_where_an_entered_one_is_from() {
        FitHeat heat = round().heat().orElseThrow();
        assertThat(heat.part().xPerK()).isEqualTo(72e-6, within(1e-15));
        assertThat(heat.surround().yPerK()).isEqualTo(4e-6, within(1e-15));
        assertThat(heat.origins()).hasSize(2).last().isEqualTo("a test strip");
        assertThat(heat.origins().get(0)).startsWith("Assumed for acrylic: 72 millionths");
        assertThat(heat.serviceDegC().get(1)).isEqualTo(71.111, within(1e-3));
        assertThat(heat.sheet()).isEqualTo(Sheet.DARK_ACRYLIC);
        assertThat(heat.bondMm()).hasValue(3);
        assertThat(round().gauge().orElseThrow().sharedMm()).isEqualTo(OptionalDouble.of(0.05));
    }

    @Test
    void should_read_a_fit_without_any_of_it_as_before() {
        Fit plain = fit(Teasel.folder(), "fairing-edge");
        assertThat(plain.part()).contains("fairing");
        assertThat(plain.outline()).isEmpty();
        assertThat(plain.heat()).isEmpty();
        assertThat(plain.gauge()).isEmpty();
        assertThat(plain.holding().schemes()).isEmpty();
        assertThat(plain.stations()).allMatch(s -> s.at().isEmpty() && s.weight() == 1);
    }

    @Test
    void should_read_how_a_part_stands_out_of_its_plane() {
        DefinitionFolder folder =
                Teasel.changed("fits.yaml", "at: \"0 -100\"}", "at: \"0 -100\", out: 1 in, lean: 30 deg}");
        FitStation c = fit(folder, "fairing-round").stations().get(2);
        assertThat(c.bulge().outMm().orElseThrow()).isEqualTo(25.4, within(1e-9));
        assertThat(c.bulge().leanRad().orElseThrow()).isEqualTo(Math.toRadians(30), within(1e-12));
        assertThat(round().stations()).allMatch(s -> !s.bulge().isSaid());
        Fit ways = fit(
                Teasel.changed("fits.yaml", "normal: \"0 1\"", "normal: \"0 0.8 -0.6\", surface: \"0 0.6 0.8\""),
                "fairing-round");
        FitStation b = ways.stations().get(1);
        assertThat(b.normal()).contains(new FitStation.Normal(0, 0.8));
        assertThat(b.bulge().normalZ()).hasValue(-0.6);
        assertThat(b.bulge().surface()).contains(new Vector(0, 0.6, 0.8));
    }

    @Test
    void should_read_room_out_of_the_plane_a_mark_s_height_and_a_state_that_pulls_in() {
        Fit f = fit(
                Teasel.changed("fits.yaml", "turn: 1 deg}", "turn: 1 deg, out: 3 mm, tilt: 0.5 deg}"), "fairing-round");
        assertThat(f.lift().outMm()).isEqualTo(3, within(1e-9));
        assertThat(f.lift().tiltRad()).isEqualTo(Math.toRadians(0.5), within(1e-12));
        assertThat(round().lift()).isEqualTo(LiftLimits.WIDEST);
        Fit pulled = fit(
                Teasel.changed("fits.yaml", "gap: -0.2 mm, deviation", "out: -0.4 mm, gap: -0.2 mm, deviation"),
                "fairing-round");
        assertThat(pulled.states()
                        .get(1)
                        .disturbs()
                        .orElseThrow()
                        .move()
                        .shiftMm()
                        .z())
                .isEqualTo(-0.4, within(1e-9));
        Fit high = fit(
                Teasel.changed(
                        "fits.yaml",
                        "{name: upper aft corner, at: \"200 100\"}",
                        "{name: upper aft corner, at: \"200 100\", out: 20 mm}"),
                "fairing-round");
        assertThat(high.marks().get(0).outMm()).isEqualTo(20, within(1e-9));
    }
}
