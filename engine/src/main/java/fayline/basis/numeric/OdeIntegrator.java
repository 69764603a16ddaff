package fayline.basis.numeric;

import java.util.function.DoubleBinaryOperator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * Integrates one first-order rate law dy/dt = f(t, y) with error control (Dormand and Prince 8(5,3) [hairer1993], II.5) and can
 * stop exactly where y rises through a level, which a law with a jump there needs. The caller splits the span where the law
 * itself has a kink in t.
 */
public final class OdeIntegrator {
    private static final double LEAST_STEP_SHARE = 1e-12;
    private static final int MOST_EVALUATIONS = 400_000;

    private final double absoluteTolerance;
    private final double relativeTolerance;

    /**
     * Sets the error allowed per step.
     *
     * @param absoluteTolerance in the unit of y; positive
     * @param relativeTolerance as a share of y; positive
     */
    public OdeIntegrator(double absoluteTolerance, double relativeTolerance) {
        this.absoluteTolerance = absoluteTolerance;
        this.relativeTolerance = relativeTolerance;
    }

    /**
     * Integrates over a span.
     *
     * @param law dy/dt from t and y
     * @param t0 start
     * @param y0 value at the start
     * @param t1 end; after the start
     * @return the value at the end
     */
    public double integrate(DoubleBinaryOperator law, double t0, double y0, double t1) {
        return t1 <= t0 ? y0 : run(law, t0, y0, t1, Double.NaN).value();
    }

    /**
     * Integrates until y rises through a level, or to the end.
     *
     * @param law dy/dt from t and y
     * @param t0 start
     * @param y0 value at the start, below the level
     * @param t1 end; after the start
     * @param level the level
     * @return where the integration stopped
     */
    public Stop integrateUntil(DoubleBinaryOperator law, double t0, double y0, double t1, double level) {
        return t1 <= t0 ? new Stop(t0, y0, false) : run(law, t0, y0, t1, level);
    }

    private Stop run(DoubleBinaryOperator law, double t0, double y0, double t1, double level) {
        double span = t1 - t0;
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(span * LEAST_STEP_SHARE, span, absoluteTolerance, relativeTolerance);
        integrator.setMaxEvaluations(MOST_EVALUATIONS);
        Level detector = new Level(level, span);
        if (!Double.isNaN(level)) {
            integrator.addEventDetector(detector);
        }
        ODEStateAndDerivative end = integrator.integrate(new Law(law), new ODEState(t0, new double[] {y0}), t1);
        return new Stop(end.getTime(), end.getPrimaryState()[0], detector.reached);
    }

    /**
     * Where an integration stopped.
     *
     * @param time the time
     * @param value the value there
     * @param reached whether it stopped because the level was reached
     */
    public record Stop(double time, double value, boolean reached) {}

    private record Law(DoubleBinaryOperator rate) implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return 1;
        }

        @Override
        public double[] computeDerivatives(double t, double[] y) {
            return new double[] {rate.applyAsDouble(t, y[0])};
        }
    }

    private static final class Level implements ODEEventDetector {
        private static final int MOST_ITERATIONS = 100;
        private static final double TIME_SHARE = 1e-13;

        private final double level;
        private final double span;
        private boolean reached;

        Level(double level, double span) {
            this.level = level;
            this.span = span;
        }

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return (state, forward) -> span;
        }

        @Override
        public int getMaxIterationCount() {
            return MOST_ITERATIONS;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, span * TIME_SHARE, 0, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) -> {
                reached = true;
                return Action.STOP;
            };
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            return state.getPrimaryState()[0] - level;
        }
    }
}
