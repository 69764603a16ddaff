package fayline.solver.net;

/**
 * How long a search may take. By effort it is repeatable: the same net, seed and effort give the same answer. By processor time
 * two searches run side by side and the answer depends on the machine.
 *
 * @param effortS in deterministic seconds, of the order of seconds; infinite when by processor time
 * @param cpuS processor seconds of the whole process together; infinite when by effort
 * @param seed of chance
 */
public record NetLimits(double effortS, double cpuS, int seed) {
    /** Checks that exactly one limit is set. */
    public NetLimits {
        if (!(effortS > 0) || !(cpuS > 0) || Double.isInfinite(effortS) == Double.isInfinite(cpuS)) {
            throw new IllegalArgumentException("effort " + effortS + " s, CPU " + cpuS + " s");
        }
    }

    /** By effort, seed 1. */
    public static NetLimits ofEffort(double effortS) {
        return new NetLimits(effortS, Double.POSITIVE_INFINITY, 1);
    }

    /** By processor time, seed 1. */
    public static NetLimits ofCpu(double cpuS) {
        return new NetLimits(Double.POSITIVE_INFINITY, cpuS, 1);
    }

    boolean byEffort() {
        return Double.isFinite(effortS);
    }
}
