package fayline.app.pdf.fitcard;

import java.util.List;

/**
 * A frame told as beams, in words and a reader's units: what page and card show alike.
 *
 * @param origin who says how it is built and how far the part stands off, and from what
 * @param missing what is not known yet, a sentence each; then nothing else is told
 * @param clamps what each clamp takes
 * @param bonds what the bond carries, place by place
 * @param strength what that means against the entered strength
 * @param pins latch pins and hinge points
 * @param widths how widths change
 * @param strains the highest bending strains, a sentence each
 * @param assumed what is assumed, a sentence each
 * @param says what must be said, a sentence each
 * @param care what goes with every clamp force, a sentence each
 */
public record SprungSheet(
        String origin,
        List<String> missing,
        List<Clamp> clamps,
        List<Bond> bonds,
        String strength,
        List<Pin> pins,
        List<Width> widths,
        List<String> strains,
        List<String> assumed,
        List<String> says,
        List<String> care) {
    /** Copies the lists. */
    public SprungSheet {
        missing = List.copyOf(missing);
        clamps = List.copyOf(clamps);
        bonds = List.copyOf(bonds);
        pins = List.copyOf(pins);
        widths = List.copyOf(widths);
        strains = List.copyOf(strains);
        assumed = List.copyOf(assumed);
        says = List.copyOf(says);
        care = List.copyOf(care);
    }

    /** Whether there is an answer. */
    public boolean told() {
        return !clamps.isEmpty();
    }

    /**
     * A clamp.
     *
     * @param mark its mark
     * @param place where it acts
     * @param off how far the free part stands off there
     * @param force how hard and which way it forces the part
     * @param beyond whether that is more than a hand should pull
     */
    public record Clamp(String mark, String place, String off, String force, boolean beyond) {}

    /**
     * A place of the bond.
     *
     * @param place the place
     * @param peel load across it
     * @param shear load along it
     * @param open whether it is pulled open
     */
    public record Bond(String place, String peel, String shear, boolean open) {}

    /**
     * A latch pin or hinge point.
     *
     * @param name what it is called
     * @param shift how far it goes off its axis, and which way
     * @param left clearance left
     * @param relief where the part is relieved or shimmed for it; empty where nothing is needed
     * @param binds whether it no longer meets its hole
     */
    public record Pin(String name, String shift, String left, String relief, boolean binds) {}

    /**
     * A width.
     *
     * @param mark its mark
     * @param change by how much it changes when the clamps come off
     * @param read the same as the last trial read it; empty without one
     */
    public record Width(String mark, String change, String read) {}
}
