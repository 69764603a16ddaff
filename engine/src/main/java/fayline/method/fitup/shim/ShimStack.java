package fayline.method.fitup.shim;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A stack of pieces.
 *
 * @param heightMm what it fills, tape included
 * @param piecesMm its pieces, thickest first; none where nothing is put in
 */
public record ShimStack(double heightMm, List<Double> piecesMm) {
    /** Nothing put in. */
    public static final ShimStack NONE = new ShimStack(0, List.of());

    /** Copies the list. */
    public ShimStack {
        piecesMm = List.copyOf(piecesMm);
    }

    /** As "3.50 = 2.00 + 1.00 + 0.50". */
    public String words() {
        if (piecesMm.isEmpty()) {
            return "none";
        }
        return String.format(Locale.ROOT, "%.2f = ", heightMm)
                + piecesMm.stream()
                        .map(p -> String.format(Locale.ROOT, "%.2f", p))
                        .collect(Collectors.joining(" + "));
    }
}
