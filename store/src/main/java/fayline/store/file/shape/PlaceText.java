package fayline.store.file.shape;

import fayline.method.fitup.Spot;
import fayline.method.fitup.Vector;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Places and directions in the plane of a part, and lists of them, as texts. */
public final class PlaceText {
    private static final String NUMBER = "-?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)";
    private static final String PLAIN = "(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)";
    private static final String PAIR = "\\s*" + NUMBER + "\\s+" + NUMBER + "\\s*";

    /** A place, in mm or with its unit. */
    public static final Text PLACE = new Text(
            "a place as x y, such as \"-440 -180\", in mm or with a unit behind both",
            PAIR + "(?:mm|cm|m|in|ft)?\\s*",
            t -> place(t));
    /** A direction. */
    public static final Text DIRECTION =
            new Text("a direction as x y, such as \"0 -1\", not \"0 0\"", PAIR, t -> direction(t));
    /** A direction in the plane, or in space. */
    public static final Text WAY = new Text(
            "a direction as x y, such as \"0 -1\", or as x y out, such as \"0 -0.8 -0.6\", not all 0",
            PAIR + "(?:\\s" + NUMBER + "\\s*)?",
            t -> way(t));
    /** A direction in space. */
    public static final Text WAY_OUT = new Text(
            "a direction as x y out, such as \"0 -0.6 0.8\", not all 0", PAIR + "\\s" + NUMBER + "\\s*", t -> way(t));
    /** Places in order. */
    public static final Text PLACES = new Text(
            "places as x y, x y, ... without units, at least three", PAIR + "(?:," + PAIR + "){2,}", t -> places(t, 1));
    /** Corner radii. */
    public static final Text RADII = new Text(
            "one radius, or one for each corner with commas, such as \"60, 60, 20, 20\", without units",
            "\\s*" + PLAIN + "\\s*(?:,\\s*" + PLAIN + "\\s*)*",
            t -> numbers(t));
    /** Which points are corners. */
    public static final Text COUNTS = new Text(
            "numbers of points counted from 1, rising, such as \"1, 14, 30\"",
            "[1-9][0-9]{0,4}(?:\\s*,\\s*[1-9][0-9]{0,4})*",
            t -> rising(t));

    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)(mm|cm|m|in|ft)?\\s*");

    private PlaceText() {}

    /** A place; throws {@link RuntimeException} where it is none. */
    public static Spot place(String text) {
        Matcher m = WITH_UNIT.matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException(text);
        }
        return pair(m.group(1), m.group(2) == null ? 1 : unitMm(m.group(2)));
    }

    /** A direction; throws {@link RuntimeException} where it is none. */
    public static Spot direction(String text) {
        Spot d = pair(text, 1);
        if (!(Math.hypot(d.xMm(), d.yMm()) > 1e-9)) {
            throw new IllegalArgumentException(text);
        }
        return d;
    }

    /** A direction as two numbers, which lies in the plane, or as three; throws {@link RuntimeException} where it is none. */
    public static Vector way(String text) {
        String[] each = text.strip().split("\\s+", -1);
        Vector v = new Vector(
                Double.parseDouble(each[0]),
                Double.parseDouble(each[1]),
                each.length > 2 ? Double.parseDouble(each[2]) : 0);
        if (!(v.length() > 1e-9)) {
            throw new IllegalArgumentException(text);
        }
        return v;
    }

    /** Whether a direction that was checked has a third number. */
    public static boolean leadsOut(String text) {
        return text.strip().split("\\s+", -1).length > 2;
    }

    /**
     * Places in order.
     *
     * @param unitMm what one is in mm
     */
    public static List<Spot> places(String text, double unitMm) {
        List<Spot> all = new ArrayList<>();
        for (String one : text.split(",", -1)) {
            all.add(pair(one, unitMm));
        }
        return all;
    }

    /** Numbers with commas between. */
    public static List<Double> numbers(String text) {
        List<Double> all = new ArrayList<>();
        for (String one : text.split(",", -1)) {
            all.add(Double.parseDouble(one.strip()));
        }
        return all;
    }

    /** Rising whole numbers, each less one, so that they count from 0. */
    public static List<Integer> rising(String text) {
        List<Integer> all = new ArrayList<>();
        for (String one : text.split(",", -1)) {
            int n = Integer.parseInt(one.strip()) - 1;
            if (!all.isEmpty() && n <= all.get(all.size() - 1)) {
                throw new IllegalArgumentException(text);
            }
            all.add(n);
        }
        return all;
    }

    /** What one of a unit is in mm; 1 for none. */
    public static double unitMm(String unit) {
        return switch (unit) {
            case "cm" -> 10;
            case "m" -> 1000;
            case "in" -> 25.4;
            case "ft" -> 304.8;
            default -> 1;
        };
    }

    /** The place at a key of a mapping that was checked; empty where it was refused or is not there. */
    public static Optional<Spot> placeAt(Tree at, String key) {
        return at.get(key)
                .filter(t ->
                        t.form() == Tree.Form.SCALAR && PLACE.fault(t.text()).isEmpty())
                .map(t -> place(t.text()));
    }

    private static Spot pair(String text, double unitMm) {
        String[] two = text.strip().split("\\s+", -1);
        return new Spot(Double.parseDouble(two[0]) * unitMm, Double.parseDouble(two[1]) * unitMm);
    }
}
