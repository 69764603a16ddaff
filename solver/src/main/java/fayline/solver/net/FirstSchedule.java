package fayline.solver.net;

import com.google.ortools.sat.SatParameters.SearchBranching;
import fayline.solver.CpSatLibrary;
import fayline.solver.RunAnswer;
import fayline.solver.RunLimits;
import fayline.solver.RunWatch;
import fayline.solver.SolverRun;

/** Looks for any schedule at all, beside the search for the shortest, where maximum lags make even that hard. */
final class FirstSchedule {
    private FirstSchedule() {}

    static void search(CpSatLibrary library, Compact net, Incumbent best, RunLimits limits) {
        NetModel model = new NetModel(net, net.most());
        RunWatch watch = new RunWatch() {
            @Override
            public boolean stop() {
                return best.found() || best.closed();
            }
        };
        RunAnswer answer = SolverRun.of(
                library,
                model.model(),
                limits,
                watch,
                p -> p.setLinearizationLevel(0)
                        .setSearchBranching(SearchBranching.PORTFOLIO_WITH_QUICK_RESTART_SEARCH));
        if (answer.found()) {
            best.offer(model.starts(answer::value));
        } else if (answer.infeasible()) {
            best.none();
        }
    }
}
