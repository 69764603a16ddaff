package fayline.solver;

/**
 * How far one run of CP-SAT may go. With a deterministic limit, a seed and either one worker or {@code inTurns}, equal models
 * give equal answers; a CPU limit depends on the machine and its load.
 *
 * @param workers threads of the solver, at least 1
 * @param inTurns whether several workers take turns in a fixed order: slower, but repeatable
 * @param seed of the solver's chance
 * @param effortS limit in the solver's deterministic time, of the order of seconds; positive, infinite for none
 * @param cpuS limit in seconds of processor time of the whole process, all threads together, from the run's start; infinite
 *     for none
 */
public record RunLimits(int workers, boolean inTurns, int seed, double effortS, double cpuS) {
    /** Checks the ranges. */
    public RunLimits {
        if (workers < 1 || !(effortS > 0) || !(cpuS > 0)) {
            throw new IllegalArgumentException("workers " + workers + ", effort " + effortS + " s, CPU " + cpuS + " s");
        }
    }

    /** One worker, seed 1, no CPU limit: repeatable. */
    public static RunLimits ofEffort(double effortS) {
        return new RunLimits(1, false, 1, effortS, Double.POSITIVE_INFINITY);
    }

    /** So many workers at once, seed 1, no deterministic limit: not repeatable. */
    public static RunLimits ofCpu(int workers, double cpuS) {
        return new RunLimits(workers, false, 1, Double.POSITIVE_INFINITY, cpuS);
    }

    /** Several workers in a fixed order of turns. */
    public RunLimits withWorkersInTurns(int count) {
        return new RunLimits(count, count > 1, seed, effortS, cpuS);
    }

    /** Another seed. */
    public RunLimits withSeed(int other) {
        return new RunLimits(workers, inTurns, other, effortS, cpuS);
    }

    /** Another CPU limit. */
    public RunLimits withCpu(double otherCpuS) {
        return new RunLimits(workers, inTurns, seed, effortS, otherCpuS);
    }
}
