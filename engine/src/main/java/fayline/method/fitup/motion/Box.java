package fayline.method.fitup.motion;

import fayline.basis.numeric.optimum.LinearRows;
import java.util.ArrayList;
import java.util.List;

/**
 * How far the unknowns of a move may go, turns brought to shifts by the scale length, in mm.
 *
 * @param low least of each
 * @param high most of each
 */
public record Box(List<Double> low, List<Double> high) {
    /** Stands for no limit where a search needs one: ten metres. */
    private static final double NO_LIMIT_MM = 1e4;

    /** Copies the lists. */
    public Box {
        low = List.copyOf(low);
        high = List.copyOf(high);
    }

    /** The same with every limit finite. */
    public Box finite() {
        return new Box(
                low.stream().map(v -> Math.max(-NO_LIMIT_MM, v)).toList(),
                high.stream().map(v -> Math.min(NO_LIMIT_MM, v)).toList());
    }

    /** The same with further unknowns behind, between nothing and a most. */
    public Box with(double... mostMm) {
        List<Double> low = new ArrayList<>(this.low);
        List<Double> high = new ArrayList<>(this.high);
        for (double m : mostMm) {
            low.add(0.0);
            high.add(m);
        }
        return new Box(low, high);
    }

    /** The least of each. */
    public double[] lows() {
        return low.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The most of each. */
    public double[] highs() {
        return high.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** As rows to add others to. */
    public LinearRows.Builder rows() {
        return LinearRows.within(lows(), highs());
    }
}
