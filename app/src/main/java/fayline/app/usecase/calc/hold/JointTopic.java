package fayline.app.usecase.calc.hold;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.method.joint.Adherend;
import fayline.method.joint.Adhesive;
import fayline.method.joint.BendingLap;
import fayline.method.joint.DoubleLap;
import fayline.method.joint.DoubleLapStrength;
import fayline.method.joint.LapJoint;
import fayline.method.joint.LapJoint.Kind;
import fayline.method.joint.LapJointCalculator;
import fayline.method.joint.LapJointResult;
import fayline.method.joint.Scarf;
import fayline.method.joint.ShearLag;
import fayline.method.joint.ShearLagCalculator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Bonded lap joints: closed forms beside beams on the adhesive, which decide. */
final class JointTopic {
    private static final String SHEAR = "kind load overlap modulus1 thickness1 modulus2 thickness2 shear bond";
    private static final String JOINT = SHEAR + " poisson adhesiveModulus [acrossShear] [free]";
    private static final String STRENGTH =
            "modulus1 thickness1 modulus2 thickness2 shear bond flow plasticStrain [heat] [alpha1] [alpha2]";
    private static final double FREE_M = 0.1;

    private JointTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "joint",
                "Shear and peel of bonded lap, strap and scarf joints by closed forms and by beams on the adhesive, and whether"
                        + " they are within what is allowed.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        List<Term> t = new ArrayList<>(List.of(
                Term.text(
                        "kind",
                        "single lap, double lap or double strap; 1 is the middle of a double one, 2 each outer"),
                number("load", "N/mm", "pull per width"),
                number("overlap", "mm", "overlap; of a strap on one side of the gap"),
                number("halfOverlap", "mm", "half of it"),
                number("modulus1", "GPa", "Young's modulus of adherend 1"),
                number("thickness1", "mm", "thickness of adherend 1"),
                number("modulus2", "GPa", "Young's modulus of adherend 2"),
                number("thickness2", "mm", "thickness of adherend 2"),
                number("poisson", "-", "Poisson's ratio of the adherends"),
                number(
                        "acrossShear",
                        "GPa",
                        "shear modulus of the adherends through their thickness; E/2(1+nu) where not given"),
                number("shear", "MPa", "shear modulus of the adhesive"),
                number("adhesiveModulus", "MPa", "Young's modulus of the adhesive"),
                number("bond", "mm", "thickness of the bond line"),
                number("free", "mm", "length of each adherend to where it can turn; 100 mm where not given"),
                number("flow", "MPa", "shear stress at which the adhesive flows"),
                number("plasticStrain", "-", "shear strain it flows by, in addition to the elastic one"),
                number("heat", "K", "temperature less that at which the bond is free of stress"),
                number("alpha1", "1/K", "expansion of adherend 1"),
                number("alpha2", "1/K", "expansion of adherend 2"),
                number("slope", "-", "length over height of a scarf"),
                number("allowedShear", "MPa", "peak shear stress allowed"),
                number("allowedPeel", "MPa", "peak peel stress allowed"),
                number(
                        "knockDown",
                        "-",
                        "what is left of the allowed stresses by environment, fatigue and the like; 1 where not given"),
                Term.text("knockDownSource", "where that knock-down comes from"),
                number("factor", "-", "factor of safety on the load's stresses; 1 where not given")));
        t.addAll(answers());
        return t;
    }

    private static List<Term> answers() {
        return List.of(
                number("lambda", "1/mm", "how fast the shear dies away from an end"),
                number("meanShear", "MPa", "mean shear stress"),
                number("lagEnd1", "MPa", "shear lag alone: stress where adherend 1 is loaded"),
                number("lagEnd2", "MPa", "the same where adherend 2 is loaded"),
                number("lagRatio", "-", "peak over mean by shear lag"),
                number("bendingFactor", "-", "bending-corrected: k, what is left of the moment P t / 2"),
                number("bendingMoment", "N", "moment per width at the end of the overlap"),
                number("bendingForce", "N/mm", "shear force per width there"),
                number("bendingShear", "MPa", "peak shear stress"),
                number("bendingRatio", "-", "peak over mean"),
                number("bendingPeel", "MPa", "peak peel stress"),
                number("bendingSurface", "MPa", "largest stress on the adherend's surface"),
                Term.yesNo("equalAdherends", "whether the bending-corrected formula applies"),
                number("outerPeel", "MPa", "peel where the outer adherends stop, closed form"),
                number("beamEnd1", "MPa", "beams: shear stress where adherend 1 is loaded"),
                number("beamEnd2", "MPa", "the same where adherend 2 is loaded"),
                number("beamShear", "MPa", "beams: largest shear stress"),
                number("beamRatio", "-", "largest over mean"),
                number("beamPeel", "MPa", "beams: largest peel stress"),
                number("beamMoment", "N", "beams: moment per width at the end of the overlap"),
                number("beamSurface", "MPa", "beams: largest stress on an adherend's surface there"),
                number("decidingShear", "MPa", "shear stress at the unsafe end of the beams' band"),
                number("decidingPeel", "MPa", "peel stress likewise"),
                number("elasticStrain", "-", "shear strain at which the adhesive begins to flow"),
                number("strength", "N/mm", "what a long double lap of this adhesive bears"),
                number("strengthOuterStops", "N/mm", "the end where the outer adherends stop"),
                number("strengthInnerStops", "N/mm", "the end where the inner adherend stops"),
                number("strengthAtOverlap", "N/mm", "what a balanced one bears at the overlap"),
                number("plasticLength", "mm", "length at each end that flows then"),
                number("adequateOverlap", "mm", "overlap for the strength over 1.5: P/2 flow + 6/lambda"),
                number("ruleDouble", "mm", "double-lap overlap by proportion, 30 thicknesses"),
                number("ruleSingle", "mm", "single-lap overlap by proportion, 80 thicknesses"),
                number("ruleScarf", "mm", "scarf length by proportion, 1 in 50"),
                number("scarfShear", "MPa", "mean shear stress of a scarf"),
                number("scarfPeak", "MPa", "peak shear stress of a scarf"),
                number("scarfAcross", "MPa", "stress across a scarf's bond"),
                number("scarfLength", "mm", "length of a scarf"),
                number("shearMargin", "percent", "margin in shear: allowed over deciding, less 1"),
                number("peelMargin", "percent", "margin in peel"),
                Term.yesNo("within", "whether both are within what is allowed"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("overlap", "halfOverlap", k -> 2 * k.si("halfOverlap")));
        r.add(giving("modulus2", "modulus1 halfOverlap", k -> k.si("modulus1")));
        r.add(giving("thickness2", "thickness1 halfOverlap", k -> k.si("thickness1")));
        r.add(giving("lambda", SHEAR, k -> lag(k).lambdaPerM()));
        r.add(giving("lambda", STRENGTH, k -> strength(k).lambdaPerM()));
        r.add(giving("meanShear", SHEAR, k -> lag(k).meanPa()));
        r.add(giving("lagEnd1", SHEAR, k -> lag(k).end1Pa()));
        r.add(giving("lagEnd2", SHEAR, k -> lag(k).end2Pa()));
        r.add(giving("lagRatio", SHEAR, k -> lag(k).peakPa() / lag(k).meanPa()));
        bending(r, "bendingFactor", BendingLap::k);
        bending(r, "bendingMoment", BendingLap::momentN);
        bending(r, "bendingForce", BendingLap::forceNPerM);
        bending(r, "bendingShear", BendingLap::shearPa);
        bending(r, "bendingRatio", b -> b.shearPa() / b.meanPa());
        bending(r, "bendingPeel", BendingLap::peelPa);
        bending(r, "bendingSurface", BendingLap::surfacePa);
        r.add(giving("equalAdherends", JOINT, k -> lap(k).isBalanced() && lap(k).kind() == Kind.SINGLE));
        r.add(giving("outerPeel", JOINT, JointTopic::outerPeel));
        beams(r, "beamEnd1", b -> b.beams().leftShearPa());
        beams(r, "beamEnd2", b -> b.beams().rightShearPa());
        beams(r, "beamShear", b -> b.beams().highestShearPa());
        beams(r, "beamRatio", b -> b.beams().highestShearPa() / b.lag().meanPa());
        beams(r, "beamPeel", b -> b.beams().highestPeelPa());
        beams(r, "beamMoment", b -> b.beams().endMomentN());
        beams(r, "beamSurface", LapJointResult::surfacePa);
        beams(r, "decidingShear", LapJointResult::shearPa);
        beams(r, "decidingPeel", LapJointResult::peelPa);
        strengths(r);
        rules(r);
        r.add(giving(
                "shearMargin",
                "decidingShear allowedShear [knockDown] [knockDownSource] [factor]",
                k -> margin(k, "Shear")));
        r.add(giving(
                "peelMargin",
                "decidingPeel allowedPeel [knockDown] [knockDownSource] [factor]",
                k -> margin(k, "Peel")));
        r.add(giving("within", "shearMargin peelMargin", k -> k.si("shearMargin") >= 0 && k.si("peelMargin") >= 0));
        return r;
    }

    private static void strengths(List<Relation> r) {
        r.add(giving("elasticStrain", STRENGTH, k -> strength(k).elasticStrain()));
        r.add(giving("strength", STRENGTH, k -> strength(k).potentialNPerM()));
        r.add(giving("strengthOuterStops", STRENGTH, k -> strength(k).outerStopsNPerM()));
        r.add(giving("strengthInnerStops", STRENGTH, k -> strength(k).innerStopsNPerM()));
        r.add(giving("adequateOverlap", STRENGTH, k -> strength(k).adequateOverlapM(k.si("flow"))));
        r.add(giving("strengthAtOverlap", STRENGTH + " overlap", k -> at(k).loadNPerM()));
        r.add(giving("plasticLength", STRENGTH + " overlap", k -> at(k).plasticM()));
    }

    private static void rules(List<Relation> r) {
        r.add(giving("ruleDouble", "thickness1", k -> rule(k, 30)));
        r.add(giving("ruleSingle", "thickness1", k -> rule(k, 80)));
        r.add(giving("ruleScarf", "thickness1", k -> rule(k, 50)));
        String scarf = "load modulus1 thickness1 modulus2 thickness2 slope";
        r.add(giving("scarfShear", scarf, k -> scarf(k).meanPa()));
        r.add(giving("scarfPeak", scarf, k -> scarf(k).peakPa()));
        r.add(giving("scarfAcross", scarf, k -> scarf(k).acrossPa()));
        r.add(giving("scarfLength", scarf, k -> scarf(k).lengthM()));
    }

    private static void bending(List<Relation> r, String term, ToDoubleFunction<BendingLap> figure) {
        r.add(giving(term, JOINT, k -> {
            k.by(
                    "moment k P t / 2 at the overlap's end, k falling with the load; shear and peel from it",
                    "[goland-reissner1944]");
            return figure.applyAsDouble(NotCoveredException.refusing(() -> LapJointCalculator.bending(lap(k)))
                    .orElseThrow(() -> new NotCoveredException(
                            "the bending-corrected formula is for a single lap of equal adherends")));
        }));
    }

    private static void beams(List<Relation> r, String term, ToDoubleFunction<LapJointResult> figure) {
        r.add(giving(term, JOINT, k -> {
            k.by(
                    "two beams that shear on a layer of adhesive, load-dependent bending, finite elements",
                    "[goland-reissner1944], [timoshenko1921]");
            LapJointResult result = NotCoveredException.refusing(() -> LapJointCalculator.calculate(lap(k)));
            result.findings().forEach(f -> k.caution(f.sentence()));
            assumed(k);
            k.caution(
                    "Not checked: the adherends' own strength, fatigue, creep, moisture, impact, the surface under the bond."
                            + " A figure here does not replace approved data or a licensed engineer.");
            return figure.applyAsDouble(result);
        }));
    }

    /** Says what was taken because nobody gave it. */
    private static void assumed(Known k) {
        if (!k.has("acrossShear")) {
            k.caution(
                    "Assumed: the adherends' shear modulus through their thickness is E / 2(1 + nu); a laminate's is less.");
        }
        if (!k.has("free")) {
            k.caution("Assumed: 100 mm of each adherend from the overlap to where it can turn.");
        }
    }

    private static ShearLag lag(Known k) {
        k.by("shear lag: lambda^2 = G/t (1/E1 t1 + 1/E2 t2)", "[volkersen1938]");
        return NotCoveredException.refusing(() -> ShearLagCalculator.calculate(
                kind(k),
                k.si("load"),
                k.si("overlap"),
                k.si("modulus1") * k.si("thickness1"),
                k.si("modulus2") * k.si("thickness2"),
                Adhesive.elastic(k.si("shear"), 2 * k.si("shear"), k.si("bond"))));
    }

    private static LapJoint lap(Known k) {
        return new LapJoint(
                kind(k),
                adherend(k, "1"),
                adherend(k, "2"),
                Adhesive.elastic(k.si("shear"), k.si("adhesiveModulus"), k.si("bond")),
                k.si("overlap"),
                k.si("load"),
                k.si("free", FREE_M));
    }

    private static Adherend adherend(Known k, String which) {
        Adherend even = Adherend.isotropic(k.si("modulus" + which), k.si("poisson"), k.si("thickness" + which), 0);
        return k.has("acrossShear")
                ? new Adherend(even.modulusPa(), even.poisson(), even.thicknessM(), k.si("acrossShear"), 0)
                : even;
    }

    private static Kind kind(Known k) {
        return Arrays.stream(Kind.values())
                .filter(w -> w.words().equals(k.text("kind")))
                .findFirst()
                .orElseThrow(() -> new NotCoveredException("kind is one of "
                        + Arrays.stream(Kind.values()).map(Kind::words).collect(Collectors.joining(", ")) + ", found \""
                        + k.text("kind") + "\""));
    }

    private static Object outerPeel(Known k) {
        k.by("tau (3 Ea to / (Eo ta))^(1/4)", "[hart-smith1973]");
        return NotCoveredException.refusing(() -> LapJointCalculator.calculate(lap(k)))
                .outerPeelPa()
                .orElseThrow(() -> new NotCoveredException("a single lap has no outer adherends"));
    }

    private static DoubleLap doubleLap(Known k) {
        return new DoubleLap(
                new Adherend(k.si("modulus1"), 0, k.si("thickness1"), k.si("modulus1"), k.si("alpha1", 0)),
                new Adherend(k.si("modulus2"), 0, k.si("thickness2"), k.si("modulus2"), k.si("alpha2", 0)),
                new Adhesive(
                        k.si("shear"),
                        2 * k.si("shear"),
                        k.si("bond"),
                        OptionalDouble.of(k.si("flow")),
                        OptionalDouble.of(k.si("plasticStrain"))),
                k.si("heat", 0));
    }

    private static DoubleLapStrength strength(Known k) {
        k.by("double lap, elastic-plastic: the energy that the adhesive takes up at each end", "[hart-smith1973]");
        k.caution("The strength of a double lap presumes that nothing peels and that the adherends hold.");
        return NotCoveredException.refusing(() -> doubleLap(k).strength());
    }

    private static DoubleLapStrength.AtOverlap at(Known k) {
        strength(k);
        return NotCoveredException.refusing(() -> doubleLap(k).at(k.si("overlap")));
    }

    private static Object rule(Known k, int times) {
        k.by("30 t for a double lap, 80 t for a single lap, 1 in 50 for a scarf", "[milhdbk17-3f]");
        k.caution(
                "Proportions are a rule of thumb for near-quasi-isotropic carbon; taper overlap ends to 0.5 mm at 1 in 10.");
        return times * k.si("thickness1");
    }

    private static Scarf scarf(Known k) {
        k.by("P sin cos / t, times the ratio of the stiffnesses", "[hart-smith1973]");
        return NotCoveredException.refusing(() -> Scarf.of(
                k.si("load"),
                new Adherend(k.si("modulus1"), 0, k.si("thickness1"), k.si("modulus1"), 0),
                new Adherend(k.si("modulus2"), 0, k.si("thickness2"), k.si("modulus2"), 0),
                k.si("slope")));
    }

    private static Object margin(Known k, String of) {
        double knockDown = k.si("knockDown", 1);
        double factor = k.si("factor", 1);
        if (!(knockDown > 0 && knockDown <= 1 && factor >= 1)) {
            throw new NotCoveredException("a knock-down lies above 0 and at most at 1, a factor is at least 1, found "
                    + knockDown + " and " + factor);
        }
        if (knockDown < 1 && k.has("knockDownSource")) {
            k.by("allowed stress times the knock-down, over the factor of safety", k.text("knockDownSource"));
        } else if (knockDown < 1) {
            k.caution("No source is given for the knock-down.");
        } else {
            k.caution("Nothing is taken off the allowed stresses for heat, moisture or fatigue.");
        }
        return k.si("allowed" + of) * knockDown / (factor * k.si("deciding" + of)) - 1;
    }
}
