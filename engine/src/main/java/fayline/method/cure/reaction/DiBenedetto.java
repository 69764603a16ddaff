package fayline.method.cure.reaction;

import fayline.method.cure.GlassTransition;
import java.util.OptionalDouble;

/**
 * DiBenedetto's relation [dibenedetto1987]: Tg = Tg0 + (Tginf - Tg0) lambda a / (1 - (1 - lambda) a), and its inverse
 * a = x / (lambda + (1 - lambda) x) with x = (Tg - Tg0)/(Tginf - Tg0). Linear in the differences, so that kelvins and degrees
 * Celsius give the same answer.
 */
final class DiBenedetto {
    private DiBenedetto() {}

    /** Whether the constants make sense: full above uncured, lambda in (0, 1]. */
    static boolean sound(GlassTransition g) {
        return g.full().kelvins() > g.uncured().kelvins() && g.lambda() > 0 && g.lambda() <= 1;
    }

    /** Glass transition in kelvins at a degree of cure, 0 to 1. */
    static double kelvinsAt(GlassTransition g, double degree) {
        double a = Math.min(1, Math.max(0, degree));
        return g.uncured().kelvins()
                + (g.full().kelvins() - g.uncured().kelvins()) * g.lambda() * a / (1 - (1 - g.lambda()) * a);
    }

    /** Degree of cure at a glass transition; empty below the uncured or above the full one. */
    static OptionalDouble degreeAt(GlassTransition g, double kelvins) {
        double x = (kelvins - g.uncured().kelvins())
                / (g.full().kelvins() - g.uncured().kelvins());
        if (x < -1e-12 || x > 1 + 1e-12) {
            return OptionalDouble.empty();
        }
        double within = Math.min(1, Math.max(0, x));
        return OptionalDouble.of(within / (g.lambda() + (1 - g.lambda()) * within));
    }

    /** The degree of cure beyond which a resin at a temperature no longer reacts; 1 where the cap does not bind. */
    static double stallDegree(GlassTransition g, double kelvins) {
        double tg = kelvins + g.stallAbove().kelvins();
        if (tg >= g.full().kelvins()) {
            return 1;
        }
        return degreeAt(g, tg).orElse(0);
    }
}
