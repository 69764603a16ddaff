package fayline.method.laminate;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the constants of one ply must keep, whoever gives them. The elastic rules are those of positive strain energy in a plate
 * [jones1999], 2.4 (recalled); that fibres are no softer than what lies across them is the naming of the axes, and the mistake a
 * copied table makes most.
 */
public final class LaminaRules {
    /** Round fibres of one size packed as closely as they go (hexagonal): pi/(2 sqrt 3). */
    public static final double CLOSEST_PACKING = Math.PI / (2 * Math.sqrt(3));

    private static final double LARGEST_EXPANSION = 1e-3;
    private static final double GIGA = 1e9;

    private LaminaRules() {}

    /**
     * The rules that elastic constants and expansions break.
     *
     * @param e1Pa modulus along the fibres, Pa
     * @param e2Pa modulus across, Pa
     * @param g12Pa shear modulus, Pa
     * @param nu12 Poisson's ratio, along to across
     * @param alpha1PerK expansion along, 1/K
     * @param alpha2PerK expansion across, 1/K
     * @param stifferAcross whether it is known that the ply is stiffer across than along, as a cloth may be
     * @return one problem a rule, each naming its field; empty where all are kept
     */
    public static List<InputProblem> ofLamina(
            double e1Pa,
            double e2Pa,
            double g12Pa,
            double nu12,
            double alpha1PerK,
            double alpha2PerK,
            boolean stifferAcross) {
        List<InputProblem> broken = new ArrayList<>();
        modulus(broken, "E1", e1Pa);
        modulus(broken, "E2", e2Pa);
        modulus(broken, "G12", g12Pa);
        if (broken.isEmpty()) {
            if (e2Pa > e1Pa && !stifferAcross) {
                broken.add(problem(
                        "E2",
                        giga(e2Pa) + " GPa, more than E1 = " + giga(e1Pa) + " GPa",
                        "E2 <= E1: axis 1 runs along the fibres",
                        "are the two exchanged? A cloth that is stiffer across says stifferAcross"));
            }
            double limit = Math.sqrt(e1Pa / e2Pa);
            if (!(Math.abs(nu12) < limit)) {
                broken.add(problem(
                        "nu12",
                        String.valueOf(nu12),
                        String.format(
                                Locale.ROOT, "|nu12| < sqrt(E1/E2) = %.4g, else strain energy is negative", limit),
                        ""));
            }
        }
        expansion(broken, "alpha1", alpha1PerK);
        expansion(broken, "alpha2", alpha2PerK);
        return List.copyOf(broken);
    }

    /** The rule that the thickness of a ply breaks, in metres. */
    public static List<InputProblem> ofThickness(double thicknessM) {
        return thicknessM > 0 && Double.isFinite(thicknessM)
                ? List.of()
                : List.of(problem(
                        "thickness",
                        String.format(Locale.ROOT, "%.6g mm", 1e3 * thicknessM),
                        "a thickness above 0",
                        ""));
    }

    /** The rule that a fibre fraction by volume breaks. */
    public static List<InputProblem> ofFibreFraction(String field, double fraction) {
        return fraction > 0 && fraction <= CLOSEST_PACKING
                ? List.of()
                : List.of(problem(
                        field,
                        String.valueOf(fraction),
                        String.format(
                                Locale.ROOT,
                                "above 0 and at most %.4f: round fibres packed as closely as they go",
                                CLOSEST_PACKING),
                        "wet lay-up reaches 0.3 to 0.5, prepreg some 0.6"));
    }

    /** Throws where a rule is broken. */
    static void keep(List<InputProblem> broken) {
        if (!broken.isEmpty()) {
            throw new IllegalArgumentException(broken.get(0).sentence());
        }
    }

    static InputProblem problem(String field, String found, String expected, String suggestion) {
        return new InputProblem(Severity.STOP, "", 0, field, found, expected, suggestion);
    }

    private static void modulus(List<InputProblem> broken, String field, double pa) {
        if (!(pa > 0) || !Double.isFinite(pa)) {
            broken.add(problem(field, giga(pa) + " GPa", "a modulus above 0", ""));
        }
    }

    private static void expansion(List<InputProblem> broken, String field, double perK) {
        if (!(Math.abs(perK) < LARGEST_EXPANSION)) {
            broken.add(problem(
                    field,
                    perK + " 1/K",
                    "less than 1e-3 1/K either way: no laminate expands so much",
                    "is it meant in 1e-6 1/K?"));
        }
    }

    private static String giga(double pa) {
        return String.format(Locale.ROOT, "%.5g", pa / GIGA);
    }
}
