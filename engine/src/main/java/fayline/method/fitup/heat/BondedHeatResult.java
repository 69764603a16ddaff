package fayline.method.fitup.heat;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.method.fitup.Station;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What heat does to a bonded sheet. It holds no gaps: they do not change freely.
 *
 * @param strains one for each station, in order
 * @param highestStrain the highest of all, as a fraction
 * @param thicknessForAllowedMm the bond thickness at which the highest strain is the allowed one, where that is known
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record BondedHeatResult(
        List<StationStrain> strains,
        double highestStrain,
        OptionalDouble thicknessForAllowedMm,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public BondedHeatResult {
        strains = List.copyOf(strains);
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }

    /**
     * Shear at one station.
     *
     * @param station where
     * @param strains shear strain at each temperature, in order, as a fraction
     * @param stressesMpa shear stress at each temperature, empty without a modulus; linear, so too high for a soft adhesive at
     *     large strain
     */
    public record StationStrain(Station station, List<Double> strains, List<Double> stressesMpa) {
        /** Copies the lists. */
        public StationStrain {
            strains = List.copyOf(strains);
            stressesMpa = List.copyOf(stressesMpa);
        }
    }
}
