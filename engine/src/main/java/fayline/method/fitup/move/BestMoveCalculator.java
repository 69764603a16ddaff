package fayline.method.fitup.move;

import fayline.basis.numeric.DenseMatrix;
import fayline.basis.numeric.optimum.Equations;
import fayline.basis.numeric.optimum.LeastSquares;
import fayline.basis.numeric.optimum.MinimaxFit;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.motion.Determinacy;
import fayline.method.fitup.motion.DeterminacyCalculator;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.Settled;
import java.util.ArrayList;
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

    private static final double UNIQUE_MM = 1e-4;
    private static final double INSIDE_MM = 1e-6;

    private BestMoveCalculator() {}

    /**
     * Answers the question.
     *
     * @throws IllegalArgumentException if two rows share an id
     */
    public static BestMoveResult calculate(BestMove question) {
        MoveRows rows = MoveRows.of(question.rows(), question.pivot());
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
            return told(question, bare);
        }
        MoveLimits limits = question.limits();
        Optional<Settled<MoveRows, Move, MinimaxFit.Fit>> minimax =
                Settled.solve(rows, r -> MinimaxFit.fit(r.equations(), r.hard(limits)), (r, f) -> r.move(f.point()));
        Optional<Settled<MoveRows, Move, List<Double>>> squares =
                Settled.solve(rows, r -> LeastSquares.within(r.equations(), r.hard(limits)), MoveRows::move);
        if (minimax.isEmpty() || squares.isEmpty()) {
            return told(question, infeasible(question, rows, bare));
        }
        Move move = minimax.get().move();
        if (MoveSize.tooLarge(move, limits)) {
            return told(question, tooLarge(bare, move));
        }
        return told(question, found(question, known, minimax.get(), squares.get()));
    }

    private static BestMoveResult told(BestMove question, BestMoveResult r) {
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
                BestMoveFindings.of(question, r));
    }

    private static BestMoveResult infeasible(BestMove question, MoveRows rows, BestMoveResult bare) {
        return new BestMoveResult(
                MoveStatus.INFEASIBLE,
                bare.determinacy(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                MisfitSearch.search(rows),
                Optional.of(RelaxationCalculator.calculate(question.rows(), question.pivot(), question.limits())),
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

    private static BestMoveResult found(
            BestMove question,
            Determinacy known,
            Settled<MoveRows, Move, MinimaxFit.Fit> minimax,
            Settled<MoveRows, Move, List<Double>> squares) {
        MinimaxMove best = minimax(minimax);
        List<BestMoveResult.Outside> outside = outside(question.rows(), best.gapsMm());
        Optional<DenseMatrix> scaled = scaledCovariance(question, squares.rows());
        OptionalDouble weak = OptionalDouble.empty();
        if (known.weak().isPresent() && scaled.isPresent()) {
            weak = OptionalDouble.of(alongMm(scaled.get(), known.weak().get().direction(), squares.rows()));
        }
        return new BestMoveResult(
                outside.isEmpty() ? MoveStatus.OK : MoveStatus.NO_FIT,
                known,
                Optional.of(best),
                Optional.of(squares(squares, scaled)),
                outside,
                outside.isEmpty() ? List.of() : MisfitSearch.search(minimax.rows()),
                Optional.empty(),
                Optional.empty(),
                weak,
                List.of());
    }

    private static List<BestMoveResult.Outside> outside(List<FitRow> rows, List<Double> gaps) {
        List<BestMoveResult.Outside> all = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            FitRow row = rows.get(i);
            double gap = gaps.get(i);
            if (gap < row.lowerMm() - INSIDE_MM) {
                all.add(new BestMoveResult.Outside(row.station().id(), gap, gap - row.lowerMm()));
            } else if (gap > row.upperMm() + INSIDE_MM) {
                all.add(new BestMoveResult.Outside(row.station().id(), gap, gap - row.upperMm()));
            }
        }
        return all;
    }

    private static MinimaxMove minimax(Settled<MoveRows, Move, MinimaxFit.Fit> s) {
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
        boolean unique = fit.extents().stream().allMatch(e -> e < UNIQUE_MM);
        return new MinimaxMove(
                fit.worst(),
                unique,
                rows.move(fit.extents()),
                s.move(),
                rows.gapsMm(s.move()),
                rows.exactGapsMm(s.move()),
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

    private static LeastSquaresMove squares(Settled<MoveRows, Move, List<Double>> s, Optional<DenseMatrix> scaled) {
        MoveRows rows = s.rows();
        Equations e = rows.equations();
        double turn = 1 / rows.scaleLengthMm();
        DenseMatrix back = DenseMatrix.diagonal(1, 1, turn);
        return new LeastSquaresMove(
                s.move(),
                e.sumSquares(s.answer()),
                e.worst(s.answer()),
                rows.gapsMm(s.move()),
                rows.exactGapsMm(s.move()),
                s.firstErrorMm(),
                s.rounds(),
                scaled.map(c -> back.times(c).times(back)));
    }

    /** K diag(u²) Kᵀ with K = (AᵀW²A)⁻¹AᵀW², which is (AᵀW²A)⁻¹ where every weight is one over its uncertainty. */
    private static Optional<DenseMatrix> scaledCovariance(BestMove question, MoveRows rows) {
        LeastSquares.Fit fit = LeastSquares.fit(rows.equations());
        if (question.uncertaintiesMm().isEmpty() || !fit.determined()) {
            return Optional.empty();
        }
        double[][] middle = new double[3][3];
        for (int i = 0; i < question.rows().size(); i++) {
            double w = question.rows().get(i).weight();
            double f = w * w * question.uncertaintiesMm().get(i);
            double[] a = rows.coefficients(i);
            for (int p = 0; p < 3; p++) {
                for (int q = 0; q < 3; q++) {
                    middle[p][q] += f * a[p] * f * a[q];
                }
            }
        }
        DenseMatrix inverse = fit.covariance().orElseThrow();
        return Optional.of(inverse.times(DenseMatrix.of(middle)).times(inverse));
    }

    private static double alongMm(DenseMatrix scaled, Move direction, MoveRows rows) {
        double size = rows.normMm(direction);
        double[] d = {
            direction.dxMm() / size, direction.dyMm() / size, direction.turnRad() * rows.scaleLengthMm() / size
        };
        double[] c = scaled.times(d);
        return Math.sqrt(d[0] * c[0] + d[1] * c[1] + d[2] * c[2]);
    }
}
