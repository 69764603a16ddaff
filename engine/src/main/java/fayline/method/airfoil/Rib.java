package fayline.method.airfoil;

import fayline.basis.units.Length;
import java.util.List;

/**
 * A rib cut from a section.
 *
 * @param section the section
 * @param chord its chord
 * @param from where the rib begins, as a fraction of the chord
 * @param to where it ends
 * @param flange material left all round for a flange, beyond the section
 * @param cutouts round holes
 */
public record Rib(Airfoil section, Length chord, double from, double to, Length flange, List<Cutout> cutouts) {
    /** Copies the list. */
    public Rib {
        cutouts = List.copyOf(cutouts);
    }

    /** The whole section without flange and holes. */
    public static Rib whole(Airfoil section, Length chord) {
        return new Rib(section, chord, 0, 1, new Length(0), List.of());
    }

    /**
     * A round hole.
     *
     * @param x centre from the leading edge aft
     * @param y centre, up from the chord line
     * @param diameter its diameter
     */
    public record Cutout(Length x, Length y, Length diameter) {}
}
