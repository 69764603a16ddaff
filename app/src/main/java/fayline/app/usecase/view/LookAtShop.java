package fayline.app.usecase.view;

import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.shop.UnreadableDefinitionException;
import fayline.app.usecase.view.Morning.Moves;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanSolver;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.record.RecordState;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Computes what the shop looks like now: results of every project, one plan over all, its audit, and what moved. The picture
 * is kept until an entry comes or a quarter of an hour has passed, so that pages answer at once.
 */
public final class LookAtShop {
    private static final Duration FRESH = Duration.ofMinutes(15);

    private final ShopRecord shop;
    private final PlanSolver planner;
    private final Morning morning;
    private Optional<Kept> kept = Optional.empty();
    private Optional<Plan> better = Optional.empty();
    private PlanOrigin origin = PlanOrigin.SERIAL;
    private volatile int turns;

    /** With the serial planner. */
    public LookAtShop(ShopRecord shop) {
        this(shop, new SerialPlanner());
    }

    /** With a planner. */
    public LookAtShop(ShopRecord shop, PlanSolver planner) {
        this.shop = shop;
        this.planner = planner;
        this.morning = new Morning(planner);
    }

    private record Kept(long seq, long quarter, Picture picture, Moves moves, Map<String, StoresOnce> stores) {
        private Kept(long seq, long quarter, Picture picture, Moves moves) {
            this(seq, quarter, picture, moves, new ConcurrentHashMap<>());
        }
    }

    /**
     * Looks.
     *
     * @param project the project to see; empty for the first
     * @return what is seen; empty while the shop has no such project
     * @throws UnreadableDefinitionException if the project's definition cannot be read
     */
    public Optional<ShopView> look(String project) {
        List<String> projects = shop.state().projects();
        if (projects.isEmpty() || (!project.isEmpty() && !projects.contains(project))) {
            return Optional.empty();
        }
        String chosen = project.isEmpty() ? projects.get(0) : project;
        shop.readDefinition(chosen);
        return kept().flatMap(k -> k.picture().project(chosen).map(s -> view(k, s)));
    }

    /**
     * What a search for a better plan begins with.
     *
     * @param work the work of all projects
     * @param plan the plan as it is
     * @param goal what the shop wants
     * @param definition hash of the definition
     * @param origin how the plan came about
     */
    public record Standing(Work work, Plan plan, PlanGoal goal, String definition, PlanOrigin origin) {}

    /** The plan as it stands; empty while no project can be read. */
    public synchronized Optional<Standing> standing() {
        return kept().map(Kept::picture)
                .map(p -> new Standing(p.work(), p.plan(), p.goal(), p.work().definition(), origin));
    }

    /**
     * Follows a better plan from now on, in its order and with its crews, as far as what happens allows.
     *
     * @param work the work that it is a plan of
     * @param plan the plan
     * @param by how it came about
     */
    public synchronized void follow(Work work, Plan plan, PlanOrigin by) {
        better = Optional.of(plan);
        origin = by;
        turns++;
        // The work stands as computed: only the plan is another.
        kept = kept.filter(k -> k.picture().work().isSame(work)).map(k -> {
            Picture p = noted(k.picture().following(List.of(plan)));
            return new Kept(k.seq(), k.quarter(), p, morning.moved(shop, p));
        });
    }

    /** How far the record is, and which plan and definition hold; asked often, so nothing is computed for it. */
    public Latest latest() {
        RecordState state = shop.state();
        return Latest.of(shop.origin(), state, turns);
    }

    private Optional<Kept> kept() {
        Instant now = shop.minute();
        // Before waiting for whoever computes: one picture is enough for all who asked before it was begun. Were each
        // to have the
        // newest, many readers beside one who writes would compute it once for every one of them.
        return atLeast(shop.state().work(), now);
    }

    private synchronized Optional<Kept> atLeast(long seq, Instant now) {
        long quarter = now.getEpochSecond() / FRESH.toSeconds();
        kept = kept.filter(k -> k.quarter() == quarter && k.seq() < seq)
                .flatMap(k -> k.picture()
                        .withEntries(shop.state(), now)
                        .map(p -> new Kept(p.record().work(), quarter, p, k.moves())))
                .or(() -> kept);
        if (kept.isEmpty() || kept.get().seq() < seq || kept.get().quarter() != quarter) {
            kept = Picture.of(shop, now, planner, better)
                    .map(this::noted)
                    .map(p -> new Kept(p.record().work(), quarter, p, morning.moved(shop, p)));
        }
        return kept;
    }

    /** Cards and acts from now on are those of the sets that are planned. */
    private Picture noted(Picture p) {
        p.projects().forEach(s -> shop.planSets(s.definition().facts().id(), s.sets(p.work())));
        return p;
    }

    private ShopView view(Kept k, Picture.Seen seen) {
        Picture p = k.picture();
        return new ShopView(
                p.now(),
                p.work().zone(),
                p.projects().stream()
                        .map(s -> s.definition().facts())
                        .map(f -> new ShopView.ProjectName(f.id(), f.name(), f.serial()))
                        .toList(),
                seen.definition(),
                seen.state(),
                seen.result(),
                p.rates(),
                p.work(),
                p.plan(),
                p.audit(),
                k.moves().told(),
                k.moves().steps(),
                p.record(),
                k.stores().computeIfAbsent(seen.definition().facts().id(), id -> new StoresOnce(seen, p.plan())),
                shop.problems(seen.definition().facts().id()));
    }
}
