package fayline.app.web.better;

import fayline.app.usecase.act.PublishPlan;
import fayline.app.usecase.better.ImprovePlan;
import fayline.app.usecase.better.Progress;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.LookAtShop.Standing;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.plan.Plan;
import fayline.flow.planner.PlanImprover.Limits;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import fayline.flow.record.PublishedPlan;
import io.javalin.config.RoutesConfig;
import io.javalin.http.sse.SseClient;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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
            sights.with(visit, sight -> show(visit, sight, "better/better.jte"));
        });
        routes.get(HERE + "/state", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, "better/state.jte"));
        });
        routes.sse(HERE + "/news", this::news);
        routes.post(HERE + "/search", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> search(visit));
        });
        routes.post(HERE + "/stop", ctx -> {
            Visit visit = new Visit(ctx);
            improving.ifPresent(ImprovePlan::stop);
            visit.say("The search stops; the best plan is kept.");
            visit.lead(HERE);
        });
        routes.post(HERE + "/tell", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> tell(visit, sight));
        });
    }

    /** Says only that there is news: what it is, the page fetches for itself in the reader's own way. */
    private void news(SseClient client) {
        improving.ifPresent(i -> {
            client.keepAlive();
            Runnable end = i.listen(p -> client.sendEvent(p.running() ? "found" : "over", total(p.best())));
            client.onClose(end);
            i.progress().ifPresent(p -> client.sendEvent(p.running() ? "found" : "over", total(p.best())));
        });
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
        Standing standing = looking.standing().orElseThrow(() -> Refusal.absent("plan"));
        Outcome outcome = new PublishPlan(shop)
                .publish(
                        Sent.live(visit.once(), visit.needed("by", "who you are")),
                        standing.definition(),
                        standing.plan(),
                        standing.origin().words());
        if (outcome.stands()) {
            visit.say("The crew is told this plan. Later changes are shown against it.");
            visit.lead(HERE);
        } else {
            visit.status(422);
            visit.say(String.join(" ", Answers.refused(outcome)));
            show(visit, sight, "better/better.jte");
        }
    }

    private void show(Visit visit, Sight sight, String template) {
        sights.show(visit, template, sights.frame(visit, sight, "A better plan", "/weeks"), view(sight));
    }

    private BetterView view(Sight sight) {
        Standing standing = looking.standing().orElseThrow(() -> Refusal.absent("plan"));
        Optional<Progress> progress = improving.flatMap(ImprovePlan::progress);
        PlanScore score = new PlanScorer(standing.work(), standing.goal()).score(standing.plan());
        List<BetterView.Found> found = new ArrayList<>();
        progress.ifPresent(p -> p.steps()
                .forEach(f -> found.add(new BetterView.Found(
                        hours(f.total()), f.finish().map(sight.time()::at).orElse("")))));
        Collections.reverse(found);
        return new BetterView(
                progress.filter(Progress::running).isPresent(),
                improving.isPresent(),
                progress.map(Progress::fault).orElse(""),
                standing.origin().words(),
                standing.plan().finish().map(sight.time()::at).orElse(""),
                progress.flatMap(Progress::least)
                        .map(at -> "No plan can end before " + sight.time().at(at) + ".")
                        .orElse(""),
                hours(score.total()),
                progress.map(p -> total(p.before())).orElse(""),
                score.terms().stream().map(BetterPage::term).toList(),
                found.subList(0, Math.min(SHOWN, found.size())),
                standing.goal().told().map(t -> sight.time().at(t.at())).orElse(""),
                standing.goal().told().filter(t -> isTold(t, standing.plan())).isPresent());
    }

    private static boolean isTold(PublishedPlan told, Plan plan) {
        Map<String, PublishedPlan.Step> steps = new HashMap<>();
        told.steps().forEach(s -> steps.put(s.step(), s));
        return plan.steps().stream()
                .allMatch(p -> Optional.ofNullable(steps.get(p.step()))
                        .filter(s -> s.start().equals(p.start()) && same(s.people(), p.people()))
                        .isPresent());
    }

    private static boolean same(List<String> a, List<String> b) {
        Set<String> all = new HashSet<>(a);
        return all.equals(new HashSet<>(b));
    }

    private static String total(PlanScore score) {
        return hours(score.total());
    }

    private static String hours(double h) {
        return String.format(Locale.ROOT, "%.1f h", h);
    }

    private static BetterView.Term term(PlanScore.Term t) {
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
            case WINDOWS, IDLE, EVENING -> String.format(Locale.ROOT, "%.1f person-h", t.amount());
        };
        return new BetterView.Term(name, amount, plain(t.weight()), hours(t.cost()));
    }

    private static String plain(double v) {
        return v == Math.rint(v) ? Long.toString(Math.round(v)) : Double.toString(v);
    }
}
