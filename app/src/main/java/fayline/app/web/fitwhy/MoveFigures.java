package fayline.app.web.fitwhy;

import fayline.app.web.why.WhyView;
import fayline.flow.project.fit.Fit;
import fayline.flow.result.fit.FitAdvice;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Vector;
import fayline.method.fitup.motion.SpaceWords;
import fayline.method.fitup.space.PartMove;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The move, what it does at marked places, and the gap it leaves at each station. */
final class MoveFigures {
    private static final String SMALL_MOTION =
            "[goldstein1980] for the small motion, [goldfarb1983] and [lawson1974] for the search";
    private static final String RIGID = "[goldstein1980]: a rigid motion in the plane";

    private static final String IN_PLANE =
            "Gap after = gap read - n \u00b7 shift - lever \u00d7 turn, with n the way of the gap from part to neighbour and the lever"
                    + " (place - pivot) \u00d7 n.";
    private static final String IN_SPACE =
            "Gap after = gap read - n \u00b7 shift - ((place - pivot) \u00d7 n) \u00b7 turn, with n the way of the gap in space from part"
                    + " to neighbour; flush after = flush read + s \u00b7 shift + ((place - pivot) \u00d7 s) \u00b7 turn, with s the way"
                    + " the surface looks. Shift and turn have three parts each, and all gaps and flushes are judged together.";

    private MoveFigures() {}

    static List<WhyView.Shown> move(Grounds g) {
        List<WhyView.Shown> all = new ArrayList<>();
        g.result()
                .advice()
                .ifPresent(a -> a.best().found().ifPresent(m -> {
                    all.add(whole(g, a, m));
                    g.result().fit().marks().forEach(k -> all.add(mark(g, a, m, k)));
                }));
        return all;
    }

    private static WhyView.Shown whole(Grounds g, FitAdvice a, PartMove.Found m) {
        List<WhyView.Input> inputs = new ArrayList<>();
        for (int i = 0; i < a.rows().size(); i++) {
            FitRow row = a.rows().get(i);
            inputs.addAll(g.readings(a.state(), row.station().id()));
            inputs.addAll(g.warmed(a, i));
            inputs.addAll(g.wanted(row));
            inputs.add(g.station(row));
            if (row.weight() != 1) {
                inputs.add(g.written(
                        row.station().id() + ": weight",
                        String.format(Locale.ROOT, "%.2g", row.weight()),
                        "stations",
                        row.station().id()));
            }
        }
        if (a.best().curved()) {
            m.flushes().forEach(f -> inputs.addAll(flush(g, a, f)));
        }
        inputs.addAll(g.later());
        g.lines().line("room").ifPresent(l -> inputs.add(g.written("room to move", "see there", "room")));
        inputs.add(pivot(g, a, m));
        return new WhyView.Shown(
                "The move",
                g.sight().say(a.sentence()),
                (a.best().curved() ? IN_SPACE : IN_PLANE)
                        + " Of all moves within their room the one whose worst weighted distance from what is wanted is smallest;"
                        + " among equals the one of least squares, then the least.",
                inputs,
                SMALL_MOTION,
                cautions(a, m),
                true);
    }

    private static List<String> cautions(FitAdvice a, PartMove.Found m) {
        List<String> all = new ArrayList<>();
        all.add("The part is taken as stiff: what bends is not in it.");
        if (!m.unique()) {
            all.add("Other moves leave as small a worst gap; this one evens out the rest.");
        }
        if (!a.best().determined()) {
            all.add("The stations do not know every motion; what they do not know is left alone.");
        }
        return all;
    }

    /** What a flush of a curved part rests on. */
    private static List<WhyView.Input> flush(Grounds g, FitAdvice a, PartMove.Flush f) {
        List<WhyView.Input> all =
                new ArrayList<>(g.flushes(a.state(), f.wanted().station()));
        all.add(g.written(
                f.wanted().station() + ": flush wanted",
                g.mm(f.wanted().lowerMm()) + " to " + g.mm(f.wanted().upperMm()),
                "flush"));
        return all;
    }

    private static WhyView.Input pivot(Grounds g, FitAdvice a, PartMove.Found m) {
        return Grounds.computed(
                "pivot: " + a.pivotName(),
                a.best().curved()
                        ? g.place(m.pivot())
                        : g.place(m.pivot().x(), m.pivot().y()));
    }

    private static WhyView.Shown mark(Grounds g, FitAdvice a, PartMove.Found m, Fit.Mark mark) {
        boolean curved = a.best().curved();
        return new WhyView.Shown(
                mark.name(),
                g.sight().say(new SpaceWords(g.result().side(), m.pivot(), "").at(m.move(), mark.place(), mark.name())),
                "The place after = pivot + (place - pivot) turned + shift. Two places say the whole move without its pivot"
                        + (curved ? ", but for the tilt about the line through both." : "."),
                List.of(
                        g.written(
                                "where it is marked",
                                curved
                                        ? g.place(mark.place())
                                        : g.place(mark.at().xMm(), mark.at().yMm()),
                                "marks",
                                mark.name()),
                        Grounds.computed("the move", g.sight().say(a.sentence()), g.why("move")),
                        pivot(g, a, m)),
                curved ? "[goldstein1980]: a rigid motion in space" : RIGID,
                List.of(),
                false);
    }

    /** The gap left at every station, the worst first. */
    static List<WhyView.Shown> gaps(Grounds g) {
        Optional<FitAdvice> advice = g.result().advice();
        Optional<PartMove.Found> best = advice.flatMap(a -> a.best().found());
        List<WhyView.Shown> all = new ArrayList<>();
        if (best.isEmpty()) {
            return all;
        }
        FitAdvice a = advice.get();
        int worst = worst(a, best.get());
        for (int i = 0; i < a.rows().size(); i++) {
            WhyView.Shown shown = gap(g, a, best.get(), i, i == worst);
            all.add(i == worst ? 0 : all.size(), shown);
        }
        return all;
    }

    private static int worst(FitAdvice a, PartMove.Found m) {
        int worst = 0;
        for (int i = 1; i < a.rows().size(); i++) {
            worst = off(a, m, i) > off(a, m, worst) ? i : worst;
        }
        return worst;
    }

    private static double off(FitAdvice a, PartMove.Found m, int i) {
        FitRow row = a.rows().get(i);
        return row.weight() * Math.abs(m.gapsMm().get(i) - row.nominalMm());
    }

    private static WhyView.Shown gap(Grounds g, FitAdvice a, PartMove.Found m, int i, boolean worst) {
        FitRow row = a.rows().get(i);
        Vector place = row.station().place();
        Vector way = row.station().normal();
        Vector lever = place.minus(m.pivot()).cross(way);
        List<WhyView.Input> inputs =
                new ArrayList<>(g.readings(a.state(), row.station().id()));
        inputs.addAll(g.warmed(a, i));
        inputs.add(g.station(row));
        inputs.add(Grounds.computed("the move", g.sight().say(a.sentence()), g.why("move")));
        inputs.add(Grounds.computed(
                "what the shift takes from it", g.mm(way.dot(m.move().shiftMm()))));
        inputs.add(Grounds.computed(
                "what the turn takes from it", g.mm(lever.dot(m.move().turnRad()))));
        inputs.addAll(g.wanted(row));
        return new WhyView.Shown(
                (worst ? "Worst gap after the move, " : "Gap after the move, ")
                        + row.station().id(),
                g.mm(m.gapsMm().get(i)),
                "Gap read - n \u00b7 shift - lever \u00d7 turn, with the turn's own curve: exact for a straight neighbour.",
                inputs,
                SMALL_MOTION,
                List.of(),
                worst);
    }
}
