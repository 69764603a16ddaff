package fayline.app.pdf;

import fayline.basis.units.Angle;
import fayline.basis.units.Area;
import fayline.basis.units.ArealMass;
import fayline.basis.units.Entered;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import fayline.flow.card.Card;
import fayline.flow.card.Caution;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Hand;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.project.stock.Material;
import fayline.flow.result.mix.MixList;
import fayline.method.mix.batch.Batch;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A card with something in every field, invented for tests. */
public final class SampleCard {
    private static final Instant START = Instant.parse("2026-03-03T08:00:00Z");

    private SampleCard() {}

    /** The words for it. */
    public static CardWords words() {
        Material twill = new Material(
                "g-200",
                "Glass twill 200",
                Material.Kind.CLOTH,
                Optional.of(new Entered<>("200 g/m2", new ArealMass(0.2))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new CardWords(new Catalog<>(List.of(twill)), s -> "Mould face", new QuantityFormat(UnitSystem.METRIC));
    }

    private static Batch batch(int n) {
        return new Batch(
                n,
                Mass.ofGrams(295),
                Mass.ofGrams(226.9),
                Mass.ofGrams(68.1),
                Mass.ofGrams(2.0),
                TimeSpan.ofMinutes(30 * (n - 1)),
                TimeSpan.ofMinutes(30 * (n - 1) + 5),
                TimeSpan.ofMinutes(30 * (n - 1) + 30),
                TimeSpan.ofMinutes(30 * (n - 1) + 34),
                TimeSpan.ofMinutes(58));
    }

    /** The card with a number of plies. */
    public static Card of(int plies) {
        List<Card.PlyLine> lines = new ArrayList<>();
        for (int i = 1; i <= plies; i++) {
            lines.add(new Card.PlyLine(
                    i, "Skin", "Glass twill 200", Angle.ofDegrees(i % 2 == 0 ? 0 : 45), false, new Area(2.4)));
        }
        MixList mix = new MixList(
                "er-slow",
                "plies",
                Mass.ofGrams(1180),
                4,
                Mass.ofGrams(295),
                Mass.ofGrams(226.9),
                Mass.ofGrams(68.1),
                Mass.ofGrams(2.0),
                Mass.ofGrams(410),
                TimeSpan.ofMinutes(58),
                TimeSpan.ofMinutes(34),
                TimeSpan.ofMinutes(30),
                "pot",
                Temperature.ofCelsius(21),
                2,
                Mass.ofGrams(0),
                Fraction.ofPercent(0),
                TimeSpan.ofMinutes(150),
                Optional.of(TimeSpan.ofMinutes(190)),
                true,
                List.of(batch(1), batch(2), batch(3), batch(4)),
                List.of(),
                List.of(),
                List.of());
        return new Card(
                "ousel-1/float-shell-left/1/lay-up-1",
                new Card.Heading(
                        "ousel-1",
                        "Ousel 001",
                        "ousel",
                        "C",
                        "9f2c44d1a7b3e001",
                        "float-shell-left",
                        "Float shell, left",
                        Hand.LEFT,
                        "Float shell, right",
                        "OU-310 rev C"),
                StepKind.LAY_UP,
                "Lay up the outer plies",
                Optional.of(
                        new Card.WhichWay("Keel towards the window; the step faces the door.", "Where is the bow?")),
                new Card.When(
                        WorkStep.State.TODO,
                        Optional.of(START),
                        Optional.of(START.plusSeconds(3 * 3600)),
                        Optional.of(START.plusSeconds(3 * 3600)),
                        List.of("Ada", "Bo"),
                        "2 needed, 4 still help",
                        List.of("Bay 1", "Float mould"),
                        List.of(),
                        ZoneOffset.UTC,
                        ""),
                lines,
                List.of(new Card.MixLine(
                        "Laminating resin <slow> & hardener", mix, List.of("resin L-0412", "hardener L-0413"))),
                List.of(
                        new Card.BagLine(1, "peel ply", "Peel ply 85", new Area(2.8), Length.ofMillimetres(50)),
                        new Card.BagLine(2, "perforated film", "", new Area(2.7), Length.ofMillimetres(30)),
                        new Card.BagLine(3, "breather", "", new Area(3.1), Length.ofMillimetres(120)),
                        new Card.BagLine(4, "bag", "Bag film", new Area(4.2), Length.ofMillimetres(200)),
                        new Card.BagLine(
                                5,
                                "sealant tape",
                                "Sealant tape",
                                Length.ofMillimetres(8900),
                                Length.ofMillimetres(0))),
                List.of(new Card.FetchLine("Glass twill 200", new Area(5.5), "plies", List.of("L-0077"))),
                List.of(
                        "Wet the mould with resin by roller.",
                        "Lay the plies in order from the keel outward; roll out the air.",
                        "Leave no dry patch: hold the lamp low and look along the surface."),
                List.of(
                        "No white spots, no bridges in corners.",
                        "Angle of each ply against the axis, within 3 degrees."),
                List.of("Batch number per zone", "Time of the first and the last batch"),
                true,
                List.of(new Card.WindowLine(
                        "Release the mould",
                        true,
                        Optional.of(START),
                        Optional.of(START.plusSeconds(200000)),
                        "within 3 days",
                        "Redo the last coat (20 person-minutes)")),
                List.of(),
                List.of(new Caution(
                        "epoxy",
                        "Sensitising",
                        "Gloves, changed often; sleeves; no solvent on skin.",
                        "common practice, no source")),
                List.of("The step at the chine wants a dart in ply 2."),
                List.of(),
                List.of());
    }
}
