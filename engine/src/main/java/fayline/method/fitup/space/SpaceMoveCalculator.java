package fayline.method.fitup.space;

import fayline.basis.numeric.optimum.Equations;
import fayline.basis.numeric.optimum.MinimaxFit;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.MoveSpread;
import fayline.method.fitup.motion.Settled;
import fayline.method.fitup.move.BestMove;
import fayline.method.fitup.move.MisfitSearch;
import fayline.method.fitup.move.MoveFindings;
import fayline.method.fitup.move.MoveReport;
import fayline.method.fitup.move.MoveSize;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.move.RelaxationCalculator;
import fayline.method.fitup.move.TwoMoves;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The best rigid move of a curved part, six unknowns, gap and flush solved together; otherwise as in the plane. */
public final class SpaceMoveCalculator {
    private SpaceMoveCalculator() {}

    /** Answers the question. */
    public static SpaceMoveResult calculate(SpaceQuestion question) {
        SpaceRows rows = SpaceRows.of(question.readings(), question.pivot());
        Box box = rows.box(question.limits());
        SpaceDeterminacy known = SpaceDeterminacy.of(rows);
        SpaceMoveResult bare = new SpaceMoveResult(
                MoveStatus.UNDETERMINED_MOVE,
                known,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of());
        if (question.policy() == BestMove.Policy.STRICT && !known.determined()) {
            return told(rows, bare, Optional.empty());
        }
        Optional<TwoMoves<SpaceRows, SpaceMove>> moves = TwoMoves.solve(rows, box, question.uncertaintiesMm());
        if (moves.isEmpty()) {
            return told(rows, infeasible(rows, box, known), moves);
        }
        SpaceMove move = moves.get().minimax().move();
        if (MoveSize.tooLarge(rows, move, box)) {
            return told(rows, tooLarge(known, move), Optional.empty());
        }
        return told(rows, found(known, moves.get()), moves);
    }

    private static SpaceMoveResult told(
            SpaceRows rows, SpaceMoveResult r, Optional<TwoMoves<SpaceRows, SpaceMove>> moves) {
        SpaceDeterminacy known = r.determinacy();
        MoveReport report = new MoveReport(
                r.status(),
                rows.flush() ? "reading" : "gap",
                moves.map(TwoMoves::outside).orElse(List.of()),
                r.misfits(),
                r.relaxation(),
                r.refused().map(m -> new MoveReport.Refused(rows.shiftMm(m), rows.turnRad(m))),
                known.freeWords(rows),
                known.weak().map(w -> new MoveReport.Weak(w.meaning(), w.growth(), r.weakStandardErrorMm())),
                moves.map(TwoMoves::best),
                moves.flatMap(TwoMoves::suspect));
        return new SpaceMoveResult(
                r.status(),
                known,
                r.minimax(),
                r.leastSquares(),
                r.outside(),
                r.misfits(),
                r.relaxation(),
                r.refused(),
                r.weakStandardErrorMm(),
                MoveFindings.of(report));
    }

    private static SpaceMoveResult infeasible(SpaceRows rows, Box box, SpaceDeterminacy known) {
        return new SpaceMoveResult(
                MoveStatus.INFEASIBLE,
                known,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                MisfitSearch.search(rows),
                Optional.of(RelaxationCalculator.calculate(rows, box)),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of());
    }

    private static SpaceMoveResult tooLarge(SpaceDeterminacy known, SpaceMove refused) {
        return new SpaceMoveResult(
                MoveStatus.MOVE_TOO_LARGE,
                known,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.of(refused),
                OptionalDouble.empty(),
                List.of());
    }

    private static SpaceMoveResult found(SpaceDeterminacy known, TwoMoves<SpaceRows, SpaceMove> moves) {
        List<SpaceMoveResult.Outside> outside = moves.outside().stream()
                .map(o -> new SpaceMoveResult.Outside(
                        o.wanted().station(), o.wanted().named(), o.valueMm(), o.beyondMm()))
                .toList();
        return new SpaceMoveResult(
                outside.isEmpty() ? MoveStatus.OK : MoveStatus.NO_FIT,
                known,
                Optional.of(best(moves)),
                Optional.of(even(moves.squares(), known.determined(), moves.spread())),
                outside,
                outside.isEmpty()
                        ? List.of()
                        : MisfitSearch.search(moves.minimax().rows()),
                Optional.empty(),
                Optional.empty(),
                moves.weakErrorMm(known.weak().map(SpaceDeterminacy.WeakMotion::direction)),
                List.of());
    }

    private static SpaceMoveResult.Solution best(TwoMoves<SpaceRows, SpaceMove> moves) {
        MinimaxFit.Fit fit = moves.minimax().answer();
        return solution(
                moves.minimax(),
                fit.point(),
                fit.worst(),
                moves.unique(),
                moves.playMm(),
                moves.deciding(),
                Optional.empty());
    }

    private static SpaceMoveResult.Solution even(
            Settled<SpaceRows, SpaceMove, List<Double>> s, boolean determined, Optional<MoveSpread> spread) {
        return solution(
                s,
                s.answer(),
                s.rows().equations().worst(s.answer()),
                determined,
                0,
                List.of(),
                spread.map(k -> new SpaceMoveResult.Known(k.covariance(), k.valueErrorsMm())));
    }

    private static SpaceMoveResult.Solution solution(
            Settled<SpaceRows, SpaceMove, ?> s,
            List<Double> point,
            double worst,
            boolean unique,
            double playMm,
            List<String> deciding,
            Optional<SpaceMoveResult.Known> known) {
        Equations e = s.rows().equations();
        return new SpaceMoveResult.Solution(
                s.move(),
                s.rows().valuesMm(s.move()),
                s.rows().exactMm(s.move()),
                worst,
                e.sumSquares(point),
                unique,
                playMm,
                deciding,
                s.firstErrorMm(),
                s.rounds(),
                s.still(),
                known);
    }
}
