package fayline.app.usecase.calc.laminate;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.method.laminate.Lamina;
import fayline.method.micro.FibreAndResin;
import fayline.method.micro.PlyEstimate;
import fayline.method.micro.PlyEstimateCalculator;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** A ply estimated from its fibre and resin. */
final class MicromechanicsTopic {
    /** Stands in for what an answer does not depend on, so that half a data sheet still tells half the ply. */
    private static final double ANY_PA = 1e9;

    private MicromechanicsTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "micromechanics",
                "What a ply is likely to be from its fibre, resin and fibre fraction alone: estimates.",
                List.of(
                        number("Ef1", "GPa", "modulus of the fibre along"),
                        number("Ef2", "GPa", "modulus of the fibre across; Ef1 where it is not given"),
                        number("Gf12", "GPa", "shear modulus of the fibre"),
                        number("nuf", "-", "Poisson's ratio of the fibre"),
                        number("alphaF", "1/K", "expansion of the fibre, alike in all directions"),
                        number("Em", "GPa", "modulus of the resin"),
                        number("num", "-", "Poisson's ratio of the resin"),
                        number("alphaM", "1/K", "expansion of the resin"),
                        number("Vf", "-", "fibre of the volume"),
                        number("Gm", "GPa", "shear modulus of the resin"),
                        number("E1", "GPa", "along, rule of mixtures"),
                        number("nu12", "-", "rule of mixtures"),
                        number("E2Inverse", "GPa", "across, inverse rule: a lower limit"),
                        number("G12Inverse", "GPa", "in shear, inverse rule: a lower limit"),
                        number("E2", "GPa", "across, Halpin-Tsai"),
                        number("G12", "GPa", "in shear, Halpin-Tsai"),
                        number("alpha1", "1e-6/K", "along, Schapery"),
                        number("alpha2", "1e-6/K", "across, Schapery"),
                        number("clothE", "GPa", "modulus both ways of a balanced cloth of such plies"),
                        number("clothG", "GPa", "its shear modulus"),
                        number("clothNu", "-", "its Poisson's ratio")),
                relations());
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("Gm", "Em num", k -> k.si("Em") / (2 * (1 + k.si("num")))));
        estimate(r, "E1", "Ef1 Em Vf", PlyEstimate::e1Pa);
        estimate(r, "nu12", "nuf num Vf", PlyEstimate::nu12);
        estimate(r, "E2Inverse", "Ef1 Em Vf [Ef2]", PlyEstimate::e2InversePa);
        estimate(r, "E2", "Ef1 Em Vf [Ef2]", PlyEstimate::e2Pa);
        estimate(r, "G12Inverse", "Gf12 Em num Vf", PlyEstimate::g12InversePa);
        estimate(r, "G12", "Gf12 Em num Vf", PlyEstimate::g12Pa);
        estimate(r, "alpha1", "Ef1 Em Vf alphaF alphaM", PlyEstimate::alpha1PerK);
        estimate(r, "alpha2", "Ef1 nuf Em num Vf alphaF alphaM", PlyEstimate::alpha2PerK);
        cloth(r, Map.of("clothE", Lamina::e1Pa, "clothG", Lamina::g12Pa, "clothNu", Lamina::nu12));
        return r;
    }

    private static void cloth(List<Relation> r, Map<String, ToDoubleFunction<Lamina>> figures) {
        for (String name : List.of("clothE", "clothG", "clothNu")) {
            ToDoubleFunction<Lamina> figure = figures.get(name);
            if (figure != null) {
                r.add(giving(name, "Ef1 Gf12 nuf Em num Vf [Ef2]", k -> {
                    k.caution(
                            "A cloth is taken as two plies crossed; crimp makes it some 5 to 15 percent softer and weaker.");
                    return figure.applyAsDouble(reckoned(k).cloth());
                }));
            }
        }
    }

    private static void estimate(List<Relation> r, String name, String needs, ToDoubleFunction<PlyEstimate> figure) {
        r.add(giving(name, needs, k -> figure.applyAsDouble(reckoned(k))));
    }

    private static PlyEstimate reckoned(Known k) {
        k.by(
                "rule of mixtures along, Halpin-Tsai (xi 2 across, 1 in shear), Schapery",
                "[jones1999] 3.2, [halpin-tsai1969], [schapery1968]");
        k.caution("An estimate, not a measurement: along within some 5 percent, across and in shear within some 20.");
        double ef1 = k.has("Ef1") ? k.si("Ef1") : ANY_PA;
        try {
            return PlyEstimateCalculator.calculate(new FibreAndResin(
                    ef1,
                    k.has("Ef2") ? k.si("Ef2") : ef1,
                    k.has("Gf12") ? k.si("Gf12") : ANY_PA,
                    k.has("nuf") ? k.si("nuf") : 0,
                    k.has("alphaF") ? k.si("alphaF") : 0,
                    k.has("Em") ? k.si("Em") : ANY_PA,
                    k.has("num") ? k.si("num") : 0,
                    k.has("alphaM") ? k.si("alphaM") : 0,
                    k.si("Vf")));
        } catch (IllegalArgumentException e) {
            throw new NotCoveredException(String.valueOf(e.getMessage()));
        }
    }
}
