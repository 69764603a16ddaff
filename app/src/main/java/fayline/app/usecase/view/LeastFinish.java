package fayline.app.usecase.view;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanBound;
import fayline.flow.planner.PlanImprover;
import fayline.solver.CpSatBound;
import fayline.solver.CpSatLibrary;
import fayline.solver.shop.ShopPlanner;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/** The moment before which no plan can finish. It takes seconds, so it is computed when asked for and kept for its plan. */
public final class LeastFinish {
    /** Deterministic seconds: the demonstration's bound moved no more after one. */
    private static final double EFFORT = 2;

    private final PlanBound bound;
    private final Optional<PlanImprover> improver;
    private Optional<Kept> kept = Optional.empty();

    private record Kept(Work work, Plan plan, Optional<Instant> least) {}

    /**
     * With the native solver.
     *
     * @param library folder into which its library is unpacked at the first question
     */
    public LeastFinish(Path library) {
        this(new CpSatLibrary(library));
    }

    private LeastFinish(CpSatLibrary library) {
        bound = new CpSatBound(library, EFFORT);
        improver = Optional.of(new ShopPlanner(library));
    }

    /** With some bound. */
    public LeastFinish(PlanBound bound) {
        this.bound = bound;
        improver = Optional.empty();
    }

    /** Who searches for better plans with the same solver; empty where there is none. */
    public Optional<PlanImprover> improver() {
        return improver;
    }

    /**
     * Asks.
     *
     * @return the bound; empty where nothing is planned or this machine cannot compute it
     */
    public synchronized Optional<Instant> of(Work work, Plan plan) {
        if (kept.filter(k -> k.plan().equals(plan) && k.work().equals(work)).isEmpty()) {
            kept = Optional.of(new Kept(work, plan, bound.earliestFinish(work, plan)));
        }
        return kept.flatMap(Kept::least);
    }
}
