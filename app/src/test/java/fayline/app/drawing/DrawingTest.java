package fayline.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.geometry.Outline;
import fayline.basis.units.Angle;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.flow.project.design.Zone;
import fayline.flow.project.stock.Material;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class DrawingTest {
    private static final List<List<Point>> SQUARE =
            List.of(List.of(new Point(0, 0), new Point(10, 0), new Point(10, 10), new Point(0, 10)));

    @Test
    void should_clip_hatch_lines_to_the_area_when_it_is_a_square() {
        List<Shape.Polyline> lines = new Shape.Hatch(SQUARE, 0, 2, Ink.INK, 0.2).lines();
        assertThat(lines).hasSize(5);
        for (Shape.Polyline line : lines) {
            assertThat(line.points().get(0).xMm()).isCloseTo(0, within(1e-9));
            assertThat(line.points().get(1).xMm()).isCloseTo(10, within(1e-9));
        }
        assertThat(lines.get(0).points().get(0).yMm()).isCloseTo(1, within(1e-9));
    }

    @Test
    void should_draw_lines_at_the_true_angle_and_spacing_when_turned() {
        Random random = new Random(20260101);
        for (int i = 0; i < 200; i++) {
            double angle = random.nextDouble() * 180 - 90;
            double spacing = 0.5 + random.nextDouble() * 2;
            List<Shape.Polyline> lines = new Shape.Hatch(SQUARE, angle, spacing, Ink.INK, 0.2).lines();
            double sum = 0;
            for (Shape.Polyline line : lines) {
                Point a = line.points().get(0);
                Point b = line.points().get(1);
                double length = Math.hypot(b.xMm() - a.xMm(), b.yMm() - a.yMm());
                sum += length;
                if (length > 1e-6) {
                    double drawn = Math.toDegrees(Math.atan2(-(b.yMm() - a.yMm()), b.xMm() - a.xMm()));
                    assertThat(Math.sin(Math.toRadians(drawn - angle))).isCloseTo(0, within(1e-6));
                }
                assertThat(a.xMm()).isBetween(-1e-9, 10 + 1e-9);
                assertThat(a.yMm()).isBetween(-1e-9, 10 + 1e-9);
            }
            // a hatch covers its area: lines times spacing is about the area
            assertThat(sum * spacing).isCloseTo(100, within(100 * spacing / 5));
        }
    }

    @Test
    void should_leave_cut_outs_free_when_hatching() {
        List<List<Point>> holed =
                List.of(SQUARE.get(0), List.of(new Point(4, 4), new Point(6, 4), new Point(6, 6), new Point(4, 6)));
        for (Shape.Polyline line : new Shape.Hatch(holed, 37, 0.5, Ink.INK, 0.2).lines()) {
            Point a = line.points().get(0);
            Point b = line.points().get(1);
            double x = (a.xMm() + b.xMm()) / 2;
            double y = (a.yMm() + b.yMm()) / 2;
            assertThat(x > 4.01 && x < 5.99 && y > 4.01 && y < 5.99).isFalse();
        }
        assertThat(new Shape.Dots(holed, 1, 0.2, Ink.INK).centres())
                .isNotEmpty()
                .allMatch(p -> p.xMm() <= 4 || p.xMm() >= 6 || p.yMm() <= 4 || p.yMm() >= 6);
    }

    @Test
    void should_put_the_first_ply_on_the_mould_when_drawing_a_stack() {
        Drawing d = PlyStackDrawing.of(
                "test",
                List.of(
                        new PlyStackDrawing.Layer(1, "Twill 200", Material.Kind.CLOTH, 200, "200 g/m2", 45, 1),
                        new PlyStackDrawing.Layer(2, "Foam 10", Material.Kind.CORE, 0, "10 mm", 0, 2),
                        new PlyStackDrawing.Layer(3, "Tape 300", Material.Kind.TAPE, 300, "300 g/m2", 0, 2)));
        List<Shape.Text> texts = texts(d);
        Shape.Text first = texts.stream()
                .filter(t -> t.text().startsWith("1 "))
                .findFirst()
                .orElseThrow();
        Shape.Text last = texts.stream()
                .filter(t -> t.text().startsWith("3 "))
                .findFirst()
                .orElseThrow();
        Shape.Text mould = texts.stream()
                .filter(t -> t.text().equals("Mould face"))
                .findFirst()
                .orElseThrow();
        assertThat(first.at().yMm()).isGreaterThan(last.at().yMm());
        assertThat(mould.at().yMm()).isGreaterThan(first.at().yMm());
        assertThat(first.text()).contains("+45").contains("\u221245");
        List<Shape.Hatch> hatches = d.flat().stream()
                .filter(Shape.Hatch.class::isInstance)
                .map(Shape.Hatch.class::cast)
                .toList();
        assertThat(hatches).extracting(Shape.Hatch::angleDeg).containsExactly(45.0, -45.0, 0.0);
        assertThat(hatches.get(0).spacingMm()).isGreaterThan(hatches.get(2).spacingMm());
        assertThat(d.flat()).hasAtLeastOneElementOfType(Shape.Dots.class);
        assertInside(d);
    }

    @Test
    void should_keep_true_proportions_at_a_round_scale_when_drawing_a_zone() {
        Outline outline = Outline.of(List.of(
                new Outline.Point(0, 0),
                new Outline.Point(0.4, 0),
                new Outline.Point(0.4, 0.12),
                new Outline.Point(0, 0.12)));
        Zone zone = new Zone(
                "a", "A", "l", outline.area(), outline.perimeter(), 0, Angle.ofDegrees(10), Optional.of(outline));
        Drawing d = ZoneDrawing.of(zone, List.of(45.0, -45.0));
        Shape.Polygon area = d.flat().stream()
                .filter(Shape.Polygon.class::isInstance)
                .map(Shape.Polygon.class::cast)
                .findFirst()
                .orElseThrow();
        double width =
                area.rings().get(0).get(1).xMm() - area.rings().get(0).get(0).xMm();
        double height =
                area.rings().get(0).get(0).yMm() - area.rings().get(0).get(2).yMm();
        assertThat(width).isCloseTo(40, within(1e-6)); // 400 mm at 1:10
        assertThat(height).isCloseTo(12, within(1e-6));
        assertThat(texts(d)).anyMatch(t -> t.text().equals("Scale 1:10"));
        assertThat(d.flat().stream()
                        .filter(Shape.Hatch.class::isInstance)
                        .map(Shape.Hatch.class::cast)
                        .toList())
                .extracting(Shape.Hatch::angleDeg)
                .containsExactly(-35.0, 55.0);
    }

    @Test
    void should_say_so_when_a_zone_has_no_outline() {
        Zone zone = new Zone("a", "A", "l", new Area(1), new Length(4), 0, Angle.ofDegrees(0), Optional.empty());
        assertThat(texts(ZoneDrawing.of(zone, List.of(0.0))))
                .anyMatch(t -> t.text().contains("no outline"));
    }

    @Test
    void should_draw_time_to_scale_when_drawing_a_week() {
        Instant monday = Instant.parse("2026-03-02T00:00:00Z");
        WeekChart.Bar bar = new WeekChart.Bar(
                "Lay up",
                "Lay up hull",
                "/card/hull/1/lay-up",
                List.of(new WeekChart.Stretch(monday.plusSeconds(8 * 3600), monday.plusSeconds(12 * 3600))),
                monday.plusSeconds(36 * 3600),
                true,
                false,
                Optional.of(monday.plusSeconds(48 * 3600)));
        WeekChart.Frame frame = new WeekChart.Frame(
                monday,
                monday.plusSeconds(7 * 86400),
                ZoneOffset.UTC,
                24,
                Optional.of(monday.plusSeconds(9 * 3600)),
                List.of(new WeekChart.Stretch(monday.plusSeconds(8 * 3600), monday.plusSeconds(16 * 3600))),
                List.of(new WeekChart.Lane("Ada", List.of(bar))),
                Set.of("/card/hull/1/lay-up"));
        Drawing d = WeekChart.of(frame, "Week");
        List<Shape.Polygon> hands = polygons(d, Ink.HANDS);
        assertThat(hands).hasSize(1);
        assertThat(width(hands.get(0))).isCloseTo(4, within(1e-9)); // four hours at a millimetre an hour
        assertThat(width(polygons(d, Ink.WET).get(0))).isCloseTo(24, within(1e-9));
        // What holds the end is underlined from its first hands to its end.
        assertThat(d.flat())
                .anyMatch(s -> s instanceof Shape.Polyline l
                        && l.widthMm() == 0.9
                        && Math.abs(l.points().get(1).xMm() - l.points().get(0).xMm() - 28) < 1e-9);
        assertThat(polygons(d, Ink.NIGHT)).hasSize(2);
        assertThat(width(polygons(d, Ink.NIGHT).get(0))).isCloseTo(8, within(1e-9));
        assertThat(texts(d)).anyMatch(t -> t.text().equals("now"));
        assertThat(SvgRenderer.forScreen().render(d)).contains("href=\"/card/hull/1/lay-up\"");
        assertThat(SvgRenderer.forPaper().render(d)).doesNotContain("href");
    }

    @Test
    void should_give_overlapping_steps_tracks_of_their_own() {
        Instant t = Instant.parse("2026-03-02T08:00:00Z");
        WeekChart.Bar a = new WeekChart.Bar(
                "a",
                "a",
                "",
                List.of(new WeekChart.Stretch(t, t.plusSeconds(60))),
                t.plusSeconds(600),
                false,
                false,
                Optional.empty());
        WeekChart.Bar b = new WeekChart.Bar(
                "b",
                "b",
                "",
                List.of(new WeekChart.Stretch(t.plusSeconds(120), t.plusSeconds(180))),
                t.plusSeconds(180),
                false,
                false,
                Optional.empty());
        WeekChart.Bar c = new WeekChart.Bar(
                "c",
                "c",
                "",
                List.of(new WeekChart.Stretch(t.plusSeconds(600), t.plusSeconds(660))),
                t.plusSeconds(660),
                false,
                false,
                Optional.empty());
        assertThat(WeekChart.tracks(List.of(c, b, a))).extracting(List::size).containsExactly(2, 1);
    }

    @Test
    void should_mark_what_goes_beyond_when_a_mass_is_over_its_target() {
        QuantityFormat metric = new QuantityFormat(UnitSystem.METRIC);
        Drawing over = MassBar.of(Mass.ofKilograms(6.6), Mass.ofKilograms(6), true, metric);
        assertThat(polygons(over, Ink.TROUBLE)).hasSize(1);
        assertThat(width(polygons(over, Ink.TROUBLE).get(0))).isCloseTo(4.8, within(1e-9));
        assertThat(polygons(MassBar.of(Mass.ofKilograms(3), Mass.ofKilograms(6), false, metric), Ink.TROUBLE))
                .isEmpty();
    }

    @Test
    void should_take_typed_text_as_data_when_rendering() {
        Drawing d = new Drawing(10, 10, "a\"><script>", List.of(Shape.text(0, 0, "<b>&'\u0001", 3, Ink.INK)));
        String svg = SvgRenderer.forScreen().render(d);
        assertThat(svg).doesNotContain("<script>").doesNotContain("<b>").contains("&lt;b&gt;&amp;&#39;<");
    }

    @Test
    void should_render_every_kind_of_shape() {
        List<Shape> each = List.of(
                Shape.line(0, 0, 1, 1, Ink.INK, 0.1),
                Shape.Polygon.rectangle(0, 0, 1, 1, Ink.INK, Ink.INK, 0.1),
                new Shape.Disc(new Point(1, 1), 1, Ink.INK, Ink.NONE, 0),
                Shape.text(0, 0, "x", 3, Ink.INK),
                new Shape.Hatch(SQUARE, 45, 1, Ink.INK, 0.1),
                new Shape.Dots(SQUARE, 1, 0.2, Ink.INK),
                new Shape.Group("g", "/x", List.of(Shape.text(0, 0, "y", 3, Ink.INK))));
        assertThat(each.stream().map(Object::getClass).distinct().count())
                .isEqualTo(Shape.class.getPermittedSubclasses().length);
        for (Shape shape : each) {
            assertThat(SvgRenderer.forPaper().render(new Drawing(10, 10, "t", List.of(shape))))
                    .contains("fill=");
        }
        for (Mark mark : Mark.values()) {
            assertThat(mark.drawing().flat()).isNotEmpty();
        }
    }

    private static List<Shape.Text> texts(Drawing d) {
        return d.flat().stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .toList();
    }

    private static List<Shape.Polygon> polygons(Drawing d, Ink fill) {
        return d.flat().stream()
                .filter(Shape.Polygon.class::isInstance)
                .map(Shape.Polygon.class::cast)
                .filter(p -> p.fill() == fill)
                .toList();
    }

    private static double width(Shape.Polygon p) {
        List<Point> ring = p.rings().get(0);
        return ring.get(1).xMm() - ring.get(0).xMm();
    }

    private static void assertInside(Drawing d) {
        for (Shape s : d.flat()) {
            if (s instanceof Shape.Polygon p) {
                p.rings().get(0).forEach(c -> assertThat(c.yMm()).isBetween(0.0, d.heightMm()));
            }
        }
    }
}
