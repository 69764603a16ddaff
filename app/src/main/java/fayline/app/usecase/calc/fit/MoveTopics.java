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
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Spot;
import fayline.method.fitup.motion.GapsAfterMove;
import fayline.method.fitup.motion.GapsAfterMoveCalculator;
import fayline.method.fitup.motion.MoveWords;
import fayline.method.fitup.motion.Reach;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.move.BestMove;
import fayline.method.fitup.move.BestMoveCalculator;
import fayline.method.fitup.move.BestMoveResult;
import fayline.method.fitup.move.LeastSquaresMove;
import fayline.method.fitup.move.MinimaxMove;
import fayline.method.fitup.move.MoveStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Gaps after a move, and the best move in the plane. */
final class MoveTopics {
    private static final List<String> SOURCES = List.of("lawson1974; goldfarb1983; lemke1954");

    private MoveTopics() {}

    static List<CalcTopic> all() {
        return List.of(
                new FitTopic(
                        "gap.forward",
                        "What gaps become after a given move, to first order and exactly.",
                        Form.empty()
                                .takes(
                                        "pivot",
                                        Kind.plane(),
                                        "pivot of the move; the middle of the stations if missing")
                                .needs("move", Shapes.move().asKind(), "the move")
                                .needs("stations", stations(), "gaps before it"),
                        MoveTopics::forward),
                new FitTopic(
                        "move",
                        "The best rigid move of a part in its plane: smallest worst deviation, and least squares beside it.",
                        aim().takes("side", Kind.word("left", "right"), "the part's side; asks for the move in words"),
                        MoveTopics::best));
    }

    /** Stations with their gaps and whatever is wanted of them. */
    static Kind stations() {
        return Kind.list(
                Shapes.wanted(Shapes.station().needs("gap", Kind.number(), "gap as the part lies, mm"))
                        .takes(
                                "uReading",
                                Kind.positive(),
                                "standard uncertainty of the reading, mm; all stations or none")
                        .asKind(),
                1);
    }

    /** The fields of every question for a move. */
    static Form aim() {
        return Form.empty()
                .takes("pivot", Kind.plane(), "pivot of the moves; the middle of the stations if missing")
                .takes(
                        "moveLimits",
                        Shapes.moveLimits().asKind(),
                        "how far the part may go; 10 mm and 2 degrees if missing")
                .needs("stations", stations(), "gaps and what is wanted");
    }

    static Spot pivot(Given in) {
        return Odds.checked(() -> Shapes.pivot(in, Shapes.stations(in, "stations")));
    }

    /** Rows whose limits must be told: lower and upper, or nominal and tolerances. */
    static List<FitRow> rows(Given in, String... needed) {
        List<FitRow> rows = new ArrayList<>();
        List<Given> stations = in.objects("stations");
        for (int i = 0; i < stations.size(); i++) {
            Given g = stations.get(i);
            boolean limited = g.has("lower") && g.has("upper");
            for (String field : needed) {
                boolean otherwise = limited && (field.equals("nominal") || field.startsWith("tol"));
                if (!g.has(field) && !otherwise) {
                    throw CalcInputException.of("stations[" + i + "]." + field, "nothing", "a number");
                }
            }
            rows.add(Odds.checked(() -> Shapes.row(g, g.number("gap"))));
        }
        return rows;
    }

    private static CalcAnswer forward(Given in) {
        List<FitRow> rows = new ArrayList<>();
        for (Given g : in.objects("stations")) {
            double gap = g.number("gap");
            rows.add(Odds.checked(() -> FitRow.of(Shapes.station(g), gap, gap, gap, gap)));
        }
        GapsAfterMove after =
                Odds.checked(() -> GapsAfterMoveCalculator.calculate(rows, pivot(in), Shapes.move(in.object("move"))));
        ObjectNode out = Json.object();
        out.set("gapsLinear", Shapes.json(after.straightMm()));
        out.set("gapsExact", Shapes.json(after.exactMm()));
        out.put("maxLinearisationError", after.largestErrorMm());
        return new CalcAnswer(
                out,
                Map.of(),
                List.of("g - n . shift - ((p - c) x n) turn; exactly n . (q - c - R (p - c) - shift)"),
                List.of("geometry"),
                List.of(),
                false);
    }

    private static CalcAnswer best(Given in) {
        List<FitRow> rows = rows(in, "nominal", "tolMinus", "tolPlus");
        BestMove question = Odds.checked(() ->
                new BestMove(rows, pivot(in), Shapes.moveLimits(in), uncertainties(in), BestMove.Policy.MIN_NORM));
        BestMoveResult r = Odds.checked(() -> BestMoveCalculator.calculate(question));
        boolean weighted = in.objects("stations").stream().anyMatch(g -> g.has("weight"));
        boolean shared = weighted && r.status() == MoveStatus.NO_FIT;
        ObjectNode out = Json.object();
        out.put("status", shared ? MoveStatus.OK.name() : r.status().name());
        out.put("rank", r.determinacy().rank());
        if (r.status() == MoveStatus.NO_FIT && !shared) {
            r.outside().forEach(o -> out.withArray("outOfTolerance").add(o.station()));
        }
        ArrayNode flags = out.putArray("flags");
        if (r.undetermined()) {
            flags.add("UNDETERMINED_MOVE");
        }
        r.determinacy().weak().ifPresent(w -> flags.add("WEAK_MOVE"));
        r.minimax().ifPresent(m -> {
            out.set("minimax", json(m));
            held(out, m, rows);
        });
        r.leastSquares().ifPresent(m -> out.set("leastSquares", json(m)));
        r.relaxation().ifPresent(x -> out.put("totalRelaxation", x.totalMm()));
        r.refused().ifPresent(m -> out.set("refusedMove", Shapes.json(m)));
        if (in.has("side")) {
            Side side = in.text("side").equals("left") ? Side.LEFT : Side.RIGHT;
            MoveWords words = new MoveWords(
                    side, question.pivot(), in.has("pivot") ? "the pivot" : "the middle of the" + " stations");
            r.minimax().ifPresent(m -> out.put("words", words.sentence(m.move()).toString()));
        }
        List<String> cautions =
                new ArrayList<>(r.findings().stream().map(Finding::sentence).toList());
        if (weighted) {
            cautions.add(
                    "With weights the status tells only whether minimum gaps can be kept; read the share of tolerance"
                            + " from worstDeviation.");
        }
        return new CalcAnswer(
                out,
                Map.of(),
                List.of("least E with -E <= w (g - a q - G) <= E; then least squares; then least norm"),
                SOURCES,
                cautions,
                r.status() != MoveStatus.OK && !shared);
    }

    /** What the readings are uncertain by; empty where none says. */
    static List<Double> uncertainties(Given in) {
        List<Given> stations = in.objects("stations");
        long given = stations.stream().filter(g -> g.has("uReading")).count();
        if (given == 0) {
            return List.of();
        }
        for (int i = 0; i < stations.size(); i++) {
            if (!stations.get(i).has("uReading")) {
                throw CalcInputException.of(
                        "stations[" + i + "].uReading", "nothing", "a number above 0, as other stations have one");
            }
        }
        return stations.stream().map(g -> g.number("uReading")).toList();
    }

    /** What the turn makes over the reach of the stations, and the spacers that hold the part where it must sit. */
    private static void held(ObjectNode out, MinimaxMove m, List<FitRow> rows) {
        Reach reach = Reach.of(rows.stream().map(FitRow::station).toList());
        out.putObject("turnAcross")
                .put("height", reach.heightMm())
                .put("overHeight", reach.overHeightMm(m.move().turnRad()))
                .put("length", reach.lengthMm())
                .put("overLength", reach.overLengthMm(m.move().turnRad()));
        ArrayNode spacers = out.putArray("spacers");
        for (int i = 0; i < rows.size(); i++) {
            spacers.addObject()
                    .put("id", rows.get(i).station().id())
                    .put("thickness", m.exactGapsMm().get(i));
        }
    }

    private static ObjectNode json(MinimaxMove m) {
        ObjectNode out = Json.object();
        out.put("worstDeviation", m.worstDeviation());
        out.put("optimumUnique", m.unique());
        out.set("move", Shapes.json(m.move()));
        out.set("gaps", Shapes.json(m.gapsMm()));
        out.set("gapsExact", Shapes.json(m.exactGapsMm()));
        m.deciding().forEach(d -> out.withArray("deciding").add(d.station()));
        out.set("play", Shapes.json(m.play()));
        out.put("linearisationError", m.straightErrorMm());
        out.put("relinearised", m.rounds());
        return out;
    }

    private static ObjectNode json(LeastSquaresMove m) {
        ObjectNode out = Json.object();
        out.set("move", Shapes.json(m.move()));
        out.put("sumSquares", m.sumSquares());
        out.put("worstDeviation", m.worstDeviation());
        out.put("linearisationError", m.straightErrorMm());
        out.put("relinearised", m.rounds());
        out.set("gaps", Shapes.json(m.gapsMm()));
        m.standardError().ifPresent(e -> {
            out.set("standardError", Shapes.json(e));
            out.set("gapErrors", Shapes.json(m.gapErrorsMm()));
        });
        return out;
    }
}
