package fayline.app.web.chain;

import fayline.app.web.fit.FitWords;
import fayline.app.web.frame.Sight;
import fayline.flow.result.fit.chain.FitChainResult;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Station;
import fayline.method.fitup.chain.correct.RemedyResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words what is left after the cure: what each remedy does, the gap it reaches and what it costs. */
final class ChainRemedies {
    private static final double LEAST_MM = 0.05;

    private ChainRemedies() {}

    static List<ChainView.Way> of(Sight sight, FitChainResult r, RemedyResult result) {
        return result.outcomes().stream()
                .map(o -> new ChainView.Way(
                        o.name(),
                        does(sight, r, o),
                        ChainMoves.gap(sight, o.worstGapMm(), o.worstStation()),
                        o.fits(),
                        String.join(", ", o.outside()),
                        "",
                        String.format(Locale.ROOT, "%.1f h", o.cost())))
                .toList();
    }

    private static String does(Sight sight, FitChainResult r, RemedyResult.Outcome o) {
        List<String> parts = new ArrayList<>();
        List<FitRow> rows = r.rows();
        each(sight, rows, o.offMm(), "off").ifPresent(parts::add);
        each(sight, rows, o.onMm(), "on").ifPresent(parts::add);
        for (Move m : o.moves()) {
            parts.add("hang it "
                    + FitWords.move(
                            sight,
                            r.end().side(),
                            m,
                            Station.middle(rows.stream().map(FitRow::station).toList()),
                            "the middle of the stations"));
        }
        return String.join("; ", parts);
    }

    private static Optional<String> each(Sight sight, List<FitRow> rows, List<Double> mm, String way) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (mm.get(i) >= LEAST_MM) {
                all.add(FitWords.length(sight, mm.get(i)) + " " + way + " at "
                        + rows.get(i).station().id());
            }
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", all));
    }
}
