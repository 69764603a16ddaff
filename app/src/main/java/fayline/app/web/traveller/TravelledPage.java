package fayline.app.web.traveller;

import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.app.web.trouble.DeviationViews;
import io.javalin.config.RoutesConfig;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** All that is recorded of a part or joint, by step or by date, with a field that finds a ply or a lot. */
public final class TravelledPage implements Page {
    private final Sights sights;
    private final ShopRecord shop;

    /** Makes the page. */
    public TravelledPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/traveller/{made}", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                TravelledView view = view(visit, sight);
                sights.show(
                        visit,
                        "traveller/travelled.jte",
                        sights.frame(visit, sight, "Traveller of " + view.name(), "/airframe"),
                        view);
            });
        });
    }

    private TravelledView view(Visit visit, Sight sight) {
        String made = visit.inPath("made");
        String name =
                sight.made(made).map(m -> m.name()).orElseThrow(() -> Refusal.absent("part or joint of that name"));
        boolean byDate = visit.query("order").equals("date");
        List<TravelledView.Line> all = new TravelledLines(sight, shop.state(), made).lines(byDate);
        String find = visit.query("find").strip();
        List<String> sought = Arrays.stream(find.toLowerCase(Locale.ROOT).split("\\s+"))
                .filter(w -> !w.isEmpty())
                .toList();
        List<TravelledView.Line> found = all.stream()
                .filter(l -> sought.isEmpty() || holds(l.text(), find.toLowerCase(Locale.ROOT), sought))
                .toList();
        return new TravelledView(
                made,
                name,
                sight.madeLink(made),
                find,
                byDate,
                found,
                all.size(),
                new DeviationViews(sight, shop).ofMade(made),
                !shop.isJudged());
    }

    /** "ply 1" is not meant to find ply 12: what ends in a figure is sought whole. */
    private static boolean holds(String text, String find, List<String> words) {
        if (find.matches(".*\\d")) {
            int at = text.indexOf(find);
            while (at >= 0) {
                int end = at + find.length();
                if (end == text.length() || !Character.isDigit(text.charAt(end))) {
                    return true;
                }
                at = text.indexOf(find, at + 1);
            }
            return false;
        }
        return words.stream().allMatch(text::contains);
    }
}
