package fayline.method.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Severity;
import fayline.basis.units.Area;
import fayline.basis.units.ArealMass;
import fayline.basis.units.Density;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MixPropertiesTest {
    @Test
    void should_bring_the_mix_to_its_ratio_when_topped_up() {
        Random random = new Random(23);
        for (int i = 0; i < 200; i++) {
            Mass resin = Mass.ofGrams(100 + 900 * random.nextDouble());
            Mass hardener = Mass.ofGrams(20 + 300 * random.nextDouble());
            MixRatioResult r =
                    MixRatioCalculator.calculate(MixRatio.weighed(100, 27, Fraction.ofPercent(2), resin, hardener));
            MixRatioResult mended = MixRatioCalculator.calculate(MixRatio.weighed(
                    100,
                    27,
                    Fraction.ofPercent(2),
                    resin.plus(r.resinToAdd().orElseThrow()),
                    hardener.plus(r.hardenerToAdd().orElseThrow())));
            assertEquals(0, mended.deviation().orElseThrow().ratio(), 1e-12);
            assertTrue(mended.inTolerance().orElseThrow());
        }
    }

    @Test
    void should_keep_the_volume_when_mass_and_thickness_are_taken_together() {
        LaminateMassResult r = LaminateMassCalculator.calculate(new LaminateMass(
                Optional.of(new Area(1.7)),
                List.of(ArealMass.ofGramsPerSquareMetre(200), ArealMass.ofGramsPerSquareMetre(300)),
                new Fraction(0.55),
                new Fraction(0.1),
                Optional.of(Density.ofGramsPerCubicCentimetre(2.54)),
                Optional.of(Density.ofGramsPerCubicCentimetre(1.15))));
        double volume = r.fibre().orElseThrow().kilograms() / 2540
                + r.resinInPart().orElseThrow().kilograms() / 1150;
        assertEquals(volume, 1.7 * r.thickness().orElseThrow().metres(), 1e-12);
        assertEquals(0.5, LaminateMass.fibreFractionOf(1, 1).ratio(), 0);
    }

    @Test
    void should_weigh_the_same_when_the_cloth_is_given_in_ounces() {
        LaminateMassResult metric = LaminateMassCalculator.calculate(LaminateMass.of(
                new Area(0.9144 * 0.9144),
                List.of(ArealMass.ofGramsPerSquareMetre(5.8 * 33.90574749)),
                new Fraction(0.5),
                new Fraction(0)));
        LaminateMassResult inch = LaminateMassCalculator.calculate(LaminateMass.of(
                Area.ofSquareFeet(9),
                List.of(ArealMass.ofOuncesPerSquareYard(5.8)),
                new Fraction(0.5),
                new Fraction(0)));
        assertEquals(
                metric.fibre().orElseThrow().kilograms(),
                inch.fibre().orElseThrow().kilograms(),
                1e-9);
        assertEquals(5.8, inch.fibre().orElseThrow().ounces(), 1e-9);
    }

    @Test
    void should_take_the_mean_gap_when_the_bond_line_tapers() {
        AdhesiveMassResult taper = joint(1, 3);
        AdhesiveMassResult even = joint(2, 2);
        assertEquals(
                even.toWeigh().orElseThrow().kilograms(),
                taper.toWeigh().orElseThrow().kilograms(),
                1e-15);
        // 2000 mm x 40 mm x 2 mm = 0.16 L.
        assertEquals(0.16 * 1.3, even.inJoint().orElseThrow().kilograms(), 1e-12);
    }

    private static AdhesiveMassResult joint(double start, double end) {
        return AdhesiveMassCalculator.calculate(new AdhesiveMass(
                Optional.of(AdhesiveMass.BondLine.strip(
                        Length.ofMillimetres(2000),
                        Length.ofMillimetres(40),
                        Length.ofMillimetres(start),
                        Length.ofMillimetres(end))),
                Optional.empty(),
                Density.ofKilogramsPerLitre(1.3),
                Fraction.ofPercent(25)));
    }

    @Test
    void should_say_not_covered_when_a_part_is_negative() {
        assertTrue(MixRatioCalculator.calculate(MixRatio.split(100, -5, Mass.ofGrams(10))).findings().stream()
                .anyMatch(f -> f.severity() == Severity.STOP && f.sentence().contains("not covered")));
        assertTrue(LaminateMassCalculator.calculate(
                        LaminateMass.of(new Area(1), List.of(), new Fraction(0), new Fraction(0)))
                .fibre()
                .isEmpty());
        assertTrue(AdhesiveMassCalculator.calculate(
                        AdhesiveMass.ofLine(new Area(1), new Length(-1), new Density(1000), new Fraction(0)))
                .toWeigh()
                .isEmpty());
    }
}
