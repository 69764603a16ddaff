package fayline.method.fitup.aim;

import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.Settled;
import fayline.method.fitup.motion.Wanted;
import fayline.method.fitup.motion.WantedLines;
import fayline.method.fitup.move.LargestMarginCalculator;
import fayline.method.fitup.move.LeastMove;
import fayline.method.fitup.move.LeastMoveCalculator;
import fayline.method.fitup.move.MarginMove;
import fayline.method.fitup.move.MoveReport;
import fayline.method.fitup.move.MoveSize;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.move.TwoMoves;
import fayline.method.fitup.space.PartMove;
import fayline.method.fitup.space.PartQuestion;
import fayline.method.fitup.space.SpaceRows;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The best move by every aim, of a flat part in its plane and of a curved one in space, each with what it is worth by the others'
 * measures. What a move leaves is told of the rigid part; whether it is inside its limits by the straight lines on which the move was
 * sought, which are at most 0.02 mm off.
 */
public final class AimedMovesCalculator {
    private static final double INSIDE_MM = 1e-6;

    private AimedMovesCalculator() {}

    /**
     * The moves in the order of the aims.
     *
     * @param question where the part must sit
     * @param best the answer to it by the smallest worst error, as {@code PartMoveCalculator} gave it
     * @param guardMm how far inside its limits the least move is to bring every reading, in mm, usually one standard uncertainty;
     *     where no move does that, the least one that just brings them inside is told, with a guard of nothing
     * @throws IllegalArgumentException if the guard is no number
     */
    public static List<AimedMove> calculate(PartQuestion question, PartMove best, double guardMm) {
        if (question.curved()) {
            SpaceRows rows = question.rows();
            return new Sought<>(question, rows, question.box(), m -> m, m -> m).all(best, guardMm);
        }
        MoveRows rows = MoveRows.of(question.gaps(), question.flatPivot());
        return new Sought<>(question, rows, rows.box(question.room()), SpaceMove::of, SpaceMove::inPlane)
                .all(best, guardMm);
    }

    /**
     * The readings, and how a move of theirs is a move in space.
     *
     * @param <S> the kind of straight lines
     * @param <M> the kind of move
     */
    private record Sought<S extends WantedLines<S, M>, M>(
            PartQuestion question, S lines, Box box, Function<M, SpaceMove> inSpace, Function<SpaceMove, M> own) {
        List<AimedMove> all(PartMove best, double guardMm) {
            return List.of(worst(best), even(), inside(), least(guardMm));
        }

        private AimedMove worst(PartMove best) {
            return new AimedMove(
                    Aim.WORST, best.status(), 0, best.found().map(f -> left(own.apply(f.move()), best.outside())));
        }

        private AimedMove even() {
            Optional<Settled<S, M, List<Double>>> squares = TwoMoves.squares(lines, box);
            if (squares.isEmpty()) {
                return none(Aim.EVEN, MoveStatus.INFEASIBLE);
            }
            M move = squares.get().move();
            if (MoveSize.tooLarge(lines, move, box)) {
                return none(Aim.EVEN, MoveStatus.MOVE_TOO_LARGE);
            }
            return judged(Aim.EVEN, 0, move, squares.get().rows().valuesMm(move));
        }

        private AimedMove inside() {
            MarginMove<M> margin = LargestMarginCalculator.calculate(lines, box);
            return margin.move()
                    .map(m -> judged(Aim.INSIDE, 0, m, margin.gapsMm()))
                    .orElseGet(() -> none(Aim.INSIDE, margin.status()));
        }

        private AimedMove least(double guardMm) {
            LeastMove<M> guarded = LeastMoveCalculator.calculate(lines, box, guardMm);
            boolean again = guarded.status() == MoveStatus.NO_FIT && guardMm > 0;
            LeastMove<M> least = again ? LeastMoveCalculator.calculate(lines, box, 0) : guarded;
            return least.move()
                    .map(m -> judged(Aim.LEAST, again ? 0 : guardMm, m, least.gapsMm()))
                    .orElseGet(() -> none(Aim.LEAST, least.status()));
        }

        private AimedMove none(Aim aim, MoveStatus status) {
            return new AimedMove(aim, status, 0, Optional.empty());
        }

        private AimedMove judged(Aim aim, double guardMm, M move, List<Double> valuesMm) {
            List<MoveReport.Outside> outside = new ArrayList<>();
            for (int i = 0; i < lines.count(); i++) {
                Wanted w = lines.wanted(i);
                if (Math.abs(w.beyondMm(valuesMm.get(i))) > INSIDE_MM) {
                    outside.add(new MoveReport.Outside(w, valuesMm.get(i)));
                }
            }
            return new AimedMove(
                    aim,
                    outside.isEmpty() ? MoveStatus.OK : MoveStatus.NO_FIT,
                    guardMm,
                    Optional.of(left(move, outside)));
        }

        private AimedMove.Left left(M move, List<MoveReport.Outside> outside) {
            List<Double> mm = lines.exactMm(move);
            double worst = 0;
            double squares = 0;
            double margin = Double.POSITIVE_INFINITY;
            for (int i = 0; i < mm.size(); i++) {
                Wanted w = lines.wanted(i);
                double off = w.weight() * Math.abs(mm.get(i) - w.nominalMm());
                worst = Math.max(worst, off);
                squares += off * off;
                margin = Math.min(margin, Math.min(mm.get(i) - w.lowerMm(), w.upperMm() - mm.get(i)));
            }
            int gaps = question.gaps().size();
            List<PartMove.Flush> flushes = new ArrayList<>();
            for (int i = gaps; i < mm.size(); i++) {
                flushes.add(new PartMove.Flush(
                        lines.wanted(i), question.flushes().get(i - gaps).valueMm(), mm.get(i)));
            }
            return new AimedMove.Left(
                    inSpace.apply(move),
                    mm.subList(0, gaps),
                    flushes,
                    outside,
                    worst,
                    Math.sqrt(squares / mm.size()),
                    margin,
                    lines.normMm(move));
        }
    }
}
