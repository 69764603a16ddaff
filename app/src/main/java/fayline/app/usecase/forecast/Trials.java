package fayline.app.usecase.forecast;

import fayline.app.usecase.view.ShopView;
import fayline.flow.forecast.PlanForecast;
import fayline.flow.forecast.TrialPlans;
import fayline.flow.plan.Work;
import fayline.flow.planner.SerialPlanner;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/** Makes trial plans behind the page and keeps them until the work or the question changes. */
public final class Trials {
    /** How many trial plans make a forecast: P80 is then good to about two percent of probability. */
    public static final int ENOUGH = 200;

    private static final long SEED = 1;

    private final Executor executor;
    private Optional<Kept> kept = Optional.empty();

    private record Key(Work work, ForecastQuestion question) {}

    private record Kept(Key key, AtomicInteger asked, CompletableFuture<PlanForecast> result, AtomicInteger stop) {}

    /** Trials on a thread of their own. */
    public Trials() {
        this(Executors.newSingleThreadExecutor(r -> {
            Thread t = new Thread(r, "trial plans");
            t.setDaemon(true);
            return t;
        }));
    }

    /** Trials on an executor. */
    public Trials(Executor executor) {
        this.executor = executor;
    }

    /**
     * How far the trials are.
     *
     * @param done trials made
     * @param of trials wanted
     * @param forecast the forecast, once all are made
     */
    public record Progress(int done, int of, Optional<PlanForecast> forecast) {}

    /** Looks how far the trials for a shop are; begins them where they are not running yet. */
    public synchronized Progress look(ShopView view) {
        Key key = new Key(view.work(), ForecastQuestion.of(view));
        if (kept.filter(k -> k.key().equals(key)).isEmpty()) {
            kept.ifPresent(k -> k.stop().set(1));
            AtomicInteger asked = new AtomicInteger();
            AtomicInteger stop = new AtomicInteger();
            CompletableFuture<PlanForecast> result =
                    CompletableFuture.supplyAsync(() -> run(key, asked, stop), executor);
            kept = Optional.of(new Kept(key, asked, result, stop));
        }
        Kept k = kept.orElseThrow();
        int done = Math.max(0, Math.min(ENOUGH, k.asked().get() - 1));
        try {
            return k.result().isDone()
                    ? new Progress(ENOUGH, ENOUGH, Optional.of(k.result().join()))
                    : new Progress(done, ENOUGH, Optional.empty());
        } catch (CompletionException | CancellationException e) {
            kept = Optional.empty();
            throw e;
        }
    }

    /** Makes all trials for a shop now. */
    public static PlanForecast all(ShopView view, int trials) {
        ForecastQuestion q = ForecastQuestion.of(view);
        return new TrialPlans(view.work(), q.spreads(), q.targets(), SerialPlanner.quick(), SEED)
                .run(trials, () -> false);
    }

    private static PlanForecast run(Key key, AtomicInteger asked, AtomicInteger stop) {
        return new TrialPlans(
                        key.work(), key.question().spreads(), key.question().targets(), SerialPlanner.quick(), SEED)
                .run(ENOUGH, () -> {
                    asked.incrementAndGet();
                    return stop.get() > 0;
                });
    }
}
