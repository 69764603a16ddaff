package fayline.flow.project.fit;

import fayline.method.fitup.Spot;
import fayline.method.fitup.heat.Expansion;
import fayline.method.fitup.heat.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How part and surround grow.
 *
 * @param anchor where they are tied; the middle of the stations where empty
 * @param part the part's expansion
 * @param surround the surround's
 * @param referenceDegC the temperature at which the nominal gap is wanted
 * @param serviceDegC the lowest and highest temperature in service
 * @param sheet what the part is
 * @param bondMm thickness of the bond where it is bonded all round; empty where it may move freely
 * @param origins where the expansions are from, the part's first, each in a sentence; empty where they were entered
 */
public record FitHeat(
        Optional<Spot> anchor,
        Expansion part,
        Expansion surround,
        double referenceDegC,
        List<Double> serviceDegC,
        Sheet sheet,
        OptionalDouble bondMm,
        List<String> origins) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there are not two service temperatures, the lower first
     */
    public FitHeat {
        serviceDegC = List.copyOf(serviceDegC);
        origins = List.copyOf(origins);
        if (serviceDegC.size() != 2 || !(serviceDegC.get(0) < serviceDegC.get(1))) {
            throw new IllegalArgumentException(
                    "a service range is a lower and a higher temperature, not " + serviceDegC);
        }
    }

    /** Expansions that were entered. */
    public FitHeat(
            Optional<Spot> anchor,
            Expansion part,
            Expansion surround,
            double referenceDegC,
            List<Double> serviceDegC,
            Sheet sheet,
            OptionalDouble bondMm) {
        this(anchor, part, surround, referenceDegC, serviceDegC, sheet, bondMm, List.of());
    }
}
