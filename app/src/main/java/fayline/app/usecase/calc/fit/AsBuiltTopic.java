package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.Finding;
import fayline.method.fitup.after.AsBuilt;
import fayline.method.fitup.after.AsBuiltCalculator;
import fayline.method.fitup.after.AsBuiltResult;
import fayline.method.fitup.after.AsBuiltResult.Deviation;
import fayline.method.fitup.after.BuiltGap;
import fayline.method.fitup.after.FittedMove;
import fayline.method.fitup.after.Lesson;
import fayline.method.fitup.after.LessonCalculator;
import fayline.method.fitup.after.MoveCovariance;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Gaps as built against gaps as predicted, and what that teaches. */
final class AsBuiltTopic {
    private AsBuiltTopic() {}

    static CalcTopic topic() {
        Form station = Shapes.station()
                .needs("predicted", Kind.number(), "gap predicted, mm")
                .needs("uPredicted", Kind.notNegative(), "its standard uncertainty; 0 where covariance holds it")
                .needs("measured", Kind.number(), "gap measured after the bond, mm")
                .needs("uMeasured", Kind.notNegative(), "standard uncertainty of that reading");
        return new FitTopic(
                "asbuilt",
                "How gaps after the bond compare with their prediction, whether the part moved, and what to learn from it.",
                Form.empty()
                        .takes(
                                "pivot",
                                Kind.plane(),
                                "pivot of the moves; the middle of the stations where it is missing")
                        .takes(
                                "priorStdBias",
                                Shapes.move().asKind(),
                                "how much the way of locating was thought to be off, standard deviations; asks for the"
                                        + " lesson")
                        .takes(
                                "predictedCovariance",
                                Kind.list(Kind.list(Kind.number(), 1), 1),
                                "covariance of the predicted gaps, mm2, instead of uPredicted")
                        .needs("stations", Kind.list(station.asKind(), 1), "the gaps"),
                AsBuiltTopic::answer);
    }

    private static CalcAnswer answer(Given in) {
        List<BuiltGap> gaps = in.objects("stations").stream()
                .map(g -> Odds.checked(() -> new BuiltGap(
                        Shapes.station(g),
                        g.number("predicted"),
                        g.number("uPredicted"),
                        g.number("measured"),
                        g.number("uMeasured"))))
                .toList();
        AsBuiltResult r = Odds.checked(() -> AsBuiltCalculator.calculate(
                new AsBuilt(Shapes.pivot(in, Shapes.stations(in, "stations")), gaps, in.rows("predictedCovariance"))));
        ObjectNode out = Json.object();
        List<Deviation> s = r.stations();
        out.set("residual", Shapes.json(s.stream().map(Deviation::residualMm).toList()));
        out.set("z", Shapes.json(s.stream().map(Deviation::z).toList()));
        r.flagged().forEach(out.putArray("flagged")::add);
        out.put("chiSquare", r.chiSquare());
        out.put("pValue", r.pValue());
        List<String> cautions =
                new ArrayList<>(r.findings().stream().map(Finding::sentence).toList());
        r.motion().ifPresent(m -> {
            out.set("fittedMove", Shapes.json(m.fitted().move()));
            out.set("stdMove", Shapes.json(m.fitted().covariance().deviations()));
            out.put("chiSquareAfter", m.chiSquare());
            out.put("pValueAfter", m.pValue());
            in.maybeObject("priorStdBias").ifPresent(p -> lesson(out, cautions, m.fitted(), p));
        });
        out.put("reading", r.reading().name().toLowerCase(Locale.ROOT));
        return new CalcAnswer(
                out,
                Map.of(),
                List.of("r = measured - predicted; chi-square; weighted least squares from r = -A move; shrinkage"),
                List.of("jcgm100; james-stein1961"),
                cautions,
                false);
    }

    private static void lesson(ObjectNode out, List<String> cautions, FittedMove fitted, Given prior) {
        Lesson l = Odds.checked(() -> LessonCalculator.calculate(
                List.of(fitted),
                MoveCovariance.ofDeviations(
                        prior.number("dx"), prior.number("dy"), Math.toRadians(prior.number("thetaDeg")))));
        out.set("lessonMove", Shapes.json(l.move()));
        out.set("oppositeHandLesson", Shapes.json(l.mirrored().move()));
        cautions.add("The opposite hand takes the lesson only where its cause is in a tool that was mirrored too.");
    }
}
