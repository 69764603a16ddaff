package fayline.app.drawing;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Time with its nights: a row for each person, mould, stand or port. Hands-on work is a solid bar, unattended time a thin one
 * that runs through the night, a window a bracket that closes where it shuts, hours in which nobody works a dark band.
 */
public final class WeekChart {
    private static final double LABEL = 34;
    private static final double HEAD = 12;
    private static final double TRACK = 7;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    private WeekChart() {}

    /**
     * What is drawn.
     *
     * @param from first moment
     * @param to end
     * @param zone the shop's zone
     * @param mmPerDay width of a day
     * @param now the moment of the today line, where it lies within
     * @param open when anyone works, in order, not overlapping; the rest is night
     * @param lanes the rows
     * @param holding addresses of the steps that hold the end of all, underlined
     */
    public record Frame(
            Instant from,
            Instant to,
            ZoneId zone,
            double mmPerDay,
            Optional<Instant> now,
            List<Stretch> open,
            List<Lane> lanes,
            Set<String> holding) {
        /** Copies the lists. */
        public Frame {
            open = List.copyOf(open);
            lanes = List.copyOf(lanes);
            holding = Set.copyOf(holding);
        }

        double x(Instant at) {
            long s = at.getEpochSecond() - from.getEpochSecond();
            return LABEL + s / 86400.0 * mmPerDay;
        }
    }

    /**
     * A stretch of time.
     *
     * @param from start
     * @param to end
     */
    public record Stretch(Instant from, Instant to) {}

    /**
     * A row.
     *
     * @param label whose it is
     * @param bars what happens in it
     */
    public record Lane(String label, List<Bar> bars) {
        /** Copies the list. */
        public Lane {
            bars = List.copyOf(bars);
        }
    }

    /**
     * One step in a row.
     *
     * @param title what it is
     * @param words the same in full, with its times
     * @param link its card
     * @param hands when hands work
     * @param end when its unattended time is over; not before the last hands
     * @param wet whether the unattended time is resin that cures
     * @param done whether it is over
     * @param shuts when the window in which the next step must begin shuts, where one does
     */
    public record Bar(
            String title,
            String words,
            String link,
            List<Stretch> hands,
            Instant end,
            boolean wet,
            boolean done,
            Optional<Instant> shuts) {
        /** Copies the list. */
        public Bar {
            hands = List.copyOf(hands);
        }

        Instant start() {
            return hands.isEmpty() ? end : hands.get(0).from();
        }
    }

    /** Draws the rows. */
    public static Drawing of(Frame frame, String title) {
        List<Shape> shapes = new ArrayList<>();
        List<List<List<Bar>>> tracks =
                frame.lanes().stream().map(lane -> tracks(lane.bars())).toList();
        double height =
                HEAD + tracks.stream().mapToDouble(t -> laneHeight(t.size())).sum() + 2;
        double width = frame.x(frame.to()) + 1;
        nights(frame, shapes, height);
        days(frame, shapes, height);
        double y = HEAD;
        for (int i = 0; i < frame.lanes().size(); i++) {
            Lane lane = frame.lanes().get(i);
            shapes.add(Shape.line(0, y, width, y, Ink.QUIET, 0.12));
            label(shapes, lane.label(), y);
            double track = y + 1;
            for (List<Bar> bars : tracks.get(i)) {
                for (Bar bar : bars) {
                    bar(frame, bar, track).ifPresent(shapes::add);
                }
                track += TRACK;
            }
            y += laneHeight(tracks.get(i).size());
        }
        frame.now()
                .filter(n -> !n.isBefore(frame.from()) && n.isBefore(frame.to()))
                .ifPresent(n -> {
                    double x = frame.x(n);
                    shapes.add(Shape.line(x, HEAD - 5.4, x, height, Ink.TROUBLE, 0.5));
                    shapes.add(Shape.bold(x + 0.7, HEAD - 3.4, "now", 2.6, Ink.TROUBLE));
                });
        return new Drawing(width, height, title, shapes);
    }

    /** A row's label, on two lines where one is too short for it. */
    private static void label(List<Shape> shapes, String label, double y) {
        double room = LABEL - 1.5;
        if (Drawing.fit(label, 3, room).equals(label)) {
            shapes.add(Shape.bold(0.5, y + 5, label, 3, Ink.INK));
            return;
        }
        int letters = (int) Math.floor(room / (2.7 * 0.54));
        int cut = label.lastIndexOf(' ', Math.min(letters, label.length() - 1));
        String first = cut > 0 ? label.substring(0, cut) : label;
        String second = cut > 0 ? label.substring(cut + 1) : "";
        shapes.add(Shape.bold(0.5, y + 3.7, Drawing.fit(first, 2.7, room), 2.7, Ink.INK));
        shapes.add(Shape.bold(0.5, y + 7.1, Drawing.fit(second, 2.7, room), 2.7, Ink.INK));
    }

    private static double laneHeight(int tracks) {
        return 2 + TRACK * Math.max(1, tracks);
    }

    /** Bars that overlap get a track of their own. */
    static List<List<Bar>> tracks(List<Bar> bars) {
        List<List<Bar>> tracks = new ArrayList<>();
        List<Bar> sorted = bars.stream()
                .sorted(Comparator.comparing(Bar::start).thenComparing(Bar::title))
                .toList();
        for (Bar bar : sorted) {
            List<Bar> free = tracks.stream()
                    .filter(t -> !t.get(t.size() - 1).end().isAfter(bar.start()))
                    .findFirst()
                    .orElse(null);
            if (free == null) {
                free = new ArrayList<>();
                tracks.add(free);
            }
            free.add(bar);
        }
        return tracks;
    }

    private static void nights(Frame frame, List<Shape> shapes, double height) {
        Instant at = frame.from();
        for (Stretch open : frame.open()) {
            if (open.to().isBefore(at) || open.from().isAfter(frame.to())) {
                continue;
            }
            night(frame, shapes, at, open.from(), height);
            at = open.to().isAfter(at) ? open.to() : at;
        }
        night(frame, shapes, at, frame.to(), height);
    }

    private static void night(Frame frame, List<Shape> shapes, Instant from, Instant to, double height) {
        if (from.isBefore(to)) {
            double x = frame.x(from);
            double end = Math.min(frame.x(to), frame.x(frame.to()));
            shapes.add(Shape.Polygon.rectangle(x, HEAD - 2, end - x, height - HEAD + 2, Ink.NIGHT, Ink.NONE, 0));
        }
    }

    private static void days(Frame frame, List<Shape> shapes, double height) {
        ZonedDateTime day = frame.from().atZone(frame.zone());
        LocalDate date = day.toLocalDate();
        Instant at = date.atStartOfDay(frame.zone()).toInstant();
        while (at.isBefore(frame.to())) {
            LocalDate next = date.plusDays(1);
            Instant end = next.atStartOfDay(frame.zone()).toInstant();
            if (end.isAfter(frame.from())) {
                double x = frame.x(at.isBefore(frame.from()) ? frame.from() : at);
                shapes.add(Shape.line(x, 1, x, height, Ink.QUIET, 0.15));
                String name = Drawing.fit(DAY.format(date), 2.9, frame.mmPerDay() - 1);
                shapes.add(Shape.text(x + 0.8, 4, name, 2.9, Ink.INK));
            }
            date = next;
            at = end;
        }
    }

    private static Optional<Shape> bar(Frame frame, Bar bar, double y) {
        if (!bar.end().isAfter(frame.from()) || !bar.start().isBefore(frame.to())) {
            return Optional.empty();
        }
        List<Shape> shapes = new ArrayList<>();
        Ink solid = bar.done() ? Ink.DONE : Ink.HANDS;
        Instant handsEnd = bar.hands().isEmpty()
                ? bar.start()
                : bar.hands().get(bar.hands().size() - 1).to();
        double left = clamp(frame, bar.start());
        double end = clamp(frame, bar.end());
        double hands = clamp(frame, handsEnd);
        if (bar.hands().size() > 1) {
            shapes.add(Shape.line(left, y + 2.5, hands, y + 2.5, solid, 0.25));
        }
        if (end > hands) {
            Ink thin = bar.done() ? Ink.DONE : bar.wet() ? Ink.WET : Ink.QUIET;
            shapes.add(Shape.Polygon.rectangle(hands, y + 1.7, end - hands, 1.6, thin, Ink.NONE, 0));
            shapes.add(Shape.line(end, y + 1, end, y + 4, thin, 0.35));
        }
        for (Stretch s : bar.hands()) {
            double from = clamp(frame, s.from());
            double to = clamp(frame, s.to());
            if (to > from) {
                shapes.add(Shape.Polygon.rectangle(from, y, Math.max(0.6, to - from), 5, solid, Ink.PAPER, 0.25));
            }
        }
        double first =
                bar.hands().isEmpty() ? hands : clamp(frame, bar.hands().get(0).to());
        if (frame.holding().contains(bar.link()) && end > left) {
            shapes.add(Shape.line(left, y + 5.5, end, y + 5.5, Ink.INK, 0.9));
        }
        String inside = Drawing.fit(bar.title(), 2.6, first - left - 0.8);
        shapes.add(Shape.text(left + 0.5, y + 3.5, inside, 2.6, Ink.PAPER));
        bar.shuts().ifPresent(at -> window(frame, shapes, bar.end(), at, y));
        return Optional.of(new Shape.Group(bar.words(), bar.link(), shapes));
    }

    /** A bracket from where the window opens to where it shuts. */
    private static void window(Frame frame, List<Shape> shapes, Instant opens, Instant shuts, double y) {
        double from = clamp(frame, opens);
        double to = clamp(frame, shuts);
        if (to > from) {
            shapes.add(new Shape.Polyline(
                    List.of(new Point(from, y + 5.9), new Point(to, y + 5.9), new Point(to, y + 3.6)),
                    Ink.TROUBLE,
                    0.4,
                    false));
        }
    }

    private static double clamp(Frame frame, Instant at) {
        return Math.max(LABEL, Math.min(frame.x(frame.to()), frame.x(at)));
    }
}
