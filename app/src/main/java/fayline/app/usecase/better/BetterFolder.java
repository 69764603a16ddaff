package fayline.app.usecase.better;

import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.LookAtShop.Standing;
import fayline.app.usecase.view.PlanOrigin;
import fayline.app.usecase.view.PlanOrigin.Kind;
import fayline.app.usecase.view.ShopView;
import fayline.flow.audit.BrokenRule;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.planner.PlanImprover;
import fayline.flow.planner.PlanImprover.Improved;
import fayline.flow.planner.PlanImprover.Limits;
import fayline.flow.planner.PlanImprover.Watch;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import java.time.Duration;
import java.util.Optional;

/** A bare folder's plan made better within a limit. Writes nothing. */
public final class BetterFolder {
    private BetterFolder() {}

    /**
     * What came of it.
     *
     * @param view the folder with the best plan
     * @param origin how that came about
     * @param before the score of the plan that was begun with
     * @param after the score of the best
     */
    public record Bettered(ShopView view, PlanOrigin origin, PlanScore before, PlanScore after) {}

    /**
     * Searches, and waits for the end.
     *
     * @param looking the folder, opened
     * @param improver who searches
     * @param limits how far
     * @param time after how long the clock stops the search; empty for never
     * @return the best; the plan itself where none is better
     */
    public static Bettered search(LookAtShop looking, PlanImprover improver, Limits limits, Optional<Duration> time) {
        Standing standing = looking.standing().orElseThrow();
        long begun = System.nanoTime();
        Watch watch = new Watch() {
            @Override
            public boolean counts(Plan plan) {
                return new PlanAuditor().audit(standing.work(), plan).stream().allMatch(BrokenRule::admitted);
            }

            @Override
            public boolean stop() {
                return time.filter(t -> System.nanoTime() - begun > t.toNanos()).isPresent();
            }
        };
        Improved improved = improver.improve(standing.work(), standing.plan(), standing.goal(), limits, watch);
        Kind kind = improved.stopped() ? Kind.STOPPED_BY_CLOCK : Kind.SEARCHED;
        PlanOrigin origin = new PlanOrigin(kind, limits.effortS(), limits.seed());
        looking.follow(standing.work(), improved.plan(), origin);
        return new Bettered(
                looking.look("").orElseThrow(),
                origin,
                new PlanScorer(standing.work(), standing.goal()).score(standing.plan()),
                improved.score());
    }
}
