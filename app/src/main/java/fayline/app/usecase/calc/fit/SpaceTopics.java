package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.Finding;
import fayline.basis.numeric.optimum.StraightLine;
import fayline.method.fitup.Spot;
import fayline.method.fitup.space.FlushMove;
import fayline.method.fitup.space.FlushPlaneCalculator;
import fayline.method.fitup.space.FlushPlaneResult;
import fayline.method.fitup.space.FlushReading;
import java.util.List;
import java.util.Map;

/** Moves out of the plane, and the straight line on which the fitting kernels are tried. */
final class SpaceTopics {
    private static final List<String> SOURCES = List.of("lawson1974; lemke1954");

    private SpaceTopics() {}

    static List<CalcTopic> all() {
        return List.of(
                SpaceMoveTopic.topic(),
                new FitTopic(
                        "flush",
                        "The shift and tilt that bring a flat part flush.",
                        Form.empty()
                                .takes(
                                        "pivot",
                                        Kind.plane(),
                                        "pivot of the tilt; the middle of the stations if missing")
                                .needs(
                                        "nominal",
                                        Kind.number(),
                                        "flush wanted, mm; positive where the part stands proud")
                                .needs("stations", Kind.list(flush().asKind(), 1), "flush readings"),
                        SpaceTopics::flush),
                new FitTopic(
                        "kernel.line",
                        "A straight line through points: least squares and smallest worst deviation.",
                        Form.empty()
                                .takes("model", Kind.passedOver(), "explains; not read")
                                .needs("x", Kind.list(Kind.number(), 3), "places")
                                .needs("y", Kind.list(Kind.number(), 3), "values, as many"),
                        SpaceTopics::line));
    }

    private static Form flush() {
        return Form.empty()
                .needs("id", Kind.text(), "the mark at the bench")
                .needs("x", Kind.number(), "mm aft (left part)")
                .needs("y", Kind.number(), "mm up")
                .needs("flush", Kind.number(), "mm, positive where the part stands proud");
    }

    private static CalcAnswer flush(Given in) {
        List<FlushReading> readings = in.objects("stations").stream()
                .map(g -> FlushReading.of(
                        g.text("id"), new Spot(g.number("x"), g.number("y")), g.number("flush"), in.number("nominal")))
                .toList();
        Spot middle = new Spot(
                readings.stream().mapToDouble(r -> r.at().xMm()).average().orElseThrow(),
                readings.stream().mapToDouble(r -> r.at().yMm()).average().orElseThrow());
        Spot pivot = in.has("pivot") ? Shapes.spot(in.numbers("pivot")) : middle;
        FlushPlaneResult r = Odds.checked(() -> FlushPlaneCalculator.calculate(readings, pivot));
        ObjectNode out = Json.object().put("rank", r.rank());
        out.set("leastSquares", json(r.leastSquares()));
        ObjectNode minimax = json(r.minimax());
        minimax.put("worstDeviation", r.minimax().worstDeviation());
        out.set("minimax", minimax);
        return new CalcAnswer(
                out,
                Map.of(),
                List.of("f + dz + rx r_y - ry r_x at nominal; least squares, and least worst deviation"),
                SOURCES,
                r.findings().stream().map(Finding::sentence).toList(),
                false);
    }

    private static ObjectNode json(FlushPlaneResult.Solution s) {
        FlushMove m = s.move();
        ObjectNode out = Json.object()
                .put("dz", m.dzMm())
                .put("rxDeg", Math.toDegrees(m.rxRad()))
                .put("ryDeg", Math.toDegrees(m.ryRad()));
        out.set("flush", Shapes.json(s.flushMm()));
        return out.put("sumSquares", s.sumSquares());
    }

    private static CalcAnswer line(Given in) {
        StraightLine l = Odds.checked(() -> StraightLine.through(in.numbers("x"), in.numbers("y")));
        ObjectNode out = Json.object();
        out.putObject("leastSquares")
                .put("b0", l.b0())
                .put("b1", l.b1())
                .put("stdB0", l.stdB0())
                .put("stdB1", l.stdB1());
        out.putObject("minimax").put("worstDeviation", l.worstDeviation());
        return new CalcAnswer(
                out,
                Map.of(),
                List.of("y = b0 + b1 x: least squares with residual variance over n - 2; least worst deviation"),
                SOURCES,
                List.of(),
                false);
    }
}
