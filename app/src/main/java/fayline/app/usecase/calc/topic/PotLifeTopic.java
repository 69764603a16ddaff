package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.Mass;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.method.cure.CureSheet;
import fayline.method.cure.CureState;
import fayline.method.cure.PotShape;
import fayline.method.cure.SheetPoint;
import fayline.method.cure.pot.PotLife;
import fayline.method.cure.pot.PotLifeCalculator;
import fayline.method.cure.pot.PotLifeResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How long a mixed mass can be used, by temperature, mass, container and thickener. */
final class PotLifeTopic {
    private static final double ANY_KELVINS = 296.15;
    /** What shortens or lengthens a pot life besides its data-sheet points. */
    static final String CIRCUMSTANCES =
            " [tempRef] [temperature] [temp] [shopTemp] [massExponent] [activationEnergy] [gasConstant] [shape] [thickened]";
    /** One data-sheet point. */
    static final String ONE_POINT = "potLifeRef [massRef]";
    /** Two data-sheet points of different mass. */
    static final String TWO_POINTS = "mass1 potLife1 mass2 potLife2";

    private PotLifeTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "potlife",
                "How long a mixed mass can be used, by temperature, mass, container and thickener.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                number("potLifeRef", "min", "data-sheet pot life"),
                number("massRef", "g", "the data sheet's mass"),
                number("tempRef", "degC", "the data sheet's temperature"),
                number("massExponent", "-", "exponent n of t = t1 (m1/m)^n, where somebody states it"),
                number("mass1", "g", "one data-sheet mass of two"),
                number("potLife1", "min", "pot life of mass1"),
                number("mass2", "g", "the other data-sheet mass"),
                number("potLife2", "min", "pot life of mass2"),
                number(
                        "temperature",
                        "degC",
                        "temperature of a data sheet's two masses; with tempRef beside it, of the shop"),
                number("temp", "degC", "temperature of shop and resin"),
                number("shopTemp", "degC", "the same as temp"),
                number(
                        "activationEnergy",
                        "J/mol",
                        "activation energy; without it a factor of two per 10 K is assumed"),
                number("gasConstant", "J/(mol K)", "molar gas constant that belongs to the activation energy"),
                number("mixedMass", "g", "the mixed mass; the data sheet's own where it is not given"),
                Term.text("shape", "how the mix stands: cup or tray"),
                Term.yesNo("thickened", "whether a thickener was stirred in"),
                number("exponent", "-", "exponent n between the two data-sheet masses"),
                number("potLife", "min", "pot life"));
    }

    private static List<Relation> relations() {
        return List.of(
                exponent(),
                giving("potLife", TWO_POINTS + " [mixedMass]" + CIRCUMSTANCES, PotLifeTopic::potLife),
                giving("potLife", ONE_POINT + " [mixedMass]" + CIRCUMSTANCES, PotLifeTopic::potLife));
    }

    /** The exponent between two data-sheet masses. */
    static Relation exponent() {
        return giving("exponent", TWO_POINTS + " [temperature] [tempRef]", PotLifeTopic::exponent);
    }

    private static Object exponent(Known k) {
        PotLifeResult r = PotLifeCalculator.calculate(question(k, Optional.empty()));
        k.heed(r.findings());
        k.by("n = ln(t1/t2)/ln(m2/m1) between two data-sheet masses", "common practice, no source");
        return r.exponent().orElseThrow(() -> new NotCoveredException("two different masses are needed"));
    }

    private static Object potLife(Known k) {
        return potLife(k, k.maybe("mixedMass", Mass::new)).si();
    }

    /** The pot life of a mass; method, source and cautions are left with {@code k}. */
    static TimeSpan potLife(Known k, Optional<Mass> mass) {
        PotLifeResult r = PotLifeCalculator.calculate(question(k, mass));
        k.heed(r.findings());
        r.figure().ifPresent(k::by);
        return r.potLife().orElseThrow(() -> new NotCoveredException("the data sheet makes no claim for this mass"));
    }

    /** The question to the calculator from whichever data-sheet points are given. */
    static PotLife question(Known k, Optional<Mass> mass) {
        Temperature sheetTemperature = first(k, "tempRef", "temperature")
                .or(() -> first(k, "temp", "shopTemp"))
                .orElse(new Temperature(ANY_KELVINS));
        // With a temperature of the data sheet beside it, a plain temperature is that of the shop.
        Temperature now = first(k, "temp", "shopTemp")
                .or(() -> k.has("tempRef") ? first(k, "temperature") : Optional.empty())
                .orElse(sheetTemperature);
        return new PotLife(
                sheet(k, sheetTemperature),
                mass,
                now,
                shape(k),
                k.has("thickened") && k.isTrue("thickened"),
                k.has("massExponent") && k.has("massRef")
                        ? OptionalDouble.of(k.si("massExponent"))
                        : OptionalDouble.empty());
    }

    private static CureSheet sheet(Known k, Temperature at) {
        List<SheetPoint> points = new ArrayList<>();
        if (k.has("mass1")) {
            if (k.si("mass1") == k.si("mass2")) {
                throw new NotCoveredException("two different masses are needed");
            }
            points.add(point(k, "potLife1", k.maybe("mass1", Mass::new), at));
            points.add(point(k, "potLife2", k.maybe("mass2", Mass::new), at));
        } else {
            points.add(point(k, "potLifeRef", k.maybe("massRef", Mass::new), at));
        }
        return CureTopic.sheet(k, points);
    }

    private static SheetPoint point(Known k, String time, Optional<Mass> mass, Temperature at) {
        return new SheetPoint(CureState.POT_LIFE, k.as(time, TimeSpan::new), at, mass, PotShape.CUP, "given");
    }

    private static PotShape shape(Known k) {
        if (!k.has("shape")) {
            return PotShape.CUP;
        }
        return switch (k.text("shape")) {
            case "cup" -> PotShape.CUP;
            case "tray" -> PotShape.TRAY;
            default -> throw CalcInputException.of("shape", k.text("shape"), "cup or tray");
        };
    }

    private static Optional<Temperature> first(Known k, String... names) {
        for (String name : names) {
            if (k.has(name)) {
                return Optional.of(k.as(name, Temperature::new));
            }
        }
        return Optional.empty();
    }
}
