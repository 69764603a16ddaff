package fayline.app.drawing.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Shape;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ForecastDrawingTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-03-01");

    private static EndsDrawing.Row row(int p10, int p50, int p80, int p90, @Nullable Integer due) {
        return new EndsDrawing.Row(
                "Tail",
                TODAY.plusDays(p10),
                TODAY.plusDays(p50),
                Optional.of(TODAY.plusDays(p80)),
                Optional.of(TODAY.plusDays(p90)),
                Optional.ofNullable(due).map(TODAY::plusDays));
    }

    private static Shape.Disc ring(Drawing d) {
        return d.flat().stream()
                .filter(Shape.Disc.class::isInstance)
                .map(Shape.Disc.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_put_middle_and_bar_on_their_days() {
        // 99 days after today is the last day drawn, so 100 days span the width.
        Drawing d = EndsDrawing.of(TODAY, List.of(row(20, 50, 80, 99, null)), "ends");
        assertThat(ring(d).centre().xMm()).isCloseTo(4 + 142 * 0.5, within(1e-9));
        Shape.Polygon bar = d.flat().stream()
                .filter(s -> s instanceof Shape.Polygon p && p.fill() == Ink.HANDS)
                .map(Shape.Polygon.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(bar.rings().get(0)).anySatisfy(p -> assertThat(p.xMm()).isCloseTo(4 + 142 * 0.2, within(1e-9)));
        assertThat(bar.rings().get(0)).anySatisfy(p -> assertThat(p.xMm()).isCloseTo(4 + 142 * 0.8, within(1e-9)));
    }

    @Test
    void should_mark_a_due_day_as_trouble_when_half_of_the_trials_pass_it() {
        Drawing late = EndsDrawing.of(TODAY, List.of(row(20, 50, 80, 99, 40)), "ends");
        Drawing early = EndsDrawing.of(TODAY, List.of(row(20, 50, 80, 99, 60)), "ends");
        assertThat(late.flat()).anyMatch(s -> s instanceof Shape.Polygon p && p.fill() == Ink.TROUBLE);
        assertThat(early.flat()).noneMatch(s -> s instanceof Shape.Polygon p && p.fill() == Ink.TROUBLE);
    }

    @Test
    void should_say_that_some_trials_end_later_when_they_have_no_plan() {
        EndsDrawing.Row open = new EndsDrawing.Row(
                "Tail", TODAY.plusDays(2), TODAY.plusDays(5), Optional.empty(), Optional.empty(), Optional.empty());
        assertThat(EndsDrawing.of(TODAY, List.of(open), "ends").flat())
                .anyMatch(s -> s instanceof Shape.Text t && t.text().equals("some trials end later"));
    }

    @Test
    void should_draw_the_booked_hours_and_the_fan_to_the_end_at_scale() {
        HoursDrawing.Hours q = new HoursDrawing.Hours(List.of(40.0, 60.0), 1000, 1500, 100, 20, 30, 40, "hours");
        Drawing d = HoursDrawing.of(q);
        Shape.Polyline booked = d.flat().stream()
                .filter(s -> s instanceof Shape.Polyline l
                        && l.ink() == Ink.INK
                        && l.points().size() == 3)
                .map(Shape.Polyline.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(booked.points().get(2).xMm()).isCloseTo(q.x(2), within(1e-9));
        assertThat(booked.points().get(2).yMm()).isCloseTo(q.y(100), within(1e-9));
        Shape.Polygon fan = d.flat().stream()
                .filter(Shape.Polygon.class::isInstance)
                .map(Shape.Polygon.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(fan.rings().get(0)).extracting(p -> p.xMm()).containsExactly(q.x(2), q.x(20), q.x(40));
        assertThat(q.x(42)).isCloseTo(146, within(1e-9));
    }
}
