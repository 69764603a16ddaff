package fayline.method.laminate.strength;

import fayline.method.laminate.Lamina;
import fayline.method.laminate.Laminate;
import fayline.method.laminate.Ply;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Progressive failure by ply discount [jones1999] 4.5: where the matrix of a ply fails, its E2, G12 and nu12 fall to a share of
 * what they were; where fibres fail, E1 too. The load is then taken up again by what is left, until no ply has fibres. A ply
 * whose matrix is gone is asked again by maximum stress: where it must still carry across or in shear what it cannot, as a stack
 * of one direction must, it is gone whole. Residual stress is reckoned anew with what is left.
 * Crude and mostly on the safe side for matrix failures; the order of failures matters more than the last number.
 */
public final class LastPlyCalculator {
    /** What is left of a property of a failed ply, unless told otherwise. */
    public static final double USUAL_SHARE = 0.01;

    private LastPlyCalculator() {}

    private enum State {
        WHOLE,
        MATRIX_GONE,
        FIBRES_GONE
    }

    /**
     * Reckons.
     *
     * @param question the stack and its load
     * @param share what is left of a property of a failed ply, above 0 and below 1
     * @throws IllegalArgumentException if the share is outside
     */
    public static LastPlyResult calculate(Strength question, double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException("share: found " + share + ", expected above 0 and below 1");
        }
        int n = question.plies().size();
        State[] states = new State[n];
        Arrays.fill(states, State.WHOLE);
        List<PlyFailure> steps = new ArrayList<>();
        double level = 0;
        Optional<PlyFailure> next = next(question, states, share);
        while (next.isPresent()) {
            PlyFailure f = next.get();
            level = Math.max(level, f.ratio());
            boolean whole = states[f.ply()] == State.WHOLE;
            states[f.ply()] = whole && !f.fibre() ? State.MATRIX_GONE : State.FIBRES_GONE;
            steps.add(new PlyFailure(f.ply(), f.face(), level, f.mode(), f.fibre()));
            if (isLost(question, states)) {
                return new LastPlyResult(steps, level, true);
            }
            next = next(question, states, share);
        }
        return new LastPlyResult(steps, level, false);
    }

    private static boolean isLost(Strength q, State[] states) {
        for (int k = 0; k < states.length; k++) {
            if (q.plies().get(k).strength().isPresent() && states[k] != State.FIBRES_GONE) {
                return false;
            }
        }
        return true;
    }

    private static Optional<PlyFailure> next(Strength q, State[] states, double share) {
        List<Ply> left = new ArrayList<>();
        for (int k = 0; k < states.length; k++) {
            Ply p = q.plies().get(k).ply();
            left.add(new Ply(left(p.lamina(), states[k], share), p.thicknessM(), p.angleDeg()));
        }
        PlyLimits limits = new PlyLimits(Laminate.of(left), q.load());
        Optional<PlyFailure> first = Optional.empty();
        for (int k = 0; k < states.length; k++) {
            StrongPly p = q.plies().get(k);
            if (p.strength().isEmpty() || states[k] == State.FIBRES_GONE) {
                continue;
            }
            PlyStrength s = p.strength().get();
            List<FailureMode> modes = states[k] == State.WHOLE
                    ? q.criterion().modes(p.ply().lamina(), s, p.limits())
                    : Criterion.maxStressModes(s);
            Optional<PlyFailure> f = limits.ofPly(k, modes, s);
            if (f.isPresent()
                    && (first.isEmpty() || f.get().ratio() < first.get().ratio())) {
                first = f;
            }
        }
        return first;
    }

    private static Lamina left(Lamina l, State state, double share) {
        if (state == State.WHOLE) {
            return l;
        }
        double along = state == State.FIBRES_GONE ? share : 1;
        return new Lamina(
                l.e1Pa() * along,
                l.e2Pa() * share,
                l.g12Pa() * share,
                l.nu12() * share,
                l.alpha1PerK(),
                l.alpha2PerK(),
                true);
    }
}
