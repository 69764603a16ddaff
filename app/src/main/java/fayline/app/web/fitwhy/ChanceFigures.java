package fayline.app.web.fitwhy;

import fayline.app.web.fit.FitSchemes;
import fayline.app.web.why.WhyView;
import fayline.basis.finding.Figure;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitGauge;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitAfter;
import fayline.flow.result.fit.FitResult;
import fayline.method.fitup.after.AsBuiltResult;
import fayline.method.fitup.heat.StationHeat;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.scheme.Assumption;
import fayline.method.fitup.scheme.SchemeComparison;
import fayline.method.fitup.scheme.SchemeOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** How sure it is, what heat does, and how the bonded part compares with what was foretold. */
final class ChanceFigures {
    private ChanceFigures() {}

    static List<WhyView.Shown> chances(Grounds g) {
        Optional<SchemeComparison> schemes =
                g.result().advice().flatMap(FitAdvice::schemes).or(g.result()::beforehand);
        return schemes.map(s -> s.schemes().stream().map(o -> chance(g, o)).toList())
                .orElse(List.of());
    }

    private static WhyView.Shown chance(Grounds g, SchemeOutcome o) {
        Fit fit = g.result().fit();
        List<WhyView.Input> inputs = new ArrayList<>();
        inputs.add(g.written(
                "the scheme",
                String.join(", ", o.stops().stream().map(s -> s.id()).toList()),
                "schemes",
                o.name()));
        inputs.add(g.reading(
                fit.gauge().map(FitGauge::deviationMm).orElse(OptionalDouble.empty()),
                "one reading, standard uncertainty",
                "deviation",
                Assumption.READING));
        inputs.add(g.reading(
                fit.gauge().map(FitGauge::sharedMm).orElse(OptionalDouble.empty()),
                "shared by all readings of one hand",
                "shared",
                Assumption.READING_COMMON));
        o.assumed().stream()
                .filter(x -> x != Assumption.READING && x != Assumption.READING_COMMON)
                .forEach(x -> inputs.add(new WhyView.Input(
                        "taken for this scheme",
                        g.sight().say(x.words()),
                        "assumed: common practice, no source",
                        true,
                        "")));
        o.missing()
                .forEach(m -> inputs.add(new WhyView.Input(
                        m.what() + (m.about().isEmpty() ? "" : " (" + m.about() + ")"),
                        "not given",
                        "nobody gave it",
                        true,
                        "")));
        o.odds().ifPresent(d -> odds(g, d, inputs));
        return new WhyView.Shown(
                o.name() + ": chance that every gap ends inside",
                o.odds().map(d -> FitSchemes.chance(d.joint().probability())).orElse("not told"),
                "Each stop's error moves every gap through the stiff part; the errors' own distributions are averaged over"
                        + " quasi-random points, all stations together, so that shared causes count once.",
                inputs,
                "[jcgm100], [jcgm101]",
                List.of("It holds for errors as they are described here; a slip of the hand is not among them."),
                false);
    }

    private static void odds(Grounds g, GapOdds odds, List<WhyView.Input> inputs) {
        for (GapOdds.StationOdds s : odds.stations()) {
            inputs.add(Grounds.computed(
                    s.id() + ": expected, with its standard deviation",
                    g.mm(s.predictedMm()) + ", " + g.mm(s.deviationMm()),
                    g.why("gaps")));
        }
        odds.shares().stream()
                .limit(3)
                .forEach(s -> inputs.add(Grounds.computed(
                        "share of the variance at " + odds.worstStation().id() + ": " + s.source()
                                + (s.owner().isEmpty() ? "" : ", " + s.owner()),
                        String.format(Locale.ROOT, "%.0f %%", 100 * s.share()))));
    }

    static List<WhyView.Shown> heat(Grounds g) {
        FitResult r = g.result();
        List<WhyView.Shown> all = new ArrayList<>();
        Stream<Figure> figures = Stream.concat(
                r.heat().stream().flatMap(h -> h.figures().stream()),
                r.bonded().stream().flatMap(b -> b.figures().stream()));
        figures.forEach(f -> all.add(g.figure(f, "heat")));
        r.heat().ifPresent(h -> h.stations().forEach(s -> all.add(set(g, s))));
        return all;
    }

    private static WhyView.Shown set(Grounds g, StationHeat s) {
        String id = s.row().station().id();
        List<WhyView.Input> inputs = new ArrayList<>();
        g.result().now().ifPresent(n -> {
            inputs.addAll(g.readings(n.state().id(), id));
            inputs.add(
                    n.temperatureDegC().isPresent()
                            ? Grounds.computed(
                                    "temperature noted with the readings",
                                    Amount.degC(n.temperatureDegC().getAsDouble())
                                            .in(g.sight().format().system()))
                            : new WhyView.Input(
                                    "temperature at the readings", "none noted", "assumed: the reference", true, ""));
        });
        inputs.add(g.written("expansions, reference and service range", "see there", "heat"));
        g.result()
                .fit()
                .wanted()
                .minimumGap()
                .ifPresent(m -> inputs.add(g.written("least gap", m.asTyped(), "minimum-gap")));
        inputs.add(Grounds.computed("the gap opens per kelvin by", g.mm(s.perKelvinMm() * 10) + " in 10 K"));
        return new WhyView.Shown(
                "Gap to set now at " + id,
                g.mm(s.setNowMm()) + ", at the least " + g.mm(s.smallestShopGapMm()),
                "Set now = wanted gap at the reference temperature, brought to the temperature now; least = least gap + the"
                        + " largest closure over the service range. Both from g(T) = g + n \u00b7 (growth of surround - growth of part).",
                inputs,
                heatSource(g),
                List.of("Free to grow about the anchor; not for a sheet that is bonded all round."),
                false);
    }

    private static String heatSource(Grounds g) {
        return g.result().heat().stream()
                .flatMap(h -> h.figures().stream())
                .map(Figure::source)
                .findFirst()
                .orElse("common practice, no source");
    }

    /** The bonded part, station by station, then the lesson. */
    static List<WhyView.Shown> bond(Grounds g) {
        List<WhyView.Shown> all = new ArrayList<>();
        g.result().after().ifPresent(a -> {
            a.result().ifPresent(x -> all.add(whole(g, a, x)));
            a.stations().forEach(p -> all.add(station(g, a, p)));
        });
        return all;
    }

    private static WhyView.Shown whole(Grounds g, FitAfter a, AsBuiltResult x) {
        return new WhyView.Shown(
                "As bonded against foretold",
                String.format(
                        Locale.ROOT,
                        "sum of squares %.1f on %d degrees of freedom, p = %.3f",
                        x.chiSquare(),
                        x.degrees(),
                        x.pValue()),
                "Residual = read - foretold; the sum of squares is weighed with the full covariance of foretold gaps and"
                        + " readings. The lesson is the fitted move drawn in towards none by as much as it is doubtful.",
                List.of(
                        Grounds.computed("what it means", a.words()),
                        Grounds.computed("lesson", g.sight().say(a.lessonWords()))),
                "[jcgm100], [james-stein1961]",
                List.of("One build is one sample."),
                true);
    }

    private static WhyView.Shown station(Grounds g, FitAfter a, FitAfter.Pair p) {
        List<WhyView.Input> inputs = new ArrayList<>();
        inputs.addAll(g.readings(a.from(), p.station()));
        inputs.add(Grounds.computed("foretold from those, after the move", g.mm(p.foretoldMm())));
        inputs.addAll(g.readings(a.to(), p.station()));
        a.result()
                .flatMap(x -> x.stations().stream()
                        .filter(s -> s.id().equals(p.station()))
                        .findFirst())
                .ifPresent(d -> inputs.add(Grounds.computed(
                        "difference in its standard uncertainty", String.format(Locale.ROOT, "%+.1f", d.z()))));
        return new WhyView.Shown(
                "As bonded at " + p.station(),
                g.mm(p.readMm()) + ", foretold " + g.mm(p.foretoldMm()),
                "Residual = read - foretold; z = residual over its standard uncertainty, flagged beyond 2.",
                inputs,
                "[jcgm100]",
                List.of(),
                false);
    }
}
