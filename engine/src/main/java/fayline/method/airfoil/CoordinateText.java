package fayline.method.airfoil;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Reads the common two-column text form of an airfoil: an optional name, then x and y by line, either once round from the
 * trailing edge over the upper surface and back, or the upper and then the lower surface, each from the leading edge, with a line
 * of their two counts before or a blank line between. Values are scaled to a chord of one.
 */
public final class CoordinateText {
    private static final String EXPECTED = "two numbers, x and y";

    private CoordinateText() {}

    /**
     * Reads a text.
     *
     * @param text the text
     * @param file name for messages
     */
    public static Reading read(String text, String file) {
        List<InputProblem> problems = new ArrayList<>();
        List<Airfoil.Station> points = new ArrayList<>();
        String name = file;
        String[] lines = text.split("\\R", -1);
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].trim();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            Optional<Airfoil.Station> point = point(line);
            if (point.isPresent()) {
                points.add(point.get());
            } else if (points.isEmpty() && name.equals(file)) {
                name = line;
            } else {
                problems.add(problem(file, i + 1, "\"" + shorten(line) + "\"", EXPECTED));
            }
        }
        // Two counts above one stand before the lists of some files.
        if (points.size() > 1 && points.get(0).x() > 2 && points.get(0).y() > 2) {
            points.remove(0);
        }
        if (points.size() < 6) {
            problems.add(problem(file, 0, points.size() + " points", "at least six points"));
        }
        if (!problems.isEmpty()) {
            return new Reading(Optional.empty(), problems);
        }
        return split(name, points, file);
    }

    private static Optional<Airfoil.Station> point(String line) {
        String[] parts = line.split("[\\s,;]+");
        if (parts.length != 2) {
            return Optional.empty();
        }
        try {
            double x = Double.parseDouble(parts[0]);
            double y = Double.parseDouble(parts[1]);
            return Double.isFinite(x) && Double.isFinite(y) ? Optional.of(new Airfoil.Station(x, y)) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static Reading split(String name, List<Airfoil.Station> points, String file) {
        double least = points.stream().mapToDouble(Airfoil.Station::x).min().orElse(0);
        double most = points.stream().mapToDouble(Airfoil.Station::x).max().orElse(1);
        double chord = most - least;
        if (!(chord > 0)) {
            return refused(file, "all points at one x", "points along a chord");
        }
        List<Airfoil.Station> unit = points.stream()
                .map(p -> new Airfoil.Station((p.x() - least) / chord, p.y() / chord))
                .toList();
        List<Airfoil.Station> upper;
        List<Airfoil.Station> lower;
        if (unit.get(0).x() > 0.5) {
            int nose = 0;
            for (int i = 1; i < unit.size(); i++) {
                nose = unit.get(i).x() < unit.get(nose).x() ? i : nose;
            }
            upper = new ArrayList<>(unit.subList(0, nose + 1));
            Collections.reverse(upper);
            lower = new ArrayList<>(unit.subList(nose, unit.size()));
        } else {
            int second = 1;
            while (second < unit.size()
                    && unit.get(second).x() >= unit.get(second - 1).x()) {
                second++;
            }
            upper = new ArrayList<>(unit.subList(0, second));
            lower = new ArrayList<>(unit.subList(second, unit.size()));
        }
        if (upper.size() < 3 || lower.size() < 3) {
            return refused(file, "one surface only", "an upper and a lower surface of at least three points each");
        }
        if (!rising(upper) || !rising(lower)) {
            return refused(
                    file, "x runs back and forth", "x rising from the leading to the trailing edge on each surface");
        }
        Airfoil read = new Airfoil(name, upper, lower);
        boolean swapped = read.upperAt(0.3) < read.lowerAt(0.3);
        return new Reading(Optional.of(swapped ? new Airfoil(name, lower, upper) : read), List.of());
    }

    private static boolean rising(List<Airfoil.Station> surface) {
        for (int i = 2; i < surface.size(); i++) {
            if (surface.get(i).x() < surface.get(i - 1).x()) {
                return false;
            }
        }
        return true;
    }

    private static Reading refused(String file, String found, String expected) {
        return new Reading(Optional.empty(), List.of(problem(file, 0, found, expected)));
    }

    private static InputProblem problem(String file, int line, String found, String expected) {
        return new InputProblem(Severity.STOP, file, line, "", found, expected, "");
    }

    private static String shorten(String line) {
        return line.length() > 40 ? line.substring(0, 40) + "..." : line;
    }

    /**
     * What was read.
     *
     * @param airfoil the airfoil; empty where there are problems
     * @param problems what is wrong, with its line
     */
    public record Reading(Optional<Airfoil> airfoil, List<InputProblem> problems) {
        /** Copies the list. */
        public Reading {
            problems = List.copyOf(problems);
        }
    }
}
