package fayline.app.drawing.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import fayline.app.drawing.template.SampleTemplate;
import fayline.flow.project.design.Hand;
import fayline.method.fitup.Station;
import fayline.method.fitup.outline.EdgePoint;
import fayline.method.fitup.outline.PartOutline;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class GapDrawingTest {
    private static final PartOutline OUTLINE = SampleTemplate.outline();
    private static final double[] BEFORE = {3, 2.3, 2.8, 3.1, 4, 4.4, 3.6, 3.2, 2.6, 2.2, 2.4, 2.9};
    private static final double[] AFTER = {3.2, 2.9, 3.1, 3.0, 3.4, 3.7, 3.2, 3.1, 2.9, 2.4, 2.8, 3.0};

    static GapPicture sample(boolean outline, boolean places, boolean after) {
        List<StationPicture> stations = new ArrayList<>();
        for (int i = 0; i < BEFORE.length; i++) {
            EdgePoint p = OUTLINE.at((i + 0.4) * OUTLINE.perimeterMm() / BEFORE.length);
            String id = "S" + (i + 1);
            boolean missing = i == 7;
            OptionalDouble before = missing ? OptionalDouble.empty() : OptionalDouble.of(BEFORE[i]);
            OptionalDouble then = missing || !after ? OptionalDouble.empty() : OptionalDouble.of(AFTER[i]);
            stations.add(new StationPicture(
                    id,
                    places ? Optional.of(new Station(id, p.at(), p.nx(), p.ny())) : Optional.empty(),
                    before,
                    then,
                    2.5,
                    3,
                    3.5,
                    String.format(Locale.ROOT, "%.1f mm", after ? AFTER[i] : BEFORE[i]),
                    ""));
        }
        return new GapPicture(
                "Pane in its frame",
                outline ? Optional.of(OUTLINE) : Optional.empty(),
                Hand.LEFT,
                stations,
                Optional.of("S8"),
                "as read",
                "after the move");
    }

    private static double factor(Drawing drawing) {
        for (Shape s : drawing.flat()) {
            if (s instanceof Shape.Text t) {
                Matcher m = Pattern.compile("Gaps drawn ([0-9.]+) times.*").matcher(t.text());
                if (m.matches()) {
                    return Double.parseDouble(m.group(1));
                }
            }
        }
        throw new AssertionError("no scale of the gaps is stated");
    }

    private static List<Point> outline(Drawing drawing) {
        return drawing.flat().stream()
                .filter(s -> s instanceof Shape.Polygon p && p.edge() == Ink.INK && p.widthMm() == 0.6)
                .map(s -> ((Shape.Polygon) s).rings().get(0))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> texts(Drawing drawing) {
        return drawing.flat().stream()
                .filter(s -> s instanceof Shape.Text)
                .map(s -> ((Shape.Text) s).text())
                .toList();
    }

    private static boolean hasDisc(Drawing drawing, Point at, Ink fill) {
        return drawing.flat().stream()
                .anyMatch(s -> s instanceof Shape.Disc d
                        && d.fill() == fill
                        && Math.hypot(d.centre().xMm() - at.xMm(), d.centre().yMm() - at.yMm()) < 1e-6);
    }

    @Test
    void should_set_every_pin_off_the_edge_by_the_stated_factor_when_the_outline_is_known() {
        GapPicture picture = sample(true, true, true);
        Drawing drawing = GapDrawing.of(picture);
        double factor = factor(drawing);
        List<Point> ring = outline(drawing);
        // the part's frame is found from the drawn outline alone: its lower left and right extremes are 0 and 620 mm
        // wide
        double left = ring.stream().mapToDouble(Point::xMm).min().orElseThrow();
        double right = ring.stream().mapToDouble(Point::xMm).max().orElseThrow();
        double low = ring.stream().mapToDouble(Point::yMm).max().orElseThrow();
        List<fayline.method.fitup.Spot> drawn = OUTLINE.drawn(1e-4 * OUTLINE.perimeterMm());
        double leftMm = drawn.stream().mapToDouble(p -> p.xMm()).min().orElseThrow();
        double scale =
                (right - left) / (drawn.stream().mapToDouble(p -> p.xMm()).max().orElseThrow() - leftMm);
        for (int i = 0; i < BEFORE.length; i++) {
            Station s = picture.stations().get(i).place().orElseThrow();
            double x = left + (s.at().xMm() - leftMm) * scale;
            double y = low - s.at().yMm() * scale;
            double gap = i == 7 ? 3 : AFTER[i];
            Point tip = new Point(x + factor * gap * scale * s.nx(), y - factor * gap * scale * s.ny());
            boolean trouble = i == 5 || i == 9;
            assertThat(hasDisc(drawing, tip, i == 7 ? Ink.PAPER : trouble ? Ink.TROUBLE : Ink.INK))
                    .as("pin of station %d", i + 1)
                    .isTrue();
            double was = factor * BEFORE[i] * scale;
            if (i != 7) {
                assertThat(hasDisc(drawing, new Point(x + was * s.nx(), y - was * s.ny()), Ink.PAPER))
                        .as("reading before at station %d", i + 1)
                        .isTrue();
                // the solid line and the dashed line pass through them
                assertThat(passes(drawing, tip, false)).isTrue();
                assertThat(passes(drawing, new Point(x + was * s.nx(), y - was * s.ny()), true))
                        .isTrue();
            }
        }
    }

    private static boolean passes(Drawing drawing, Point at, boolean dashed) {
        return drawing.flat().stream()
                .anyMatch(s -> s instanceof Shape.Polyline l
                        && l.dashed() == dashed
                        && l.points().size() > 2
                        && l.points().stream()
                                .anyMatch(p -> Math.hypot(p.xMm() - at.xMm(), p.yMm() - at.yMm()) < 1e-6));
    }

    @Test
    void should_tell_trouble_by_word_and_name_directions_lines_and_the_station_to_read_when_drawn() {
        Drawing drawing = GapDrawing.of(sample(true, true, true));
        assertThat(texts(drawing))
                .contains("wide", "tight", "aft", "up", "as read", "after the move", "in tolerance", "no reading")
                .contains("out of tolerance", "read now", "S8", "3.7 mm");
        assertThat(drawing.title()).isEqualTo("Pane in its frame: gaps at 11 of 12 stations, 2 out of tolerance.");
        GapPicture left = sample(true, true, true);
        GapPicture right =
                new GapPicture("t", left.outline(), Hand.RIGHT, left.stations(), Optional.empty(), "as read", "after");
        assertThat(texts(GapDrawing.of(right))).contains("forward", "up").doesNotContain("aft", "read now");
    }

    @Test
    void should_write_every_station_within_the_sheet_and_over_no_other_when_there_are_twelve() {
        for (boolean outline : new boolean[] {true, false}) {
            for (boolean places : new boolean[] {true, false}) {
                Drawing drawing = GapDrawing.of(sample(outline, places, true));
                List<Shape.Text> all = drawing.flat().stream()
                        .filter(s -> s instanceof Shape.Text)
                        .map(s -> (Shape.Text) s)
                        .toList();
                for (int i = 1; i <= 12; i++) {
                    assertThat(texts(drawing)).contains("S" + i);
                }
                for (int i = 0; i < all.size(); i++) {
                    Shape.Text t = all.get(i);
                    double[] span = span(t);
                    assertThat(span[0]).as(t.text()).isGreaterThanOrEqualTo(0);
                    assertThat(span[1]).as(t.text()).isLessThanOrEqualTo(drawing.widthMm());
                    assertThat(t.at().yMm()).isBetween(2.0, drawing.heightMm());
                    assertThat(t.sizeMm()).isGreaterThanOrEqualTo(3);
                    for (int j = 0; j < all.size(); j++) {
                        Shape.Text o = all.get(j);
                        boolean meets = j != i
                                && span(o)[0] < span[1]
                                && span[0] < span(o)[1]
                                && Math.abs(o.at().yMm() - t.at().yMm()) < 2.4;
                        assertThat(meets).as("%s over %s", o.text(), t.text()).isFalse();
                    }
                }
            }
        }
    }

    private static double[] span(Shape.Text t) {
        double wide = t.text().length() * t.sizeMm() * 0.5;
        double x = t.at().xMm() - (t.anchor() == Shape.Anchor.MIDDLE ? wide / 2 : 0);
        return new double[] {x, x + wide};
    }

    @Test
    void should_say_what_is_not_known_when_outline_or_places_are_missing() {
        assertThat(texts(GapDrawing.of(sample(false, true, false))))
                .contains("No outline: straight from station to station.")
                .doesNotContain("after the move");
        assertThat(texts(GapDrawing.of(sample(false, false, false))))
                .contains("Places not known: stations evenly spaced,")
                .doesNotContain("aft");
        GapPicture none =
                new GapPicture("Nothing", Optional.empty(), Hand.NONE, List.of(), Optional.empty(), "as read", "after");
        assertThat(GapDrawing.of(none).title()).contains("0 of 0 stations");
    }

    @Test
    void should_break_the_line_at_a_missing_reading_when_others_stand_beside_it() {
        Drawing drawing = GapDrawing.of(sample(true, true, true));
        List<Shape.Polyline> solid = drawing.flat().stream()
                .filter(s -> s instanceof Shape.Polyline l && !l.dashed() && l.ink() == Ink.INK && l.widthMm() == 0.55)
                .map(s -> (Shape.Polyline) s)
                .filter(l -> l.points().size() > 2)
                .toList();
        // S1 to S7, and S9 over S12 back to S1
        assertThat(solid).hasSize(2);
    }

    @Test
    void should_choose_the_largest_round_factor_when_the_widest_gap_has_room() {
        assertThat(GapFrame.factor(60, 3)).isEqualTo(20);
        assertThat(GapFrame.factor(59, 3)).isEqualTo(15);
        assertThat(GapFrame.factor(1, 3)).isEqualTo(1);
        assertThat(GapFrame.factor(60, 0)).isEqualTo(1);
        assertThat(GapFrame.factor(600, 3)).isEqualTo(200);
    }

    @Test
    void should_keep_words_apart_and_count_what_is_left_out_when_stations_are_too_many() {
        List<StationPicture> many = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            EdgePoint p = OUTLINE.at(i * OUTLINE.perimeterMm() / 120);
            String id = "P" + i;
            many.add(new StationPicture(
                    id,
                    Optional.of(new Station(id, p.at(), p.nx(), p.ny())),
                    OptionalDouble.of(i == 60 ? 9 : 3),
                    OptionalDouble.empty(),
                    2.5,
                    3,
                    3.5,
                    "3.0 mm",
                    ""));
        }
        Drawing drawing = GapDrawing.of(
                new GapPicture("Many", Optional.of(OUTLINE), Hand.LEFT, many, Optional.of("P3"), "as read", "after"));
        List<String> texts = texts(drawing);
        assertThat(texts).contains("P3", "P60", "wide");
        long written = texts.stream().filter(t -> t.matches("P\\d+")).count();
        assertThat(texts).contains((120 - written) + " stations' words left out for room.");
        assertThat(written).isCloseTo(20, within(19L));
    }
}
