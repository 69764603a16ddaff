package fayline.app.drawing.forecast;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Ends as spreads, a row for each: a bar from the day that nine of ten trials pass to the day that one of ten passes, thick up to
 * the day that one of five passes, a ring at the middle, a flag where it is due.
 */
public final class EndsDrawing {
    /** Width of the drawing. */
    public static final double WIDTH = 150;

    /** Where the days begin. */
    public static final double LEFT = 4;

    /** Where they end. */
    public static final double RIGHT = 146;

    /** Height of a row. */
    public static final double ROW = 11;

    private static final double HEAD = 8;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final int TICKS = 4;

    private EndsDrawing() {}

    /**
     * A row.
     *
     * @param name what ends
     * @param p10 passed by nine of ten trials
     * @param p50 passed by half
     * @param p80 passed by one of five; empty where more than that are without a plan
     * @param p90 passed by one of ten; empty likewise
     * @param due the day by which, where one is set
     */
    public record Row(
            String name,
            LocalDate p10,
            LocalDate p50,
            Optional<LocalDate> p80,
            Optional<LocalDate> p90,
            Optional<LocalDate> due) {
        LocalDate last() {
            LocalDate l = p90.orElse(p80.orElse(p50));
            return due.filter(d -> d.isAfter(l)).orElse(l);
        }
    }

    /**
     * Draws.
     *
     * @param today the day on which the drawing begins
     * @param rows the rows; at least one
     * @param title what it shows, for those who cannot see it
     */
    public static Drawing of(LocalDate today, List<Row> rows, String title) {
        LocalDate last = rows.stream().map(Row::last).max(LocalDate::compareTo).orElse(today);
        long days = Math.max(7, ChronoUnit.DAYS.between(today, last) + 1);
        double height = HEAD + rows.size() * ROW + 2;
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i <= TICKS; i++) {
            LocalDate day = today.plusDays(Math.round((double) days * i / TICKS));
            double x = x(today, days, day);
            shapes.add(Shape.line(x, HEAD - 2, x, height - 1, Ink.NIGHT, 0.2));
            Shape.Anchor anchor = i == 0 ? Shape.Anchor.START : i == TICKS ? Shape.Anchor.END : Shape.Anchor.MIDDLE;
            shapes.add(new Shape.Text(new Point(x, 4), DAY.format(day), 3, Ink.QUIET, anchor, false));
        }
        for (int i = 0; i < rows.size(); i++) {
            row(today, days, rows.get(i), HEAD + i * ROW, shapes);
        }
        return new Drawing(WIDTH, height, title, shapes);
    }

    /** Where a day lies. */
    public static double x(LocalDate today, long days, LocalDate day) {
        double share = ChronoUnit.DAYS.between(today, day) / (double) days;
        return LEFT + (RIGHT - LEFT) * Math.max(0, Math.min(1, share));
    }

    private static void row(LocalDate today, long days, Row row, double y, List<Shape> shapes) {
        shapes.add(Shape.text(LEFT, y + 3.2, row.name(), 3.2, Ink.INK));
        double middle = y + 7;
        double from = x(today, days, row.p10());
        double half = x(today, days, row.p50());
        double most = row.p80().map(d -> x(today, days, d)).orElse(RIGHT);
        double end = row.p90().map(d -> x(today, days, d)).orElse(RIGHT);
        shapes.add(Shape.line(from, middle, Math.max(end, from), middle, Ink.HANDS, 0.5));
        if (most > from) {
            shapes.add(Shape.Polygon.rectangle(from, middle - 1.2, most - from, 2.4, Ink.HANDS, Ink.INK, 0.2));
        }
        if (row.p90().isEmpty()) {
            shapes.add(new Shape.Text(
                    new Point(RIGHT, middle - 2), "some trials end later", 2.6, Ink.TROUBLE, Shape.Anchor.END, false));
        }
        shapes.add(new Shape.Disc(new Point(half, middle), 1.5, Ink.PAPER, Ink.INK, 0.5));
        row.due().ifPresent(d -> {
            double x = x(today, days, d);
            boolean late = row.p50().isAfter(d);
            Ink ink = late ? Ink.TROUBLE : Ink.INK;
            shapes.add(Shape.line(x, middle - 3, x, middle + 2.6, ink, 0.6));
            shapes.add(new Shape.Polygon(
                    List.of(List.of(
                            new Point(x, middle - 3), new Point(x - 2.6, middle - 2), new Point(x, middle - 1))),
                    ink,
                    ink,
                    0.1));
        });
    }
}
