package fayline.method.fitup.space;

import fayline.basis.numeric.optimum.Equations;
import fayline.basis.numeric.optimum.LeastSquares;
import fayline.basis.numeric.optimum.MinimaxFit;
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
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The best rigid move of a curved part, six unknowns, gap and flush solved together; otherwise as in the plane. */
public final class SpaceMoveCalculator {
    private static final double UNIQUE_MM = 1e-4;

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
        Optional<Settled<SpaceRows, SpaceMove, MinimaxFit.Fit>> minimax =
                Settled.solve(rows, r -> MinimaxFit.fit(r.equations(), r.hard(box)), (r, f) -> r.move(f.point()));
        Optional<Settled<SpaceRows, SpaceMove, List<Double>>> squares =
                Settled.solve(rows, r -> LeastSquares.within(r.equations(), r.hard(box)), SpaceRows::move);
        if (minimax.isEmpty() || squares.isEmpty()) {
            return told(rows, infeasible(rows, box, known), Optional.empty());
        }
        SpaceMove move = minimax.get().move();
        if (MoveSize.tooLarge(rows, move, box)) {
            return told(rows, tooLarge(known, move), Optional.empty());
        }
        SpaceRows there = squares.get().rows();
        Optional<MoveSpread> spread = MoveSpread.of(there, question.uncertaintiesMm());
        return told(
                rows,
                found(known, minimax.get(), squares.get(), spread),
                spread.flatMap(
                        s -> MoveReport.suspect(there, move, squares.get().move(), s, question.uncertaintiesMm())));
    }

    private static SpaceMoveResult told(SpaceRows rows, SpaceMoveResult r, Optional<MoveReport.Suspect> suspect) {
        SpaceDeterminacy known = r.determinacy();
        MoveReport report = new MoveReport(
                r.status(),
                rows.flush() ? "reading" : "gap",
                r.minimax().map(m -> MoveReport.outside(rows, m.valuesMm())).orElse(List.of()),
                r.misfits(),
                r.relaxation(),
                r.refused().map(m -> new MoveReport.Refused(rows.shiftMm(m), rows.turnRad(m))),
                known.freeWords(rows),
                known.weak().map(w -> new MoveReport.Weak(w.meaning(), w.growth(), r.weakStandardErrorMm())),
                r.minimax().map(m -> new MoveReport.Best(m.still(), m.deciding(), m.worstDeviation(), m.playMm())),
                suspect);
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

    private static SpaceMoveResult found(
            SpaceDeterminacy known,
            Settled<SpaceRows, SpaceMove, MinimaxFit.Fit> minimax,
            Settled<SpaceRows, SpaceMove, List<Double>> squares,
            Optional<MoveSpread> spread) {
        SpaceMoveResult.Solution best = best(minimax);
        List<SpaceMoveResult.Outside> outside = MoveReport.outside(minimax.rows(), best.valuesMm()).stream()
                .map(o -> new SpaceMoveResult.Outside(
                        o.wanted().station(),
                        o.wanted().named(),
                        o.valueMm(),
                        o.wanted().beyondMm(o.valueMm())))
                .toList();
        OptionalDouble weak = OptionalDouble.empty();
        if (known.weak().isPresent() && spread.isPresent()) {
            double[] along = squares.rows().unknowns(known.weak().get().direction());
            weak = OptionalDouble.of(spread.get().alongMm(along));
        }
        return new SpaceMoveResult(
                outside.isEmpty() ? MoveStatus.OK : MoveStatus.NO_FIT,
                known,
                Optional.of(best),
                Optional.of(even(squares, known.determined(), spread)),
                outside,
                outside.isEmpty() ? List.of() : MisfitSearch.search(minimax.rows()),
                Optional.empty(),
                Optional.empty(),
                weak,
                List.of());
    }

    private static SpaceMoveResult.Solution best(Settled<SpaceRows, SpaceMove, MinimaxFit.Fit> s) {
        MinimaxFit.Fit fit = s.answer();
        List<String> deciding = fit.equations().stream()
                .map(d -> s.rows().wanted(d.row()).named())
                .distinct()
                .toList();
        boolean unique = fit.extents().stream().allMatch(e -> e < UNIQUE_MM);
        double play = fit.extents().stream()
                .limit(s.rows().shifts())
                .mapToDouble(e -> e)
                .max()
                .orElse(0);
        return solution(s, fit.point(), fit.worst(), unique, unique ? 0 : play, deciding, Optional.empty());
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
