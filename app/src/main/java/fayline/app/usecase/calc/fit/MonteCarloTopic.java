package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.Finding;
import fayline.method.uncertainty.Chance;
import fayline.method.uncertainty.Distribution;
import fayline.method.uncertainty.Distribution.Shape;
import fayline.method.uncertainty.Draw;
import fayline.method.uncertainty.Formula;
import fayline.method.uncertainty.MonteCarlo;
import fayline.method.uncertainty.MonteCarloCalculator;
import fayline.method.uncertainty.MonteCarloResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** How a result is spread, by trials that stop by themselves. */
final class MonteCarloTopic {
    private MonteCarloTopic() {}

    static CalcTopic topic() {
        Form input = Form.empty()
                .takes("name", Kind.text(), "as the model calls it; X1, X2, ... in order where it is missing")
                .needs("distribution", Odds.shapes(), "how it is spread")
                .needs("mean", Kind.number(), "its middle")
                .takes("std", Kind.notNegative(), "its standard deviation; or")
                .takes(
                        "halfWidth",
                        Kind.notNegative(),
                        "how far its furthest value lies from the middle; not for normal");
        return new FitTopic(
                "montecarlo",
                "How a result is spread when its inputs are, by drawing trials until the figures stand still.",
                Form.empty()
                        .needs("model", Kind.text(), "the result: numbers and names with + - * / and brackets")
                        .needs("inputs", Kind.list(input.asKind(), 1), "what it is made of, independent of each other")
                        .takes("coverage", Kind.positive(), "part of the values that the interval holds; 0.95")
                        .takes("interval", Kind.word("symmetric", "shortest"), "which interval; symmetric")
                        .takes("lower", Kind.number(), "least value allowed, where the chance is asked")
                        .takes("upper", Kind.number(), "most value allowed")
                        .takes("significantDigits", Kind.whole(1), "of the standard uncertainty: 1 or 2; 2")
                        .takes("seed", Kind.whole(0), "the same seed gives the same answer; 1"),
                MonteCarloTopic::answer);
    }

    private static CalcAnswer answer(Given in) {
        List<Draw> draws = new ArrayList<>();
        for (Given g : in.objects("inputs")) {
            String name = g.text("name", "X" + (draws.size() + 1));
            draws.add(new Draw.Single(name, distribution(g, name)));
        }
        List<String> names = draws.stream().flatMap(d -> d.names().stream()).toList();
        if (names.stream().distinct().count() < names.size()) {
            throw CalcInputException.of("inputs", "the names " + String.join(", ", names), "each name once");
        }
        boolean shortest = "shortest".equals(in.text("interval", "symmetric"));
        MonteCarloResult r = Odds.checked(() -> MonteCarloCalculator.calculate(new MonteCarlo(
                Formula.read(in.text("model"), names),
                draws,
                in.number("coverage", MonteCarlo.USUAL_COVERAGE),
                shortest ? MonteCarlo.Interval.SHORTEST : MonteCarlo.Interval.SYMMETRIC,
                in.has("significantDigits") ? in.whole("significantDigits") : 2,
                in.maybe("lower"),
                in.maybe("upper"),
                in.has("seed") ? in.whole("seed") : Odds.SEED)));
        ObjectNode out = Json.object();
        out.put("estimate", r.estimate());
        out.put("standardUncertainty", r.standardUncertainty());
        MonteCarloResult.Span span = shortest ? r.shortest() : r.symmetric();
        out.put("low", span.low());
        out.put("high", span.high());
        r.inside().ifPresent(c -> write(out, c));
        out.put("trials", r.trials());
        out.put("blocks", r.blocks());
        out.put("settled", r.settled());
        out.put("seed", r.seed());
        return new CalcAnswer(
                out,
                Map.of(),
                List.of("trials in blocks until two standard errors are below half a unit of the last digit"),
                List.of("jcgm101 7.9"),
                r.findings().stream().map(Finding::sentence).toList(),
                false);
    }

    private static void write(ObjectNode out, Chance c) {
        out.put("probabilityInside", c.probability());
        out.put("probabilityStandardError", c.standardError());
        out.put("probabilityAtLeast", c.least());
    }

    private static Distribution distribution(Given g, String name) {
        Shape shape = Odds.shape(g.text("distribution"));
        if (g.has("std") == g.has("halfWidth") || (shape == Shape.NORMAL && g.has("halfWidth"))) {
            throw CalcInputException.of(
                    "inputs." + name,
                    g.has("std")
                            ? "both std and halfWidth"
                            : g.has("halfWidth") ? "halfWidth" : "neither std nor halfWidth",
                    shape == Shape.NORMAL ? "std" : "one of std and halfWidth");
        }
        return g.has("std")
                ? Distribution.ofStandardDeviation(shape, g.number("mean"), g.number("std"))
                : new Distribution(shape, g.number("mean"), g.number("halfWidth"));
    }
}
