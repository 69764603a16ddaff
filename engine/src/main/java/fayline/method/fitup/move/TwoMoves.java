package fayline.method.fitup.move;

import fayline.basis.numeric.optimum.LeastSquares;
import fayline.basis.numeric.optimum.MinimaxFit;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.MoveSpread;
import fayline.method.fitup.motion.Settled;
import fayline.method.fitup.motion.WantedLines;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The move of smallest worst deviation, and beside it that of least squares; limits of the move and minimum gaps kept. The same in
 * the plane and in space.
 *
 * @param minimax the one, on its straight lines
 * @param squares the other, on its own
 * @param uncertaintiesMm standard uncertainty of each reading, in mm; empty where not given
 * @param spread how well the move of least squares is known; empty where uncertainties were not given or a motion is not known
 * @param <S> the kind of straight lines
 * @param <M> the kind of move
 */
public record TwoMoves<S extends WantedLines<S, M>, M>(
        Settled<S, M, MinimaxFit.Fit> minimax,
        Settled<S, M, List<Double>> squares,
        List<Double> uncertaintiesMm,
        Optional<MoveSpread> spread) {
    private static final double UNIQUE_MM = 1e-4;
    private static final double INSIDE_MM = 1e-6;
    private static final double ERRORS = 3;

    /** Keeps its own copy. */
    public TwoMoves {
        uncertaintiesMm = List.copyOf(uncertaintiesMm);
    }

    /**
     * Looks for both.
     *
     * @param lines the readings, straight about no move
     * @param box limits of the move
     * @param uncertaintiesMm one for each reading, or none
     * @return empty where limits and minimum gaps contradict each other
     */
    public static <S extends WantedLines<S, M>, M> Optional<TwoMoves<S, M>> solve(
            S lines, Box box, List<Double> uncertaintiesMm) {
        Optional<Settled<S, M, MinimaxFit.Fit>> minimax =
                Settled.solve(lines, r -> MinimaxFit.fit(r.equations(), r.hard(box)), (r, f) -> r.move(f.point()));
        return minimax.flatMap(m -> squares(lines, box)
                .map(s -> new TwoMoves<>(m, s, uncertaintiesMm, MoveSpread.of(s.rows(), uncertaintiesMm))));
    }

    /**
     * Looks for the move of least squares alone.
     *
     * @param lines the readings, straight about no move
     * @param box limits of the move
     * @return empty where limits and minimum gaps contradict each other
     */
    public static <S extends WantedLines<S, M>, M> Optional<Settled<S, M, List<Double>>> squares(S lines, Box box) {
        return Settled.solve(lines, r -> LeastSquares.within(r.equations(), r.hard(box)), (r, x) -> r.move(x));
    }

    /** Whether no other move has so small a worst deviation. */
    public boolean unique() {
        return minimax.answer().extents().stream().allMatch(e -> e < UNIQUE_MM);
    }

    /** Over how far a shift may range without losing the smallest worst deviation, in mm; nothing where the move is unique. */
    public double playMm() {
        return unique()
                ? 0
                : minimax.answer().extents().stream()
                        .limit(minimax.rows().shifts())
                        .mapToDouble(e -> e)
                        .max()
                        .orElse(0);
    }

    /** The readings that decide the smallest worst deviation, each once. */
    public List<String> deciding() {
        return minimax.answer().equations().stream()
                .map(d -> minimax.rows().wanted(d.row()).named())
                .distinct()
                .toList();
    }

    /** The readings outside their limits after the move of smallest worst deviation. */
    public List<MoveReport.Outside> outside() {
        S lines = minimax.rows();
        List<Double> valuesMm = lines.valuesMm(minimax.move());
        List<MoveReport.Outside> all = new ArrayList<>();
        for (int i = 0; i < lines.count(); i++) {
            if (Math.abs(lines.wanted(i).beyondMm(valuesMm.get(i))) > INSIDE_MM) {
                all.add(new MoveReport.Outside(lines.wanted(i), valuesMm.get(i)));
            }
        }
        return all;
    }

    /** What is told of the move of smallest worst deviation. */
    public MoveReport.Best best() {
        return new MoveReport.Best(minimax.still(), deciding(), minimax.answer().worst(), playMm());
    }

    /**
     * The standard error of the move of least squares along a direction that is known but badly, in mm.
     *
     * @param weak the direction; empty where every motion is known well
     * @return empty without it, and where the spread is not known
     */
    public OptionalDouble weakErrorMm(Optional<M> weak) {
        return weak.isPresent() && spread.isPresent()
                ? OptionalDouble.of(spread.get().alongMm(squares.rows().unknowns(weak.get())))
                : OptionalDouble.empty();
    }

    /**
     * The reading to doubt first where the two moves lie more than three standard errors apart (common practice, no source): the
     * one that is farthest from nominal, in its uncertainty, after the move of least squares.
     */
    public Optional<MoveReport.Suspect> suspect() {
        return spread.flatMap(this::suspect);
    }

    private Optional<MoveReport.Suspect> suspect(MoveSpread known) {
        S lines = squares.rows();
        double[] a = lines.unknowns(minimax.move());
        double[] b = lines.unknowns(squares.move());
        List<Double> errorsMm = known.errorsMm();
        double apart = 0;
        for (int j = 0; j < a.length; j++) {
            apart = Math.max(apart, Math.abs(a[j] - b[j]) / errorsMm.get(j));
        }
        if (!(apart > ERRORS)) {
            return Optional.empty();
        }
        int worst = 0;
        double most = -1;
        for (int i = 0; i < lines.count(); i++) {
            double off = lines.valueMm(i, b) - lines.wanted(i).nominalMm();
            double z = Math.abs(off) / uncertaintiesMm.get(i);
            if (z > most) {
                most = z;
                worst = i;
            }
        }
        return Optional.of(new MoveReport.Suspect(apart, lines.wanted(worst).named()));
    }
}
