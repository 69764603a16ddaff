package fayline.method.fitup.move;

import fayline.basis.numeric.optimum.Equations;
import fayline.basis.numeric.optimum.MinimaxFit;
import fayline.method.fitup.Move;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.Determinacy;
import fayline.method.fitup.motion.DeterminacyCalculator;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.MoveSpread;
import fayline.method.fitup.motion.Settled;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The best rigid move: least E with −E ≤ w (g − a·q − G) ≤ E, then least squares among those, then least norm; beside it the move
 * of least squares. Limits of the move and minimum gaps are kept; tolerances judge the result and do not bend it.
 */
public final class BestMoveCalculator {
    /** The first limits are those of the move: dx, dy, turn; minimum gaps follow. */
    private static final int OF_THE_MOVE = 3;

    private BestMoveCalculator() {}

    /**
     * Answers the question.
     *
     * @throws IllegalArgumentException if two rows share an id
     */
    public static BestMoveResult calculate(BestMove question) {
        MoveRows rows = MoveRows.of(question.rows(), question.pivot());
        Box box = rows.box(question.limits());
        Determinacy known = DeterminacyCalculator.calculate(question.rows(), question.pivot());
        BestMoveResult bare = new BestMoveResult(
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
        Optional<TwoMoves<MoveRows, Move>> moves = TwoMoves.solve(rows, box, question.uncertaintiesMm());
        if (moves.isEmpty()) {
            return told(rows, infeasible(rows, box, bare), moves);
        }
        Move move = moves.get().minimax().move();
        if (MoveSize.tooLarge(rows, move, box)) {
            return told(rows, tooLarge(bare, move), Optional.empty());
        }
        return told(rows, found(known, moves.get()), moves);
    }

    private static BestMoveResult told(MoveRows rows, BestMoveResult r, Optional<TwoMoves<MoveRows, Move>> moves) {
        MoveReport report = new MoveReport(
                r.status(),
                "gap",
                moves.map(TwoMoves::outside).orElse(List.of()),
                r.misfits(),
                r.relaxation(),
                r.refused().map(m -> new MoveReport.Refused(rows.shiftMm(m), rows.turnRad(m))),
                r.determinacy().free().stream()
                        .map(Determinacy.FreeMotion::meaning)
                        .toList(),
                r.determinacy().weak().map(w -> new MoveReport.Weak(w.meaning(), w.growth(), r.weakStandardErrorMm())),
                moves.map(TwoMoves::best),
                moves.flatMap(TwoMoves::suspect));
        return new BestMoveResult(
                r.status(),
                r.determinacy(),
                r.minimax(),
                r.leastSquares(),
                r.outside(),
                r.misfits(),
                r.relaxation(),
                r.refused(),
                r.weakStandardErrorMm(),
                MoveFindings.of(report));
    }

    private static BestMoveResult infeasible(MoveRows rows, Box box, BestMoveResult bare) {
        return new BestMoveResult(
                MoveStatus.INFEASIBLE,
                bare.determinacy(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                MisfitSearch.search(rows),
                Optional.of(RelaxationCalculator.calculate(rows, box)),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of());
    }

    private static BestMoveResult tooLarge(BestMoveResult bare, Move refused) {
        return new BestMoveResult(
                MoveStatus.MOVE_TOO_LARGE,
                bare.determinacy(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.of(refused),
                OptionalDouble.empty(),
                List.of());
    }

    private static BestMoveResult found(Determinacy known, TwoMoves<MoveRows, Move> moves) {
        List<BestMoveResult.Outside> outside = moves.outside().stream()
                .map(o -> new BestMoveResult.Outside(o.wanted().station(), o.valueMm(), o.beyondMm()))
                .toList();
        return new BestMoveResult(
                outside.isEmpty() ? MoveStatus.OK : MoveStatus.NO_FIT,
                known,
                Optional.of(minimax(moves)),
                Optional.of(squares(moves.squares(), moves.spread())),
                outside,
                outside.isEmpty()
                        ? List.of()
                        : MisfitSearch.search(moves.minimax().rows()),
                Optional.empty(),
                Optional.empty(),
                moves.weakErrorMm(known.weak().map(Determinacy.WeakMotion::direction)),
                List.of());
    }

    private static MinimaxMove minimax(TwoMoves<MoveRows, Move> moves) {
        Settled<MoveRows, Move, MinimaxFit.Fit> s = moves.minimax();
        MinimaxFit.Fit fit = s.answer();
        MoveRows rows = s.rows();
        List<MinimaxMove.Deciding> deciding = fit.equations().stream()
                .map(d -> new MinimaxMove.Deciding(
                        rows.rows().get(d.row()).station().id(), d.atHigh(), d.price()))
                .toList();
        List<String> floors = rows.rows().stream()
                .filter(r -> r.minimumMm().isPresent())
                .map(r -> r.station().id())
                .toList();
        List<MinimaxMove.Holding> holding = fit.limits().stream()
                .map(d -> new MinimaxMove.Holding(
                        limit(d.row()),
                        d.row() < OF_THE_MOVE ? "" : floors.get(d.row() - OF_THE_MOVE),
                        d.atHigh(),
                        d.price()))
                .toList();
        return new MinimaxMove(
                fit.worst(),
                moves.unique(),
                rows.move(fit.extents()),
                s.move(),
                rows.valuesMm(s.move()),
                rows.exactMm(s.move()),
                deciding,
                holding,
                s.firstErrorMm(),
                s.rounds(),
                s.still());
    }

    private static MinimaxMove.Limit limit(int row) {
        return switch (row) {
            case 0 -> MinimaxMove.Limit.SHIFT_X;
            case 1 -> MinimaxMove.Limit.SHIFT_Y;
            case 2 -> MinimaxMove.Limit.TURN;
            default -> MinimaxMove.Limit.MINIMUM_GAP;
        };
    }

    private static LeastSquaresMove squares(Settled<MoveRows, Move, List<Double>> s, Optional<MoveSpread> spread) {
        MoveRows rows = s.rows();
        Equations e = rows.equations();
        return new LeastSquaresMove(
                s.move(),
                e.sumSquares(s.answer()),
                e.worst(s.answer()),
                rows.valuesMm(s.move()),
                rows.exactMm(s.move()),
                s.firstErrorMm(),
                s.rounds(),
                spread.map(MoveSpread::covariance),
                spread.map(MoveSpread::valueErrorsMm).orElse(List.of()));
    }
}
