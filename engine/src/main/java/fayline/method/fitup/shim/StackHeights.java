package fayline.method.fitup.shim;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Every height that stacks of the stock reach, each with the fewest pieces. */
final class StackHeights {
    private static final int BESIDE = 3;
    private static final double SAME_MM = 1e-9;
    private static final double KEYS_PER_MM = 1e6;

    private final List<ShimStack> byHeight;

    StackHeights(ShimStock stock) {
        TreeMap<Long, List<Double>> reached = new TreeMap<>();
        reached.put(0L, List.of());
        List<Double> pieces = new ArrayList<>(stock.piecesMm());
        pieces.sort(Comparator.reverseOrder());
        List<List<Double>> level = List.of(List.of());
        for (int n = 0; n < stock.mostPieces(); n++) {
            List<List<Double>> next = new ArrayList<>();
            for (List<Double> stack : level) {
                for (double p : pieces) {
                    List<Double> more = new ArrayList<>(stack);
                    more.add(p);
                    if (reached.putIfAbsent(key(more), more) == null) {
                        next.add(more);
                    }
                }
            }
            level = next;
        }
        List<ShimStack> all = new ArrayList<>();
        for (List<Double> stack : reached.values()) {
            List<Double> sorted = new ArrayList<>(stack);
            sorted.sort(Collections.reverseOrder());
            all.add(sorted.isEmpty() ? ShimStack.NONE : new ShimStack(sum(sorted) + stock.tapeMm(), sorted));
        }
        byHeight = List.copyOf(all);
    }

    double highestMm() {
        return byHeight.get(byHeight.size() - 1).heightMm();
    }

    /** Up to three at or below a thickness and up to three above, lowest first. */
    List<ShimStack> beside(double thicknessMm) {
        int above = 0;
        while (above < byHeight.size() && byHeight.get(above).heightMm() <= thicknessMm + SAME_MM) {
            above++;
        }
        return byHeight.subList(Math.max(0, above - BESIDE), Math.min(byHeight.size(), above + BESIDE));
    }

    /** The nearest, the lower at a draw. */
    ShimStack nearest(double thicknessMm) {
        ShimStack best = byHeight.get(0);
        for (ShimStack s : byHeight) {
            if (Math.abs(s.heightMm() - thicknessMm) < Math.abs(best.heightMm() - thicknessMm) - SAME_MM) {
                best = s;
            }
        }
        return best;
    }

    private static long key(List<Double> stack) {
        return Math.round(sum(stack) * KEYS_PER_MM);
    }

    private static double sum(List<Double> stack) {
        return stack.stream().mapToDouble(p -> p).sum();
    }
}
