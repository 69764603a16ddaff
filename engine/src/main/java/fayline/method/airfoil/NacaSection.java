package fayline.method.airfoil;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A NACA 4- or 5-digit section by its published equations, chord one, trailing edge open as published. Thickness and 4-digit
 * camber [naca460], 5-digit camber, plain and reflexed [naca537]; equations and constants as in [nasa-tm4741] (equations read
 * in secondary copies, the constants k1, k2/k1 recalled and checked by the ordinates and by zero moment in the tests).
 *
 * <p>4 digits MPTT: camber M percent at P tenths, thickness TT percent. 5 digits LPQTT: design lift 0.15 L, camber at P/20, Q 0
 * plain or 1 reflexed, thickness TT percent. P is 1 to 5, with reflex 2 to 5.
 */
public final class NacaSection {
    private static final Pattern FORM = Pattern.compile("(?:NACA[ -]?)?(\\d{4,5})", Pattern.CASE_INSENSITIVE);
    private static final double[] PLAIN_R = {0.0580, 0.1260, 0.2025, 0.2900, 0.3910};
    private static final double[] PLAIN_K1 = {361.400, 51.640, 15.957, 6.643, 3.230};
    private static final double[] REFLEX_R = {0.1300, 0.2170, 0.3180, 0.4410};
    private static final double[] REFLEX_K1 = {51.990, 15.793, 6.520, 3.191};
    private static final double[] REFLEX_RATIO = {0.000764, 0.00677, 0.0303, 0.1355};
    private static final double TABLE_LIFT = 0.3;

    private final String digits;
    private final double thickness;
    private final double camber;
    private final double place;
    private final double k1;
    private final double ratio;
    private final boolean reflexed;

    private NacaSection(String digits) {
        this.digits = digits;
        this.thickness = Integer.parseInt(digits.substring(digits.length() - 2)) / 100.0;
        int first = digits.charAt(0) - '0';
        int second = digits.charAt(1) - '0';
        if (digits.length() == 4) {
            camber = first / 100.0;
            place = second / 10.0;
            k1 = 0;
            ratio = 0;
            reflexed = false;
        } else {
            reflexed = digits.charAt(2) == '1';
            double scale = 0.15 * first / TABLE_LIFT;
            camber = 0;
            place = reflexed ? REFLEX_R[second - 2] : PLAIN_R[second - 1];
            k1 = scale * (reflexed ? REFLEX_K1[second - 2] : PLAIN_K1[second - 1]);
            ratio = reflexed ? REFLEX_RATIO[second - 2] : 0;
        }
    }

    /**
     * Reads a designation, with or without the word NACA.
     *
     * @param text as {@code 2412} or {@code NACA 23012}
     * @throws IllegalArgumentException if it is no such section; the message says what was expected
     */
    public static NacaSection of(String text) {
        Matcher m = FORM.matcher(text.trim());
        if (!m.matches()) {
            throw refuse(text, "four or five digits, as 2412 or 23012");
        }
        String d = m.group(1);
        if (d.endsWith("00")) {
            throw refuse(text, "a thickness above zero in the last two digits");
        }
        boolean symmetric = d.startsWith("00");
        if (d.length() == 4 && !symmetric && (d.charAt(0) == '0' || d.charAt(1) == '0')) {
            throw refuse(text, "both camber digits above zero, or both zero");
        }
        if (d.length() == 5) {
            char least = d.charAt(2) == '1' ? '2' : '1';
            if (d.charAt(0) == '0' || d.charAt(1) < least || d.charAt(1) > '5' || d.charAt(2) > '1') {
                throw refuse(
                        text,
                        "five digits with a first above zero, a second of 1 to 5 (2 to 5 with reflex), a third of 0 or 1");
            }
        }
        return new NacaSection(d);
    }

    private static IllegalArgumentException refuse(String text, String expected) {
        return new IllegalArgumentException("found NACA \"" + text + "\", expected " + expected);
    }

    /** The name, as {@code NACA 2412}. */
    public String name() {
        return "NACA " + digits;
    }

    /** Greatest thickness as a fraction of the chord. */
    public double thickness() {
        return thickness;
    }

    /**
     * Half the thickness at a station, measured square to the camber line.
     *
     * @param x station, 0 to 1
     */
    public double halfThickness(double x) {
        return 5 * thickness * (0.2969 * Math.sqrt(x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - x * 0.1015))));
    }

    /**
     * Height of the camber line.
     *
     * @param x station, 0 to 1
     */
    public double camber(double x) {
        if (digits.length() == 4) {
            if (camber == 0) {
                return 0;
            }
            return x < place
                    ? camber / (place * place) * (2 * place * x - x * x)
                    : camber / ((1 - place) * (1 - place)) * (1 - 2 * place + 2 * place * x - x * x);
        }
        double r = place;
        if (!reflexed) {
            return x < r ? k1 / 6 * (x * x * x - 3 * r * x * x + r * r * (3 - r) * x) : k1 * r * r * r / 6 * (1 - x);
        }
        double cube = Math.pow(x - r, 3) * (x < r ? 1 : ratio);
        return k1 / 6 * (cube - ratio * Math.pow(1 - r, 3) * x - r * r * r * x + r * r * r);
    }

    /**
     * Slope of the camber line.
     *
     * @param x station, 0 to 1
     */
    public double slope(double x) {
        if (digits.length() == 4) {
            if (camber == 0) {
                return 0;
            }
            double base = x < place ? place : 1 - place;
            return 2 * camber / (base * base) * (place - x);
        }
        double r = place;
        if (!reflexed) {
            return x < r ? k1 / 6 * (3 * x * x - 6 * r * x + r * r * (3 - r)) : -k1 * r * r * r / 6;
        }
        double square = 3 * (x - r) * (x - r) * (x < r ? 1 : ratio);
        return k1 / 6 * (square - ratio * Math.pow(1 - r, 3) - r * r * r);
    }

    /**
     * Points of both surfaces, crowded at both ends (cosine spacing).
     *
     * @param perSurface points on each surface; at least 3
     */
    public Airfoil points(int perSurface) {
        List<Airfoil.Station> upper = new ArrayList<>();
        List<Airfoil.Station> lower = new ArrayList<>();
        for (int i = 0; i < perSurface; i++) {
            double x = (1 - Math.cos(Math.PI * i / (perSurface - 1))) / 2;
            double y = halfThickness(x);
            double angle = Math.atan(slope(x));
            upper.add(new Airfoil.Station(x - y * Math.sin(angle), camber(x) + y * Math.cos(angle)));
            lower.add(new Airfoil.Station(x + y * Math.sin(angle), camber(x) - y * Math.cos(angle)));
        }
        return new Airfoil(name(), upper, lower);
    }
}
