package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.Finding;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;
import fayline.method.fitup.move.LargestMarginCalculator;
import fayline.method.fitup.move.LeastMove;
import fayline.method.fitup.move.LeastMoveCalculator;
import fayline.method.fitup.move.MarginMove;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.space.SpaceDeterminacy;
import fayline.method.fitup.space.SpaceLimits;
import fayline.method.fitup.space.SpaceMoveCalculator;
import fayline.method.fitup.space.SpaceMoveResult;
import fayline.method.fitup.space.SpaceQuestion;
import fayline.method.fitup.space.SpaceReading;
import fayline.method.fitup.space.SpaceRows;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The best move of a curved part in space. */
final class SpaceMoveTopic {
    private SpaceMoveTopic() {}

    static CalcTopic topic() {
        return new FitTopic(
                "move.3d",
                "The best rigid move of a curved part in space, gap and flush solved together.",
                form(),
                SpaceMoveTopic::answer);
    }

    private static Form form() {
        Form station = Form.empty()
                .needs("id", Kind.text(), "the mark at the bench")
                .needs("p", Kind.space(), "place on the part edge, mm")
                .needs("gapNormal", Kind.space(), "from part to neighbour")
                .needs("surfaceNormal", Kind.space(), "of the part's surface, outboard")
                .needs("gap", Kind.number(), "mm")
                .needs("flush", Kind.number(), "mm, positive where the part stands proud")
                .takes("minGap", Kind.number(), "gap never to be undercut, mm");
        Form limits = Form.empty()
                .needs("d", Kind.exactly(3, Kind.notNegative()), "most shift along x, y, z, either way, mm")
                .needs("rotDeg", Kind.exactly(3, Kind.notNegative()), "most turn about x, y, z, either way, degrees");
        return Form.empty()
                .takes("pivot", Kind.space(), "pivot of the moves; the middle of the stations if missing")
                .takes("moveLimits", limits.asKind(), "how far the part may go; 10 mm and 2 degrees if missing")
                .needs("nominalGap", Kind.number(), "gap wanted, mm")
                .needs("nominalFlush", Kind.number(), "flush wanted, mm")
                .takes("gapTolerance", Kind.notNegative(), "how much more or less gap is in tolerance, mm")
                .takes("flushTolerance", Kind.notNegative(), "how much more or less flush is in tolerance, mm")
                .takes("uGap", Kind.positive(), "standard uncertainty of a gap reading, mm; with uFlush or not at all")
                .takes("uFlush", Kind.positive(), "standard uncertainty of a flush reading, mm")
                .needs("stations", Kind.list(station.asKind(), 1), "gap and flush readings");
    }

    static Vector vector(List<Double> v) {
        return new Vector(v.get(0), v.get(1), v.get(2));
    }

    private static List<Double> list(Vector v) {
        return List.of(v.x(), v.y(), v.z());
    }

    private static SpaceQuestion question(Given in) {
        List<SpaceReading> readings = new ArrayList<>();
        Vector sum = Vector.ZERO;
        List<Given> stations = in.objects("stations");
        for (Given g : stations) {
            sum = sum.plus(vector(g.numbers("p")));
            SpaceReading gap = reading(in, g, SpaceReading.Kind.GAP);
            readings.add(g.has("minGap") ? gap.atLeast(g.number("minGap")) : gap);
            readings.add(reading(in, g, SpaceReading.Kind.FLUSH));
        }
        Vector middle = sum.times(1.0 / stations.size());
        Vector pivot = in.has("pivot") ? vector(in.numbers("pivot")) : middle;
        SpaceLimits limits = in.maybeObject("moveLimits")
                .map(l -> {
                    SpaceMove most = new SpaceMove(
                            vector(l.numbers("d")), vector(l.numbers("rotDeg")).times(Math.toRadians(1)));
                    return new SpaceLimits(
                            new SpaceMove(
                                    most.shiftMm().times(-1), most.turnRad().times(-1)),
                            most);
                })
                .orElse(SpaceLimits.WIDEST);
        return SpaceQuestion.of(readings, pivot, limits).withUncertainties(uncertainties(in, stations.size()));
    }

    private static SpaceReading reading(Given in, Given g, SpaceReading.Kind kind) {
        boolean gap = kind == SpaceReading.Kind.GAP;
        double wanted = in.number(gap ? "nominalGap" : "nominalFlush");
        double tolerance = in.number(gap ? "gapTolerance" : "flushTolerance", Double.POSITIVE_INFINITY);
        return Odds.checked(() -> SpaceReading.of(
                        g.text("id"),
                        kind,
                        vector(g.numbers("p")),
                        vector(g.numbers(gap ? "gapNormal" : "surfaceNormal")),
                        g.number(gap ? "gap" : "flush"),
                        wanted)
                .within(wanted - tolerance, wanted + tolerance));
    }

    private static List<Double> uncertainties(Given in, int stations) {
        if (in.has("uGap") != in.has("uFlush")) {
            throw CalcInputException.of(
                    in.has("uGap") ? "uFlush" : "uGap", "nothing", "a number above 0, as the other has one");
        }
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < stations && in.has("uGap"); i++) {
            all.add(in.number("uGap"));
            all.add(in.number("uFlush"));
        }
        return all;
    }

    private static CalcAnswer answer(Given in) {
        SpaceQuestion question = question(in);
        SpaceMoveResult r = SpaceMoveCalculator.calculate(question);
        ObjectNode out = Json.object().put("status", r.status().name());
        knowledge(out, r);
        r.outside().forEach(o -> out.withArray("outOfTolerance").add(o.named()));
        r.leastSquares().ifPresent(s -> out.set("leastSquares", even(s)));
        r.minimax().ifPresent(s -> out.set("minimax", best(s)));
        r.relaxation().ifPresent(x -> {
            out.put("totalRelaxation", x.totalMm());
            x.shares()
                    .forEach(s -> out.withArray("shares")
                            .addObject()
                            .put("id", s.station())
                            .put("eased", s.easedMm()));
        });
        r.refused().ifPresent(m -> out.set("refusedMove", json(m)));
        if (in.has("gapTolerance") || in.has("flushTolerance")) {
            aims(out, question);
        }
        return new CalcAnswer(
                out,
                Map.of(),
                List.of("rows (m, r x m) of gaps, -(s, r x s) of flush; least squares, and least worst deviation"),
                List.of("lawson1974; lemke1954"),
                r.findings().stream().map(Finding::sentence).toList(),
                r.status() != MoveStatus.OK);
    }

    private static void knowledge(ObjectNode out, SpaceMoveResult r) {
        SpaceDeterminacy known = r.determinacy();
        out.put("rank", known.rank());
        ArrayNode flags = out.putArray("flags");
        if (!known.determined()) {
            flags.add("UNDETERMINED_MOVE");
            ArrayNode free = out.putArray("undetermined");
            known.free().forEach(m -> free.add(json(m)));
        }
        known.weak().ifPresent(w -> {
            flags.add("WEAK_MOVE");
            ObjectNode weak = json(w.direction()).put("ratio", w.ratio());
            r.weakStandardErrorMm().ifPresent(u -> weak.put("standardError", u));
            out.set("weak", weak);
        });
    }

    /** The other aims, which need tolerances. */
    private static void aims(ObjectNode out, SpaceQuestion q) {
        SpaceRows rows = SpaceRows.of(q.readings(), q.pivot());
        MarginMove<SpaceMove> margin = LargestMarginCalculator.calculate(rows, rows.box(q.limits()));
        ObjectNode wide =
                out.putObject("largestMargin").put("status", margin.status().name());
        margin.move().ifPresent(m -> {
            wide.put("margin", margin.marginMm()).setAll(json(m));
            margin.deciding().forEach(wide.putArray("deciding")::add);
        });
        LeastMove<SpaceMove> least = LeastMoveCalculator.calculate(rows, rows.box(q.limits()), 0);
        ObjectNode small =
                out.putObject("leastMove").put("status", least.status().name());
        least.move().ifPresent(m -> small.put("scaledNorm", least.normMm()).setAll(json(m)));
    }

    private static ObjectNode best(SpaceMoveResult.Solution s) {
        ObjectNode out = json(s);
        out.put("worstDeviation", s.worstDeviation()).put("optimumUnique", s.unique());
        out.put("atRest", s.still());
        s.deciding().forEach(out.putArray("deciding")::add);
        return out;
    }

    private static ObjectNode even(SpaceMoveResult.Solution s) {
        ObjectNode out = json(s);
        s.known().ifPresent(k -> {
            out.set("standardError", json(k.standardError()));
            out.set("gapErrors", Shapes.json(every(k.valueErrorsMm(), 0)));
            out.set("flushErrors", Shapes.json(every(k.valueErrorsMm(), 1)));
        });
        return out;
    }

    private static ObjectNode json(SpaceMove m) {
        ObjectNode out = Json.object();
        out.set("d", Shapes.json(list(m.shiftMm())));
        out.set("rotDeg", Shapes.json(list(m.turnDeg())));
        return out;
    }

    private static ObjectNode json(SpaceMoveResult.Solution s) {
        ObjectNode out = json(s.move());
        out.set("gaps", Shapes.json(every(s.valuesMm(), 0)));
        out.set("flush", Shapes.json(every(s.valuesMm(), 1)));
        out.put("sumSquares", s.sumSquares());
        out.put("linearisationError", s.straightErrorMm());
        out.put("relinearised", s.rounds());
        return out;
    }

    /** Gaps and flushes take turns. */
    private static List<Double> every(List<Double> values, int from) {
        List<Double> all = new ArrayList<>();
        for (int i = from; i < values.size(); i += 2) {
            all.add(values.get(i));
        }
        return all;
    }
}
