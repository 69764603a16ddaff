package fayline.app.web.better;

import fayline.app.usecase.act.PublishPlan;
import fayline.app.usecase.better.ImprovePlan;
import fayline.app.usecase.better.Progress;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.LookAtShop.Standing;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.planner.PlanImprover.Limits;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import fayline.flow.record.PublishedPlan;
import io.javalin.config.RoutesConfig;
import io.javalin.http.sse.SseClient;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** A better plan: what it is worth, a search with its progress, a stop that keeps the best, and telling the crew. */
public final class BetterPage implements Page {
    private static final String HERE = "/better";
    private static final int SHOWN = 12;
    private static final int MOST_EFFORT = 600;

    private final Sights sights;
    private final ShopRecord shop;
    private final LookAtShop looking;
    private final Optional<ImprovePlan> improving;

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record in which a plan is published
     * @param looking knows the plan that stands
     * @param improving searches; empty where this machine cannot
     */
    public BetterPage(Sights sights, ShopRecord shop, LookAtShop looking, Optional<ImprovePlan> improving) {
        this.sights = sights;
        this.shop = shop;
        this.looking = looking;
        this.improving = improving;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight));
        });
        routes.sse(HERE + "/news", this::news);
        routes.post(
                HERE + "/search",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> search(visit));
                },
                Asks.to(Act.PUBLISH_PLAN));
        routes.post(
                HERE + "/stop",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    improving.ifPresent(ImprovePlan::stop);
                    visit.say("The search stops; the best plan is kept.");
                    visit.lead(HERE);
                },
                Asks.to(Act.PUBLISH_PLAN));
        routes.post(
                HERE + "/tell",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> tell(visit, sight));
                },
                Asks.to(Act.PUBLISH_PLAN));
    }

    /** Says only that there is news: what it is, the page fetches for itself in the reader's own way. */
    private void news(SseClient client) {
        improving.ifPresent(i -> {
            client.keepAlive();
            BooleanSupplier stays = sights.stays(new Visit(client.ctx()));
            Runnable end = i.listen(p -> news(client, stays, p));
            client.onClose(end);
            i.progress().ifPresent(p -> news(client, stays, p));
        });
    }

    private static void news(SseClient client, BooleanSupplier stays, Progress p) {
        if (!stays.getAsBoolean()) {
            client.close();
            return;
        }
        client.sendEvent(p.running() ? "found" : "over", hours(p.best().score().total()));
    }

    private void search(Visit visit) {
        int effort = whole(visit, "effort", MOST_EFFORT);
        int seed = whole(visit, "seed", Integer.MAX_VALUE);
        ImprovePlan search = improving.orElseThrow(() -> new Refusal(
                422, "This machine cannot search for better plans.", List.of("The plan as it is can be used.")));
        visit.say(
                search.start(new Limits(effort, seed)) ? "The search is under way." : "A search is under way already.");
        visit.lead(HERE);
    }

    private static int whole(Visit visit, String name, int most) {
        try {
            int n = Integer.parseInt(visit.needed(name, name));
            if (n >= 1 && n <= most) {
                return n;
            }
        } catch (NumberFormatException e) {
            // told below, with what else may be wrong
        }
        throw new Refusal(
                422,
                "Found \"" + visit.field(name) + "\" for " + name + ", expected a whole number from 1 to " + most + ".",
                List.of("Go back and choose again."));
    }

    private void tell(Visit visit, Sight sight) {
        if (improving.flatMap(ImprovePlan::progress).filter(Progress::running).isPresent()) {
            throw new Refusal(
                    422,
                    "The search is still under way, so the plan may be another in a moment.",
                    List.of("Stop the search, or let it end. Then tell the crew."));
        }
        Standing standing = looking.standing().orElseThrow(() -> Refusal.absent("plan"));
        Outcome outcome = new PublishPlan(shop)
                .publish(
                        Sent.live(visit.once(), sight.sender(visit)),
                        standing.definition(),
                        standing.plan(),
                        standing.origin().words());
        if (outcome.stands()) {
            visit.say("The crew is told this plan. Later changes are shown against it.");
            visit.lead(HERE);
        } else {
            visit.status(422);
            visit.say(String.join(" ", Answers.refused(outcome)));
            show(visit, sight);
        }
    }

    private void show(Visit visit, Sight sight) {
        sights.show(visit, "better/better.jte", sights.frame(visit, sight, "A better plan", "/weeks"), view(sight));
    }

    private BetterView view(Sight sight) {
        Standing standing = looking.standing().orElseThrow(() -> Refusal.absent("plan"));
        Optional<Progress> last = improving.flatMap(ImprovePlan::progress);
        // What a search said of other work, before something happened, is no measure of the plan now.
        Optional<Progress> search = last.filter(p -> p.isOf(standing.work()));
        PlanScore score = new PlanScorer(standing.work(), standing.goal()).score(standing.plan());
        Optional<PlanScore> before =
                search.filter(p -> !p.steps().isEmpty()).map(p -> p.before().score());
        boolean running = last.filter(Progress::running).isPresent();
        return new BetterView(
                running,
                running && search.isEmpty(),
                improving.isPresent(),
                last.map(Progress::fault).orElse(""),
                standing.origin().words(),
                at(sight, standing.plan().finish()),
                search.filter(p -> !p.steps().isEmpty())
                        .map(p -> at(sight, p.before().finish()))
                        .orElse(""),
                search.flatMap(Progress::least)
                        .map(at -> "No plan can end before " + sight.time().at(at)
                                + ". That is the end alone; of the other terms nobody knows how good they can get.")
                        .orElse(""),
                hours(score.total()),
                before.map(b -> hours(b.total())).orElse(""),
                score.terms().stream().map(t -> term(t, before)).toList(),
                search.map(p -> found(sight, p)).orElse(List.of()),
                standing.goal().told().map(t -> told(sight, t, score)).orElse(""));
    }

    private static String at(Sight sight, Optional<Instant> finish) {
        return finish.map(sight.time()::at).orElse("");
    }

    private static List<BetterView.Found> found(Sight sight, Progress p) {
        List<BetterView.Found> found = new ArrayList<>();
        p.steps().forEach(f -> found.add(new BetterView.Found(hours(f.score().total()), at(sight, f.finish()))));
        Collections.reverse(found);
        return found.subList(0, Math.min(SHOWN, found.size()));
    }

    private static String told(Sight sight, PublishedPlan told, PlanScore score) {
        long moved = Math.round(score.amount(PlanScore.Kind.MOVED));
        return "The crew was last told a plan " + sight.time().at(told.at()) + "; "
                + (moved == 0
                        ? "nothing of it has moved since."
                        : moved == 1 ? "one step has moved since." : moved + " steps have moved since.");
    }

    private static String hours(double h) {
        return tenths(h) + " h";
    }

    private static String tenths(double v) {
        return String.format(Locale.ROOT, "%.1f", v);
    }

    private static BetterView.Term term(PlanScore.Term t, Optional<PlanScore> before) {
        String name = switch (t.kind()) {
            case UNPLANNED -> "Steps without a place";
            case LATE -> "Dated goals missed by";
            case FINISH -> "From now to the end of all";
            case PARTS -> "From now to the end of a part, on average";
            case WINDOWS -> "Work that missed windows cost";
            case IDLE -> "In the shop with nothing that needs doing, next 14 days";
            case EVENING -> "Hands in the evening";
            case MOVED -> "Steps that moved since the crew was told";
        };
        String amount = switch (t.kind()) {
            case UNPLANNED, MOVED -> String.format(Locale.ROOT, "%.0f", t.amount());
            case LATE, FINISH, PARTS -> hours(t.amount());
            case WINDOWS, IDLE, EVENING -> tenths(t.amount()) + " person-h";
        };
        return new BetterView.Term(
                name,
                amount + " \u00d7 " + plain(t.weight()),
                tenths(t.cost()),
                before.map(b -> tenths(b.amount(t.kind()) * t.weight())).orElse(""));
    }

    private static String plain(double v) {
        return v == Math.rint(v) ? Long.toString(Math.round(v)) : Double.toString(v);
    }
}
