package fayline.method.fitup.motion;

import fayline.basis.numeric.optimum.Equations;
import fayline.basis.numeric.optimum.LeastSquares;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Singular values of the rows, without weights, the turn brought to the size of a shift. A value at or below 1e-6 of the largest
 * counts as nothing (normals typed with few digits leave some 1e-7); one below 0.02 of it is weak (both common practice, no
 * source).
 */
public final class DeterminacyCalculator {
    /** Below this share of the largest singular value a motion is weak. */
    public static final double WEAK_SHARE = 0.02;

    private static final double NOISE = 1e-6;

    private DeterminacyCalculator() {}

    /**
     * Answers the question.
     *
     * @throws IllegalArgumentException if there is no row or two rows share an id
     */
    public static Determinacy calculate(List<FitRow> rows, Spot pivot) {
        MoveRows straight = MoveRows.of(rows, pivot);
        Equations equations = straight.equations().unweighted();
        LeastSquares.Fit fit = LeastSquares.fit(equations);
        List<Determinacy.FreeMotion> free = new ArrayList<>();
        for (List<Double> d : untangled(fit.directions().subList(fit.rank(), 3))) {
            Move m = direction(d, straight.scaleLengthMm());
            free.add(new Determinacy.FreeMotion(m, FreeMotionWords.free(m, straight, 3 - fit.rank())));
        }
        double ratio = fit.singularValues().get(2) / fit.singularValues().get(0);
        Optional<Determinacy.WeakMotion> weak = Optional.empty();
        if (fit.determined() && ratio < WEAK_SHARE) {
            Move m = direction(fit.directions().get(2), straight.scaleLengthMm());
            weak = Optional.of(new Determinacy.WeakMotion(
                    m,
                    FreeMotionWords.weak(m, straight),
                    ratio,
                    1 / fit.singularValues().get(2)));
        }
        return new Determinacy(
                fit.rank(),
                fit.singularValues(),
                straight.scaleLengthMm(),
                free,
                weak,
                straight.move(fit.point()),
                equations.sumSquares(fit.point()));
    }

    /** Of two free directions, the one that is a shift alone and the one square to it. */
    private static List<List<Double>> untangled(List<List<Double>> free) {
        if (free.size() != 2) {
            return free;
        }
        List<Double> a = free.get(0);
        List<Double> b = free.get(1);
        double turn = Math.hypot(a.get(2), b.get(2));
        if (turn < NOISE) {
            return free;
        }
        double c = b.get(2) / turn;
        double s = a.get(2) / turn;
        List<Double> shift = new ArrayList<>();
        List<Double> rest = new ArrayList<>();
        for (int j = 0; j < 3; j++) {
            shift.add(c * a.get(j) - s * b.get(j));
            rest.add(s * a.get(j) + c * b.get(j));
        }
        return List.of(shift, rest);
    }

    private static Move direction(List<Double> unknowns, double scale) {
        double x = unknowns.get(0);
        double y = unknowns.get(1);
        double t = unknowns.get(2);
        double most = Math.max(Math.abs(t), Math.max(Math.abs(x), Math.abs(y)));
        double leading = Math.abs(t) == most ? t : Math.abs(x) == most ? x : y;
        double size = Math.abs(t) == most ? Math.toRadians(1) * scale / leading : 1 / leading;
        // Adding nothing makes a negative zero a plain one.
        return new Move(clean(x, most) * size + 0.0, clean(y, most) * size + 0.0, clean(t, most) * size / scale + 0.0);
    }

    private static double clean(double value, double most) {
        return Math.abs(value) < NOISE * most ? 0 : value;
    }
}
