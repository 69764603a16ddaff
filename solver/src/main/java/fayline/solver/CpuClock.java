package fayline.solver;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;

/** Processor time of this process, all its threads together. On a loaded machine it is fairer than the clock on the wall. */
public final class CpuClock {
    private static final double NANOS = 1e9;

    private CpuClock() {}

    /** Seconds used since the process began; the wall's where the machine does not tell. */
    public static double usedS() {
        long ns = ManagementFactory.getOperatingSystemMXBean() instanceof OperatingSystemMXBean bean
                ? bean.getProcessCpuTime()
                : -1;
        return (ns >= 0 ? ns : System.nanoTime()) / NANOS;
    }
}
