package fayline.app.web.fit;

import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.FitWay;
import fayline.method.fitup.aim.Aim;
import fayline.method.fitup.aim.AimedMove;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words the ways to judge a move. Which one a reader looks at stands in the address and nowhere else. */
final class FitWays {
    private FitWays() {}

    private static String word(Aim aim) {
        return aim.name().toLowerCase(Locale.ROOT);
    }

    /** The way that a visit asks for beside the recommended one; empty for none. */
    static Optional<FitWay> chosen(FitResult r, Visit visit) {
        String asked = visit.query("way");
        if (asked.isEmpty() || asked.equals(word(Aim.WORST))) {
            return Optional.empty();
        }
        Aim aim = Arrays.stream(Aim.values())
                .filter(a -> word(a).equals(asked))
                .findFirst()
                .orElseThrow(() -> Refusal.absent("way to judge a move"));
        return r.advice().stream()
                .flatMap(a -> a.ways().stream())
                .filter(w -> w.aimed().aim() == aim && w.aimed().move().isPresent())
                .findFirst();
    }

    /** The table; empty where no way has a move. */
    static Optional<FitWaysView> of(Sight sight, FitResult r, FitAdvice a, Optional<FitWay> chosen, boolean assume) {
        if (a.ways().stream().allMatch(w -> w.aimed().move().isEmpty())) {
            return Optional.empty();
        }
        String page = "/fit/" + Visit.encoded(r.fit().id());
        Aim shown = chosen.map(w -> w.aimed().aim()).orElse(Aim.WORST);
        List<FitWaysView.Row> rows = new ArrayList<>();
        for (FitWay w : a.ways()) {
            boolean recommended = w.aimed().aim() == Aim.WORST;
            String way = recommended ? "" : "way=" + word(w.aimed().aim());
            String query = way + (assume ? (way.isEmpty() ? "" : "&") + "assume=yes" : "");
            rows.add(row(sight, a, w, page + (query.isEmpty() ? "" : "?" + query), shown));
        }
        return Optional.of(new FitWaysView(
                rows,
                chosen.map(w -> new FitWaysView.Chosen(
                        w.name(),
                        sight.say(w.sentence()),
                        w.atMarks().stream().map(sight::say).toList(),
                        FitAnswers.outside(sight, w.aimed().move().orElseThrow().outside()))),
                page + (assume ? "?assume=yes" : "")));
    }

    private static FitWaysView.Row row(Sight sight, FitAdvice a, FitWay w, String link, Aim shown) {
        Aim aim = w.aimed().aim();
        if (w.aimed().move().isEmpty()) {
            return new FitWaysView.Row(w.name(), "", aim == shown, aim == Aim.WORST, none(w.aimed()), "", "", "", "");
        }
        AimedMove.Left left = w.aimed().move().get();
        int worst = FitAnswers.worst(a, left.gapsMm());
        int out = left.outside().size();
        return new FitWaysView.Row(
                w.name(),
                link,
                aim == shown,
                aim == Aim.WORST,
                sight.say(w.sentence()),
                FitWords.length(sight, left.gapsMm().get(worst)) + " at "
                        + a.rows().get(worst).station().id(),
                left.marginMm() >= 0
                        ? FitWords.length(sight, left.marginMm())
                        : FitWords.length(sight, -left.marginMm()) + " beyond",
                out == 0 ? "none" : String.valueOf(out),
                w.cut()
                        .map(c -> FitWords.length(sight, c.mostMm()) + " at " + c.at())
                        .orElse("nothing"));
    }

    /** Why a way has no move. */
    private static String none(AimedMove m) {
        return switch (m.status()) {
            case INFEASIBLE -> "none: the limits contradict each other";
            case MOVE_TOO_LARGE -> "none: it would be too large a move";
            case UNDETERMINED_MOVE -> "none: the stations do not tell it";
            default -> "none: no move brings everything inside";
        };
    }
}
