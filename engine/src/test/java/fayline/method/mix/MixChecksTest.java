package fayline.method.mix;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Area;
import fayline.basis.units.ArealMass;
import fayline.basis.units.Density;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.checks.CheckTable;
import fayline.method.cure.CureSheet;
import fayline.method.cure.CureState;
import fayline.method.cure.PotShape;
import fayline.method.cure.SheetPoint;
import fayline.method.cure.pot.PotLife;
import fayline.method.cure.pot.PotLifeCalculator;
import fayline.method.cure.pot.PotLifeResult;
import fayline.method.mix.batch.EqualBatches;
import fayline.method.mix.batch.EqualBatchesCalculator;
import fayline.method.mix.batch.EqualBatchesResult;
import fayline.method.mix.batch.LargestBatch;
import fayline.method.mix.batch.LargestBatchCalculator;
import fayline.method.mix.batch.LargestBatchResult;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of the mixes table; sources stand in the table. */
class MixChecksTest {
    static List<CheckTable.Row> rows() {
        return CheckTable.rows("shop/mixes.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void should_hold_when_computed(CheckTable.Row row) {
        if (row.asks("fibre_mass") || row.asks("fibre_volume_fraction")) {
            laminate(row);
        } else if (row.asks("adhesive_mass")) {
            row.holds("adhesive_mass", line(row).toWeigh().orElseThrow().kilograms());
        } else if (row.asks("mass")) {
            row.holds("mass", fillet(row).toWeigh().orElseThrow().kilograms());
        } else if (row.asks("deviation") || row.asks("resin") || row.asks("parts_hardener_by_volume")) {
            ratio(row);
        } else if (row.asks("batches")) {
            EqualBatchesResult result = EqualBatchesCalculator.calculate(
                    new EqualBatches(new Mass(row.si("total")), new Mass(row.si("max_batch"))));
            row.holds("batches", result.batches());
            row.holds("batch_mass", result.each().orElseThrow().kilograms());
        } else if (row.asks("exponent")) {
            PotLifeResult result = PotLifeCalculator.calculate(
                    PotLife.inCup(twoMasses(row), Mass.ofGrams(300), new Temperature(row.si("temperature"))));
            row.holds("exponent", result.exponent().orElseThrow());
            row.holds("pot_life_at_300_g", result.potLife().orElseThrow().minutes());
        } else {
            assertTrue(row.asks("max_batch"), row.id());
            largest(row);
        }
    }

    private static void laminate(CheckTable.Row row) {
        List<ArealMass> plies = row.gives("plies")
                ? Collections.nCopies((int) row.raw("plies"), new ArealMass(row.si("areal_mass_fibre")))
                : row.list("ply_areal_masses").stream()
                        .map(ArealMass::ofGramsPerSquareMetre)
                        .toList();
        LaminateMassResult result = LaminateMassCalculator.calculate(new LaminateMass(
                row.gives("area") ? Optional.of(new Area(row.si("area"))) : Optional.empty(),
                plies,
                new Fraction(row.si("fibre_mass_fraction")),
                new Fraction(row.gives("waste") ? row.si("waste") : 0),
                row.gives("density_fibre") ? Optional.of(new Density(row.si("density_fibre"))) : Optional.empty(),
                row.gives("density_resin") ? Optional.of(new Density(row.si("density_resin"))) : Optional.empty()));
        if (row.asks("fibre_mass")) {
            row.holds("fibre_mass", result.fibre().orElseThrow().kilograms());
            row.holds("resin_in_part", result.resinInPart().orElseThrow().kilograms());
            row.holds("mix_to_weigh", result.mixToWeigh().orElseThrow().kilograms());
        } else {
            row.holds(
                    "fibre_volume_fraction",
                    result.fibreVolumeFraction().orElseThrow().ratio());
            row.holds("laminate_thickness", result.thickness().orElseThrow().millimetres());
        }
    }

    private static AdhesiveMassResult line(CheckTable.Row row) {
        return AdhesiveMassCalculator.calculate(AdhesiveMass.ofLine(
                new Area(row.si("area")),
                new Length(row.si("bond_line")),
                new Density(row.si("density")),
                new Fraction(row.si("waste"))));
    }

    private static AdhesiveMassResult fillet(CheckTable.Row row) {
        return AdhesiveMassCalculator.calculate(new AdhesiveMass(
                Optional.empty(),
                Optional.of(new AdhesiveMass.Fillet(
                        new Length(row.si("length")), new Length(row.si("radius")), AdhesiveMass.Shape.CONCAVE)),
                new Density(row.si("density")),
                new Fraction(0)));
    }

    private static void ratio(CheckTable.Row row) {
        double hardener = row.gives("parts_hardener")
                ? row.raw("parts_hardener")
                : row.raw(row.gives("nominal_hardener") ? "nominal_hardener" : "parts_hardener_by_weight");
        MixRatioResult result = MixRatioCalculator.calculate(new MixRatio(
                row.gives("parts_resin") ? row.raw("parts_resin") : 100,
                hardener,
                row.gives("tolerance") ? Optional.of(new Fraction(row.si("tolerance"))) : Optional.empty(),
                mass(row, "total"),
                mass(row, "resin_weighed"),
                mass(row, "hardener_weighed"),
                row.gives("density_resin") ? Optional.of(new Density(row.si("density_resin"))) : Optional.empty(),
                row.gives("density_hardener")
                        ? Optional.of(new Density(row.si("density_hardener")))
                        : Optional.empty()));
        if (row.asks("resin")) {
            row.holds("resin", result.resin().orElseThrow().grams());
            row.holds("hardener", result.hardener().orElseThrow().grams());
        }
        if (row.asks("parts_hardener_by_volume")) {
            row.holds(
                    "parts_hardener_by_volume", result.hardenerPer100ByVolume().orElseThrow());
        }
        if (row.asks("deviation")) {
            row.holds("deviation", result.deviation().orElseThrow().percent());
            row.holds("in_tolerance", result.inTolerance().orElseThrow());
            row.holds("hardener_to_add", result.hardenerToAdd().orElseThrow().grams());
        }
    }

    private static Optional<Mass> mass(CheckTable.Row row, String name) {
        return row.gives(name) ? Optional.of(new Mass(row.si(name))) : Optional.empty();
    }

    private static void largest(CheckTable.Row row) {
        PotLife pot = new PotLife(
                sheet(List.of(point(row.si("pot_life_ref"), row.si("temp_ref"), row.si("mass_ref")))),
                Optional.empty(),
                new Temperature(row.si("shop_temp")),
                PotShape.CUP,
                false,
                OptionalDouble.of(row.raw("mass_exponent")));
        LargestBatchResult result = LargestBatchCalculator.calculate(new LargestBatch(
                pot,
                row.si("use_rate"),
                1,
                new Fraction(row.raw("usable_fraction")),
                new TimeSpan(row.si("mixing_time")),
                Optional.empty()));
        row.holds("max_batch", result.largest().orElseThrow().grams());
        row.holds("pot_life_of_batch", result.potLife().orElseThrow().minutes());
    }

    private static CureSheet twoMasses(CheckTable.Row row) {
        return sheet(List.of(
                point(row.si("pot_life_1"), row.si("temperature"), row.si("mass_1")),
                point(row.si("pot_life_2"), row.si("temperature"), row.si("mass_2"))));
    }

    private static SheetPoint point(double seconds, double kelvins, double kilograms) {
        return new SheetPoint(
                CureState.POT_LIFE,
                new TimeSpan(seconds),
                new Temperature(kelvins),
                Optional.of(new Mass(kilograms)),
                PotShape.CUP,
                "the check table");
    }

    private static CureSheet sheet(List<SheetPoint> points) {
        return new CureSheet(points, Optional.empty(), Optional.empty(), Optional.empty());
    }
}
