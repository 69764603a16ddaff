package fayline.app.web.fit;

import fayline.app.web.frame.Sight;
import fayline.basis.finding.Figure;
import fayline.flow.project.fit.FitGauge;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Says how the figures of a fit come about: inputs with their origin, method, source. */
public final class FitWhys {
    private FitWhys() {}

    static List<FitView.Why> of(Sight sight, FitResult r) {
        List<FitView.Why> all = new ArrayList<>();
        r.advice().ifPresent(a -> answer(sight, r, a, all));
        r.heat().ifPresent(h -> h.figures().forEach(f -> all.add(figure(f))));
        r.bonded().ifPresent(b -> b.figures().forEach(f -> all.add(figure(f))));
        r.after()
                .flatMap(x -> x.result())
                .ifPresent(x -> all.add(new FitView.Why(
                        "After the bond",
                        List.of(
                                String.format(
                                        Locale.ROOT,
                                        "Residual = read - foretold, z = residual over its standard uncertainty; with the full"
                                                + " covariance the sum of squares is %.1f on %d degrees of freedom, p = %.3f.",
                                        x.chiSquare(),
                                        x.degrees(),
                                        x.pValue()),
                                "The lesson is the fitted move drawn in towards none by as much as it is doubtful.",
                                "Source: [jcgm100], [james-stein1961]"))));
        return all;
    }

    private static void answer(Sight sight, FitResult r, FitAdvice a, List<FitView.Why> all) {
        List<String> move = new ArrayList<>();
        move.add(
                "Gap after the move = gap read - n·shift - lever·turn, n the way of the gap from part to neighbour, lever"
                        + " = (place - pivot) × n; the part is rigid, and the lines are straightened anew where the turn is large.");
        move.add("Chosen: the move whose worst deviation is smallest (a linear program); among equals the one of least"
                + " squares, then the least.");
        move.add("Pivot: " + a.pivotName()
                + String.format(
                        Locale.ROOT,
                        ", x %.1f mm, y %.1f mm in the part's frame.",
                        a.pivot().xMm(),
                        a.pivot().yMm()));
        a.rows()
                .forEach(x -> move.add("Station " + x.station().id() + ": " + FitWords.fine(sight, x.gapMm()) + " now, "
                        + FitAnswers.needs(sight, x)
                        + (x.weight() == 1 ? "" : String.format(Locale.ROOT, ", weight %.2g", x.weight()))));
        move.add("Source: [goldstein1980] for the small motion, [goldfarb1983] and [lawson1974] for the search");
        all.add(new FitView.Why("The move", move));
        all.add(new FitView.Why("How sure the readings are", gauge(sight, r)));
        if (a.shims().isPresent()) {
            all.add(new FitView.Why(
                    "Shims",
                    List.of(
                            "What must be filled at a point is its clearance after the move; the pieces of all points are"
                                    + " chosen together so that the worst gap is nearest to nominal.",
                            "Source: [golub-vanloan1996] for how evenly the points hold")));
        }
        if (a.trim().isPresent()) {
            all.add(new FitView.Why(
                    "Trim",
                    List.of(
                            "The least area cut with which some move brings every station inside: a linear program over"
                                    + " depths and move together; depth times the length of edge a station speaks for.",
                            "Source: [boyd-vandenberghe2004], [steiner1840] for the cut line's corners")));
        }
        if (a.schemes().isPresent()) {
            all.add(new FitView.Why(
                    "The chances",
                    List.of(
                            "Each stop's error moves every gap through the rigid part; the errors' own distributions are"
                                    + " averaged over quasi-random points, all stations together, so that shared causes count"
                                    + " once.",
                            "Source: [jcgm100], [jcgm101]")));
        }
    }

    private static List<String> gauge(Sight sight, FitResult r) {
        List<String> lines = new ArrayList<>();
        lines.add(r.fit().gauge().map(g -> "Gauge: " + g.name() + ".").orElse("No gauge is named."));
        lines.add("One reading: "
                + given(sight, r.fit().gauge().map(FitGauge::deviationMm).orElse(OptionalDouble.empty())));
        lines.add("Shared by all readings of one hand: "
                + given(sight, r.fit().gauge().map(FitGauge::sharedMm).orElse(OptionalDouble.empty())));
        r.assumed().forEach(x -> lines.add("Assumed: " + x + "."));
        lines.add(
                "Repeats are averaged; a feeler's gap lies between the leaf that goes in and the next. Source: [jcgm100]");
        return lines;
    }

    private static String given(Sight sight, OptionalDouble mm) {
        return mm.isPresent()
                ? "standard uncertainty " + FitWords.fine(sight, mm.getAsDouble()) + ", entered."
                : "not given.";
    }

    /** A figure in lines: how it comes about, its inputs with their origin, source, cautions. */
    public static FitView.Why figure(Figure f) {
        List<String> lines = new ArrayList<>();
        lines.add(f.value() + ": " + f.formula());
        f.inputs()
                .forEach(i -> lines.add(i.name() + ": " + i.value() + ", "
                        + i.origin().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
        lines.add("Source: " + f.source());
        lines.addAll(f.cautions());
        return new FitView.Why(f.name(), lines);
    }
}
