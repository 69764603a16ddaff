package fayline.method.fitup.frame;

import java.util.Locale;
import java.util.Optional;

/** One way in which a node can move: a shift in mm or a turn in rad, by the right-hand rule. */
public enum Freedom {
    /** Shift along x. */
    UX(0),
    /** Shift along y. */
    UY(1),
    /** Shift along z. */
    UZ(2),
    /** Turn about x. */
    RX(3),
    /** Turn about y. */
    RY(4),
    /** Turn about z. */
    RZ(5);

    private final int place;

    Freedom(int place) {
        this.place = place;
    }

    /** Its place among the six values of a node: x, y, z, then the turns about them. */
    public int place() {
        return place;
    }

    /** Whether it is a turn. */
    public boolean isTurn() {
        return place > UZ.place;
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
