package fayline.basis.units;

/**
 * A quantity together with the text a person typed for it. The text is never rounded or rewritten; the value is what the
 * text says in SI.
 *
 * @param asTyped number and unit as typed, for example {@code 3/32 in}
 * @param value the same in SI
 * @param <Q> the kind of quantity
 */
public record Entered<Q extends Quantity>(String asTyped, Q value) {
    @Override
    public String toString() {
        return asTyped;
    }
}
