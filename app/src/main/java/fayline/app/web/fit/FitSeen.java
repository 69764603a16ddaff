package fayline.app.web.fit;

import fayline.app.web.frame.Sight;
import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.ShopHeat;
import fayline.method.fitup.FitRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Words the gaps to see in the shop, where its temperature makes them others than those sought. */
final class FitSeen {
    private FitSeen() {}

    static Optional<FitAnswer.Seen> of(Sight sight, FitAdvice a) {
        ShopHeat shop = a.shop();
        if (!shop.matters()) {
            return Optional.empty();
        }
        Optional<List<Double>> after = a.seenAfterMm();
        List<FitAnswer.SeenRow> rows = new ArrayList<>();
        for (int i = 0; i < a.rows().size(); i++) {
            int n = i;
            FitRow row = a.rows().get(i);
            rows.add(new FitAnswer.SeenRow(
                    row.station().id(),
                    FitWords.length(sight, shop.seenMm(i, row.gapMm())),
                    after.map(g -> FitWords.length(sight, g.get(n))).orElse(""),
                    sight.say(Phrase.of(
                            "%s to %s",
                            Amount.bareMm(shop.seenMm(i, row.lowerMm()), 1),
                            Amount.mm(shop.seenMm(i, row.upperMm()), 1)))));
        }
        Phrase title = Phrase.of(
                "Gaps to see in the shop at %s", Amount.degC(shop.shopDegC().orElseThrow()));
        return Optional.of(new FitAnswer.Seen(sight.say(title), sight.say(shop.words()), rows));
    }

    /** Where no index point is named: the spacer that holds the part at each station is the gap to see there. */
    static List<FitAnswer.Shim> spacers(Sight sight, FitResult r, FitAdvice a) {
        Optional<List<Double>> after = a.seenAfterMm();
        if (after.isEmpty() || !r.fit().holding().points().isEmpty()) {
            return List.of();
        }
        List<FitAnswer.Shim> all = new ArrayList<>();
        for (int i = 0; i < a.rows().size(); i++) {
            double gap = after.get().get(i);
            all.add(new FitAnswer.Shim(
                    a.rows().get(i).station().id(),
                    gap > 0 ? FitWords.fine(sight, gap) : "nothing: it overlaps",
                    "a spacer in the gap"));
        }
        return all;
    }

    static List<String> spacerWords(FitResult r, FitAdvice a) {
        return a.best().found().isEmpty() || !r.fit().holding().points().isEmpty()
                ? List.of()
                : List.of(
                        "No index points are named. Spacers of these thicknesses hold the part where it must sit: two on one"
                                + " edge and one on another are enough, as far apart as they can be; the others check it.");
    }
}
