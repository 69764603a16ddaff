package fayline.method.fitup.frame;

import java.util.Locale;
import java.util.Optional;

/** One way in which a node can move: a shift in mm or a turn in rad, by the right-hand rule. */
public enum Freedom {
    /** Shift along x. */
    UX,
    /** Shift along y. */
    UY,
    /** Shift along z. */
    UZ,
    /** Turn about x. */
    RX,
    /** Turn about y. */
    RY,
    /** Turn about z. */
    RZ;

    /** Whether it is a turn. */
    public boolean isTurn() {
        return ordinal() > UZ.ordinal();
    }

    /** Whether a frame that lies in the plane of x and y has it. */
    public boolean isInPlane() {
        return this == UX || this == UY || this == RZ;
    }

    /** The short name, as {@code ux}. */
    public String symbol() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The freedom of a short name. */
    public static Optional<Freedom> named(String symbol) {
        for (Freedom f : values()) {
            if (f.symbol().equals(symbol)) {
                return Optional.of(f);
            }
        }
        return Optional.empty();
    }
}
