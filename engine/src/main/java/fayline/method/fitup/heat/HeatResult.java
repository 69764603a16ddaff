package fayline.method.fitup.heat;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import java.util.List;

/**
 * What heat does to a free part.
 *
 * @param stations one for each station, in order
 * @param temperatures one for each temperature, in order
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record HeatResult(
        List<StationHeat> stations, List<TemperatureHeat> temperatures, List<Figure> figures, List<Finding> findings) {
    /** Copies the lists. */
    public HeatResult {
        stations = List.copyOf(stations);
        temperatures = List.copyOf(temperatures);
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
