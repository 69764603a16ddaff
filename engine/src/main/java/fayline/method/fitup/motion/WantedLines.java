package fayline.method.fitup.motion;

import fayline.basis.numeric.optimum.Equations;
import fayline.basis.numeric.optimum.LinearRows;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Readings as straight-line functions of the unknowns of a move, level − a · x, with what is wanted of each; in the plane and in
 * space alike. The unknowns are shifts, then turns times the scale length, all in mm.
 *
 * @param <S> the kind itself
 * @param <M> the kind of move
 */
public interface WantedLines<S, M> extends Straight<S, M> {
    /** Moves whose shifts differ by less stand still, in mm. */
    double STILL_MM = 1e-4;

    /** Moves whose turns differ by less stand still, in rad. */
    double STILL_RAD = Math.toRadians(1e-5);

    /** How many unknowns: three in the plane, six in space. */
    int unknowns();

    /** How many of them are shifts; they come first. */
    int shifts();

    /** How many readings. */
    int count();

    /** How much each unknown lowers a reading. */
    double[] coefficients(int row);

    /** A reading at no move, as the straight line has it, in mm. */
    double levelMm(int row);

    /** What is wanted of a reading. */
    Wanted wanted(int row);

    /** The length that brings a turn to a shift: root mean square distance of the readings from the pivot, in mm. */
    double scaleLengthMm();

    /** A move from its unknowns. */
    M move(List<Double> unknowns);

    /** The unknowns of a move. */
    double[] unknowns(M move);

    /** A reading after a move, along its straight line, in mm. */
    default double valueMm(int row, double[] x) {
        double[] a = coefficients(row);
        double value = levelMm(row);
        for (int j = 0; j < a.length; j++) {
            value -= a[j] * x[j];
        }
        return value;
    }

    /** All readings after a move, along their straight lines, in mm. */
    default List<Double> valuesMm(M move) {
        double[] x = unknowns(move);
        return IntStream.range(0, count()).mapToObj(i -> valueMm(i, x)).toList();
    }

    /** A reading after a move of the rigid part, the neighbour taken as straight and square to the normal, in mm. */
    double exactMm(int row, M move);

    /** All readings after a move of the rigid part, in mm. */
    default List<Double> exactMm(M move) {
        return IntStream.range(0, count()).mapToObj(i -> exactMm(i, move)).toList();
    }

    @Override
    default double errorMm(M move) {
        double[] x = unknowns(move);
        double most = 0;
        for (int i = 0; i < count(); i++) {
            most = Math.max(most, Math.abs(valueMm(i, x) - exactMm(i, move)));
        }
        return most;
    }

    @Override
    default boolean still(M before, M after) {
        double[] from = unknowns(before);
        double[] to = unknowns(after);
        M change = move(
                IntStream.range(0, to.length).mapToObj(j -> to[j] - from[j]).toList());
        return shiftMm(change) < STILL_MM && turnRad(change) < STILL_RAD;
    }

    /** Every reading at its nominal, with its weight. */
    default Equations equations() {
        Equations.Builder all = Equations.of(unknowns());
        for (int i = 0; i < count(); i++) {
            Wanted w = wanted(i);
            all.row(coefficients(i), levelMm(i) - w.nominalMm(), w.weight());
        }
        return all.build();
    }

    /** What must hold whatever the aim: the limits of the move, then what must not be undercut in the order of the readings. */
    default LinearRows hard(Box box) {
        LinearRows.Builder all = box.rows();
        for (int i = 0; i < count(); i++) {
            Wanted w = wanted(i);
            if (w.minimumMm().isPresent()) {
                all.row(
                        coefficients(i),
                        Double.NEGATIVE_INFINITY,
                        levelMm(i) - w.minimumMm().getAsDouble());
            }
        }
        return all.build();
    }

    /** How far the pivot shifts, in mm. */
    default double shiftMm(M move) {
        return length(Arrays.copyOf(unknowns(move), shifts()));
    }

    /** How far the part turns, in rad; not negative. */
    default double turnRad(M move) {
        return length(Arrays.copyOfRange(unknowns(move), shifts(), unknowns())) / scaleLengthMm();
    }

    /** The size of a move with its turn brought to a shift, in mm. */
    default double normMm(M move) {
        return length(unknowns(move));
    }

    private static double length(double[] x) {
        return Math.sqrt(Arrays.stream(x).map(v -> v * v).sum());
    }
}
