package fayline.method.fitup.heat;

import fayline.method.fitup.Spot;
import java.util.List;

/**
 * The question what heat does to a part that is free to grow in its surround. A sheet that is bonded all round is not: see
 * {@link BondedHeat}.
 *
 * @param anchor where part and surround are tied: the middle of a floating part, the pin, the hinge line
 * @param part expansion of the part
 * @param surround expansion of the surround
 * @param readAtDegC temperature at which the gaps were read, and are set now
 * @param referenceDegC temperature at which the nominal gaps are wanted
 * @param temperaturesDegC the temperatures of service that are asked
 * @param minimumGapMm least gap allowed anywhere
 * @param rows the stations
 * @param sheet what the part is
 */
public record Heat(
        Spot anchor,
        Expansion part,
        Expansion surround,
        double readAtDegC,
        double referenceDegC,
        List<Double> temperaturesDegC,
        double minimumGapMm,
        List<HeatRow> rows,
        Sheet sheet) {
    private static final double COLDEST = -273.15;
    private static final double HOTTEST = 1_000;

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException without stations or temperatures, or for a temperature that is none
     */
    public Heat {
        temperaturesDegC = List.copyOf(temperaturesDegC);
        rows = List.copyOf(rows);
        if (rows.isEmpty() || temperaturesDegC.isEmpty()) {
            throw new IllegalArgumentException("heat is asked for at least one station and one temperature");
        }
        requireTemperature(readAtDegC);
        requireTemperature(referenceDegC);
        temperaturesDegC.forEach(Heat::requireTemperature);
        if (!Double.isFinite(minimumGapMm)) {
            throw new IllegalArgumentException("no least gap: " + minimumGapMm);
        }
    }

    static void requireTemperature(double degC) {
        if (!(degC > COLDEST && degC < HOTTEST)) {
            throw new IllegalArgumentException("a temperature of " + degC + " degC is none");
        }
    }
}
