package fayline.store.file.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.InputProblem;
import fayline.basis.geometry.Outline;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import fayline.store.file.yaml.YamlDoor;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Areas and edges that can be worked out by hand. Expected values are the closed formulas named beside them. */
class OutlineReaderTest {
    /** An edge flattened to 0.05 mm loses at most this share of a curve of the sizes here. */
    private static final double FLAT = 2e-3;

    private record Read(Optional<Outline> outline, List<InputProblem> problems) {
        double areaMm2() {
            return outline.orElseThrow(() -> new AssertionError(problems.toString()))
                    .area()
                    .squareMillimetres();
        }

        double edgeMm() {
            return outline.orElseThrow(() -> new AssertionError(problems.toString()))
                    .perimeter()
                    .millimetres();
        }
    }

    private static Read read(String yaml, Map<String, String> files) {
        Problems problems = new Problems();
        Tree tree = YamlDoor.read("parts.yaml", yaml, problems).orElseThrow();
        OutlineReader reader =
                new OutlineReader(f -> Optional.ofNullable(files.get(f)), new TreeSet<>(files.keySet()), problems);
        return new Read(reader.read(tree), problems.sorted());
    }

    /** Group codes and values, a line each. */
    private static String lines(String codesAndValues) {
        return codesAndValues.replace(' ', '\n');
    }

    private static Read dxf(String entities, String more) {
        String header = "0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC ";
        String body = "0 SECTION 2 ENTITIES " + entities + "0 ENDSEC 0 EOF ";
        return read("{file: outlines/a.dxf" + more + "}", Map.of("outlines/a.dxf", lines(header + body)));
    }

    private static Read svg(String shapes) {
        return read(
                "{file: outlines/a.svg}",
                Map.of(
                        "outlines/a.svg",
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200mm\" viewBox=\"0 0 200 100\">" + shapes
                                + "</svg>"));
    }

    @Test
    void should_enclose_a_rectangle_when_given_its_corners() {
        Read r = read("{vertices: \"0 0, 16 0, 16 5, 0 5\", unit: in}", Map.of());
        assertThat(r.areaMm2()).isCloseTo(80 * 25.4 * 25.4, within(1e-6));
        assertThat(r.edgeMm()).isCloseTo(42 * 25.4, within(1e-9));
    }

    @Test
    void should_enclose_pi_r_squared_when_a_dxf_holds_a_circle() {
        Read r = dxf("0 CIRCLE 8 0 10 50 20 20 40 100 ", "");
        assertThat(r.areaMm2()).isCloseTo(Math.PI * 100 * 100, within(Math.PI * 1e4 * FLAT));
        assertThat(r.edgeMm()).isCloseTo(2 * Math.PI * 100, within(0.5));
        double farthest = r.outline().orElseThrow().outer().stream()
                .mapToDouble(p -> Math.abs(Math.hypot(p.xM() - 0.05, p.yM() - 0.02) - 0.1))
                .max()
                .orElseThrow();
        assertThat(farthest).isLessThan(1e-12);
    }

    @Test
    void should_keep_every_chord_within_the_tolerance_when_a_circle_is_flattened() {
        List<Outline.Point> ring = dxf("0 CIRCLE 8 0 10 0 20 0 40 2000 ", "")
                .outline()
                .orElseThrow()
                .outer();
        for (int i = 0; i < ring.size(); i++) {
            Outline.Point a = ring.get(i);
            Outline.Point b = ring.get((i + 1) % ring.size());
            double mid = Math.hypot((a.xM() + b.xM()) / 2, (a.yM() + b.yM()) / 2);
            assertThat(2 - mid).isLessThanOrEqualTo(Curve.TOLERANCE_M);
        }
    }

    @Test
    void should_enclose_a_stadium_when_a_polyline_has_two_bulges_of_one() {
        // 300 x 100 rectangle with a semicircle of radius 50 at each end: bulge 1 is a half turn
        Read r = dxf("0 LWPOLYLINE 8 0 90 4 70 1 10 0 20 0 10 300 20 0 42 1 10 300 20 100 10 0 20 100 42 1 ", "");
        assertThat(r.areaMm2()).isCloseTo(300 * 100 + Math.PI * 2500, within(20.0));
        assertThat(r.edgeMm()).isCloseTo(600 + Math.PI * 100, within(0.5));
    }

    @Test
    void should_take_the_bite_out_when_a_bulge_is_negative() {
        // a half disc of radius 50 taken out of the right end
        Read r = dxf(
                String.join(
                        " ",
                        "0 POLYLINE 8 0 66 1 70 1",
                        "0 VERTEX 8 0 10 0 20 0",
                        "0 VERTEX 8 0 10 300 20 0 42 -1",
                        "0 VERTEX 8 0 10 300 20 100",
                        "0 VERTEX 8 0 10 0 20 100",
                        "0 SEQEND "),
                "");
        assertThat(r.areaMm2()).isCloseTo(300 * 100 - Math.PI * 2500 / 2, within(20.0));
    }

    @Test
    void should_join_lines_and_arcs_when_they_are_drawn_in_any_order_and_direction() {
        Read r = dxf(
                "0 LINE 8 0 10 100 20 100 11 0 21 100 "
                        + "0 ARC 8 0 10 100 20 50 40 50 50 270 51 90 "
                        + "0 LINE 8 0 10 100 20 0 11 0 21 0 "
                        + "0 LINE 8 0 10 0 20 0 11 0 21 100 "
                        + "0 CIRCLE 8 0 10 50 20 50 40 10 ",
                "");
        assertThat(r.areaMm2()).isCloseTo(1e4 + Math.PI * 1250 - Math.PI * 100, within(10.0));
        assertThat(r.outline().orElseThrow().cutouts()).hasSize(1);
    }

    @Test
    void should_enclose_a_quarter_disc_when_a_rational_spline_draws_the_arc_exactly() {
        // the quadratic with weights 1, sqrt(1/2), 1 is a quarter circle (de Boor; any text on rational curves)
        Read r = dxf(
                "0 SPLINE 8 0 70 4 71 2 72 6 73 3 40 0 40 0 40 0 40 1 40 1 40 1 41 1 41 "
                        + Math.sqrt(0.5)
                        + " 41 1 10 100 20 0 10 100 20 100 10 0 20 100 "
                        + "0 LINE 8 0 10 0 20 100 11 0 21 0 0 LINE 8 0 10 0 20 0 11 100 21 0 ",
                "");
        assertThat(r.areaMm2()).isCloseTo(Math.PI * 2500, within(5.0));
        assertThat(r.edgeMm()).isCloseTo(200 + 50 * Math.PI, within(0.2));
    }

    @Test
    void should_enclose_a_parabola_segment_when_a_plain_spline_draws_it() {
        // control points (0,0) (50,100) (100,0): y = 2x(100-x)/100, area 2/3 x 100 x 50
        Read r = dxf(
                "0 SPLINE 8 0 71 2 40 0 40 0 40 0 40 1 40 1 40 1 10 0 20 0 10 50 20 100 10 100 20 0 "
                        + "0 LINE 8 0 10 100 20 0 11 0 21 0 ",
                "");
        assertThat(r.areaMm2()).isCloseTo(2.0 / 3 * 100 * 50, within(5.0));
    }

    @Test
    void should_read_one_layer_alone_when_it_is_named() {
        String two = "0 CIRCLE 8 EDGE 10 0 20 0 40 10 0 LINE 8 CENTRE 10 0 20 0 11 50 21 0 ";
        assertThat(dxf(two, ", layer: edge").areaMm2()).isCloseTo(Math.PI * 100, within(2.0));
        assertThat(dxf(two, "").problems())
                .singleElement()
                .satisfies(p -> assertThat(p.sentence())
                        .isEqualTo("parts.yaml:1: file: found outlines/a.dxf: an open edge from (0.00, 0.00) mm to "
                                + "(50.00, 0.00) mm, expected edges that close, each end within 0.05 mm of the next; "
                                + "close the gap, or put helping lines on another layer"));
    }

    @Test
    void should_scale_by_the_unit_that_the_drawing_states_when_none_is_given() {
        String inches = "0 SECTION 2 HEADER 9 $INSUNITS 70 1 0 ENDSEC 0 SECTION 2 ENTITIES "
                + "0 CIRCLE 8 0 10 0 20 0 40 1 0 ENDSEC 0 EOF ";
        Read r = read("{file: outlines/a.dxf}", Map.of("outlines/a.dxf", lines(inches)));
        assertThat(r.areaMm2()).isCloseTo(Math.PI * 25.4 * 25.4, within(8.0));
    }

    @Test
    void should_enclose_the_same_when_svg_writes_a_shape_in_different_ways() {
        double disc = Math.PI * 900;
        assertThat(svg("<circle cx='50' cy='50' r='30'/>").areaMm2()).isCloseTo(disc, within(6.0));
        assertThat(svg("<path d='M20 50a30 30 0 0160 0a30 30 0 01-60 0z'/>").areaMm2())
                .isCloseTo(disc, within(6.0));
        assertThat(svg("<path d='M 20,50 A 30 30 0 1 0 80 50 A 30 30 0 1 0 20,50'/>")
                        .areaMm2())
                .isCloseTo(disc, within(6.0));
        assertThat(
                        svg("<g transform='translate(10 5) rotate(30) scale(2)'><ellipse cx='3' cy='4' rx='15' ry='15'/></g>")
                                .areaMm2())
                .isCloseTo(disc, within(6.0));
        assertThat(svg("<path d='M0 0h40v20H0z'/>").areaMm2()).isCloseTo(800, within(1e-6));
        assertThat(svg("<polygon points='0,0 40,0 40,20 0,20'/>").areaMm2()).isCloseTo(800, within(1e-6));
    }

    @Test
    void should_follow_curves_when_svg_writes_beziers() {
        // quadratic from (0,0) over (50,100) to (100,0): the same parabola; smooth commands continue it
        // point-symmetrically
        assertThat(svg("<path d='M0 0Q50 100 100 0Z'/>").areaMm2()).isCloseTo(2.0 / 3 * 100 * 50, within(5.0));
        assertThat(svg("<path d='m0 0c33.333333 66.666667 66.666667 66.666667 100 0z'/>")
                        .areaMm2())
                .isCloseTo(2.0 / 3 * 100 * 50, within(5.0));
        assertThat(svg("<path d='M0 0 Q25 20 50 0 T100 0 L100 60 L0 60 Z'/>").areaMm2())
                .isCloseTo(6000, within(5.0));
        assertThat(svg("<path d='M0 0 C10 20 40 20 50 0 S90 -20 100 0 L100 60 0 60Z'/>")
                        .areaMm2())
                .isCloseTo(6000, within(5.0));
    }

    @Test
    void should_not_mirror_when_svg_counts_y_downwards() {
        Outline o = svg("<path d='M0 0H40L0 20Z'/>").outline().orElseThrow();
        assertThat(o.outer()).contains(new Outline.Point(0, -0.02));
    }

    @Test
    void should_refuse_when_an_svg_brings_a_document_type() {
        Read r = read(
                "{file: outlines/a.svg}",
                Map.of("outlines/a.svg", "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><svg>&a;</svg>"));
        assertThat(r.outline()).isEmpty();
        assertThat(r.problems().get(0).found()).contains("a document type or entity");
    }

    @Test
    void should_make_the_same_rib_when_coordinates_come_in_either_order() {
        String around = "Invented\n1 0\n0.5 0.06\n0.1 0.03\n0 0\n0.1 -0.03\n0.5 -0.06\n1 0\n";
        String faces = "Invented\n4. 4.\n\n0 0\n0.1 0.03\n0.5 0.06\n1 0\n\n0 0\n0.1 -0.03\n0.5 -0.06\n1 0\n";
        String yaml = "{file: outlines/a.dat, chord: 1000 mm}";
        Read a = read(yaml, Map.of("outlines/a.dat", around));
        Read b = read(yaml, Map.of("outlines/a.dat", faces));
        // trapezia above and below: 2 x (0.1 x 0.015 + 0.4 x 0.045 + 0.5 x 0.03)
        assertThat(a.areaMm2()).isCloseTo(2 * (0.0015 + 0.018 + 0.015) * 1e6, within(1e-3));
        assertThat(b.areaMm2()).isCloseTo(a.areaMm2(), within(1e-6));
        Read cut = read("{file: outlines/a.dat, chord: 1000 mm, from: 0.1, to: 0.5}", Map.of("outlines/a.dat", around));
        assertThat(cut.areaMm2()).isCloseTo(2 * 0.018 * 1e6, within(1e-3));
    }

    @Test
    void should_have_the_published_thickness_when_a_rib_is_given_by_number() {
        // NACA Report 460: at 30 % of the chord the 0012 is 6.002 % thick to either side
        Outline o = read("{naca: \"0012\", chord: 1000 mm, from: 0.3, to: 1, points: 800}", Map.of())
                .outline()
                .orElseThrow();
        double high = o.outer().stream().mapToDouble(Outline.Point::yM).max().orElseThrow();
        assertThat(high * 1000).isCloseTo(60.02, within(0.005));
    }

    @Test
    void should_grow_all_round_when_a_flange_is_folded_and_lose_the_hole_when_one_is_cut() {
        Read r = read(
                "{vertices: \"0 0, 400 0, 400 120, 0 120\", flange: 20 mm, cutouts: [{x: 100 mm, y: 60 mm, diameter: 60 mm}]}",
                Map.of());
        assertThat(r.areaMm2()).isCloseTo(440 * 160 - Math.PI * 900, within(6.0));
    }

    @Test
    void should_refuse_when_an_edge_crosses_itself() {
        Read r = read("{vertices: \"0 0, 100 100, 100 0, 0 100\"}", Map.of());
        assertThat(r.problems().get(0).sentence())
                .isEqualTo(
                        "parts.yaml:1: vertices: found an outline of which its edge crosses or touches itself near "
                                + "(50.0, 50.0) mm, expected an edge that goes once round an area; look at the order of the corners");
    }

    @Test
    void should_suggest_a_file_when_the_name_is_mistyped() {
        Read r = read("{file: outlines/rib1.dxf}", Map.of("outlines/rib-1.dxf", ""));
        assertThat(r.problems().get(0).suggestion()).isEqualTo("did you mean \"outlines/rib-1.dxf\"?");
    }
}
