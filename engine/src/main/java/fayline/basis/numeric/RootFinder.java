package fayline.basis.numeric;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * Roots of a function of one variable inside a bracket. Unit-less: the caller's units go in and come out. Bracketing n-th
 * order Brent method; for fixed points plain bisection, which cannot fail on a falling right side.
 */
public final class RootFinder {
    private static final int MOST_EVALUATIONS = 500;
    private static final int HALVINGS = 200;

    private RootFinder() {}

    /**
     * Finds where a continuous function changes sign.
     *
     * @param f the function
     * @param low lower end of the bracket
     * @param high upper end of the bracket
     * @param accuracy how near to the root the answer must be, in the unit of the variable
     * @return the root, or empty where the signs at both ends are equal or the function is no number on the way
     */
    public static OptionalDouble bracketed(DoubleUnaryOperator f, double low, double high, double accuracy) {
        double atLow = f.applyAsDouble(low);
        double atHigh = f.applyAsDouble(high);
        if (atLow == 0) {
            return OptionalDouble.of(low);
        }
        if (atHigh == 0) {
            return OptionalDouble.of(high);
        }
        if (!Double.isFinite(atLow) || !Double.isFinite(atHigh) || atLow > 0 == atHigh > 0) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(new BracketingNthOrderBrentSolver(accuracy, 5)
                    .solve(MOST_EVALUATIONS, f::applyAsDouble, low, high));
        } catch (MathRuntimeException e) {
            return OptionalDouble.empty();
        }
    }

    /**
     * Solves x = g(x) for a g that falls with x, by bisection.
     *
     * @param g the falling right side
     * @param low lower end; at or below the answer
     * @param high upper end
     * @return the fixed point; {@code high} where g is still above x there; empty where g is already below x at {@code low}
     */
    public static OptionalDouble fallingFixedPoint(DoubleUnaryOperator g, double low, double high) {
        if (!(g.applyAsDouble(low) >= low)) {
            return OptionalDouble.empty();
        }
        if (g.applyAsDouble(high) >= high) {
            return OptionalDouble.of(high);
        }
        double a = low;
        double b = high;
        for (int i = 0; i < HALVINGS && b - a > Math.ulp(b); i++) {
            double mid = a + (b - a) / 2;
            if (g.applyAsDouble(mid) >= mid) {
                a = mid;
            } else {
                b = mid;
            }
        }
        return OptionalDouble.of(a);
    }
}
