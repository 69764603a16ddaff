package fayline.app.web.why;

import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.basis.finding.Figure;
import fayline.flow.card.CardMaker;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.step.StepResult;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Why a figure is what it is: inputs with their origin, formula, published source, cautions. */
public final class WhyPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public WhyPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/why", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(visit, "why.jte", sights.frame(visit, sight, "Why", ""), view(sight, visit)));
        });
    }

    private static WhyView view(Sight sight, Visit visit) {
        String id = visit.query("id");
        int asked = number(visit.query("n"));
        return switch (visit.query("of")) {
            case "part" ->
                page(
                        sight,
                        sight.madeName(id),
                        "/part/" + Visit.encoded(id),
                        sight.result()
                                .part(id)
                                .orElseThrow(() -> Refusal.absent("such part"))
                                .figures(),
                        asked);
            case "joint" ->
                page(
                        sight,
                        sight.madeName(id),
                        "/joint/" + Visit.encoded(id),
                        sight.result()
                                .joint(id)
                                .orElseThrow(() -> Refusal.absent("such joint"))
                                .figures(),
                        asked);
            case "step" -> step(sight, visit.query("step"), asked);
            case "card" -> card(sight, visit.query("step"), asked);
            case "air" ->
                page(sight, "The shop's air", "/", sight.result().airNow().figures(), -1);
            case "clock" -> clock(sight, visit.query("step"), visit.query("state"));
            default -> throw Refusal.absent("such figure");
        };
    }

    private static WhyView step(Sight sight, String step, int asked) {
        StepResult s = sight.step(step).orElseThrow(() -> Refusal.absent("such step"));
        return page(sight, sight.stepName(step), Sight.cardLink(step), figures(s), asked);
    }

    private static WhyView card(Sight sight, String step, int asked) {
        if (sight.step(step).isEmpty()) {
            throw Refusal.absent("such card");
        }
        return page(
                sight,
                sight.stepName(step),
                Sight.cardLink(step),
                CardMaker.make(sight.definition(), sight.result(), sight.plan(), step)
                        .figures(),
                asked);
    }

    private static WhyView clock(Sight sight, String step, String state) {
        List<Figure> figures = sight.result().clocks().stream()
                .filter(c -> c.step().equals(step)
                        && (state.isEmpty() || c.state().key().equals(state)))
                .map(c -> c.why())
                .toList();
        if (figures.isEmpty()) {
            throw Refusal.absent("clock running on that step");
        }
        return page(sight, sight.stepName(step), "/", figures, -1);
    }

    /** All figures of a step in the order in which pages number them: hands, mixes, batches, bag. */
    static List<Figure> figures(StepResult s) {
        List<Figure> all = new ArrayList<>(s.hands());
        s.mixes().forEach(m -> all.add(m.figure()));
        for (MixList list : s.batches()) {
            all.addAll(list.figures());
        }
        s.bag().ifPresent(b -> all.addAll(b.figures()));
        return all;
    }

    private static WhyView page(Sight sight, String about, String back, List<Figure> figures, int asked) {
        List<WhyView.Shown> shown = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            Figure f = figures.get(i);
            shown.add(new WhyView.Shown(
                    f.name(),
                    sight.say(f.told()),
                    f.formula(),
                    f.inputs().stream()
                            .map(x -> new WhyView.Input(
                                    x.name(),
                                    sight.say(x.told()),
                                    origin(x.origin()),
                                    x.origin() == Figure.Origin.ASSUMED,
                                    ""))
                            .toList(),
                    f.source(),
                    f.cautions(),
                    i == asked));
        }
        if (asked >= 0 && asked < shown.size()) {
            shown.add(0, shown.remove(asked));
        }
        return new WhyView(about, back, shown);
    }

    /** Where an input comes from, in words. */
    static String origin(Figure.Origin origin) {
        return origin.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static int number(String text) {
        return text.matches("\\d{1,4}") ? Integer.parseInt(text) : -1;
    }
}
