package fayline.method.laminate.strength;

import fayline.method.laminate.Lamina;
import fayline.method.laminate.PlyStress;
import fayline.method.laminate.strength.FailureMode.Kind;
import fayline.method.laminate.strength.FailureMode.Signs;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A rule that says when a ply fails. Tsai-Hill takes the strengths by the signs of the stresses and has X twice in its product
 * term [jones1999] 2.9; Tsai-Wu states its product term as F12 = F12* sqrt(F11 F22) [tsai-wu1971], [tsai-hahn1980]; Hashin is
 * the plane form with the full shear term under fibre tension [hashin1980].
 */
public final class Criterion {
    /** The value of F12* that makes the product term that of a von Mises ellipse. */
    public static final double USUAL_F12 = -0.5;

    private final String name;
    private final Rule rule;
    private final double f12Star;

    private enum Rule {
        MAX_STRESS,
        MAX_STRAIN,
        TSAI_HILL,
        TSAI_WU,
        HASHIN
    }

    private Criterion(String name, Rule rule, double f12Star) {
        this.name = name;
        this.rule = rule;
        this.f12Star = f12Star;
    }

    /** Each stress against its own strength. */
    public static Criterion maxStress() {
        return new Criterion("maximum stress", Rule.MAX_STRESS, 0);
    }

    /** Each strain against its own limit. */
    public static Criterion maxStrain() {
        return new Criterion("maximum strain", Rule.MAX_STRAIN, 0);
    }

    /** One ellipse, strengths by the signs of the stresses. */
    public static Criterion tsaiHill() {
        return new Criterion("Tsai-Hill", Rule.TSAI_HILL, 0);
    }

    /**
     * One ellipsoid for all signs.
     *
     * @param f12Star product term as a share of sqrt(F11 F22), above -1 and below 1, else the surface is not closed
     * @throws IllegalArgumentException if it is outside
     */
    public static Criterion tsaiWu(double f12Star) {
        if (!(f12Star > -1 && f12Star < 1)) {
            throw new IllegalArgumentException("F12*: found " + f12Star + ", expected above -1 and below 1");
        }
        return new Criterion(String.format(Locale.ROOT, "Tsai-Wu, F12* = %s", f12Star), Rule.TSAI_WU, f12Star);
    }

    /** Fibre and matrix, pulled and pressed, each by a quadratic of its own. */
    public static Criterion hashin() {
        return new Criterion("Hashin", Rule.HASHIN, 0);
    }

    /** Its name in words. */
    public String name() {
        return name;
    }

    /** The modes of a ply. */
    List<FailureMode> modes(Lamina l, PlyStrength s, Optional<StrainLimits> limits) {
        return switch (rule) {
            case MAX_STRESS -> maxStressModes(s);
            case MAX_STRAIN -> maxStrain(l, limits.orElseGet(() -> StrainLimits.of(l, s)));
            case TSAI_HILL -> tsaiHill(s);
            case TSAI_WU -> List.of(tsaiWu(s));
            case HASHIN -> hashin(s);
        };
    }

    /**
     * The value that would be 1 at failure, at stresses as they are; 1 over it is not the strength ratio, and it can be negative.
     */
    public double index(Lamina l, PlyStrength s, PlyStress stress) {
        double most = Double.NEGATIVE_INFINITY;
        for (FailureMode m : modes(l, s, Optional.empty())) {
            if (m.isAsked(stress)) {
                most = Math.max(most, m.index(stress));
            }
        }
        return most;
    }

    static List<FailureMode> maxStressModes(PlyStrength s) {
        return List.of(
                FailureMode.linear("fibre tension", Kind.FIBRE, 1 / s.xtPa(), 0),
                FailureMode.linear("fibre compression", Kind.FIBRE, -1 / s.xcPa(), 0),
                FailureMode.linear("transverse tension", Kind.MATRIX, 0, 1 / s.ytPa()),
                FailureMode.linear("transverse compression", Kind.MATRIX, 0, -1 / s.ycPa()),
                FailureMode.shear(s.sPa()));
    }

    private static List<FailureMode> maxStrain(Lamina l, StrainLimits e) {
        double along = 1 / l.e1Pa();
        double across = 1 / l.e2Pa();
        double cross = -l.nu12() / l.e1Pa();
        return List.of(
                FailureMode.linear("fibre tension", Kind.FIBRE, along / e.e1t(), cross / e.e1t()),
                FailureMode.linear("fibre compression", Kind.FIBRE, -along / e.e1c(), -cross / e.e1c()),
                FailureMode.linear("transverse tension", Kind.MATRIX, cross / e.e2t(), across / e.e2t()),
                FailureMode.linear("transverse compression", Kind.MATRIX, -cross / e.e2c(), -across / e.e2c()),
                FailureMode.shear(l.g12Pa() * e.g12()));
    }

    private static List<FailureMode> tsaiHill(PlyStrength s) {
        return List.of(
                tsaiHill(s.xtPa(), s.ytPa(), s.sPa(), new Signs(1, 1)),
                tsaiHill(s.xtPa(), s.ycPa(), s.sPa(), new Signs(1, -1)),
                tsaiHill(s.xcPa(), s.ytPa(), s.sPa(), new Signs(-1, 1)),
                tsaiHill(s.xcPa(), s.ycPa(), s.sPa(), new Signs(-1, -1)));
    }

    private static FailureMode tsaiHill(double x, double y, double s, Signs when) {
        return new FailureMode("-", Kind.BY_SHARE, when, 0, 0, 1 / (x * x), 1 / (y * y), 1 / (s * s), -1 / (x * x));
    }

    private FailureMode tsaiWu(PlyStrength s) {
        double f11 = 1 / (s.xtPa() * s.xcPa());
        double f22 = 1 / (s.ytPa() * s.ycPa());
        return new FailureMode(
                "-",
                Kind.BY_SHARE,
                Signs.ANY,
                1 / s.xtPa() - 1 / s.xcPa(),
                1 / s.ytPa() - 1 / s.ycPa(),
                f11,
                f22,
                1 / (s.sPa() * s.sPa()),
                2 * f12Star * Math.sqrt(f11 * f22));
    }

    private static List<FailureMode> hashin(PlyStrength s) {
        double shear = 1 / (s.sPa() * s.sPa());
        double through = s.ycPa() / (2 * s.stPa());
        return List.of(
                new FailureMode(
                        "fibre tension", Kind.FIBRE, new Signs(1, 0), 0, 0, 1 / (s.xtPa() * s.xtPa()), 0, shear, 0),
                new FailureMode(
                        "fibre compression", Kind.FIBRE, new Signs(-1, 0), 0, 0, 1 / (s.xcPa() * s.xcPa()), 0, 0, 0),
                new FailureMode(
                        "matrix tension", Kind.MATRIX, new Signs(0, 1), 0, 0, 0, 1 / (s.ytPa() * s.ytPa()), shear, 0),
                new FailureMode(
                        "matrix compression",
                        Kind.MATRIX,
                        new Signs(0, -1),
                        0,
                        (through * through - 1) / s.ycPa(),
                        0,
                        1 / (4 * s.stPa() * s.stPa()),
                        shear,
                        0));
    }
}
