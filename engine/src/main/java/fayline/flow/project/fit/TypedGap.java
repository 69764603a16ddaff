package fayline.flow.project.fit;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import java.util.Locale;
import java.util.Set;

/** A gap as a builder types it: a length, or that the part touches. */
public final class TypedGap {
    private static final Set<String> TOUCHES = Set.of("touches", "touching", "touch");

    private TypedGap() {}

    /** Whether a text says that the part touches its neighbour: a gap of nought, or less than can be read. */
    public static boolean touches(String typed) {
        return TOUCHES.contains(typed.strip().toLowerCase(Locale.ROOT));
    }

    /**
     * Reads a gap.
     *
     * @param typed a length, or {@code touches} for nought
     * @return the text as typed with its value
     * @throws fayline.basis.units.UnreadableQuantityException if it is neither
     */
    public static Entered<Length> read(String typed) {
        return touches(typed) ? new Entered<>(typed, new Length(0)) : QuantityParser.parse(typed, QuantityKind.LENGTH);
    }
}
