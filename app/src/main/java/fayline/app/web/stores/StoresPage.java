package fayline.app.web.stores;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.view.StoresByPlan;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.app.web.lots.LotWords;
import fayline.basis.finding.Finding;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.stock.Delivery;
import fayline.flow.project.stock.Lot;
import fayline.flow.result.WeekNeeds;
import fayline.flow.result.stock.LotStanding;
import fayline.flow.result.stock.StoresResult;
import io.javalin.config.RoutesConfig;
import java.time.LocalDate;
import java.util.Locale;

/** The stores against the work: lots, expiry, needs, what to order by when. */
public final class StoresPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public StoresPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/stores", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "stores.jte",
                            sights.frame(visit, sight, "Stores", "/stores"),
                            view(
                                    sight,
                                    visit.actor().map(a -> a.may(Act.SEE_COSTS)).orElse(true))));
        });
    }

    private static StoresView view(Sight sight, boolean costs) {
        StoresResult stores = StoresByPlan.of(sight.view());
        return new StoresView(
                stores.shortages().stream().map(s -> shortage(sight, s)).toList(),
                stores.items().stream().map(i -> item(sight, i)).toList(),
                stores.lots().stream().map(l -> lot(sight, l)).toList(),
                sight.definition().deliveries().stream()
                        .map(d -> delivery(sight, d))
                        .toList(),
                WeekNeeds.of(sight.result(), sight.plan(), sight.view().zone()).stream()
                        .map(w -> week(sight, w, costs))
                        .toList(),
                stores.notices().stream()
                        .map(Finding::sentence)
                        .map(sight::named)
                        .toList());
    }

    private static StoresView.Week week(Sight sight, WeekNeeds w, boolean costs) {
        String says = w.steps().size() + " steps, "
                + sight.format().span(TimeSpan.ofMinutes(w.personMinutes())) + " of hands"
                + (costs
                        ? String.format(
                                Locale.ROOT,
                                ", %.0f %s of material",
                                w.cost(),
                                sight.definition().facts().currency())
                        : "");
        return new StoresView.Week(
                "Week of " + sight.time().day(w.monday()),
                says,
                w.needs().stream()
                        .map(n -> new StoresView.Drawn(sight.stuffName(n.of()), sight.amount(n.amount())))
                        .toList());
    }

    private static String name(Sight sight, String of, String component) {
        return sight.stuffName(of) + (component.isEmpty() ? "" : ", " + component);
    }

    private static StoresView.Shortage shortage(Sight sight, StoresResult.Shortage s) {
        return new StoresView.Shortage(
                name(sight, s.of(), s.component()),
                sight.amount(s.shortBy()),
                sight.stepName(s.step()),
                Sight.cardLink(s.step()),
                s.by().map(sight.time()::at).orElse("not planned"),
                s.orderBy()
                        .map(d -> (s.late() ? "order now: the last day was " : "order by ")
                                + sight.time().day(d))
                        .orElse("lead time unknown: ask how long it takes"),
                s.late());
    }

    private static StoresView.Item item(Sight sight, StoresResult.Item i) {
        return new StoresView.Item(
                name(sight, i.of(), i.component()),
                sight.amount(i.needed()),
                sight.amount(i.held()),
                i.expired().si() > 0 ? sight.amount(i.expired()) : "",
                i.coming().si() > 0 ? sight.amount(i.coming()) : "",
                i.held().si() + i.coming().si() >= i.needed().si());
    }

    private static StoresView.Lot lot(Sight sight, LotStanding standing) {
        Lot l = standing.lot();
        return new StoresView.Lot(
                l.id(),
                LotWords.address(l.id()),
                name(sight, l.of(), l.component()),
                sight.amount(standing.left()),
                standing.lastDay().map(LocalDate::toString).orElse("no date"),
                l.opened().map(LocalDate::toString).orElse(l.openedLife().isPresent() ? "not opened" : ""),
                standing.lastDay().filter(sight.time().today()::isAfter).isPresent(),
                standing.out()
                        .map(o -> o.inRoom() ? "out of the cold" : "in the cold")
                        .orElse(""));
    }

    private static StoresView.Delivery delivery(Sight sight, Delivery d) {
        String due = d.arrived()
                .map(a -> "arrived " + sight.time().day(a))
                .orElseGet(() -> "due " + sight.time().day(d.due())
                        + d.latest()
                                .map(l -> ", may slip to " + sight.time().day(l))
                                .orElse(""));
        return new StoresView.Delivery(
                sight.stuffName(d.what()),
                d.quantity(),
                due,
                String.join(", ", d.needed().stream().map(n -> waits(sight, n)).toList()));
    }

    private static String waits(Sight sight, String ref) {
        int cut = ref.indexOf('/');
        String made = cut < 0 ? ref : ref.substring(0, cut);
        return sight.madeName(made) + (cut < 0 ? "" : " (" + ref.substring(cut + 1) + ")");
    }
}
