package fayline.app.web.fitwhy;

import fayline.app.web.why.WhyView;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.result.fit.FitAdvice;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import fayline.method.fitup.shim.ShimResult;
import fayline.method.fitup.shim.ShimStack;
import fayline.method.fitup.space.PartMove;
import fayline.method.fitup.trim.TrimResult;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What holds the part where it must sit, and what must come off where a move alone does not do. */
final class HoldFigures {
    private static final double NOTHING_MM = 1e-6;

    private HoldFigures() {}

    static List<WhyView.Shown> shims(Grounds g) {
        List<WhyView.Shown> all = new ArrayList<>();
        g.result()
                .advice()
                .ifPresent(a -> a.best()
                        .found()
                        .ifPresent(m -> a.shims().ifPresent(s -> {
                            for (int j = 0; j < s.exactMm().size(); j++) {
                                all.add(shim(g, a, m, s, j));
                            }
                        })));
        return all;
    }

    private static WhyView.Shown shim(Grounds g, FitAdvice a, PartMove.Found m, ShimResult s, int j) {
        FitHolding.Point point = g.result().fit().holding().points().get(j);
        Station at = a.points().get(j);
        double moved = m.move().alongMm(at.place(), at.normal(), m.pivot());
        double exact = s.exactMm().get(j);
        List<WhyView.Input> inputs = new ArrayList<>();
        inputs.add(g.written("where it stands", g.place(at.at().xMm(), at.at().yMm()), "points", at.id()));
        inputs.add(
                point.clearanceMm().isPresent()
                        ? g.written(
                                "clearance now",
                                g.mm(point.clearanceMm().getAsDouble()),
                                "points",
                                at.id(),
                                "clearance")
                        : Grounds.computed(
                                "clearance now: the gap read there, between the two nearest stations that look the same way",
                                g.mm(exact + moved),
                                g.why("gaps")));
        inputs.add(Grounds.computed("the move", g.sight().say(a.sentence()), g.why("move")));
        inputs.add(Grounds.computed("what the move takes from the clearance", g.mm(moved)));
        g.result()
                .fit()
                .holding()
                .shims()
                .ifPresent(k -> inputs.add(g.written(
                        "pieces at hand",
                        k.piecesMm().stream().map(g::mm).collect(Collectors.joining(", ")),
                        "shims")));
        String pieces = s.best()
                .map(b -> "; from stock " + pieces(g, b.stacks().get(j)))
                .orElse("");
        return new WhyView.Shown(
                "Shim at " + at.id(),
                g.mm(exact) + pieces,
                "What must be filled = clearance now - n \u00b7 shift - lever \u00d7 turn. The pieces of all points are chosen together:"
                        + " three heights under and three over each, every combination tried, the one whose worst gap lies"
                        + " nearest to nominal.",
                inputs,
                "[goldstein1980] for the motion, [golub-vanloan1996] for how evenly the points hold",
                exact < -NOTHING_MM ? List.of("The stop is in the way: relieve it.") : List.of(),
                false);
    }

    private static String pieces(Grounds g, ShimStack stack) {
        return stack.piecesMm().isEmpty() ? "none" : stack.sum(g::mm) + " = " + g.mm(stack.heightMm());
    }

    static List<WhyView.Shown> trim(Grounds g) {
        List<WhyView.Shown> all = new ArrayList<>();
        g.result()
                .advice()
                .ifPresent(a -> a.trim().flatMap(TrimResult::cut).ifPresent(c -> {
                    all.add(area(g, a, c));
                    for (int i = 0; i < c.depthsMm().size(); i++) {
                        if (c.depthsMm().get(i) > NOTHING_MM) {
                            all.add(depth(g, a, c, i));
                        }
                    }
                }));
        return all;
    }

    private static WhyView.Shown area(Grounds g, FitAdvice a, TrimResult.Cut c) {
        List<WhyView.Input> inputs = new ArrayList<>();
        for (int i = 0; i < c.depthsMm().size(); i++) {
            if (c.depthsMm().get(i) > NOTHING_MM) {
                inputs.add(Grounds.computed(
                        a.rows().get(i).station().id() + ": depth",
                        g.mm(c.depthsMm().get(i))));
            }
        }
        return new WhyView.Shown(
                "What comes off in all",
                Amount.mm2(c.areaMm2()).in(g.sight().format().system()),
                "Sum of depth times the length of edge a station speaks for. Depths and move are found together: the least area"
                        + " with which some move brings every station inside.",
                inputs,
                "[boyd-vandenberghe2004]: a linear program; [steiner1840] for the cut line's corners",
                List.of("Material cannot be put back: leave on at first what the plan says, read again, then finish."),
                true);
    }

    private static WhyView.Shown depth(Grounds g, FitAdvice a, TrimResult.Cut c, int i) {
        FitRow row = a.rows().get(i);
        String id = row.station().id();
        List<WhyView.Input> inputs = new ArrayList<>(g.readings(a.state(), id));
        inputs.addAll(g.wanted(row));
        inputs.add(Grounds.computed("gap after move and cut", g.mm(c.gapsMm().get(i))));
        g.result()
                .fit()
                .cutting()
                .mostMm()
                .ifPresent(m -> inputs.add(g.written("most that may come off", g.mm(m), "cutting")));
        return new WhyView.Shown(
                "Depth at " + id,
                g.mm(c.depthsMm().get(i)),
                "The gap after the move that goes with the cut, plus the depth, is inside its limits drawn in by the reading's"
                        + " standard uncertainty; between stations of one edge the depth changes by no more than 4 mm per metre.",
                inputs,
                "[boyd-vandenberghe2004]; slope and margin: common practice, no source",
                List.of(),
                false);
    }
}
