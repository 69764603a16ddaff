package fayline.flow.result.quantity;

import fayline.basis.finding.Figure;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * The consumables of one bag, from the part outward.
 *
 * @param layers the sheets in order: peel ply, perforated film, breather, bag
 * @param tapeMaterial the sealant tape, where the catalog has one
 * @param tape length of sealant tape, pleats and spare included
 * @param pleats how many pleats
 * @param pleatHeight height of a pleat
 * @param ports vacuum ports, the gauge not counted
 * @param figures how the amounts came about
 */
public record BagStack(
        List<Layer> layers,
        Optional<String> tapeMaterial,
        Length tape,
        int pleats,
        Length pleatHeight,
        int ports,
        List<Figure> figures) {
    /** Copies the lists. */
    public BagStack {
        layers = List.copyOf(layers);
        figures = List.copyOf(figures);
    }

    /**
     * A sheet.
     *
     * @param what what it is, as {@code peel ply}
     * @param material the material, where the catalog has one of the kind
     * @param area how much, margins included
     * @param margin how far it reaches beyond the lay-up
     */
    public record Layer(String what, Optional<String> material, Area area, Length margin) {}
}
