package fayline.app.usecase.better;

import fayline.app.usecase.better.Progress.Reached;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.LookAtShop.Standing;
import fayline.app.usecase.view.PlanOrigin;
import fayline.app.usecase.view.PlanOrigin.Kind;
import fayline.flow.audit.BrokenRule;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.planner.PlanImprover;
import fayline.flow.planner.PlanImprover.Improved;
import fayline.flow.planner.PlanImprover.Limits;
import fayline.flow.planner.PlanImprover.Watch;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/**
 * Searches for a better plan in the background, one search at a time. Each better plan that the auditor finds clean is followed
 * at once; a stop keeps the best. Whoever listens hears of each step.
 */
public final class ImprovePlan implements AutoCloseable {
    private final LookAtShop looking;
    private final PlanImprover improver;
    private final LeastFinish least;
    private final List<Consumer<Progress>> listeners = new CopyOnWriteArrayList<>();
    private Optional<Search> search = Optional.empty();

    /** On a shop, with a searcher and a bound. */
    public ImprovePlan(LookAtShop looking, PlanImprover improver, LeastFinish least) {
        this.looking = looking;
        this.improver = improver;
        this.least = least;
    }

    /**
     * Begins, unless a search is under way.
     *
     * @param limits how far to search
     * @return whether it began
     */
    public synchronized boolean start(Limits limits) {
        if (search.filter(s -> s.progress.running()).isPresent()) {
            return false;
        }
        Optional<Standing> standing = looking.standing();
        search = standing.map(s -> new Search(s, limits));
        search.ifPresent(Search::begin);
        return standing.isPresent();
    }

    /** Stops the search under way, if there is one; the best plan is kept. */
    public synchronized void stop() {
        search.ifPresent(s -> s.asked = true);
    }

    /** How the search under way stands, or the last one; empty where none was made since the start. */
    public synchronized Optional<Progress> progress() {
        return search.map(s -> s.progress);
    }

    /**
     * Listens.
     *
     * @param listener hears of each step, from the searching thread
     * @return ends the listening
     */
    public Runnable listen(Consumer<Progress> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** Stops, and waits for the end. */
    @Override
    public void close() {
        stop();
        await();
    }

    /** Waits for the end of the search under way, if there is one. */
    void await() {
        Optional<Search> last;
        synchronized (this) {
            last = search;
        }
        last.ifPresent(Search::await);
    }

    private static Reached reached(Plan plan, PlanScore score) {
        return new Reached(score, plan.finish());
    }

    private final class Search implements Watch {
        private final Standing standing;
        private final Limits limits;
        private final PlanAuditor auditor = new PlanAuditor();
        private final List<Reached> found = new ArrayList<>();
        private Optional<Plan> best = Optional.empty();
        private final Thread thread = new Thread(this::run, "better-plan");
        private volatile boolean asked;
        private volatile Progress progress;

        Search(Standing standing, Limits limits) {
            this.standing = standing;
            this.limits = limits;
            Reached base =
                    reached(standing.plan(), new PlanScorer(standing.work(), standing.goal()).score(standing.plan()));
            progress =
                    new Progress(true, standing.work(), base, base, Optional.empty(), List.of(), standing.origin(), "");
            thread.setDaemon(true);
        }

        void begin() {
            thread.start();
        }

        void await() {
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        private void run() {
            try {
                // First, so that each better plan is seen beside what none can beat.
                tell(progress.bounded(least.of(standing.work(), standing.plan())));
                Improved improved = improver.improve(standing.work(), standing.plan(), standing.goal(), limits, this);
                over(improved.stopped() ? Kind.STOPPED_BY_HAND : Kind.SEARCHED, "");
            } catch (UncheckedIOException | UnsatisfiedLinkError e) {
                over(
                        Kind.BROKEN_OFF,
                        "The solver's library cannot be loaded on this machine. The plan stays as it is.");
            } catch (RuntimeException e) {
                over(Kind.BROKEN_OFF, "The search broke off. The best plan so far is kept.");
                throw e;
            }
        }

        /** The best plan is followed already; now it is known how the search that found it ended. */
        private void over(Kind kind, String fault) {
            PlanOrigin origin = best.isEmpty() ? standing.origin() : origin(kind);
            best.ifPresent(plan -> looking.follow(standing.work(), plan, origin));
            tell(progress.over(origin, fault));
        }

        private PlanOrigin origin(Kind kind) {
            return new PlanOrigin(kind, limits.effortS(), limits.seed());
        }

        private void tell(Progress now) {
            progress = now;
            listeners.forEach(l -> l.accept(now));
        }

        @Override
        public boolean counts(Plan plan) {
            return auditor.audit(standing.work(), plan).stream().allMatch(BrokenRule::admitted);
        }

        @Override
        public void better(Plan plan, PlanScore score) {
            found.add(reached(plan, score));
            best = Optional.of(plan);
            PlanOrigin origin = origin(Kind.SEARCHING);
            looking.follow(standing.work(), plan, origin);
            tell(progress.found(found, origin));
        }

        @Override
        public boolean stop() {
            return asked;
        }
    }
}
