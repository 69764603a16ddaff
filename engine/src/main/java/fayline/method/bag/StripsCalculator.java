package fayline.method.bag;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * Strips from a roll: one where W is not more than the roll width w, else ceil((W - lap)/(w - lap) - 1e-9); both directions
 * (geometry). For peel ply, film, breather and bag; structural plies go only in their fibre direction and are never lapped
 * freely.
 */
public final class StripsCalculator {
    private static final double BINARY_GUARD = 1e-9;
    private static final int MOST = 100_000;

    private StripsCalculator() {}

    /** Answers the question. */
    public static StripsResult calculate(Strips q) {
        double w = q.neededWidth().metres();
        double l = q.length().metres();
        double roll = q.rollWidth().metres();
        double lap = q.lap().metres();
        if (!(w > 0 && l > 0 && lap >= 0 && roll > lap) || Math.max(w, l) / (roll - lap) > MOST) {
            return new StripsResult(
                    Optional.empty(),
                    Optional.empty(),
                    List.of(new Finding(
                            Severity.STOP,
                            "strips",
                            "Both sides must be above zero and the roll wider than the overlap: not covered.",
                            "geometry")));
        }
        return new StripsResult(Optional.of(lay(w, l, roll, lap)), Optional.of(lay(l, w, roll, lap)), List.of());
    }

    private static StripsResult.Lay lay(double width, double run, double roll, double lap) {
        int n = width <= roll * (1 + BINARY_GUARD) ? 1 : (int) Math.ceil((width - lap) / (roll - lap) - BINARY_GUARD);
        return new StripsResult.Lay(n, new Length(n * run));
    }
}
