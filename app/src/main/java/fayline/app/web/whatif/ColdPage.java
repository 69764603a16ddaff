package fayline.app.web.whatif;

import fayline.app.usecase.view.WhatIf;
import fayline.app.usecase.view.WhatIf.Outcome;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.flow.result.air.ColdDay;
import fayline.flow.result.air.ColdDays;
import fayline.flow.whatif.Change;
import io.javalin.config.RoutesConfig;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Days too cold or damp for wet work: what can be done instead, and what heating would buy. */
public final class ColdPage implements Page {
    private static final int MOST_INSTEAD = 8;
    private static final double[] ABOVE_LIMIT_K = {0, 2, 5};
    private final Sights sights;
    private final WhatIf whatIf;

    /** Makes the page. */
    public ColdPage(Sights sights, WhatIf whatIf) {
        this.sights = sights;
        this.whatIf = whatIf;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/cold", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit, "whatif/cold.jte", sights.frame(visit, sight, "Cold days", "/weeks"), view(sight)));
        });
    }

    private ColdView view(Sight sight) {
        List<ColdDay> cold = ColdDays.of(sight.definition(), sight.result().air(), sight.work(), sight.plan());
        if (cold.isEmpty()) {
            return new ColdView(List.of(), List.of(), "", 0);
        }
        LocalDate first = cold.get(0).date();
        int span =
                (int) ChronoUnit.DAYS.between(first, cold.get(cold.size() - 1).date()) + 1;
        return new ColdView(
                cold.stream().map(c -> day(sight, c)).toList(),
                heats(sight, first, span),
                sight.time().day(first),
                span);
    }

    private static ColdView.Day day(Sight sight, ColdDay c) {
        return new ColdView.Day(
                sight.time().day(c.date()),
                sight.format().temperature(c.air()) + ", humidity "
                        + sight.format().percent(c.humidity()),
                !c.expected(),
                sight.say(c.why()),
                sight.placeNames(c.warmStands()),
                c.wet().stream().map(s -> step(sight, s)).toList(),
                c.instead().stream()
                        .limit(MOST_INSTEAD)
                        .map(s -> step(sight, s))
                        .toList(),
                Math.max(0, c.instead().size() - MOST_INSTEAD));
    }

    private static ColdView.Step step(Sight sight, String id) {
        return new ColdView.Step(
                sight.stepName(id),
                sight.planned(id).map(p -> sight.time().at(p.start())).orElse(""),
                sight.step(id)
                        .map(s -> sight.format().span(TimeSpan.ofMinutes(s.personMinutes())))
                        .orElse(""),
                Sight.cardLink(id));
    }

    private List<ColdView.Heat> heats(Sight sight, LocalDate first, int span) {
        List<List<Change>> questions = new ArrayList<>(List.of(List.of()));
        List<String> texts = new ArrayList<>();
        List<Temperature> levels = new ArrayList<>();
        for (double above : ABOVE_LIMIT_K) {
            Temperature t = Temperature.ofKelvins(
                    sight.definition().shop().limits().coldest().kelvins() + above);
            levels.add(t);
            questions.add(List.of(new Change.ShopAir(t, first, span)));
            texts.add(String.format(Locale.ROOT, "air/%.1f degC/%s/%d", t.kelvins() - 273.15, first, span));
        }
        List<Outcome> outcomes = whatIf.ask(questions);
        List<ColdView.Heat> heats = new ArrayList<>();
        for (int i = 0; i < levels.size() && outcomes.size() > i + 1; i++) {
            WhatIfView.Cell cell = new Comparison(sight, List.of(outcomes.get(0), outcomes.get(i + 1)), Set.of())
                    .rows()
                    .get(0)
                    .cells()
                    .get(1);
            heats.add(new ColdView.Heat(
                    sight.format().temperature(levels.get(i)),
                    cell.value(),
                    cell.difference(),
                    cell.worse(),
                    "/what-if?w=" + Visit.encoded(texts.get(i))));
        }
        return heats;
    }
}
