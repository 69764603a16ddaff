package fayline.store.file.outline;

import fayline.basis.geometry.Outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The contour of a NACA section of four or five digits, chord 1. Thickness and four-digit camber: NACA Report 460; five-digit
 * camber: NACA Report 537 as tabulated in NASA TM 4741.
 */
final class NacaContour {
    private static final Map<Integer, double[]> PLAIN = Map.of(
            10, new double[] {0.0580, 361.400},
            20, new double[] {0.1260, 51.640},
            30, new double[] {0.2025, 15.957},
            40, new double[] {0.2900, 6.643},
            50, new double[] {0.3910, 3.230});
    private static final Map<Integer, double[]> REFLEXED = Map.of(
            21, new double[] {0.1300, 51.990, 0.000764},
            31, new double[] {0.2170, 15.793, 0.00677},
            41, new double[] {0.3180, 6.520, 0.0303},
            51, new double[] {0.4410, 3.191, 0.1355});

    private final String digits;
    private final double thickness;

    private NacaContour(String digits) {
        this.digits = digits;
        this.thickness = Integer.parseInt(digits.substring(digits.length() - 2)) / 100.0;
        boolean known = digits.length() == 4
                || PLAIN.containsKey(Integer.parseInt(digits.substring(1, 3)))
                || REFLEXED.containsKey(Integer.parseInt(digits.substring(1, 3)));
        boolean camberPlaced = digits.length() == 5 || (digits.charAt(0) == '0') == (digits.charAt(1) == '0');
        if (thickness <= 0 || !known || !camberPlaced) {
            throw new UnreadableOutlineException(
                    "the number \"" + digits + "\"",
                    "a NACA number with a thickness and, of five digits, a camber line that is tabulated",
                    "such as \"2412\" or \"23012\"");
        }
    }

    /**
     * The contour from the trailing edge over the upper face to the leading edge and back, in chords.
     *
     * @param digits the number
     * @param points points on each face, closer together at both edges
     */
    static List<Point> of(String digits, int points) {
        NacaContour section = new NacaContour(digits);
        List<Point> run = new ArrayList<>();
        for (int i = points; i >= 0; i--) {
            run.add(section.at(i, points, 1));
        }
        for (int i = 1; i <= points; i++) {
            run.add(section.at(i, points, -1));
        }
        return run;
    }

    private Point at(int i, int points, int side) {
        double x = (1 - Math.cos(Math.PI * i / points)) / 2;
        double half = thickness
                / 0.2
                * (0.29690 * Math.sqrt(x)
                        - 0.12600 * x
                        - 0.35160 * x * x
                        + 0.28430 * x * x * x
                        - 0.10150 * x * x * x * x);
        double[] camber = digits.length() == 4 ? four(x) : five(x);
        double slope = Math.atan(camber[1]);
        return new Point(x - side * half * Math.sin(slope), camber[0] + side * half * Math.cos(slope));
    }

    /** Height and slope of the mean line of four digits. */
    private double[] four(double x) {
        double m = (digits.charAt(0) - '0') / 100.0;
        double p = (digits.charAt(1) - '0') / 10.0;
        if (m == 0) {
            return new double[] {0, 0};
        }
        double over = x < p ? p * p : (1 - p) * (1 - p);
        double y = m / over * ((x < p ? 0 : 1 - 2 * p) + 2 * p * x - x * x);
        return new double[] {y, 2 * m / over * (p - x)};
    }

    /** Height and slope of the mean line of five digits; the table is for a design lift of 0.3, the first digit 2. */
    private double[] five(double x) {
        int line = Integer.parseInt(digits.substring(1, 3));
        double scale = (digits.charAt(0) - '0') / 2.0;
        double[] c = PLAIN.getOrDefault(line, REFLEXED.getOrDefault(line, new double[] {0, 0}));
        double r = c[0];
        double k = c[1] * scale / 6;
        if (c.length == 2) {
            return x < r
                    ? new double[] {
                        k * (x * x * x - 3 * r * x * x + r * r * (3 - r) * x),
                        k * (3 * x * x - 6 * r * x + r * r * (3 - r))
                    }
                    : new double[] {k * r * r * r * (1 - x), -k * r * r * r};
        }
        double ratio = c[2];
        double tail = ratio * (1 - r) * (1 - r) * (1 - r);
        double forward = x < r ? 1 : ratio;
        double lead = (x - r) * (x - r) * (x - r);
        return new double[] {
            k * (forward * lead - tail * x - r * r * r * x + r * r * r),
            k * (3 * forward * (x - r) * (x - r) - tail - r * r * r)
        };
    }
}
