package fayline.app.web.fit;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.TakesKept;
import fayline.app.web.frame.Typed;
import fayline.app.web.frame.Visit;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReadings;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Readings entered at the bench, station after station, or many lines at once. Each is one entry, kept as typed. */
public final class FitReadPage implements Page, TakesKept {
    private static final String READ = "/fit/{id}/read";
    private static final Pattern FORM = Pattern.compile("/fit/([a-z0-9-]+)/read");
    private static final int MOST_LINES = 500;
    private final Sights sights;
    private final ShopRecord shop;

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     */
    public FitReadPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(READ, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                Fit fit = fit(visit, sight);
                show(visit, sight, fit, setup(sight, fit, visit::query), visit.query("at"), FitTyped.NOTHING);
            });
        });
        routes.post(
                READ,
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> one(visit, sight, fit(visit, sight)));
                },
                Asks.to(Act.WORK));
        routes.post(
                "/fit/{id}/many",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> many(visit, sight, fit(visit, sight)));
                },
                Asks.to(Act.WORK));
    }

    @Override
    public Optional<Outcome> takeKept(Sight sight, String address, Typed typed, Sent sent) {
        Matcher form = FORM.matcher(address);
        if (!form.matches()) {
            return Optional.empty();
        }
        Fit fit = fit(form.group(1), sight);
        if (typed.field("value").isEmpty()) {
            return Optional.of(Outcome.refused("Nothing is typed for station " + typed.field("station") + "."));
        }
        FitSetup setup = setup(sight, fit, typed::field);
        boolean asTyped = setup.state().equals(typed.field("state"))
                && String.valueOf(setup.round()).equals(typed.field("round"));
        return Optional.of(
                asTyped
                        ? new FitTaking(shop, sight, fit, setup).keptBefore(typed, sent)
                        : Outcome.refused("State \"" + typed.field("state") + "\", round " + typed.field("round")
                                + ": the fit has no such state or round now."));
    }

    private void one(Visit visit, Sight sight, Fit fit) {
        FitSetup setup = setup(sight, fit, visit::field);
        String by = sight.sender(visit);
        String station = visit.field("station");
        String value = visit.field("value");
        String nogo = visit.field("nogo");
        if (value.isEmpty()) {
            visit.status(422);
            show(
                    visit,
                    sight,
                    fit,
                    setup,
                    station,
                    new FitTyped(
                            List.of("Nothing is typed for station " + station + ". Type the reading, or skip it."),
                            "",
                            value,
                            nogo,
                            ""));
            return;
        }
        Outcome outcome = new FitTaking(shop, sight, fit, setup).now(Sent.live(visit.once(), by), station, value, nogo);
        if (!outcome.stands()) {
            visit.status(outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422);
            show(visit, sight, fit, setup, station, new FitTyped(Answers.refused(outcome), "", value, nogo, ""));
            return;
        }
        visit.say("Station " + station + ": " + setup.withUnit(value) + " is kept.", draft(setup, station));
        Sight then = sights.look(visit).orElse(sight);
        visit.lead(FitAsking.of(then, fit, readings(then, fit), setup).after(station));
    }

    private void many(Visit visit, Sight sight, Fit fit) {
        FitSetup setup = setup(sight, fit, visit::field);
        String by = sight.sender(visit);
        List<String> lines = visit.text("text").lines().toList();
        if (lines.size() > MOST_LINES) {
            throw Refusal.input(lines.size() + " lines are too many at once: " + MOST_LINES + " are taken.");
        }
        List<String> refused = new ArrayList<>();
        List<String> left = new ArrayList<>();
        List<String> kept = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.isEmpty()) {
                continue;
            }
            String[] two = line.split("[\\s,;]+", 2);
            String value = two.length < 2 ? "" : two[1].strip();
            int again = seen.merge(line, 1, Integer::sum);
            Outcome outcome = value.isEmpty()
                    ? Outcome.refused("Found no value. Expected a station and a value, such as \"F1 2.8\".")
                    : new FitTaking(shop, sight, fit, setup)
                            .now(Sent.live(visit.once() + again, by), two[0], value, "");
            if (outcome.stands()) {
                kept.add(two[0]);
            } else {
                left.add(line);
                refused.add("Line " + (i + 1) + ", \"" + line + "\": " + String.join(" ", Answers.refused(outcome)));
            }
        }
        String said = kept.isEmpty()
                ? ""
                : kept.size() + (kept.size() == 1 ? " reading is kept: " : " readings are kept: ")
                        + String.join(", ", kept) + ".";
        if (refused.isEmpty() && !kept.isEmpty()) {
            visit.say(said, draftMany(setup));
            visit.lead(setup.link(fit.id(), ""));
            return;
        }
        visit.status(422);
        if (refused.isEmpty()) {
            refused.add("Nothing is typed. Write a station and a value on each line.");
        }
        show(visit, sight, fit, setup, "", new FitTyped(refused, said, "", "", String.join("\n", left)));
    }

    private void show(Visit visit, Sight sight, Fit fit, FitSetup setup, String at, FitTyped typed) {
        FitReadView view = FitReadViews.of(sight, fit, readings(sight, fit), setup, at, typed);
        sights.show(visit, "fit/read.jte", sights.frame(visit, sight, "Read: " + fit.name(), "/fits"), view);
    }

    static String draft(FitSetup setup, String station) {
        return "reading-" + setup.state() + "-" + setup.kind().word() + "-" + setup.round() + "-" + station;
    }

    static String draftMany(FitSetup setup) {
        return "many-" + setup.state() + "-" + setup.kind().word() + "-" + setup.round();
    }

    private static FitSetup setup(Sight sight, Fit fit, java.util.function.UnaryOperator<String> asked) {
        return FitSetup.of(asked, fit, readings(sight, fit), sight.format().system());
    }

    private static List<FitReading> readings(Sight sight, Fit fit) {
        return FitReadings.of(
                sight.view().record().readings(sight.definition().facts().id()), fit.id());
    }

    private static Fit fit(Visit visit, Sight sight) {
        return fit(visit.inPath("id"), sight);
    }

    private static Fit fit(String id, Sight sight) {
        return sight.definition().fits().find(id).orElseThrow(() -> Refusal.absent("fit of that name"));
    }
}
