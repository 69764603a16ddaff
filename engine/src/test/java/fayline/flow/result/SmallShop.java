package fayline.flow.result;

import fayline.basis.finding.Figure.Origin;
import fayline.basis.units.Angle;
import fayline.basis.units.Area;
import fayline.basis.units.Density;
import fayline.basis.units.Entered;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import fayline.flow.project.Climate;
import fayline.flow.project.Definition;
import fayline.flow.project.ProjectFacts;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Make;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.Ply;
import fayline.flow.project.design.Zone;
import fayline.flow.project.local.LocalRules;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.project.shop.Mould;
import fayline.flow.project.shop.Person;
import fayline.flow.project.shop.PlanWeights;
import fayline.flow.project.shop.Port;
import fayline.flow.project.shop.Shop;
import fayline.flow.project.shop.Skill;
import fayline.flow.project.shop.Stand;
import fayline.flow.project.stock.Delivery;
import fayline.flow.project.stock.Lot;
import fayline.flow.project.stock.Material;
import fayline.flow.project.stock.Price;
import fayline.flow.project.stock.ResinSystem;
import fayline.method.cure.CureSheet;
import fayline.method.cure.CureState;
import fayline.method.cure.PotShape;
import fayline.method.cure.SheetPoint;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A shop of three with one shell in two bagged stages and one joint, all invented; tests alter it and build it. */
public final class SmallShop {
    /** What every shell may cost. */
    public OptionalDouble budget = OptionalDouble.empty();

    /** Monday, half past seven. */
    public static final Instant MONDAY = Instant.parse("2026-03-02T07:30:00Z");

    public List<Zone> zones = new ArrayList<>(List.of(zone("skin", 2.0, 6.0, 2)));
    public List<Part> moreParts = new ArrayList<>();
    public List<Joint> joints = new ArrayList<>();
    public List<Lot> lots = new ArrayList<>();
    public List<Delivery> deliveries = new ArrayList<>();
    public List<Recipe> recipes =
            new ArrayList<>(List.of(SmallRecipes.twoStages(), SmallRecipes.bond(), SmallRecipes.noLeakTest()));
    public List<Climate.Reading> readings = new ArrayList<>();
    public List<Climate.Day> forecast = new ArrayList<>();
    public List<Person> people = new ArrayList<>(List.of(
            person("ada", EnumSet.of(Skill.LAMINATE, Skill.BAG, Skill.BOND, Skill.SAND, Skill.SIGN)),
            person("bo", EnumSet.of(Skill.LAMINATE, Skill.BAG, Skill.SAND)),
            person("cy", EnumSet.of(Skill.LAMINATE, Skill.HELP))));
    public Climate.Usual usual = new Climate.Usual(celsius(20), celsius(20), Fraction.ofPercent(55));
    public Make shellMake = make("two-stages", Map.of("resin", "er"), List.of());
    public Mould mould = new Mould("m-shell", "Shell mould", Optional.of("bench-1"), 2, 1, 2, 3, 12);
    public double fibre = 0.5;
    public Optional<Area> shelves = Optional.empty();
    public String id = "wren-1";
    public LocalRules local = LocalRules.NONE;

    /** The definition as it stands. */
    public Definition build() {
        List<Part> parts = new ArrayList<>(List.of(shell("shell", Hand.NONE, Optional.empty(), shellMake)));
        parts.addAll(moreParts);
        return new Definition(
                "hash-1",
                new ProjectFacts(
                        id,
                        "Wren",
                        "001",
                        "wren",
                        "A",
                        false,
                        Optional.empty(),
                        UnitSystem.METRIC,
                        "EUR",
                        LocalDate.of(2026, 3, 2),
                        List.of(),
                        List.of(),
                        "",
                        java.util.OptionalDouble.empty()),
                shop(),
                new Catalog<>(materials()),
                new Catalog<>(List.of(er(), paste())),
                new Catalog<>(lots),
                new Catalog<>(deliveries),
                new Catalog<>(List.of(laminate())),
                Catalog.empty(),
                new Catalog<>(parts),
                new Catalog<>(recipes),
                new Catalog<>(joints),
                Catalog.empty(),
                Catalog.empty(),
                new Climate(readings, forecast, usual),
                local);
    }

    /** What the lead wishes. */
    public final List<LeadWish> wishes = new ArrayList<>();

    private Shop shop() {
        return new Shop(
                "Shed",
                ZoneOffset.UTC,
                Length.ofMetres(50),
                new Shop.Limits(celsius(16), Fraction.ofPercent(70), TemperatureDifference.ofKelvins(3)),
                TimeSpan.ofHours(2),
                TimeSpan.ofMinutes(5),
                Fraction.ofPercent(60),
                Fraction.ofPercent(15),
                Fraction.ofPercent(15),
                PlanWeights.USUAL,
                new Catalog<>(people),
                new Catalog<>(List.of(
                        new Stand(
                                "bench-1",
                                "bench-1 name",
                                "hall",
                                false,
                                true,
                                TemperatureDifference.ofKelvins(0),
                                shelves),
                        stand("bench-2", false, true, 0),
                        stand("tent", false, true, 5),
                        new Stand("trim", "Trim", "trim room", true, false, TemperatureDifference.ofKelvins(0)))),
                new Catalog<>(List.of(new Port("port-1", "Port 1", "pump"), new Port("port-2", "Port 2", "pump"))),
                new Catalog<>(List.of(mould)),
                new Catalog<>(wishes));
    }

    /** A shell like the first, of a hand. */
    public Part shell(String partId, Hand hand, Optional<String> opposite, Make... makes) {
        return new Part(
                partId,
                "Part " + partId,
                "aircraft",
                hand,
                opposite,
                Optional.of("m-shell"),
                zones,
                List.of(makes),
                Optional.of(entered("5 kg", QuantityKind.MASS)),
                Optional.empty(),
                Map.of("depth", 0.1, "pleats", 6.0),
                "WR-100 rev A",
                "Nose towards the door.",
                List.of("Lesson of " + partId + "."),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                budget);
    }

    /** A bonded joint between two parts. */
    public static Joint joint(String jointId, String a, String b) {
        return new Joint(
                jointId,
                "Joint " + jointId,
                "aircraft",
                List.of(a, b),
                "paste",
                Length.ofMetres(1.5),
                Length.ofMillimetres(40),
                Length.ofMillimetres(0.5),
                Fraction.ofPercent(30),
                List.of(make("bond", Map.of(), List.of())),
                Map.of("clamps", 12.0),
                true);
    }

    public static Make make(String recipe, Map<String, String> with, List<String> after) {
        return new Make(recipe, with, after, Optional.empty());
    }

    public static Zone zone(String zoneId, double m2, double edgeM, int corners) {
        return new Zone(
                zoneId, zoneId, "skin", new Area(m2), new Length(edgeM), corners, new Angle(0), Optional.empty());
    }

    private Laminate laminate() {
        return new Laminate(
                "skin",
                "Skin",
                "er",
                new Fraction(fibre),
                List.of(
                        new Ply("g-200", new Angle(0), 1, false),
                        new Ply("g-200", new Angle(Math.PI / 4), 1, false),
                        new Ply("foam-10", new Angle(0), 2, true),
                        new Ply("g-200", new Angle(0), 2, false)));
    }

    private static List<Material> materials() {
        return List.of(
                material("g-200", Material.Kind.CLOTH, "200 g/m2", "2.54 g/cm3", "", 6.40, "m2"),
                material("foam-10", Material.Kind.CORE, "", "60 kg/m3", "10 mm", 14.0, "m2"),
                material("peel", Material.Kind.PEEL_PLY, "", "", "", 3.0, "m2"),
                material("perf", Material.Kind.PERFORATED_FILM, "", "", "", 1.0, "m2"),
                material("breather", Material.Kind.BREATHER, "", "", "", 2.0, "m2"),
                material("film", Material.Kind.BAG_FILM, "", "", "", 1.0, "m2"),
                material("tape", Material.Kind.SEALANT_TAPE, "", "", "", 1.0, "m"),
                material("wax", Material.Kind.RELEASE, "", "", "", 50.0, "kg"));
    }

    private static Material material(
            String id, Material.Kind kind, String areal, String density, String thick, double price, String per) {
        return new Material(
                id,
                id + " name",
                kind,
                areal.isEmpty() ? Optional.empty() : Optional.of(entered(areal, QuantityKind.AREAL_MASS)),
                thick.isEmpty() ? Optional.empty() : Optional.of(entered(thick, QuantityKind.LENGTH)),
                density.isEmpty() ? Optional.empty() : Optional.of(entered(density, QuantityKind.DENSITY)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Price(price, per)),
                Optional.of(TimeSpan.ofDays(10)),
                Optional.empty(),
                Optional.empty());
    }

    private static ResinSystem er() {
        return new ResinSystem(
                "er",
                "Slow resin",
                ResinSystem.Kind.LAMINATING,
                100,
                30,
                Fraction.ofPercent(3),
                Density.ofGramsPerCubicCentimetre(1.15),
                Optional.empty(),
                Optional.empty(),
                sheet(List.of(
                        pot(90, 25, 150),
                        pot(45, 25, 500),
                        point(CureState.WORKING_LIFE, 5),
                        point(CureState.GEL, 8),
                        point(CureState.RECOAT_OPENS, 6),
                        point(CureState.RECOAT_SHUTS, 30),
                        point(CureState.HANDLING, 12),
                        point(CureState.DEMOULD, 24),
                        point(CureState.FULL_CURE, 168))),
                Optional.of(celsius(16)),
                Optional.of(Fraction.ofPercent(75)),
                Mass.ofGrams(500),
                0.025 / 60,
                Optional.of(new Price(20, "kg")),
                Optional.of(TimeSpan.ofDays(14)),
                Optional.empty(),
                List.of("epoxy", "exotherm"));
    }

    private static ResinSystem paste() {
        return new ResinSystem(
                "paste",
                "Paste",
                ResinSystem.Kind.RIGID_ADHESIVE,
                100,
                50,
                Fraction.ofPercent(4),
                Density.ofGramsPerCubicCentimetre(1.3),
                Optional.empty(),
                Optional.empty(),
                sheet(List.of(pot(60, 20, 200), point(CureState.OPEN_TIME, 1), point(CureState.HANDLING, 14))),
                Optional.empty(),
                Optional.empty(),
                Mass.ofGrams(400),
                0.025 / 60,
                Optional.of(new Price(40, "kg")),
                Optional.empty(),
                Optional.empty(),
                List.of("epoxy"));
    }

    private static CureSheet sheet(List<SheetPoint> points) {
        return new CureSheet(points, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static SheetPoint pot(double minutes, double celsius, double grams) {
        return new SheetPoint(
                CureState.POT_LIFE,
                TimeSpan.ofMinutes(minutes),
                celsius(celsius),
                Optional.of(Mass.ofGrams(grams)),
                PotShape.CUP,
                "invented");
    }

    /** A state at 20 degC after so many hours. */
    private static SheetPoint point(CureState state, double hours) {
        return new SheetPoint(state, TimeSpan.ofHours(hours), celsius(20), Optional.empty(), PotShape.CUP, "invented");
    }

    public static Person person(String id, Set<Skill> skills) {
        Person.Hours hours = new Person.Hours(
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                LocalTime.of(7, 30),
                LocalTime.of(16, 30),
                Optional.of(new Person.Pause(LocalTime.NOON, LocalTime.of(12, 30))));
        return new Person(id, id + " name", skills, false, List.of(hours), List.of());
    }

    private static Stand stand(String id, boolean dust, boolean wet, double warmer) {
        return new Stand(id, id + " name", "hall", dust, wet, TemperatureDifference.ofKelvins(warmer));
    }

    public static Lot lot(String lotId, String of, String component, String quantity, String expires) {
        Entered<? extends Quantity> amount = quantity.endsWith("m2")
                ? entered(quantity, QuantityKind.AREA)
                : quantity.endsWith("kg")
                        ? entered(quantity, QuantityKind.MASS)
                        : entered(quantity, QuantityKind.LENGTH);
        return new Lot(
                lotId,
                of,
                component,
                amount,
                LocalDate.of(2026, 1, 5),
                expires.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(expires)),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    public static Climate.Reading reading(String at, double air) {
        return new Climate.Reading(
                Instant.parse(at),
                "hall",
                celsius(air),
                Optional.of(Fraction.ofPercent(55)),
                Optional.of(celsius(air)));
    }

    public static Temperature celsius(double c) {
        return Temperature.ofCelsius(c);
    }

    public static Origin assumed() {
        return Origin.ASSUMED;
    }

    private static <Q extends Quantity> Entered<Q> entered(String text, QuantityKind<Q> kind) {
        return QuantityParser.parse(text, kind);
    }
}
