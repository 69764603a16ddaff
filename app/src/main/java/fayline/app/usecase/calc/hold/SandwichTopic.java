package fayline.app.usecase.calc.hold;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.method.sandwich.BeamLoading;
import fayline.method.sandwich.Core;
import fayline.method.sandwich.SandwichBeam;
import fayline.method.sandwich.SandwichBeamCalculator;
import fayline.method.sandwich.SandwichBeamResult;
import fayline.method.sandwich.SandwichBeamResult.ThickFaces;
import fayline.method.sandwich.SandwichPanel;
import fayline.method.sandwich.SandwichPanelCalculator;
import fayline.method.sandwich.SandwichPanelResult;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Sandwich beams on two supports, sandwich panels under pressure, and where faces and core give way. */
final class SandwichTopic {
    private static final String CORE = "faceModulus face coreModulus coreShear core";
    private static final String BEAM = CORE + " width span load loading [pad] [wrinklingFactor]";
    private static final String EVEN = "a b faceModulus facePoisson face core coreShear pressure";
    private static final String GRAINED =
            "a b faceModulus1 faceModulus2 facePoisson faceShear face core coreShear1 coreShear2 pressure";
    private static final double FOR_DESIGN = 0.5;

    private SandwichTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "sandwich",
                "Deflection and stress of sandwich beams and panels, core shear included, and the loads at which faces and core"
                        + " give way.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        List<Term> t = new ArrayList<>(List.of(
                number("faceModulus", "GPa", "Young's modulus of the faces"),
                number("facePoisson", "-", "Poisson's ratio of the faces"),
                number("faceModulus1", "GPa", "Young's modulus of the faces along 1"),
                number("faceModulus2", "GPa", "Young's modulus of the faces along 2"),
                number("faceShear", "GPa", "shear modulus of the faces in their plane"),
                number("face", "mm", "thickness of each face"),
                number("core", "mm", "thickness of the core"),
                number("coreModulus", "MPa", "Young's modulus of the core through its thickness"),
                number("coreShear", "MPa", "shear modulus of the core"),
                number("coreShear1", "MPa", "shear modulus of the core along 1"),
                number("coreShear2", "MPa", "shear modulus of the core along 2"),
                number("width", "mm", "width of the beam"),
                number("span", "mm", "distance of the supports"),
                number("load", "N", "the whole load"),
                Term.text("loading", "three point, quarter point or third point"),
                number(
                        "pad",
                        "mm",
                        "length over which a load is spread by its pad; a knife edge where it is not given"),
                number("wrinklingFactor", "-", "0.5 for design, 0.91 by theory; 0.5 where it is not given"),
                number("coreShearStrength", "MPa", "shear strength of the core"),
                number("coreStrength", "MPa", "compressive strength of the core through its thickness"),
                number("faceStrength", "MPa", "strength of the faces, the lesser of pull and push"),
                number("cell", "mm", "size of a honeycomb cell"),
                number("a", "mm", "length of a panel along 1"),
                number("b", "mm", "width of a panel along 2"),
                number("pressure", "kPa", "pressure on a panel")));
        t.addAll(answers());
        return t;
    }

    private static List<Term> answers() {
        return List.of(
                number("bendingStiffness", "N mm2", "of the faces"),
                number("bendingWithCore", "N mm2", "with the core's own"),
                number("shearStiffness", "N", "of the core"),
                number("bent", "mm", "deflection of the middle by bending"),
                number("sheared", "mm", "deflection of the middle by shear of the core"),
                number("deflection", "mm", "deflection of the middle"),
                number("deflectionBand", "percent", "how far the deflection may be off"),
                number("coreStress", "MPa", "shear stress in the core"),
                number("faceStress", "MPa", "stress in the faces"),
                number("wrinkling", "MPa", "stress at which a face wrinkles"),
                number("dimpling", "MPa", "stress at which a face dimples into a honeycomb's cells"),
                number("crush", "MPa", "stress under the pad of a load in the middle"),
                number("softness", "-", "N = S^2 U / (2 Ef If)"),
                Term.yesNo("thinFaces", "whether the formulas of thin faces hold"),
                number("thickDeflection", "mm", "deflection with the faces' own bending, one load in the middle"),
                number("thickOuterStress", "MPa", "stress on the outer side of the face under the load, likewise"),
                number("loadAtCoreShear", "N", "load at which the core shears"),
                number("loadAtFaceStrength", "N", "load at which the faces reach their strength"),
                number("loadAtWrinkling", "N", "load at which a face wrinkles"),
                number("loadAtCrush", "N", "load at which the core is crushed under the pad"),
                number("panelBending", "N mm", "bending stiffness of a panel per width along 1"),
                number("panelShear", "N/mm", "shear stiffness of a panel per width along 1"),
                number("stress1", "MPa", "stress along 1 in a face at the centre of a panel"),
                number("stress2", "MPa", "the same along 2"),
                number("twist", "MPa", "shear stress in a face, a quarter of each side from a corner"),
                number("coreStress1", "MPa", "shear stress in the core at the middle of the edges that 1 ends at"),
                number("coreStress2", "MPa", "the same where 2 ends"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        beam(r, "bendingStiffness", SandwichBeamResult::bendingNm2);
        beam(r, "bendingWithCore", SandwichBeamResult::bendingWithCoreNm2);
        beam(r, "shearStiffness", SandwichBeamResult::shearN);
        beam(r, "bent", SandwichBeamResult::bentM);
        beam(r, "sheared", SandwichBeamResult::shearedM);
        beam(r, "deflection", SandwichBeamResult::deflectionM);
        beam(r, "coreStress", SandwichBeamResult::coreShearPa);
        beam(r, "faceStress", SandwichBeamResult::faceStressPa);
        beam(r, "softness", SandwichBeamResult::soft);
        r.add(giving("deflectionBand", BEAM, SandwichTopic::band));
        r.add(giving("thinFaces", BEAM, k -> beam(k).thinFaces()));
        r.add(giving("thickDeflection", BEAM, k -> thick(k).deflectionM()));
        r.add(giving("thickOuterStress", BEAM, k -> thick(k).outerStressPa()));
        r.add(giving("wrinkling", CORE + " [wrinklingFactor]", SandwichTopic::wrinkling));
        r.add(giving("wrinkling", "faceModulus coreModulus coreShear [wrinklingFactor]", SandwichTopic::wrinkling));
        r.add(giving("dimpling", "faceModulus face facePoisson cell", SandwichTopic::dimpling));
        r.add(giving("crush", "load width pad", k -> k.si("load") / (k.si("width") * k.si("pad"))));
        r.add(giving(
                "loadAtCoreShear",
                BEAM + " coreShearStrength",
                k -> at(k, "coreShearStrength", SandwichBeamResult::coreShearPa)));
        r.add(giving(
                "loadAtFaceStrength",
                BEAM + " faceStrength",
                k -> at(k, "faceStrength", SandwichBeamResult::faceStressPa)));
        r.add(giving("loadAtWrinkling", BEAM, k -> {
            SandwichBeamResult b = beam(k);
            return k.si("load") * b.wrinklingPa() / b.faceStressPa();
        }));
        r.add(giving("loadAtCrush", "coreStrength width pad", k -> k.si("coreStrength") * k.si("width") * k.si("pad")));
        for (String panel : List.of(EVEN, GRAINED)) {
            panel(r, panel, "panelBending", SandwichPanelResult::bending1Nm);
            panel(r, panel, "panelShear", SandwichPanelResult::shear1NPerM);
            panel(r, panel, "bent", SandwichPanelResult::bentM);
            panel(r, panel, "sheared", SandwichPanelResult::shearedM);
            panel(r, panel, "deflection", SandwichPanelResult::deflectionM);
            panel(r, panel, "stress1", SandwichPanelResult::stress1Pa);
            panel(r, panel, "stress2", SandwichPanelResult::stress2Pa);
            panel(r, panel, "twist", SandwichPanelResult::twistPa);
            panel(r, panel, "coreStress1", SandwichPanelResult::coreShear1Pa);
            panel(r, panel, "coreStress2", SandwichPanelResult::coreShear2Pa);
        }
        return r;
    }

    private static void beam(List<Relation> r, String term, ToDoubleFunction<SandwichBeamResult> figure) {
        r.add(giving(term, BEAM, k -> figure.applyAsDouble(beam(k))));
    }

    private static void panel(
            List<Relation> r, String panel, String term, ToDoubleFunction<SandwichPanelResult> figure) {
        r.add(giving(term, panel, k -> figure.applyAsDouble(panel(k))));
    }

    private static Core core(Known k) {
        return NotCoveredException.refusing(() ->
                new Core(k.si("faceModulus"), k.si("face"), k.si("coreModulus"), k.si("coreShear"), k.si("core")));
    }

    private static SandwichBeamResult beam(Known k) {
        k.by(
                "thin faces: D = Ef (d^3 - c^3) b / 12, U = G (d + c)^2 b / 4c; faces that bend by themselves beside it",
                "[allen1969]");
        SandwichBeamResult r = NotCoveredException.refusing(() -> SandwichBeamCalculator.calculate(new SandwichBeam(
                core(k),
                k.si("width"),
                k.si("span"),
                loading(k),
                k.si("load"),
                k.si("pad", 0),
                k.si("wrinklingFactor", FOR_DESIGN))));
        r.findings().forEach(f -> k.caution(f.sentence()));
        return r;
    }

    private static BeamLoading loading(Known k) {
        return Arrays.stream(BeamLoading.values())
                .filter(l -> l.words().equals(k.text("loading")))
                .findFirst()
                .orElseThrow(() -> new NotCoveredException("loading is one of "
                        + Arrays.stream(BeamLoading.values())
                                .map(BeamLoading::words)
                                .collect(Collectors.joining(", "))
                        + ", found \"" + k.text("loading") + "\""));
    }

    private static Object band(Known k) {
        OptionalDouble band = beam(k).band();
        return band.orElseThrow(
                () -> new NotCoveredException("thick faces on a soft core: no band is known for thin faces"));
    }

    private static ThickFaces thick(Known k) {
        Optional<ThickFaces> t = beam(k).thickFaces();
        return t.orElseThrow(
                () -> new NotCoveredException("the faces' own bending is reckoned for one load in the middle"));
    }

    private static Object wrinkling(Known k) {
        double factor = k.si("wrinklingFactor", FOR_DESIGN);
        k.by("k (Ef Ec Gc)^(1/3), k " + factor, "[hoff-mautner1945]");
        // The wrinkling stress does not depend on thicknesses; any will do where they are not given.
        return NotCoveredException.refusing(() -> new Core(
                        k.si("faceModulus"),
                        k.has("face") ? k.si("face") : 1,
                        k.si("coreModulus"),
                        k.si("coreShear"),
                        k.has("core") ? k.si("core") : 1)
                .wrinklingPa(factor));
    }

    private static Object dimpling(Known k) {
        k.by("2 Ef / (1 - nu^2) (tf / s)^2", "[milhdbk-23]");
        return NotCoveredException.refusing(() ->
                new Core(k.si("faceModulus"), k.si("face"), 1, 1, 1).dimplingPa(k.si("facePoisson"), k.si("cell")));
    }

    private static Object at(Known k, String strength, ToDoubleFunction<SandwichBeamResult> stress) {
        return k.si("load") * k.si(strength) / stress.applyAsDouble(beam(k));
    }

    private static SandwichPanelResult panel(Known k) {
        k.by("Navier's series with shear of the core: D = Q tf d^2 / 2, S = G d^2 / c", "[zenkert1995]");
        boolean even = k.has("faceModulus");
        SandwichPanelResult r = NotCoveredException.refusing(() -> SandwichPanelCalculator.calculate(new SandwichPanel(
                k.si("a"),
                k.si("b"),
                k.si(even ? "faceModulus" : "faceModulus1"),
                k.si(even ? "faceModulus" : "faceModulus2"),
                k.si("facePoisson"),
                even ? k.si("faceModulus") / (2 * (1 + k.si("facePoisson"))) : k.si("faceShear"),
                k.si("face"),
                k.si("core"),
                k.si(even ? "coreShear" : "coreShear1"),
                k.si(even ? "coreShear" : "coreShear2"),
                k.si("pressure"))));
        r.findings().forEach(f -> k.caution(f.sentence()));
        return r;
    }
}
