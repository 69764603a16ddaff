package fayline.flow.result.fit.frame;

import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.stock.Material;
import fayline.flow.result.fit.StateReadings;
import fayline.method.fitup.Station;
import java.util.List;
import java.util.Map;

/**
 * A frame told as beams, with the readings of its fit.
 *
 * @param fit the fit; its frame must have beams
 * @param states what was read in each state
 * @param places stations with a place, by their marks
 * @param widths what the widths of the frame amount to
 * @param laminates the project's laminates
 * @param materials what they are laid from
 */
public record SprungQuestion(
        Fit fit,
        List<StateReadings> states,
        Map<String, Station> places,
        WidthsResult widths,
        Catalog<Laminate> laminates,
        Catalog<Material> materials) {
    /** Copies the collections. */
    public SprungQuestion {
        states = List.copyOf(states);
        places = Map.copyOf(places);
    }
}
