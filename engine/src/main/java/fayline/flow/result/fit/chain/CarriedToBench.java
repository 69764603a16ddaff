package fayline.flow.result.fit.chain;

import fayline.method.fitup.Spot;
import fayline.method.fitup.chain.DatumFit;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What was read on the airframe, carried to a bench through marks that were found in both places.
 *
 * @param link the link that is bonded there
 * @param laid how the bench lies on the airframe; its uncertainty counts only where {@code sure}
 * @param sure whether somebody said how well each mark is found
 * @param marks the marks, with how far each is from where the others put it
 * @param stations the stations
 */
public record CarriedToBench(String link, DatumFit laid, boolean sure, List<Mark> marks, List<Station> stations) {
    /** Copies the lists. */
    public CarriedToBench {
        marks = List.copyOf(marks);
        stations = List.copyOf(stations);
    }

    /**
     * A mark.
     *
     * @param name what it is called
     * @param bench where it was found on the bench
     * @param place where it was found in the last fit's frame
     * @param deviationMm standard deviation of finding it, each time, along each axis; empty where nobody gave it
     * @param offMm how far the fitted bench leaves it off
     */
    public record Mark(String name, Spot bench, Spot place, OptionalDouble deviationMm, double offMm) {}

    /**
     * A station.
     *
     * @param id the station
     * @param bench where it is on the bench
     * @param gapMm the gap on the airframe, as read
     * @param wantedMm the gap wanted there now
     * @param goesMm how far its edge goes outward, towards the neighbour, by this link's part of the chosen correction; empty
     *     where there is none
     * @param marksMm standard deviation that the marks alone bring to the gap; empty where one has no deviation
     */
    public record Station(
            String id, Spot bench, double gapMm, double wantedMm, OptionalDouble goesMm, OptionalDouble marksMm) {}
}
