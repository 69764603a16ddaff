package fayline.method.fitup.heat;

import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The question what heat does to a sheet that is bonded all round: its gap does not follow the temperature, the adhesive is
 * sheared instead.
 *
 * @param middle the middle of the sheet, which stays where it is
 * @param sheet expansion of the sheet
 * @param surround expansion of what it is bonded to
 * @param setAtDegC temperature at which the adhesive set
 * @param temperaturesDegC the temperatures that are asked
 * @param bondThicknessMm thickness of the adhesive; positive
 * @param stations where it is asked
 * @param shearMpa shear modulus of the adhesive, where the stress is asked
 * @param allowedStrain most shear strain that the adhesive's data allows, as a fraction
 */
public record BondedHeat(
        Spot middle,
        Expansion sheet,
        Expansion surround,
        double setAtDegC,
        List<Double> temperaturesDegC,
        double bondThicknessMm,
        List<Station> stations,
        OptionalDouble shearMpa,
        OptionalDouble allowedStrain) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException without stations or temperatures, or for a bond without thickness
     */
    public BondedHeat {
        temperaturesDegC = List.copyOf(temperaturesDegC);
        stations = List.copyOf(stations);
        if (stations.isEmpty() || temperaturesDegC.isEmpty()) {
            throw new IllegalArgumentException("heat is asked for at least one station and one temperature");
        }
        Heat.requireTemperature(setAtDegC);
        temperaturesDegC.forEach(Heat::requireTemperature);
        if (!(bondThicknessMm > 0) || Double.isInfinite(bondThicknessMm)) {
            throw new IllegalArgumentException("a bond has a thickness, found " + bondThicknessMm + " mm");
        }
    }
}
