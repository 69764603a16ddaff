package fayline.method.drive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Pairs of pulleys near a wanted ratio, nearest first; among equals the larger pulleys, which bend the belt less. */
public final class PulleyPairs {
    private PulleyPairs() {}

    /**
     * A pair.
     *
     * @param driverTeeth on the engine's side
     * @param drivenTeeth on the propeller's side
     */
    public record Pair(int driverTeeth, int drivenTeeth) {
        /** Turns of the engine for one of the propeller. */
        public double ratio() {
            return drivenTeeth / (double) driverTeeth;
        }
    }

    /**
     * The nearest pairs.
     *
     * @param wanted ratio wanted; above nought
     * @param teeth what can be had, on either side
     * @param most how many pairs
     */
    public static List<Pair> near(double wanted, List<Integer> teeth, int most) {
        if (!(wanted > 0)) {
            throw new IllegalArgumentException("a ratio is above nought, found " + wanted);
        }
        List<Pair> all = new ArrayList<>();
        for (int driver : teeth) {
            for (int driven : teeth) {
                all.add(new Pair(driver, driven));
            }
        }
        all.sort(Comparator.comparingDouble((Pair p) -> Math.abs(Math.log(p.ratio() / wanted)))
                .thenComparing(p -> -p.driverTeeth())
                .thenComparing(Pair::drivenTeeth));
        return List.copyOf(all.subList(0, Math.min(most, all.size())));
    }
}
