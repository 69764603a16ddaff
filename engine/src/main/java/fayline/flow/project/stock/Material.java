package fayline.flow.project.stock;

import fayline.basis.units.ArealMass;
import fayline.basis.units.Density;
import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.catalog.Keyed;
import java.util.Optional;

/**
 * Something bought that is not mixed.
 *
 * @param id the id
 * @param name the name
 * @param kind what it is
 * @param arealMass mass per area, of cloth, film, core sheet
 * @param thickness thickness, of core and sheet; of cloth as laid where known
 * @param density density of the fibre for cloth, of the sheet for core and panes
 * @param rollWidth usable width of the roll or sheet
 * @param rollLength length of a roll or sheet
 * @param price price per unit
 * @param leadTime time from order to delivery
 * @param outLife how long it may be out of the cold, all together, of what is kept there
 * @param lamina how stiff it is once laid, of cloth and tape where that is entered
 */
public record Material(
        String id,
        String name,
        Kind kind,
        Optional<Entered<ArealMass>> arealMass,
        Optional<Entered<Length>> thickness,
        Optional<Entered<Density>> density,
        Optional<Entered<Length>> rollWidth,
        Optional<Entered<Length>> rollLength,
        Optional<Price> price,
        Optional<TimeSpan> leadTime,
        Optional<TimeSpan> outLife,
        Optional<Lamina> lamina)
        implements Keyed {

    /** What a material is. */
    public enum Kind {
        /** Woven or stitched reinforcement. */
        CLOTH,
        /** Unidirectional reinforcement. */
        TAPE,
        /** Foam, honeycomb, balsa. */
        CORE,
        /** Peel ply. */
        PEEL_PLY,
        /** Perforated release film. */
        PERFORATED_FILM,
        /** Breather and bleeder. */
        BREATHER,
        /** Bag film. */
        BAG_FILM,
        /** Sealant tape. */
        SEALANT_TAPE,
        /** Release agent. */
        RELEASE,
        /** Filler or thickener. */
        THICKENER,
        /** Transparent sheet for panes. */
        PANE,
        /** Rigid tube. */
        TUBE,
        /** Anything counted or measured otherwise. */
        OTHER;

        /** The word for files, as {@code peel-ply}. */
        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }
}
