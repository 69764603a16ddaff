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
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.space.FlushMove;
import fayline.method.fitup.space.FlushPlaneCalculator;
import fayline.method.fitup.space.FlushPlaneResult;
import fayline.method.fitup.space.FlushReading;
import fayline.method.fitup.space.SpaceLimits;
import fayline.method.fitup.space.SpaceMoveCalculator;
import fayline.method.fitup.space.SpaceMoveResult;
import fayline.method.fitup.space.SpaceReading;
import fayline.method.fitup.space.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Moves out of the plane, and the straight line on which the fitting kernels are tried. */
final class SpaceTopics {
    private static final List<String> SOURCES = List.of("lawson1974; lemke1954");

    private SpaceTopics() {}

    static List<CalcTopic> all() {
        return List.of(
                new FitTopic(
                        "move.3d",
                        "The best rigid move of a curved part in space, gap and flush solved together.",
                        space(),
                        SpaceTopics::space),
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

    private static Form space() {
        Form station = Form.empty()
                .needs("id", Kind.text(), "the mark at the bench")
                .needs("p", Kind.space(), "place on the part edge, mm")
                .needs("gapNormal", Kind.space(), "from part to neighbour")
                .needs("surfaceNormal", Kind.space(), "of the part's surface, outboard")
                .needs("gap", Kind.number(), "mm")
                .needs("flush", Kind.number(), "mm, positive where the part stands proud")
                .takes("minGap", Kind.number(), "gap never to be undercut, mm");
        return Form.empty()
                .takes("pivot", Kind.space(), "pivot of the moves; the middle of the stations if missing")
                .needs("nominalGap", Kind.number(), "gap wanted, mm")
                .needs("nominalFlush", Kind.number(), "flush wanted, mm")
                .needs("stations", Kind.list(station.asKind(), 1), "gap and flush readings");
    }

    private static Form flush() {
        return Form.empty()
                .needs("id", Kind.text(), "the mark at the bench")
                .needs("x", Kind.number(), "mm aft (left part)")
                .needs("y", Kind.number(), "mm up")
                .needs("flush", Kind.number(), "mm, positive where the part stands proud");
    }

    private static Vector vector(List<Double> v) {
        return new Vector(v.get(0), v.get(1), v.get(2));
    }

    private static List<Double> list(Vector v) {
        return List.of(v.x(), v.y(), v.z());
    }

    private static CalcAnswer space(Given in) {
        List<SpaceReading> readings = new ArrayList<>();
        Vector sum = Vector.ZERO;
        List<Given> stations = in.objects("stations");
        for (Given g : stations) {
            Vector at = vector(g.numbers("p"));
            sum = sum.plus(at);
            SpaceReading gap = Odds.checked(() -> SpaceReading.of(
                    g.text("id"),
                    SpaceReading.Kind.GAP,
                    at,
                    vector(g.numbers("gapNormal")),
                    g.number("gap"),
                    in.number("nominalGap")));
            readings.add(g.has("minGap") ? gap.atLeast(g.number("minGap")) : gap);
            readings.add(Odds.checked(() -> SpaceReading.of(
                    g.text("id"),
                    SpaceReading.Kind.FLUSH,
                    at,
                    vector(g.numbers("surfaceNormal")),
                    g.number("flush"),
                    in.number("nominalFlush"))));
        }
        Vector middle = sum.times(1.0 / stations.size());
        Vector pivot = in.has("pivot") ? vector(in.numbers("pivot")) : middle;
        SpaceMoveResult r = Odds.checked(() -> SpaceMoveCalculator.calculate(readings, pivot, SpaceLimits.WIDEST));
        ObjectNode out = Json.object().put("status", r.status().name()).put("rank", r.rank());
        r.leastSquares().ifPresent(s -> out.set("leastSquares", json(s)));
        r.minimax().ifPresent(s -> {
            ObjectNode one = json(s);
            one.put("worstDeviation", s.worstDeviation()).put("optimumUnique", s.unique());
            s.deciding().forEach(one.putArray("deciding")::add);
            out.set("minimax", one);
        });
        return new CalcAnswer(
                out,
                Map.of(),
                List.of("rows (m, r x m) of gaps, -(s, r x s) of flush; least squares, and least worst deviation"),
                SOURCES,
                r.findings().stream().map(Finding::sentence).toList(),
                r.status() != MoveStatus.OK);
    }

    private static ObjectNode json(SpaceMoveResult.Solution s) {
        ObjectNode out = Json.object();
        out.set("d", Shapes.json(list(s.move().shiftMm())));
        out.set("rotDeg", Shapes.json(list(s.move().turnDeg())));
        List<Double> gaps = new ArrayList<>();
        List<Double> flush = new ArrayList<>();
        for (int i = 0; i < s.valuesMm().size(); i += 2) {
            gaps.add(s.valuesMm().get(i));
            flush.add(s.valuesMm().get(i + 1));
        }
        out.set("gaps", Shapes.json(gaps));
        out.set("flush", Shapes.json(flush));
        out.put("sumSquares", s.sumSquares());
        out.put("linearisationError", s.straightErrorMm());
        return out;
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
