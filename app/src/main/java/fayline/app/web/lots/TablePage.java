package fayline.app.web.lots;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.stores.LotSheet;
import fayline.app.usecase.stores.LotsCsv;
import fayline.app.usecase.view.StoresByPlan;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Typed;
import fayline.app.web.frame.Visit;
import fayline.basis.finding.InputProblem;
import io.javalin.config.RoutesConfig;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;

/** Lots by tables: read from one, looked at before they are taken, all or none; and written as one. */
public final class TablePage implements Page {
    private static final String HERE = "/stores/table";
    private final Sights sights;
    private final ShopRecord shop;

    /** Makes the page. */
    public TablePage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> with(new Visit(ctx), (v, s) -> show(v, s, TableView.EMPTY)));
        routes.get("/stores/lots.csv", ctx -> with(new Visit(ctx), TablePage::write));
        routes.post(HERE, ctx -> with(new Visit(ctx), this::look), Asks.to(Act.WORK));
        routes.post(HERE + "/take", ctx -> with(new Visit(ctx), this::take), Asks.to(Act.WORK));
    }

    private void with(Visit visit, BiConsumer<Visit, Sight> then) {
        sights.with(visit, sight -> then.accept(visit, sight));
    }

    private void show(Visit visit, Sight sight, TableView view) {
        sights.show(visit, "lots/table.jte", sights.frame(visit, sight, "Lots from a table", "/stores"), view);
    }

    private void look(Visit visit, Sight sight) {
        List<Typed.Parcel> files = visit.parcels("table");
        byte[] bytes = files.isEmpty()
                ? visit.text("rows").getBytes(StandardCharsets.UTF_8)
                : files.get(0).bytes();
        Sent sent = Sent.live(visit.once(), sight.sender(visit));
        LotSheet.Read read = new LotSheet(shop).read(sent, sight.view().project(), bytes);
        show(visit, sight, view(sight, read, List.of()));
    }

    private static TableView view(Sight sight, LotSheet.Read read, List<String> refused) {
        List<String> wrong =
                read.problems().stream().map(InputProblem::sentence).toList();
        return new TableView(
                refused.isEmpty() ? wrong : refused,
                read.rows().stream()
                        .map(l -> new TableView.Row(
                                l.lot(),
                                sight.stuffName(l.of()) + (l.component().isEmpty() ? "" : ", " + l.component()),
                                l.quantity() + (l.weighed() ? ", weighed" : ""),
                                l.received(),
                                l.expires(),
                                l.price()))
                        .toList(),
                wrong.isEmpty() && refused.isEmpty() ? read.text() : "");
    }

    /** The table is read and checked anew: what others did since it was looked at counts. */
    private void take(Visit visit, Sight sight) {
        Sent sent = Sent.live(visit.once(), sight.sender(visit));
        LotSheet sheet = new LotSheet(shop);
        String project = sight.view().project();
        LotSheet.Read read = sheet.read(sent, project, visit.text("rows").getBytes(StandardCharsets.UTF_8));
        boolean again = shop.knows(sent.client());
        if (!read.problems().isEmpty() && !again) {
            visit.status(422);
            show(visit, sight, view(sight, read, List.of()));
            return;
        }
        List<Outcome> outcomes = sheet.take(sent, project, read);
        if (outcomes.stream().allMatch(Outcome::stands)) {
            visit.say(String.format(Locale.ROOT, "%d lots are in the stores.", outcomes.size()));
            visit.lead("/stores");
            return;
        }
        visit.status(422);
        show(
                visit,
                sight,
                view(
                        sight,
                        read,
                        outcomes.stream()
                                .filter(o -> !o.stands())
                                .flatMap(o -> Answers.refused(o).stream())
                                .toList()));
    }

    private static void write(Visit visit, Sight sight) {
        String csv = LotsCsv.of(StoresByPlan.of(sight.view()).lots(), s -> sight.amount(s.left()));
        visit.send(csv.getBytes(StandardCharsets.UTF_8), "text/csv; charset=utf-8", "lots.csv");
    }
}
