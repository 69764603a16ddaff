package fayline.method.fitup.heat;

import fayline.basis.finding.Finding;
import java.util.List;

/**
 * What to mind with an acrylic sheet.
 *
 * @param growth growth at the farthest edge at some humidities
 * @param findings what must be said
 */
public record SheetCareResult(List<Growth> growth, List<Finding> findings) {
    /** Copies the lists. */
    public SheetCareResult {
        growth = List.copyOf(growth);
        findings = List.copyOf(findings);
    }

    /**
     * Growth from the dry state after weeks at one humidity.
     *
     * @param relativeHumidityPercent humidity of the air
     * @param mm at the farthest edge
     */
    public record Growth(double relativeHumidityPercent, double mm) {}
}
