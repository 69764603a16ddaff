package fayline.app.web.costs;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.view.CostsByPlan;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.result.cost.CostReport;
import fayline.flow.result.cost.CostRow;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Costs to date, to go and at completion, by part and assembly, against budgets. */
public final class CostsPage implements Page {
    private static final String HERE = "/costs";
    private final Sights sights;

    /** Makes the page. */
    public CostsPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(
                HERE,
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(
                            visit,
                            sight -> sights.show(
                                    visit, "costs.jte", sights.frame(visit, sight, "Costs", HERE), view(sight)));
                },
                Asks.to(Act.SEE_COSTS));
    }

    private static CostsView view(Sight sight) {
        CostReport r = CostsByPlan.of(sight.view());
        return new CostsView(
                sight.definition().facts().currency(),
                row(r.whole(), ""),
                r.assemblies().stream().map(a -> row(a, "")).toList(),
                r.made().stream()
                        .filter(m -> m.atCompletion().all() > 0)
                        .map(m -> row(m, sight.madeLink(m.id())))
                        .toList(),
                row(r.rework(), ""),
                says(sight, r));
    }

    private static List<String> says(Sight sight, CostReport r) {
        String currency = sight.definition().facts().currency();
        List<String> says = new ArrayList<>();
        says.add(
                r.hourly() > 0
                        ? String.format(
                                Locale.ROOT,
                                "An hour to come is reckoned at %.2f %s, the mean of those of the crew who have a rate;"
                                        + " hours booked at the rates of those who worked.",
                                r.hourly(),
                                currency)
                        : "Nobody of the crew has a rate (key hourly in people): hours cost nothing here.");
        says.add(
                "Material that went into steps counts at the price of its lot, else of the material; what is to come at"
                        + " the price of the material, waste included.");
        if (!r.unpriced().isEmpty()) {
            says.add("Without a price, so not counted: "
                    + String.join(
                            ", ", r.unpriced().stream().map(sight::stuffName).toList()) + ".");
        }
        if (!r.orders().isEmpty()) {
            says.add("Orders without a price, so not counted: " + String.join(", ", r.orders()) + ".");
        }
        return says;
    }

    private static CostsView.Row row(CostRow r, String link) {
        return new CostsView.Row(
                r.name(),
                link,
                money(r.toDate().all()),
                money(r.atCompletion().material()),
                money(r.atCompletion().hands()),
                money(r.atCompletion().orders()),
                money(r.toGo().all()),
                money(r.atCompletion().all()),
                r.budget().isPresent() ? money(r.budget().getAsDouble()) : "",
                r.left().isPresent() ? money(r.left().getAsDouble()) : "",
                r.left().isPresent() && r.left().getAsDouble() < 0);
    }

    private static String money(double amount) {
        return String.format(Locale.ROOT, "%,.0f", amount == 0 ? 0.0 : amount).replace(',', '\u202f');
    }
}
