package fayline.app.usecase.calc.hold;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.method.plate.BucklingCalculator;
import fayline.method.plate.BucklingCalculator.Buckling;
import fayline.method.plate.CircularPlate;
import fayline.method.plate.Coefficients;
import fayline.method.plate.CurvedSheet;
import fayline.method.plate.Edges;
import fayline.method.plate.FlatPlate;
import fayline.method.plate.FlatPlateCalculator;
import fayline.method.plate.FlatPlateResult;
import fayline.method.plate.PlateStiffness;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Flat, round and curved sheets under pressure, and plates in compression. */
final class PlateTopic {
    private static final String EVEN = "a b thickness modulus poisson pressure edges";
    private static final String GRAINED = "a b thickness modulus1 modulus2 poisson12 shear pressure edges";
    private static final String ROUND = "radius thickness modulus poisson pressure edges";
    private static final String CURVED = "curve thickness modulus poisson pressure";

    private PlateTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "plate",
                "Deflection and stress of flat, round and curved sheets under pressure, and the compression at which a plate"
                        + " buckles.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                number("a", "mm", "length along 1"),
                number("b", "mm", "width along 2"),
                number("radius", "mm", "radius of a flat round sheet"),
                number("curve", "mm", "radius that a sheet is curved to, the pressure on its hollow side"),
                number("thickness", "mm", "thickness"),
                number("modulus", "GPa", "Young's modulus, alike in all directions"),
                number("poisson", "-", "Poisson's ratio"),
                number("modulus1", "GPa", "Young's modulus along 1"),
                number("modulus2", "GPa", "Young's modulus along 2"),
                number("poisson12", "-", "Poisson's ratio of a pull along 1"),
                number("shear", "GPa", "shear modulus in the plane"),
                number("pressure", "kPa", "pressure on one side above that on the other"),
                Term.text("edges", "supported (free to turn), clamped, or between (the worse of both)"),
                number("aspect", "-", "longer side over shorter"),
                number("across", "-", "compression along 2 over that along 1"),
                number("allowed", "MPa", "stress allowed"),
                number("deflection", "mm", "deflection of the centre"),
                number("stress1", "MPa", "surface stress at the centre along 1"),
                number("stress2", "MPa", "surface stress at the centre along 2"),
                number("edgeStress", "MPa", "largest surface stress at the edge"),
                number("highestStress", "MPa", "largest surface stress anywhere"),
                number("centreMoment", "N", "moment per width at the centre of a clamped round sheet"),
                number("alpha", "-", "deflection E t^3 / (q b^4), b the shorter side"),
                number("beta", "-", "stress t^2 / (q b^2) at the centre along the shorter side"),
                number("betaEdge", "-", "stress t^2 / (q b^2) at the middle of the longer edges"),
                number("deflectionOverD", "-", "deflection D / (q b^4)"),
                number("moment", "-", "moment along the shorter side at the centre / (q b^2)"),
                number("edgeMoment", "-", "moment at the middle of the longer edges / (q b^2)"),
                number(
                        "centralLoad",
                        "-",
                        "deflection E t^3 / (W b^2) of a clamped plate under a load W at its centre"),
                number("hoopStress", "MPa", "stress around the curve"),
                number("growth", "mm", "growth of the radius"),
                number("buckling", "N/mm", "compression along 1 per width at which the plate buckles"),
                Term.yesNo(
                        "smallDeflection",
                        "whether the deflection is at most half the thickness: else no figure may be used"),
                Term.yesNo("within", "whether the largest stress is within the one allowed"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        for (String sheet : List.of(EVEN, GRAINED)) {
            r.add(giving("deflection", sheet, k -> flat(k).deflectionM()));
            r.add(giving("stress1", sheet, k -> flat(k).stress1Pa()));
            r.add(giving("stress2", sheet, k -> flat(k).stress2Pa()));
            r.add(giving("edgeStress", sheet, k -> flat(k).edgeStressPa()));
            r.add(giving("highestStress", sheet, k -> flat(k).highestStressPa()));
            r.add(giving("smallDeflection", sheet, k -> flat(k).smallDeflection()));
            r.add(giving("within", sheet + " allowed", PlateTopic::within));
            r.add(giving(
                    "buckling",
                    (sheet + " across").replace(" pressure edges", ""),
                    k -> buckling(k).loadNPerM()));
        }
        r.add(giving("alpha", EVEN, k -> flat(k).deflectionM() * k.si("modulus") * cube(k) / (load(k) * sq(k))));
        r.add(giving("beta", EVEN, k -> shortStress(k) * k.si("thickness") * k.si("thickness") / load(k)));
        r.add(giving("betaEdge", EVEN, k -> flat(k).edgeStressPa() * k.si("thickness") * k.si("thickness") / load(k)));
        r.add(giving("deflectionOverD", EVEN, k -> flat(k).deflectionM() * even(k).d11Nm() / (load(k) * sq(k))));
        String shape = "aspect poisson edges";
        r.add(giving("deflectionOverD", shape, k -> shape(k, Coefficients::deflection)));
        r.add(giving("moment", shape, k -> shape(k, Coefficients::momentShort)));
        r.add(giving("edgeMoment", shape, k -> shape(k, Coefficients::momentEdge)));
        r.add(giving("centralLoad", "aspect poisson", PlateTopic::centralLoad));
        r.add(giving("deflection", ROUND, k -> roundDeflection(k, round(k))));
        r.add(giving("highestStress", ROUND, k -> highest(k, round(k))));
        r.add(giving("centreMoment", ROUND, k -> round(k).clampedCentreMomentN()));
        r.add(giving("smallDeflection", ROUND, k -> {
            CircularPlate p = round(k);
            return p.isSmall(roundDeflection(k, p));
        }));
        r.add(giving("hoopStress", CURVED, k -> curved(k).hoopStressPa()));
        r.add(giving("growth", CURVED, k -> curved(k).growthM()));
        return r;
    }

    private static FlatPlateResult flat(Known k) {
        k.by("small deflections: Navier's series (edges free to turn), Ritz's method (clamped)", "[timoshenko1959]");
        FlatPlateResult r = NotCoveredException.refusing(() -> FlatPlateCalculator.calculate(
                new FlatPlate(k.si("a"), k.si("b"), k.si("thickness"), stiffness(k), k.si("pressure"), edges(k))));
        r.findings().forEach(f -> k.caution(f.sentence()));
        return r;
    }

    private static Object within(Known k) {
        FlatPlateResult r = flat(k);
        if (!r.smallDeflection()) {
            throw new NotCoveredException("the deflection is past half the thickness, so the stress is not known");
        }
        return r.highestStressPa() <= k.si("allowed");
    }

    private static PlateStiffness stiffness(Known k) {
        return k.has("modulus")
                ? even(k)
                : PlateStiffness.orthotropic(
                        k.si("modulus1"), k.si("modulus2"), k.si("poisson12"), k.si("shear"), k.si("thickness"));
    }

    private static PlateStiffness even(Known k) {
        return PlateStiffness.isotropic(k.si("modulus"), k.si("poisson"), k.si("thickness"));
    }

    private static Edges edges(Known k) {
        for (Edges e : Edges.values()) {
            if (e.words().equals(k.text("edges"))) {
                return e;
            }
        }
        throw new NotCoveredException("edges are supported, clamped or between, found \""
                + k.text("edges").toLowerCase(Locale.ROOT) + "\"");
    }

    private static double shorter(Known k) {
        return Math.min(k.si("a"), k.si("b"));
    }

    private static double sq(Known k) {
        return shorter(k) * shorter(k);
    }

    private static double cube(Known k) {
        return Math.pow(k.si("thickness"), 3);
    }

    /** q b^2. */
    private static double load(Known k) {
        return k.si("pressure") * sq(k);
    }

    private static double shortStress(Known k) {
        FlatPlateResult r = flat(k);
        return k.si("b") <= k.si("a") ? r.stress2Pa() : r.stress1Pa();
    }

    private static double shape(Known k, ToDoubleFunction<Coefficients> figure) {
        k.by("small deflections: Navier's series (edges free to turn), Ritz's method (clamped)", "[timoshenko1959]");
        return figure.applyAsDouble(
                NotCoveredException.refusing(() -> Coefficients.of(k.si("aspect"), k.si("poisson"), edges(k))));
    }

    private static Object centralLoad(Known k) {
        k.by("small deflections: Ritz's method", "[timoshenko1959]");
        return NotCoveredException.refusing(() -> Coefficients.centralLoad(k.si("aspect"), k.si("poisson")));
    }

    private static Buckling buckling(Known k) {
        k.by(
                "least over half waves of pi^2 [D11 x^4 + 2 (D12 + 2 D66) x^2 y^2 + D22 y^4] / (x^2 + k y^2)",
                "[timoshenko-gere1961]");
        return NotCoveredException.refusing(
                () -> BucklingCalculator.calculate(stiffness(k), k.si("a"), k.si("b"), k.si("across")));
    }

    private static CircularPlate round(Known k) {
        k.by("closed forms of the round plate", "[timoshenko1959]");
        CircularPlate p = NotCoveredException.refusing(() -> new CircularPlate(
                k.si("radius"), k.si("thickness"), k.si("modulus"), k.si("poisson"), k.si("pressure")));
        if (!p.isSmall(roundDeflection(k, p))) {
            k.caution(
                    "The deflection is past half the thickness: deflection and stress are overstated and must not be used.");
        }
        return p;
    }

    private static double roundDeflection(Known k, CircularPlate p) {
        return edges(k) == Edges.CLAMPED ? p.clampedDeflectionM() : p.supportedDeflectionM();
    }

    private static double highest(Known k, CircularPlate p) {
        return edges(k) == Edges.CLAMPED ? p.clampedEdgeStressPa() : p.supportedStressPa();
    }

    private static CurvedSheet curved(Known k) {
        k.by("membrane of a closed cylinder: p R / t; p R^2 (1 - nu/2) / (E t)", "[timoshenko1959]");
        k.caution(
                "Membrane stress only: the frame bends the edges besides, and pressure from outside may buckle the sheet.");
        return NotCoveredException.refusing(() ->
                new CurvedSheet(k.si("curve"), k.si("thickness"), k.si("modulus"), k.si("poisson"), k.si("pressure")));
    }
}
