package fayline.app.bench.cases;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Words of the tables of bonded joints. */
final class JointPairs {
    private static final Map<String, String> KINDS =
            Map.of("single lap", "kind=single lap", "double lap", "kind=double lap");
    private static final String END_1 = "tau where adherend 1 is loaded";
    private static final String END_2 = "tau where adherend 2 is loaded";

    private static final Map<String, String> HELD =
            Map.of("restrained, laminate underside held flat", "flat", "free", "free to bow");

    private JointPairs() {}

    static List<PairSubject> all() {
        return List.of(unequal(), lag(), bending(), strength(), rules(), heatBeams(), heatClosed());
    }

    private static Map<String, String> two() {
        Map<String, String> all = new LinkedHashMap<>(Map.of(
                "P per width", "load",
                "overlap L", "overlap",
                "E1", "modulus1",
                "t1", "thickness1",
                "E2", "modulus2",
                "t2", "thickness2",
                "G adhesive", "shear",
                "t adhesive", "bond"));
        all.putAll(Map.of(
                "E1 inner", "modulus1",
                "t1 inner", "thickness1",
                "E2 each outer", "modulus2",
                "t2 each outer", "thickness2"));
        return all;
    }

    private static Map<String, String> full() {
        Map<String, String> all = two();
        all.put("nu", "poisson");
        all.put("E adhesive", "adhesiveModulus");
        return all;
    }

    private static Map<String, String> equal() {
        return Map.of(
                "P per width", "load",
                "E", "modulus1",
                "nu", "poisson",
                "t", "thickness1",
                "half overlap c", "halfOverlap",
                "G adhesive", "shear",
                "E adhesive", "adhesiveModulus",
                "t adhesive", "bond",
                "through-thickness G", "acrossShear");
    }

    private static PairWords unequal() {
        return new PairWords(
                "joint",
                full(),
                Set.of(),
                Map.of(
                        "tau mean",
                        "meanShear",
                        END_1,
                        "beamEnd1",
                        END_2,
                        "beamEnd2",
                        "identical-adherend formula applicable",
                        "equalAdherends"),
                KINDS,
                Map.of());
    }

    private static PairWords lag() {
        return new PairWords(
                "joint",
                two(),
                Set.of(),
                Map.of(
                        "lambda",
                        "lambda",
                        "tau mean",
                        "meanShear",
                        END_1,
                        "lagEnd1",
                        END_2,
                        "lagEnd2",
                        "peak/mean",
                        "lagRatio"),
                KINDS,
                Map.of());
    }

    private static PairWords bending() {
        return new PairWords(
                "joint",
                equal(),
                Set.of("through-thickness E"),
                Map.of(
                        "k", "bendingFactor",
                        "M0", "bendingMoment",
                        "V0", "bendingForce",
                        "tau mean", "meanShear",
                        "tau peak", "bendingShear",
                        "tau peak/mean", "bendingRatio",
                        "peel peak", "bendingPeel",
                        "outer adherend surface stress P/t+6M0/t^2", "bendingSurface"),
                KINDS,
                Map.of());
    }

    private static PairWords strength() {
        Map<String, String> asked = new LinkedHashMap<>(Map.of(
                "gamma_e = tau_p/G", "elasticStrain",
                "lambda", "lambda",
                "P potential, end where outer stops", "strengthOuterStops",
                "P potential, end where inner stops", "strengthInnerStops",
                "P potential governing", "strength",
                "adequate overlap for P = P_potential/1.5: P/(2 tau_p)+6/lambda", "adequateOverlap"));
        for (int mm : new int[] {20, 35, 50, 80}) {
            asked.put("P at overlap " + mm, "strengthAtOverlap overlap=" + mm + "mm");
            asked.put("plastic length each end at overlap " + mm, "plasticLength overlap=" + mm + "mm");
        }
        return new PairWords(
                "joint",
                Map.ofEntries(
                        Map.entry("Eo", "modulus2"),
                        Map.entry("to each", "thickness2"),
                        Map.entry("Ei", "modulus1"),
                        Map.entry("ti", "thickness1"),
                        Map.entry("G adhesive", "shear"),
                        Map.entry("t adhesive", "bond"),
                        Map.entry("tau_p", "flow"),
                        Map.entry("gamma_p plastic part", "plasticStrain"),
                        Map.entry("dT", "heat"),
                        Map.entry("alpha_o", "alpha2"),
                        Map.entry("alpha_i", "alpha1")),
                Set.of("overlaps"),
                asked,
                Map.of(),
                Map.of());
    }

    private static PairWords rules() {
        return new PairWords(
                "joint",
                Map.of("adherend t", "thickness1"),
                Set.of(),
                Map.of(
                        "double-lap overlap (30 t)", "ruleDouble",
                        "single-lap overlap (80 t)", "ruleSingle",
                        "scarf length (1 in 50)", "ruleScarf"),
                Map.of(),
                Map.of());
    }

    private static Map<String, String> strip() {
        return Map.ofEntries(
                Map.entry("acrylic t", "sheet"),
                Map.entry("acrylic E", "sheetModulus"),
                Map.entry("acrylic nu", "sheetPoisson"),
                Map.entry("acrylic alpha", "sheetAlpha"),
                Map.entry("laminate t", "frame"),
                Map.entry("laminate E", "frameModulus"),
                Map.entry("laminate alpha", "frameAlpha"),
                Map.entry("G adhesive", "shear"),
                Map.entry("t adhesive", "bond"),
                Map.entry("L", "length"),
                Map.entry("dT", "heat"),
                Map.entry("bending", "held"));
    }

    private static PairWords heatClosed() {
        return new PairWords(
                "joint.heat",
                strip(),
                Set.of(),
                Map.ofEntries(
                        Map.entry("beta", "beta"),
                        Map.entry("beta L/2", "reach"),
                        Map.entry("|tau| peak at ends", "closedShear"),
                        Map.entry("adhesive shear strain at ends", "closedStrain"),
                        Map.entry("relative end slip", "closedSlip"),
                        Map.entry("acrylic midspan stress", "closedSheet"),
                        Map.entry("laminate midspan stress", "closedFrame"),
                        Map.entry("acrylic end displacement, outward +", "closedSheetEnd"),
                        Map.entry("laminate end displacement, outward +", "closedFrameEnd"),
                        Map.entry("free differential movement per end", "freeMove")),
                Map.of(),
                HELD);
    }

    /** The same names, answered by the beams, which decide. */
    private static PairWords heatBeams() {
        return new PairWords(
                "joint.heat",
                strip(),
                Set.of(),
                Map.ofEntries(
                        Map.entry("|tau| peak at ends", "beamShear"),
                        Map.entry("|tau| peak at ends, bending free", "beamShear"),
                        Map.entry("relative end slip", "beamSlip"),
                        Map.entry("acrylic midspan stress", "beamSheet"),
                        Map.entry("laminate midspan stress", "beamFrame"),
                        Map.entry("acrylic midspan stress mean", "beamSheet"),
                        Map.entry("acrylic midspan stress outer face", "beamOuter"),
                        Map.entry("acrylic midspan stress bonded face", "beamBonded"),
                        Map.entry("acrylic end displacement, outward +", "beamSheetEnd"),
                        Map.entry("laminate end displacement, outward +", "beamFrameEnd"),
                        Map.entry("bow over L", "beamBow"),
                        Map.entry("linear shape valid (bow <= total thickness)", "straight")),
                Map.of(),
                HELD);
    }
}
