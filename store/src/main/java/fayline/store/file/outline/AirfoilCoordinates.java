package fayline.store.file.outline;

import fayline.basis.geometry.Outline.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads airfoil coordinates in two columns, chord 1, in both common orders: one run from the trailing edge over the upper face
 * to the leading edge and back below; or, after a line with the two counts, each face from the leading edge.
 */
final class AirfoilCoordinates {
    private static final Pattern PAIR =
            Pattern.compile("\\s*([-+]?[0-9.]+(?:[eE][-+]?\\d+)?)[\\s,;]+([-+]?[0-9.]+(?:[eE][-+]?\\d+)?)\\s*");

    private AirfoilCoordinates() {}

    /** The contour from the trailing edge over the upper face to the leading edge and back; lengths in chords. */
    static List<Point> read(String text) {
        List<Point> pairs = new ArrayList<>();
        String[] lines = text.split("\\r\\n|\\n|\\r", -1);
        for (int i = 0; i < lines.length; i++) {
            Matcher m = PAIR.matcher(lines[i]);
            if (m.matches()) {
                pairs.add(new Point(number(m.group(1), i), number(m.group(2), i)));
            } else if (!pairs.isEmpty() && !lines[i].isBlank()) {
                throw new UnreadableOutlineException(
                        "in line " + (i + 1) + " \"" + lines[i].strip() + "\"", "two numbers, x and y in chords", "");
            }
        }
        if (pairs.size() < 7) {
            throw new UnreadableOutlineException(pairs.size() + " points", "an airfoil of at least seven points", "");
        }
        List<Point> run = pairs.get(0).xM() > 1.5 && pairs.get(0).yM() > 1.5 ? faces(pairs) : pairs;
        for (Point p : run) {
            if (!(p.xM() >= -0.05 && p.xM() <= 1.05 && Math.abs(p.yM()) <= 1)) {
                throw new UnreadableOutlineException(
                        "a point " + p.xM() + " " + p.yM(), "x from 0 to 1 and y in chords", "divide by the chord");
            }
        }
        return run;
    }

    private static double number(String text, int line) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new UnreadableOutlineException("in line " + (line + 1) + " \"" + text + "\"", "a number", "");
        }
    }

    private static List<Point> faces(List<Point> pairs) {
        int upper = (int) Math.round(pairs.get(0).xM());
        int lower = (int) Math.round(pairs.get(0).yM());
        if (pairs.size() != 1 + upper + lower) {
            throw new UnreadableOutlineException(
                    pairs.size() - 1 + " points", upper + " and " + lower + " as the second line says", "");
        }
        List<Point> run = new ArrayList<>(pairs.subList(1, 1 + upper));
        Collections.reverse(run);
        run.addAll(pairs.subList(1 + upper + 1, pairs.size()));
        return run;
    }
}
