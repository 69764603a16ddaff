package fayline.app.usecase.net;

import fayline.flow.audit.net.NetAuditor;
import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.NetAnswer;
import fayline.solver.CpSatLibrary;
import fayline.solver.CpuClock;
import fayline.solver.net.NetLimits;
import fayline.solver.net.NetSolver;
import java.nio.file.Path;
import java.util.List;

/** Schedules nets; no schedule leaves it that the auditor has not passed. */
public final class ScheduleNet {
    private final NetSolver solver;

    /**
     * Loads the solver's library at once, so that it counts for no net.
     *
     * @param library folder into which the library is unpacked where it is not yet
     * @throws java.io.UncheckedIOException if it cannot be unpacked
     * @throws UnsatisfiedLinkError if it cannot be loaded
     */
    public ScheduleNet(Path library) {
        CpSatLibrary cpSat = new CpSatLibrary(library);
        cpSat.load();
        solver = new NetSolver(cpSat);
    }

    /**
     * An answer and what it cost.
     *
     * @param answer the answer
     * @param cpuS processor seconds of all threads together
     */
    public record Timed(NetAnswer answer, double cpuS) {}

    /**
     * Searches with two searches side by side until they have used so much processor time together.
     *
     * @param net the net
     * @param cpuS processor seconds of all threads together, above 0
     * @throws IllegalStateException if the schedule found breaks the net, which would be a fault of ours
     */
    public Timed byCpu(Net net, double cpuS) {
        double beganS = CpuClock.usedS();
        NetAnswer answer = checked(net, solver.solve(net, NetLimits.ofCpu(cpuS)));
        return new Timed(answer, CpuClock.usedS() - beganS);
    }

    /** Searches repeatably, by deterministic effort. */
    public NetAnswer byEffort(Net net, double effortS) {
        return checked(net, solver.solve(net, NetLimits.ofEffort(effortS)));
    }

    private static NetAnswer checked(Net net, NetAnswer answer) {
        List<String> breaches =
                answer.starts().map(s -> NetAuditor.breaches(net, s)).orElse(List.of());
        if (!breaches.isEmpty()) {
            throw new IllegalStateException("the schedule found breaks the net: " + breaches.get(0));
        }
        return answer;
    }
}
