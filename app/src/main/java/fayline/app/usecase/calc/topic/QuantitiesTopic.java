package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.Area;
import fayline.basis.units.ArealMass;
import fayline.basis.units.Density;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.method.mix.AdhesiveMass;
import fayline.method.mix.AdhesiveMassCalculator;
import fayline.method.mix.AdhesiveMassResult;
import fayline.method.mix.LaminateMass;
import fayline.method.mix.LaminateMassCalculator;
import fayline.method.mix.LaminateMassResult;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cloth, resin, laminate and adhesive by mass and thickness. */
final class QuantitiesTopic {
    private static final int MOST_PLIES = 10_000;
    private static final Pattern PARTS = Pattern.compile("\\s*(\\d+(?:\\.\\d+)?)\\s*:\\s*(\\d+(?:\\.\\d+)?)\\s*");

    private QuantitiesTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "quantities",
                "From areas, plies and joints to cloth, resin and adhesive, and what the laminate weighs and how thick it is.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                number("area", "m2", "area of the zone, or of the joint"),
                Term.list("plyArealMasses", "g/m2", "mass of each dry ply"),
                number("arealMassFibre", "g/m2", "mass of one dry ply of several alike"),
                Term.count("plies", "how many plies of arealMassFibre; 1 where it is not given"),
                number("fibreMassFraction", "-", "fibre mass as a fraction of the laminate"),
                Term.text("clothToResin", "cloth and resin by mass, as 1:1, in place of fibreMassFraction"),
                number("waste", "-", "what is weighed beyond what stays in the part, as a fraction of the latter"),
                number("densityFibre", "g/cm3", "density of the fibre"),
                number("densityResin", "g/cm3", "density of the cured resin"),
                number("length", "m", "length of the joint or fillet"),
                number("width", "mm", "width of the joint"),
                number("bondLine", "mm", "thickness of the bond line"),
                number("gapStart", "mm", "gap at one end of the joint"),
                number("gapEnd", "mm", "gap at the other end"),
                number("radius", "mm", "radius of a fillet in a square corner"),
                Term.text("filletShape", "concave or straight; concave where it is not given"),
                number("density", "kg/L", "density of the mixed adhesive"),
                number("fibreMass", "kg", "dry fibre"),
                number("resinInPart", "kg", "mixed resin that stays in the part"),
                number("mixToWeigh", "kg", "mixed resin to weigh, waste included"),
                number("laminateMass", "kg", "fibre and resin together"),
                number("fibreVolumeFraction", "-", "fibre volume as a fraction of the laminate, without voids"),
                number("laminateThickness", "mm", "thickness of the laminate, without voids"),
                number("adhesiveMass", "kg", "mixed adhesive to weigh for the bond line, waste included"),
                number("mass", "kg", "mixed adhesive or filler to weigh for the fillet, waste included"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("fibreMassFraction", "clothToResin", QuantitiesTopic::fibreFraction));
        for (String cloth : List.of("plyArealMasses [plies]", "arealMassFibre [plies]")) {
            r.add(giving(
                    "fibreMass",
                    "area " + cloth + " [fibreMassFraction] [waste]",
                    k -> take(k, LaminateMassResult::fibre).si()));
            String wet = "area " + cloth + " fibreMassFraction [waste]";
            r.add(giving(
                    "resinInPart",
                    wet,
                    k -> take(k, LaminateMassResult::resinInPart).si()));
            r.add(giving(
                    "mixToWeigh",
                    wet,
                    k -> take(k, LaminateMassResult::mixToWeigh).si()));
            r.add(giving(
                    "laminateMass",
                    wet,
                    k -> take(k, LaminateMassResult::laminate).si()));
            r.add(giving(
                    "laminateThickness",
                    cloth + " fibreMassFraction densityFibre densityResin",
                    k -> take(k, LaminateMassResult::thickness).si()));
        }
        r.add(giving(
                "fibreVolumeFraction",
                "fibreMassFraction densityFibre densityResin",
                k -> take(k, LaminateMassResult::fibreVolumeFraction).si()));
        for (String gap : List.of("bondLine", "gapStart gapEnd")) {
            r.add(giving("adhesiveMass", "area " + gap + " density [waste]", k -> adhesive(k, true)));
            r.add(giving("adhesiveMass", "length width " + gap + " density [waste]", k -> adhesive(k, true)));
        }
        r.add(giving("mass", "radius length density [filletShape] [waste]", k -> adhesive(k, false)));
        return r;
    }

    private static Object fibreFraction(Known k) {
        Matcher m = PARTS.matcher(k.text("clothToResin"));
        if (!m.matches() || !(Double.parseDouble(m.group(1)) > 0)) {
            throw CalcInputException.of("clothToResin", k.text("clothToResin"), "two parts, as 1:1 or 100:80");
        }
        k.by("W = cloth/(cloth + resin)", "mass balance");
        return LaminateMass.fibreFractionOf(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2)))
                .ratio();
    }

    private static int plies(Known k) {
        double n = k.si("plies", 1);
        if (!(n >= 1) || n > MOST_PLIES) {
            throw CalcInputException.of("plies", String.valueOf(n), "a whole number from 1 to " + MOST_PLIES);
        }
        return (int) n;
    }

    private static <V> V take(Known k, Function<LaminateMassResult, Optional<V>> figure) {
        List<ArealMass> plies = new ArrayList<>();
        if (k.has("plyArealMasses")) {
            List<Double> each = k.list("plyArealMasses");
            // One mass and a count of plies: they are all alike.
            int times = each.size() == 1 ? plies(k) : 1;
            each.forEach(w -> plies.addAll(Collections.nCopies(times, new ArealMass(w))));
        } else if (k.has("arealMassFibre")) {
            plies.addAll(Collections.nCopies(plies(k), k.as("arealMassFibre", ArealMass::new)));
        }
        LaminateMassResult r = LaminateMassCalculator.calculate(new LaminateMass(
                k.maybe("area", Area::new),
                plies,
                new Fraction(k.si("fibreMassFraction", 0.5)),
                new Fraction(k.si("waste", 0)),
                k.maybe("densityFibre", Density::new),
                k.maybe("densityResin", Density::new)));
        r.figures().forEach(k::by);
        if (k.has("densityFibre")) {
            k.by("V = (W/rho_f)/(W/rho_f + (1 - W)/rho_r), h = sum of plies/(rho_f V)", "[astm-d3171]");
        }
        return k.take(figure.apply(r), r.findings());
    }

    private static Object adhesive(Known k, boolean line) {
        Optional<AdhesiveMass.BondLine> bond = Optional.empty();
        Optional<AdhesiveMass.Fillet> fillet = Optional.empty();
        if (line) {
            Length start = k.as(k.has("bondLine") ? "bondLine" : "gapStart", Length::new);
            Length end = k.as(k.has("bondLine") ? "bondLine" : "gapEnd", Length::new);
            bond = Optional.of(
                    k.has("area")
                            ? new AdhesiveMass.BondLine(k.as("area", Area::new), start, end)
                            : AdhesiveMass.BondLine.strip(
                                    k.as("length", Length::new), k.as("width", Length::new), start, end));
        } else {
            fillet = Optional.of(
                    new AdhesiveMass.Fillet(k.as("length", Length::new), k.as("radius", Length::new), filletShape(k)));
        }
        AdhesiveMassResult r = AdhesiveMassCalculator.calculate(
                new AdhesiveMass(bond, fillet, k.as("density", Density::new), new Fraction(k.si("waste", 0))));
        r.figure().ifPresent(k::by);
        return k.take(r.toWeigh(), r.findings()).si();
    }

    private static AdhesiveMass.Shape filletShape(Known k) {
        if (!k.has("filletShape")) {
            return AdhesiveMass.Shape.CONCAVE;
        }
        return switch (k.text("filletShape")) {
            case "concave" -> AdhesiveMass.Shape.CONCAVE;
            case "straight" -> AdhesiveMass.Shape.STRAIGHT;
            default -> throw CalcInputException.of("filletShape", k.text("filletShape"), "concave or straight");
        };
    }
}
