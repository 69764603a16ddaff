package fayline.method.laminate.strength;

import fayline.method.laminate.Laminate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * First ply failure: lamination theory with stress at both faces of every ply, the strength ratio R by solving the criterion for
 * it with the stress that temperature left held as it is [tsai-hahn1980]. The value of a criterion at the load as it acts is not
 * 1/R and is not used. Left out: edges, delamination, what plies do in place of one alone.
 */
public final class FirstPlyCalculator {
    private static final double TOGETHER = 1e-9;

    private FirstPlyCalculator() {}

    /** Reckons. */
    public static FirstPlyResult calculate(Strength question) {
        Laminate laminate =
                Laminate.of(question.plies().stream().map(StrongPly::ply).toList());
        PlyLimits limits = new PlyLimits(laminate, question.load());
        List<PlyFailure> byPly = new ArrayList<>();
        Optional<PlyFailure> first = Optional.empty();
        for (int k = 0; k < question.plies().size(); k++) {
            StrongPly p = question.plies().get(k);
            if (p.strength().isEmpty()) {
                continue;
            }
            PlyStrength s = p.strength().get();
            Optional<PlyFailure> f =
                    limits.ofPly(k, question.criterion().modes(p.ply().lamina(), s, p.limits()), s);
            if (f.isPresent()) {
                byPly.add(f.get());
                if (first.isEmpty() || f.get().ratio() < first.get().ratio() * (1 - TOGETHER)) {
                    first = f;
                }
            }
        }
        List<Integer> together = new ArrayList<>();
        for (PlyFailure f : byPly) {
            if (first.isPresent() && f.ratio() <= first.get().ratio() * (1 + TOGETHER)) {
                together.add(f.ply());
            }
        }
        return new FirstPlyResult(laminate, first, together, byPly);
    }
}
