package fayline.app.web.fit;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Overtaken;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReadings;
import fayline.flow.record.TakenReading;
import io.javalin.config.RoutesConfig;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A reading of a fit corrected or taken back: a new entry with a reason, and what was typed first stays to be seen. */
public final class FitMendPage implements Page {
    private static final String READING = "/fit/{id}/reading/{entry}";
    private final Sights sights;
    private final ShopRecord shop;

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     */
    public FitMendPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(READING, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, Map.of(), List.of()));
        });
        routes.post(
                READING + "/correct",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> mend(visit, sight, false));
                },
                Asks.to(Act.WORK));
        routes.post(
                READING + "/withdraw",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> mend(visit, sight, true));
                },
                Asks.to(Act.WORK));
    }

    private void mend(Visit visit, Sight sight, boolean withdraw) {
        TakenReading reading = reading(visit, sight);
        String by = sight.sender(visit);
        Sent sent = Sent.live(visit.once(), by).seeing(visit.seenHead());
        String why = visit.field("why");
        Outcome outcome = why.isEmpty()
                ? Outcome.refused("Say why, so that the record can be understood later.")
                : withdraw
                        ? new CorrectStep(shop).withdraw(sent, reading.seq(), why)
                        : new CorrectStep(shop).correct(sent, reading.seq(), mended(visit, sight), why);
        if (outcome.stands()) {
            visit.say(
                    "Station " + reading.station() + ": " + FitFormer.words(reading) + " is "
                            + (withdraw ? "withdrawn." : "corrected."),
                    "mend-" + reading.seq());
            visit.lead("/fit/" + Visit.encoded(reading.of()));
            return;
        }
        if (Overtaken.show(
                sights, visit, sight, outcome, "/fit/" + Visit.encoded(reading.of()) + "/reading/" + reading.seq())) {
            return;
        }
        visit.status(outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422);
        Map<String, String> typed = new HashMap<>();
        List.of("value", "nogo", "station", "state", "why").forEach(f -> typed.put(f, visit.field(f)));
        show(visit, sight, withdraw ? Map.of("why", why) : typed, Answers.refused(outcome));
    }

    private static Mended mended(Visit visit, Sight sight) {
        String unit = FitSetup.unit(sight.format().system());
        String nogo = visit.field("nogo");
        return new Mended(
                Optional.empty(),
                List.of(),
                List.of(),
                "",
                "",
                "",
                "",
                visit.field("station"),
                visit.field("state"),
                Map.of(
                        "value",
                        FitSetup.withUnit(visit.field("value"), unit),
                        "nogo",
                        nogo.isEmpty() ? "" : FitSetup.withUnit(nogo, unit)));
    }

    private void show(Visit visit, Sight sight, Map<String, String> typed, List<String> refused) {
        TakenReading r = reading(visit, sight);
        Fit fit = sight.definition().fits().find(r.of()).orElseThrow(() -> Refusal.absent("fit of that name"));
        boolean withdrawn = sight.view().record().readings().stream().noneMatch(x -> x.seq() == r.seq());
        FitReading understood = FitReadings.of(List.of(r), fit.id()).stream()
                .findFirst()
                .orElseThrow(() -> Refusal.absent("reading of that fit under that number"));
        FitMendView view = new FitMendView(
                fit.id(),
                fit.name(),
                r.seq(),
                FitWords.kind(understood.kind()) + " at " + r.station() + ", "
                        + stateName(fit, r.state()).toLowerCase(Locale.ROOT) + ": " + FitFormer.words(r) + ", read "
                        + sight.time().at(r.at()) + " by " + sight.personName(r.by()),
                withdrawn,
                FitFormer.of(sight, r.seq()),
                typed.getOrDefault("value", r.value()),
                understood.kind() == FitReading.Kind.GAP,
                typed.getOrDefault("nogo", r.values().getOrDefault("nogo", "")),
                typed.getOrDefault("why", ""),
                fit.stations().stream()
                        .map(s -> new Frame.Choice(
                                s.id(),
                                s.id() + " " + s.where(),
                                s.id().equals(typed.getOrDefault("station", r.station()))))
                        .toList(),
                fit.states().stream()
                        .map(s -> new Frame.Choice(
                                s.id(), s.name(), s.id().equals(typed.getOrDefault("state", r.state()))))
                        .toList(),
                refused);
        sights.show(visit, "fit/mend.jte", sights.frame(visit, sight, "Correct: " + fit.name(), "/fits"), view);
    }

    private static String stateName(Fit fit, String state) {
        return fit.states().stream()
                .filter(s -> s.id().equals(state))
                .map(s -> s.name())
                .findFirst()
                .orElse(state.isEmpty() ? "as it lay" : state);
    }

    private static TakenReading reading(Visit visit, Sight sight) {
        String entry = visit.inPath("entry");
        return Optional.of(entry)
                .filter(e -> e.matches("[1-9][0-9]{0,14}"))
                .flatMap(e -> sight.view().record().reading(Long.parseLong(e)))
                .filter(r -> r.project().equals(sight.definition().facts().id()) && r.of().equals(visit.inPath("id")))
                .orElseThrow(() -> Refusal.absent("reading of that fit under that number"));
    }
}
