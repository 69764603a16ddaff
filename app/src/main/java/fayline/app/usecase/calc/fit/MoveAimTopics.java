package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.motion.Determinacy;
import fayline.method.fitup.move.BestMove;
import fayline.method.fitup.move.BestMoveCalculator;
import fayline.method.fitup.move.BestMoveResult;
import fayline.method.fitup.move.LargestMarginCalculator;
import fayline.method.fitup.move.LeastMove;
import fayline.method.fitup.move.LeastMoveCalculator;
import fayline.method.fitup.move.MarginMove;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.move.Relaxation;
import fayline.method.fitup.move.RelaxationCalculator;
import java.util.List;
import java.util.Map;

/** Other aims of a move in the plane, and which motions the stations know. */
final class MoveAimTopics {
    private MoveAimTopics() {}

    static List<CalcTopic> all() {
        return List.of(
                new FitTopic(
                        "move.maxMargin",
                        "The move that leaves every gap farthest inside its limits.",
                        aim(),
                        MoveAimTopics::margin),
                new FitTopic(
                        "move.leastMove",
                        "The smallest move that brings every gap inside its limits.",
                        aim().takes(
                                        "guard",
                                        Kind.number(),
                                        "how far inside its limits every gap must end, mm; 0 if missing"),
                        MoveAimTopics::least),
                new FitTopic(
                        "move.relaxation",
                        "By how much minimum gaps must give way at least, in all, for a move to keep them.",
                        aim(),
                        MoveAimTopics::relaxation),
                new FitTopic(
                        "move.degenerate",
                        "Which motions the stations know, and the move that leaves the others alone.",
                        aim().takes("policy", Kind.passedOver(), "explains; both are answered"),
                        MoveAimTopics::degenerate));
    }

    private static Form aim() {
        return MoveTopics.aim().takes("objective", Kind.passedOver(), "explains; not read");
    }

    private static CalcAnswer answer(ObjectNode out, MoveStatus status, String method, List<String> cautions) {
        return new CalcAnswer(
                out,
                Map.of(),
                List.of(method),
                List.of("lawson1974; goldfarb1983; lemke1954"),
                cautions,
                status != MoveStatus.OK);
    }

    private static CalcAnswer margin(Given in) {
        List<FitRow> rows = MoveTopics.rows(in, "nominal", "tolMinus", "tolPlus");
        Spot pivot = MoveTopics.pivot(in);
        MarginMove<Move> m = Odds.checked(() -> LargestMarginCalculator.calculate(rows, pivot, Shapes.moveLimits(in)));
        ObjectNode out = Json.object().put("status", m.status().name());
        m.move().ifPresent(move -> {
            out.put("margin", m.marginMm());
            out.set("move", Shapes.json(move));
            out.set("gaps", Shapes.json(m.gapsMm()));
            m.deciding().forEach(out.putArray("deciding")::add);
        });
        return answer(out, m.status(), "largest s with L + s <= g - a q <= U - s; then least norm", List.of());
    }

    private static CalcAnswer least(Given in) {
        List<FitRow> rows = MoveTopics.rows(in, "nominal", "tolMinus", "tolPlus");
        Spot pivot = MoveTopics.pivot(in);
        LeastMove<Move> m = Odds.checked(
                () -> LeastMoveCalculator.calculate(rows, pivot, Shapes.moveLimits(in), in.number("guard", 0)));
        ObjectNode out = Json.object().put("status", m.status().name());
        out.put("scaleLength", m.scaleLengthMm());
        m.move().ifPresent(move -> {
            out.set("move", Shapes.json(move));
            out.put("scaledNorm", m.normMm());
            out.set("gaps", Shapes.json(m.gapsMm()));
        });
        return answer(
                out, m.status(), "least sqrt(dx2 + dy2 + (scale x turn)2) with every gap inside its limits", List.of());
    }

    private static CalcAnswer relaxation(Given in) {
        List<FitRow> rows = MoveTopics.rows(in, "nominal", "tolMinus", "tolPlus");
        Spot pivot = MoveTopics.pivot(in);
        Relaxation<Move> r = Odds.checked(() -> RelaxationCalculator.calculate(rows, pivot, Shapes.moveLimits(in)));
        ObjectNode out = Json.object().put("status", r.status().name());
        out.put("totalRelaxation", r.totalMm());
        ArrayNode shares = out.putArray("shares");
        r.shares().forEach(s -> shares.addObject().put("id", s.station()).put("eased", s.easedMm()));
        out.set("move", Shapes.json(r.move()));
        return answer(
                out,
                r.status(),
                "least sum of easings of minimum gaps, limits of the move kept",
                r.shares().isEmpty() ? List.of() : List.of("Other moves may share the same total out otherwise."));
    }

    private static CalcAnswer degenerate(Given in) {
        List<FitRow> rows = MoveTopics.rows(in, "nominal", "tolMinus", "tolPlus");
        BestMove question = Odds.checked(() -> new BestMove(
                rows,
                MoveTopics.pivot(in),
                Shapes.moveLimits(in),
                MoveTopics.uncertainties(in),
                BestMove.Policy.MIN_NORM));
        BestMoveResult r = Odds.checked(() -> BestMoveCalculator.calculate(question));
        BestMoveResult strict = BestMoveCalculator.calculate(
                new BestMove(rows, question.pivot(), question.limits(), List.of(), BestMove.Policy.STRICT));
        Determinacy d = r.determinacy();
        ObjectNode out = Json.object().put("rank", d.rank());
        ArrayNode free = out.putArray("undetermined");
        for (Determinacy.FreeMotion f : d.free()) {
            ObjectNode one = free.addObject();
            one.set("direction", Shapes.json(f.direction()));
            one.put("meaning", f.meaning().toString());
        }
        out.set("singularValuesScaled", Shapes.json(d.singularValues()));
        out.put("scaleLength", d.scaleLengthMm());
        d.weak().ifPresent(w -> {
            ObjectNode weak = out.putObject("weak");
            weak.set("direction", Shapes.json(w.direction()));
            weak.put("ratio", w.ratio());
            r.weakStandardErrorMm().ifPresent(u -> weak.put("standardError", u));
        });
        ObjectNode min = out.putObject("MIN_NORM").put("status", r.status().name());
        ArrayNode flags = min.putArray("flags");
        if (r.undetermined()) {
            flags.add("UNDETERMINED_MOVE");
        }
        d.weak().ifPresent(w -> flags.add("WEAK_MOVE"));
        min.set("leastSquaresMove", Shapes.json(d.minimumNorm()));
        min.put("leastSquaresSumSquares", d.minimumNormSumSquares());
        r.minimax().ifPresent(m -> min.put("minimaxWorstDeviation", m.worstDeviation()));
        out.putObject("STRICT").put("status", strict.status().name());
        return answer(
                out,
                d.determined() ? MoveStatus.OK : MoveStatus.UNDETERMINED_MOVE,
                "singular values of the rows, turn scaled; q = S (A S)+ (g - G)",
                d.weak().map(w -> List.of(w.meaning().toString())).orElse(List.of()));
    }
}
