package fayline.app.web.fitwhy;

import fayline.app.web.why.WhyView;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitWay;
import fayline.method.fitup.aim.Aim;
import fayline.method.fitup.aim.AimedMove;
import java.util.ArrayList;
import java.util.List;

/** The ways to judge a move: what each is best at, and what it is worth by the others' measures. */
final class WayFigures {
    private static final String SEARCH = "[lemke1954], [goldfarb1983] and [lawson1974] for the search";

    private WayFigures() {}

    static List<WhyView.Shown> ways(Grounds g) {
        List<WhyView.Shown> all = new ArrayList<>();
        g.result()
                .advice()
                .ifPresent(a -> a.ways().stream()
                        .filter(w -> w.aimed().move().isPresent())
                        .forEach(w -> all.add(way(g, a, w))));
        return all;
    }

    private static WhyView.Shown way(Grounds g, FitAdvice a, FitWay w) {
        AimedMove.Left left = w.aimed().move().orElseThrow();
        Aim aim = w.aimed().aim();
        List<WhyView.Input> inputs = new ArrayList<>();
        inputs.add(Grounds.computed(
                "the readings and what is wanted, as for the move", a.rows().size() + " gaps", g.why("move")));
        if (w.aimed().guardMm() > 0) {
            inputs.add(Grounds.computed(
                    "guard: the doubt of the worst known reading",
                    g.mm(w.aimed().guardMm()),
                    g.why("chance")));
        }
        inputs.add(Grounds.computed("worst weighted distance from what is wanted", g.mm(left.worst())));
        inputs.add(Grounds.computed("root mean square of these distances", g.mm(left.rootMeanSquare())));
        inputs.add(Grounds.computed("least room to a limit", g.mm(left.marginMm())));
        inputs.add(Grounds.computed("size of the move", g.mm(left.sizeMm())));
        w.cut()
                .ifPresent(c -> inputs.add(Grounds.computed(
                        "to come off, held there",
                        g.mm(c.mostMm()) + " at " + c.at() + ", " + Math.round(c.areaMm2()) + " mm² in all")));
        return new WhyView.Shown(
                w.name(),
                g.sight().say(w.sentence()),
                formula(aim),
                inputs,
                SEARCH,
                List.of(caution(aim)),
                aim == Aim.WORST);
    }

    private static String formula(Aim aim) {
        return switch (aim) {
            case WORST ->
                "Least E with every weighted distance from what is wanted at most E; among equals the move of least squares, then the"
                        + " least.";
            case EVEN -> "Least sum of the squares of the weighted distances from what is wanted.";
            case INSIDE ->
                "Largest s with every reading at least s inside both its limits; among equals the least move.";
            case LEAST ->
                "Least root of the squares of the shifts and of the turns times the scale length, with every reading inside its limits"
                        + " by the guard. The scale length is the root mean square distance of the stations from the pivot.";
        };
    }

    private static String caution(Aim aim) {
        return switch (aim) {
            case WORST ->
                "Recommended: the eye finds the worst place, not the mean. A reading that is wrong pulls it most.";
            case EVEN -> "It bears a wrong reading better, and may leave one place well outside to better the rest.";
            case INSIDE ->
                "The right one where more is allowed on one side of what is wanted than on the other; weights do not count.";
            case LEAST -> "It stops as soon as all is inside, so most of the tolerance is spent; weights do not count.";
        };
    }
}
