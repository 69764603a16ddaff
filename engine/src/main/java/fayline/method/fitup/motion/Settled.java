package fayline.method.fitup.motion;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * An answer on straight lines that are straight where the answer is: solved, and where the lines are more than 0.02 mm off there,
 * straightened at the answer and solved again, at most five times, until the move stands still. Where it does not, the move counts
 * at which its own straight lines were least off.
 *
 * @param answer what the solver gave
 * @param move its move
 * @param rows the straight lines it was solved on
 * @param firstErrorMm how far off the first lines were at their answer
 * @param rounds how often it was solved again
 * @param still whether the move stood still in the end, or its first lines were good
 * @param <S> the kind of straight lines
 * @param <M> the kind of move
 * @param <T> the kind of answer
 */
public record Settled<S extends Straight<S, M>, M, T>(
        T answer, M move, S rows, double firstErrorMm, int rounds, boolean still) {
    private static final double OFF_MM = 0.02;
    /** How often it is solved again at most. */
    public static final int MOST_ROUNDS = 5;

    /**
     * Solves.
     *
     * @param start straight about no move
     * @param solver the answer on straight lines, or empty where there is none
     * @param moveOf the move of an answer
     * @return empty where a round had no answer
     */
    public static <S extends Straight<S, M>, M, T> Optional<Settled<S, M, T>> solve(
            S start, Function<S, Optional<T>> solver, BiFunction<S, T, M> moveOf) {
        S rows = start;
        Optional<T> answer = solver.apply(rows);
        if (answer.isEmpty()) {
            return Optional.empty();
        }
        M move = moveOf.apply(rows, answer.get());
        double first = rows.errorMm(move);
        int rounds = 0;
        boolean still = first <= OFF_MM;
        Settled<S, M, T> nearest = new Settled<>(answer.get(), move, rows, first, MOST_ROUNDS, false);
        double least = first;
        while (!still && rounds < MOST_ROUNDS) {
            rows = rows.about(move);
            answer = solver.apply(rows);
            if (answer.isEmpty()) {
                return Optional.empty();
            }
            M next = moveOf.apply(rows, answer.get());
            still = rows.still(move, next);
            move = next;
            rounds++;
            double error = rows.errorMm(move);
            if (error < least) {
                least = error;
                nearest = new Settled<>(answer.get(), move, rows, first, MOST_ROUNDS, false);
            }
        }
        // A move that swings between two answers has no last one worth more than the others: the truest of them counts.
        return Optional.of(still ? new Settled<>(answer.get(), move, rows, first, rounds, true) : nearest);
    }
}
