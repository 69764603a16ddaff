package fayline.flow.project.fit;

import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.Stop;
import fayline.method.fitup.shim.ShimStock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the part may be held.
 *
 * @param points places where the part is held off its neighbour, and where shims go
 * @param schemes ways to locate it, to be compared
 * @param chosen the scheme the lead has chosen, by name; empty where none is
 * @param shims the pieces at hand, where they are named
 */
public record FitHolding(List<Point> points, List<Scheme> schemes, String chosen, Optional<ShimStock> shims) {
    /** Nothing said. */
    public static final FitHolding NONE = new FitHolding(List.of(), List.of(), "", Optional.empty());

    /** Copies the lists. */
    public FitHolding {
        points = List.copyOf(points);
        schemes = List.copyOf(schemes);
    }

    /**
     * A place where the part is held.
     *
     * @param stop where and which way
     * @param clearanceMm room between part and stop as the part lies now; empty where the gap there is taken
     */
    public record Point(Stop stop, OptionalDouble clearanceMm) {}
}
