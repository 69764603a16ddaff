package fayline.app.usecase.calc.laminate;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.method.asmade.BurnOff;
import fayline.method.asmade.BurnOffCalculator;
import fayline.method.asmade.Content;
import fayline.method.asmade.StiffnessChange;
import fayline.method.asmade.StiffnessChangeCalculator;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/** What a laminate came out as. */
final class AsMadeTopic {
    private static final String BALANCE = "balance of mass and volume, no voids";
    private static final String BURN = "Vf = Wf rho/rhoF, Vm = (1 - Wf) rho/rhoM, voids the rest";

    private AsMadeTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "asmade",
                "What a laminate came out as: fibre, resin, thickness, voids, and what that does to its stiffness.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                number("cloth", "g/m2", "dry fibre of one ply"),
                Term.count("plies", "how many plies of it"),
                number("rhoF", "g/cm3", "density of the fibre"),
                number("rhoM", "g/cm3", "density of the cured resin"),
                number("Vf", "-", "fibre of the volume"),
                number("Wf", "-", "fibre of the mass"),
                number("resinPerFibre", "-", "resin in the part to fibre, by mass"),
                number("partMass", "g", "the part as weighed"),
                number("area", "m2", "area of the part"),
                number("thickness", "mm", "thickness of the laminate"),
                number("waste", "-", "resin lost, of what is mixed"),
                number("rhoC", "g/cm3", "density of a piece as measured"),
                number("massBefore", "g", "a piece before its resin is burnt off"),
                number("massAfter", "g", "what is left of it"),
                number("Ef", "GPa", "modulus of the fibre"),
                number("Em", "GPa", "modulus of the resin"),
                number("VfPlanned", "-", "fibre of the volume as planned"),
                number("resinPlanned", "-", "resin to fibre by mass as planned"),
                number("resinContent", "-", "resin of the mass"),
                number("plyThickness", "mm", "thickness of one ply"),
                number("density", "g/cm3", "of the laminate, without voids"),
                number("plyMass", "g/m2", "one ply with its resin"),
                number("fibreMass", "g", "fibre in the part"),
                number("resinInPart", "g", "resin in the part"),
                number("resinToMix", "g", "resin to mix"),
                number("resinExcess", "g", "resin beyond what was planned"),
                number("voids", "-", "of the volume"),
                number("Vm", "-", "resin of the volume"),
                number("modulusFactor", "-", "modulus along the fibres, as made over planned"),
                number("thicknessFactor", "-", "thickness, as made over planned"),
                number("membraneFactor", "-", "stiffness in plane per width, as made over planned"),
                number("bendingFactor", "-", "stiffness in bending per width, as made over planned"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        content(r);
        masses(r);
        r.add(giving("Wf", "massBefore massAfter", k -> {
            k.by("Wf = what is left over what there was", "[astm-d3171]");
            return checked(() -> BurnOff.fibreMassOf(k.si("massBefore"), k.si("massAfter")));
        }));
        r.add(giving(
                "Vf",
                "rhoC rhoF rhoM Wf",
                k -> burnt(k, b -> BurnOffCalculator.calculate(b).fibreVolume())));
        r.add(giving(
                "Vm",
                "rhoC rhoF rhoM Wf",
                k -> burnt(k, b -> BurnOffCalculator.calculate(b).resinVolume())));
        r.add(giving(
                "voids",
                "rhoC rhoF rhoM Wf",
                k -> burnt(k, b -> BurnOffCalculator.calculate(b).voids())));
        r.add(giving(
                "Vf",
                "Wf rhoF rhoM",
                k -> balanced(k, () -> Content.ofFibreMass(k.si("Wf"), k.si("rhoF"), k.si("rhoM")))
                        .fibreVolume()));
        r.add(giving(
                "Vf",
                "thickness cloth plies rhoF rhoM",
                k -> balanced(
                                k,
                                () -> Content.ofThickness(
                                        k.si("thickness"),
                                        k.si("cloth") * k.count("plies"),
                                        k.si("rhoF"),
                                        k.si("rhoM")))
                        .fibreVolume()));
        factor(r, "modulusFactor", StiffnessChange::modulus);
        factor(r, "thicknessFactor", StiffnessChange::thickness);
        factor(r, "membraneFactor", StiffnessChange::membrane);
        factor(r, "bendingFactor", StiffnessChange::bending);
        return r;
    }

    private static void content(List<Relation> r) {
        r.add(giving("Wf", "Vf rhoF rhoM", k -> ofVolume(k).fibreMass()));
        r.add(giving("density", "Vf rhoF rhoM", k -> ofVolume(k).densityKgPerM3()));
        r.add(giving("plyThickness", "Vf rhoF rhoM cloth", k -> ofVolume(k).thicknessM(k.si("cloth"))));
        r.add(giving("thickness", "plyThickness plies", k -> k.si("plyThickness") * k.count("plies")));
        r.add(giving("plyMass", "Vf rhoF rhoM cloth", k -> ofVolume(k).arealMassKgPerM2(k.si("cloth"))));
        r.add(giving("resinContent", "Wf", k -> 1 - k.si("Wf")));
        r.add(giving("Wf", "resinPerFibre", k -> {
            k.by("Wf = 1/(1 + resin to fibre)", "mass balance");
            return 1 / (1 + k.si("resinPerFibre"));
        }));
        r.add(giving("Wf", "partMass fibreMass", k -> {
            k.by("Wf = cloth over part", "mass balance");
            return checked(() -> BurnOff.fibreMassOf(k.si("partMass"), k.si("fibreMass")));
        }));
    }

    private static void masses(List<Relation> r) {
        r.add(giving("fibreMass", "cloth area plies", k -> k.si("cloth") * k.si("area") * k.count("plies")));
        r.add(giving("resinInPart", "partMass fibreMass", k -> k.si("partMass") - k.si("fibreMass")));
        r.add(giving("resinInPart", "fibreMass Wf", k -> k.si("fibreMass") * (1 - k.si("Wf")) / k.si("Wf")));
        r.add(giving("resinToMix", "resinInPart waste", k -> {
            if (!(k.si("waste") >= 0 && k.si("waste") < 1)) {
                throw new NotCoveredException("waste is a share of what is mixed, from 0 to below 1");
            }
            return k.si("resinInPart") / (1 - k.si("waste"));
        }));
        r.add(giving(
                "resinExcess",
                "resinInPart fibreMass resinPlanned",
                k -> k.si("resinInPart") - k.si("fibreMass") * k.si("resinPlanned")));
    }

    private static void factor(List<Relation> r, String name, ToDoubleFunction<StiffnessChange> figure) {
        r.add(giving(name, "Vf VfPlanned rhoF rhoM Ef Em", k -> {
            k.by("modulus by the rule of mixtures, thickness by the volume of the cloth", "[jones1999] 3.2");
            return figure.applyAsDouble(checked(() -> StiffnessChangeCalculator.calculate(
                    new Content(k.si("VfPlanned"), k.si("rhoF"), k.si("rhoM")),
                    new Content(k.si("Vf"), k.si("rhoF"), k.si("rhoM")),
                    k.si("Ef"),
                    k.si("Em"))));
        }));
    }

    private static Content ofVolume(Known k) {
        return balanced(k, () -> new Content(k.si("Vf"), k.si("rhoF"), k.si("rhoM")));
    }

    private static Content balanced(Known k, Supplier<Content> content) {
        k.by(BALANCE, "[astm-d3171]");
        return checked(content);
    }

    private static double burnt(Known k, ToDoubleFunction<BurnOff> figure) {
        k.by(BURN, "[astm-d3171]");
        k.caution("Voids are a small difference of large numbers: one percent of density is one percent of voids.");
        return checked(() -> figure.applyAsDouble(new BurnOff(k.si("rhoC"), k.si("Wf"), k.si("rhoF"), k.si("rhoM"))));
    }

    private static <T> T checked(Supplier<T> maker) {
        try {
            return maker.get();
        } catch (IllegalArgumentException e) {
            throw new NotCoveredException(String.valueOf(e.getMessage()));
        }
    }
}
