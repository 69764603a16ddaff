package fayline.method.fitup.space;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.optimum.Equations;
import fayline.basis.numeric.optimum.LeastSquares;
import fayline.basis.numeric.optimum.MinimaxFit;
import fayline.basis.units.Amount;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.Settled;
import fayline.method.fitup.move.MoveStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The best rigid move of a curved part, six unknowns, gap and flush solved together; otherwise as in the plane. */
public final class SpaceMoveCalculator {
    private static final String GEOMETRY = "geometry";
    private static final double UNIQUE_MM = 1e-4;
    private static final double INSIDE_MM = 1e-6;
    private static final double LARGEST_SHIFT_MM = 10;
    private static final double LARGEST_TURN_RAD = Math.toRadians(2);
    private static final double ROUNDING = 1e-9;

    private SpaceMoveCalculator() {}

    /**
     * Answers the question.
     *
     * @param readings gaps and flushes; at least one
     * @param pivot the pivot of every move in the answer, in mm
     * @param limits how far the part may be moved
     * @throws IllegalArgumentException if there is no reading
     */
    public static SpaceMoveResult calculate(List<SpaceReading> readings, Vector pivot, SpaceLimits limits) {
        SpaceRows rows = SpaceRows.of(readings, pivot);
        Box box = rows.box(limits);
        LeastSquares.Fit known = LeastSquares.fit(rows.equations().unweighted());
        Optional<Settled<SpaceRows, SpaceMove, MinimaxFit.Fit>> minimax =
                Settled.solve(rows, r -> MinimaxFit.fit(r.equations(), r.hard(box)), (r, f) -> r.move(f.point()));
        Optional<Settled<SpaceRows, SpaceMove, List<Double>>> squares =
                Settled.solve(rows, r -> LeastSquares.within(r.equations(), r.hard(box)), SpaceRows::move);
        List<Finding> findings = new ArrayList<>();
        if (known.rank() < 6) {
            findings.add(note(
                    Severity.CAUTION,
                    String.format(
                            Locale.ROOT,
                            "The readings know %d of the six motions of the part; the others were left alone.",
                            known.rank())));
        }
        if (minimax.isEmpty() || squares.isEmpty()) {
            findings.add(note(Severity.STOP, "No move within its limits keeps all minimum gaps."));
            return result(MoveStatus.INFEASIBLE, known, rows, findings);
        }
        SpaceMove move = minimax.get().move();
        if (tooLarge(move)) {
            findings.add(note(
                    Severity.STOP,
                    Phrase.of(
                            "The part would have to shift %s and turn %.2f deg: it lies in the wrong place. Put it where it"
                                    + " belongs and read it again (at most %s and 2 deg).",
                            Amount.mm(move.shiftMm().length(), 1),
                            move.turnDeg().length(),
                            Amount.mm(LARGEST_SHIFT_MM, 0))));
            return result(MoveStatus.MOVE_TOO_LARGE, known, rows, findings);
        }
        return found(readings, known, minimax.get(), squares.get(), findings);
    }

    private static boolean tooLarge(SpaceMove move) {
        return move.shiftMm().length() > LARGEST_SHIFT_MM - ROUNDING
                || move.turnRad().length() > LARGEST_TURN_RAD - ROUNDING;
    }

    private static Finding note(Severity severity, Phrase phrase) {
        return new Finding(severity, "move", phrase, GEOMETRY);
    }

    private static Finding note(Severity severity, String sentence) {
        return new Finding(severity, "move", sentence, GEOMETRY);
    }

    private static SpaceMoveResult result(
            MoveStatus status, LeastSquares.Fit known, SpaceRows rows, List<Finding> findings) {
        return new SpaceMoveResult(
                status,
                known.rank(),
                known.singularValues(),
                rows.scaleLengthMm(),
                free(known, rows),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                findings);
    }

    private static List<SpaceMove> free(LeastSquares.Fit known, SpaceRows rows) {
        return known.directions().subList(known.rank(), 6).stream()
                .map(rows::move)
                .toList();
    }

    private static SpaceMoveResult found(
            List<SpaceReading> readings,
            LeastSquares.Fit known,
            Settled<SpaceRows, SpaceMove, MinimaxFit.Fit> minimax,
            Settled<SpaceRows, SpaceMove, List<Double>> squares,
            List<Finding> findings) {
        MinimaxFit.Fit fit = minimax.answer();
        List<String> deciding = fit.equations().stream()
                .map(d -> readings.get(d.row()).station())
                .distinct()
                .toList();
        boolean unique = fit.extents().stream().allMatch(e -> e < UNIQUE_MM);
        SpaceMoveResult.Solution best = solution(minimax, fit.point(), fit.worst(), unique, deciding);
        Equations e = squares.rows().equations();
        SpaceMoveResult.Solution even =
                solution(squares, squares.answer(), e.worst(squares.answer()), known.determined(), List.of());
        List<String> outside = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            SpaceReading r = readings.get(i);
            double v = best.valuesMm().get(i);
            if ((v < r.lowerMm() - INSIDE_MM || v > r.upperMm() + INSIDE_MM) && !outside.contains(r.station())) {
                outside.add(r.station());
            }
        }
        if (!outside.isEmpty()) {
            findings.add(note(
                    Severity.STOP,
                    "Moving alone does not fit it. After the best move these stay outside: "
                            + String.join(", ", outside) + "."));
        }
        return new SpaceMoveResult(
                outside.isEmpty() ? MoveStatus.OK : MoveStatus.NO_FIT,
                known.rank(),
                known.singularValues(),
                squares.rows().scaleLengthMm(),
                free(known, squares.rows()),
                Optional.of(best),
                Optional.of(even),
                outside,
                findings);
    }

    private static SpaceMoveResult.Solution solution(
            Settled<SpaceRows, SpaceMove, ?> s,
            List<Double> point,
            double worst,
            boolean unique,
            List<String> deciding) {
        return new SpaceMoveResult.Solution(
                s.move(),
                s.rows().valuesMm(s.move()),
                worst,
                s.rows().equations().sumSquares(point),
                unique,
                deciding,
                s.firstErrorMm());
    }
}
