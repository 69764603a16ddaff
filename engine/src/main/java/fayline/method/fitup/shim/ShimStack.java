package fayline.method.fitup.shim;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/**
 * A stack of pieces.
 *
 * @param heightMm what it fills, tape included
 * @param piecesMm its pieces, thickest first; none where nothing is put in
 */
public record ShimStack(double heightMm, List<Double> piecesMm) {
    private static final double LEAST_TAPE_MM = 1e-6;

    /** Nothing put in. */
    public static final ShimStack NONE = new ShimStack(0, List.of());

    /** Copies the list. */
    public ShimStack {
        piecesMm = List.copyOf(piecesMm);
    }

    /** What the tape adds, mm; 0 without tape. */
    public double tapeMm() {
        double tape = heightMm - piecesMm.stream().mapToDouble(p -> p).sum();
        return tape > LEAST_TAPE_MM ? tape : 0;
    }

    /** As "3.50 = 2.00 + 1.00 + 0.50", or "3.28 = 1.59 + 1.59 + tape 0.10". */
    public String words() {
        return piecesMm.isEmpty() ? "none" : twoPlaces(heightMm) + " = " + sum(ShimStack::twoPlaces);
    }

    /**
     * What makes the height, as "1.59 + 1.59 + tape 0.10".
     *
     * @param length how a thickness in mm is said
     */
    public String sum(DoubleFunction<String> length) {
        String pieces = piecesMm.stream().map(length::apply).collect(Collectors.joining(" + "));
        return pieces + (tapeMm() > 0 ? " + tape " + length.apply(tapeMm()) : "");
    }

    private static String twoPlaces(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm);
    }
}
