package fayline.method.fitup.heat;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Shear of the adhesive under a sheet bonded all round: strain = (α_sheet − α_surround) ΔT · distance from the middle / bond
 * thickness, the two bodies taken as stiff against the adhesive (geometry, an upper bound).
 */
public final class BondedHeatCalculator {
    private static final String SOURCE = "geometry: both bodies grow freely, the adhesive follows";
    private static final double PERCENT = 100;

    private BondedHeatCalculator() {}

    /** Answers the question. */
    public static BondedHeatResult calculate(BondedHeat bond) {
        List<BondedHeatResult.StationStrain> strains =
                bond.stations().stream().map(s -> at(bond, s)).toList();
        double highest = strains.stream()
                .flatMap(s -> s.strains().stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
        OptionalDouble thickness = bond.allowedStrain().isPresent()
                ? OptionalDouble.of(
                        bond.bondThicknessMm() * highest / bond.allowedStrain().getAsDouble())
                : OptionalDouble.empty();
        return new BondedHeatResult(
                strains, highest, thickness, List.of(figure(bond, highest)), findings(bond, highest, thickness));
    }

    private static BondedHeatResult.StationStrain at(BondedHeat bond, Station station) {
        Expansion more = bond.sheet().less(bond.surround());
        double perKelvin = Math.hypot(
                        more.xPerK() * (station.at().xMm() - bond.middle().xMm()),
                        more.yPerK() * (station.at().yMm() - bond.middle().yMm()))
                / bond.bondThicknessMm();
        List<Double> strains = bond.temperaturesDegC().stream()
                .map(t -> perKelvin * Math.abs(t - bond.setAtDegC()))
                .toList();
        List<Double> stresses = bond.shearMpa().isEmpty()
                ? List.of()
                : strains.stream().map(s -> s * bond.shearMpa().getAsDouble()).toList();
        return new BondedHeatResult.StationStrain(station, strains, stresses);
    }

    private static List<Finding> findings(BondedHeat bond, double highest, OptionalDouble thickness) {
        List<Finding> findings = new ArrayList<>();
        findings.add(new Finding(
                Severity.NOTE,
                "bond",
                String.format(
                        Locale.ROOT,
                        "The sheet is bonded all round: its gap does not follow the temperature, the adhesive is sheared by"
                                + " up to %.0f %%.",
                        highest * PERCENT),
                SOURCE));
        if (thickness.isPresent() && thickness.getAsDouble() > bond.bondThicknessMm()) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    "bond",
                    Phrase.of(
                            "The adhesive is allowed %.0f %% shear: make the bond %s thick instead of %s.",
                            bond.allowedStrain().orElse(0) * PERCENT,
                            Amount.mm(Math.ceil(thickness.getAsDouble() * 10) / 10, 1),
                            Amount.mm(bond.bondThicknessMm(), 1)),
                    SOURCE));
        }
        return findings;
    }

    private static Figure figure(BondedHeat bond, double highest) {
        return new Figure(
                "Highest shear strain of the adhesive",
                String.format(Locale.ROOT, "%.1f %%", highest * PERCENT),
                "(expansion of sheet - of surround) x temperature x distance from the middle / bond thickness",
                List.of(
                        HeatCalculator.expansion("expansion of the sheet", bond.sheet()),
                        HeatCalculator.expansion("expansion of the surround", bond.surround()),
                        new Figure.Input(
                                "bond thickness",
                                Phrase.of("%s", Amount.mm(bond.bondThicknessMm(), 2)),
                                Figure.Origin.ENTERED)),
                SOURCE,
                List.of("Both bodies taken as stiff: an upper bound."));
    }
}
