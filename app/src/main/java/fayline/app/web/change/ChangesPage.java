package fayline.app.web.change;

import fayline.app.usecase.act.Signers;
import fayline.app.usecase.change.DecideChange;
import fayline.app.usecase.change.RaiseChange;
import fayline.app.usecase.change.SettleChange;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.record.change.Change;
import fayline.flow.result.change.Touch;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Changes of the design: raised, worked out, decided, settled and closed; and whether something printed still holds. */
public final class ChangesPage implements Page {
    private static final String HERE = "/changes";
    private static final String ONE = "/change/{seq}";
    private static final String PRINT = "/print-check";
    private final Sights sights;
    private final ShopRecord shop;

    /** Makes the pages. */
    public ChangesPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    /**
     * What the list shows.
     *
     * @param changes the changes
     * @param sorts what can be ticked as altered, by sort
     * @param next the name that the next change gets
     * @param refused why what was sent was not taken
     */
    public record All(List<ChangeView> changes, List<Choices> sorts, String next, List<String> refused) {
        /** Copies the lists. */
        public All {
            changes = List.copyOf(changes);
            sorts = List.copyOf(sorts);
            refused = List.copyOf(refused);
        }
    }

    /**
     * Things of one sort that can be ticked.
     *
     * @param name what several of it are called
     * @param items the things
     */
    public record Choices(String name, List<Frame.Choice> items) {
        /** Copies the list. */
        public Choices {
            items = List.copyOf(items);
        }
    }

    /**
     * What the page of one shows.
     *
     * @param change the change
     * @param signers who may decide and agree where names are picked
     * @param judged whether people sign in, so that each agrees in their own name
     * @param refused why what was sent was not taken
     */
    public record One(ChangeView change, List<Frame.Choice> signers, boolean judged, List<String> refused) {
        /** Copies the lists. */
        public One {
            signers = List.copyOf(signers);
            refused = List.copyOf(refused);
        }
    }

    /**
     * What the page about something printed shows.
     *
     * @param mark what was typed
     * @param says whether it holds; empty while nothing was typed
     * @param bad whether it must not be used
     * @param link the change that withdrew it; empty where none did
     */
    public record Printed(String mark, String says, boolean bad, String link) {}

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> list(visit, sight, List.of()));
        });
        routes.post(HERE, ctx -> raise(new Visit(ctx)), Asks.to(Act.RAISE_CHANGE));
        routes.get(ONE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, found(visit, sight), List.of()));
        });
        routes.post(ONE + "/decide", ctx -> act(ctx, this::decide), Asks.to(Act.DECIDE_CHANGE));
        routes.post(ONE + "/agree", ctx -> act(ctx, this::agree), Asks.to(Act.SIGN));
        routes.post(ONE + "/line", ctx -> act(ctx, this::line), Asks.to(Act.DECIDE_CHANGE));
        routes.post(ONE + "/open", ctx -> act(ctx, this::open), Asks.to(Act.DECIDE_CHANGE));
        routes.post(ONE + "/close", ctx -> act(ctx, this::close), Asks.to(Act.DECIDE_CHANGE));
        routes.get(PRINT, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> print(visit, sight));
        });
    }

    private void list(Visit visit, Sight sight, List<String> refused) {
        List<String> ticked = visit.fields("touches");
        List<Choices> sorts = Arrays.stream(Touch.Sort.values())
                .map(s -> new Choices(
                        s.words(),
                        s.items(sight.definition()).stream()
                                .map(i -> {
                                    String key = new Touch(s, i.id()).key();
                                    return new Frame.Choice(key, i.name(), ticked.contains(key));
                                })
                                .toList()))
                .filter(c -> !c.items().isEmpty())
                .toList();
        sights.show(
                visit,
                "change/list.jte",
                sights.frame(visit, sight, "Changes", HERE),
                new All(
                        new ChangeViews(sight).all(),
                        sorts,
                        shop.state().change().nextName(sight.view().project()),
                        refused));
    }

    private void raise(Visit visit) {
        sights.with(visit, sight -> {
            Outcome outcome = new RaiseChange(shop)
                    .raise(
                            Sent.live(visit.once(), sight.sender(visit)),
                            sight.view().project(),
                            new RaiseChange.Raised(
                                    visit.field("number"),
                                    visit.text("what").strip(),
                                    visit.text("why").strip(),
                                    visit.fields("touches"),
                                    visit.field("structural").equals("yes")),
                            Optional.empty());
            if (outcome.stands()) {
                visit.say(Answers.said(outcome), "change-new");
                visit.lead(ChangeViews.link(outcome.seq(), sight.view().project()));
            } else {
                visit.status(outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422);
                list(visit, sight, Answers.refused(outcome));
            }
        });
    }

    @FunctionalInterface
    private interface Deed {
        Outcome of(Visit visit, Sent sent, Change c);
    }

    private void act(Context ctx, Deed deed) {
        Visit visit = new Visit(ctx);
        sights.with(visit, sight -> {
            Change c = found(visit, sight);
            Outcome outcome = deed.of(visit, Sent.live(visit.once(), sight.sender(visit)), c);
            if (outcome.stands()) {
                visit.say(Answers.said(outcome));
                visit.lead(ChangeViews.link(c.seq(), c.project()));
            } else {
                visit.status(outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422);
                show(visit, sight, c, Answers.refused(outcome));
            }
        });
    }

    private Outcome decide(Visit visit, Sent sent, Change c) {
        String decision = visit.field("decision");
        if (!List.of("accepted", "refused").contains(decision)) {
            return Outcome.refused("Say whether the change is made or not.");
        }
        return new DecideChange(shop)
                .decide(
                        sent,
                        c.seq(),
                        new DecideChange.Decision(
                                decision.equals("accepted"),
                                visit.text("note").strip(),
                                visit.field("structural").equals("yes"),
                                visit.field("second")),
                        Optional.empty());
    }

    private Outcome agree(Visit visit, Sent sent, Change c) {
        return new DecideChange(shop).agree(sent, c.seq(), Optional.empty());
    }

    private Outcome line(Visit visit, Sent sent, Change c) {
        return new SettleChange(shop)
                .settle(
                        sent,
                        c.seq(),
                        new SettleChange.Settling(
                                visit.fields("item"),
                                visit.field("how"),
                                visit.text("note").strip(),
                                ""),
                        Optional.empty());
    }

    private Outcome open(Visit visit, Sent sent, Change c) {
        return new SettleChange(shop).open(sent, c.seq(), visit.field("made"));
    }

    private Outcome close(Visit visit, Sent sent, Change c) {
        return new SettleChange(shop).close(sent, c.seq(), visit.text("note").strip(), Optional.empty());
    }

    private Change found(Visit visit, Sight sight) {
        String asked = visit.inPath("seq");
        Optional<Change> found =
                asked.matches("\\d{1,15}") ? shop.state().change().find(Long.parseLong(asked)) : Optional.empty();
        return found.filter(c -> c.project().equals(sight.view().project()))
                .orElseThrow(() -> Refusal.absent("change of that number"));
    }

    private void show(Visit visit, Sight sight, Change c, List<String> refused) {
        List<Frame.Choice> signers = Signers.all(sight.definition()).stream()
                .map(p -> new Frame.Choice(p.id(), p.name(), p.id().equals(visit.person())))
                .toList();
        sights.show(
                visit,
                "change/one.jte",
                sights.frame(visit, sight, "Change " + c.name(), HERE),
                new One(new ChangeViews(sight).of(c), signers, shop.isJudged(), refused));
    }

    private void print(Visit visit, Sight sight) {
        String typed = visit.query("mark").strip();
        sights.show(
                visit,
                "change/print.jte",
                sights.frame(visit, sight, "Does this print hold?", HERE),
                typed.isEmpty() ? new Printed("", "", false, "") : new PrintWords(sight, shop).of(typed));
    }
}
