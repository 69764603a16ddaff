package fayline.app.bench.cases;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Words of the tables of plies, laminates, what they came out as and corners. */
final class LaminatePairs {
    private LaminatePairs() {}

    static List<PairSubject> all() {
        return List.of(
                new PlyPairs(),
                new StackPairs(),
                new StrengthPairs(),
                new StripPairs(),
                micromechanics(),
                twoMaterials(),
                layUp(),
                corner());
    }

    private static PairWords micromechanics() {
        return new PairWords(
                "micromechanics",
                Map.of(
                        "Ef1", "Ef1",
                        "Ef2", "Ef2",
                        "Gf12", "Gf12",
                        "nuf", "nuf",
                        "Em", "Em",
                        "num", "num",
                        "Vf", "Vf",
                        "alpha_f", "alphaF",
                        "alpha_m", "alphaM"),
                Set.of(),
                Map.of(
                        "E1 ROM", "E1",
                        "nu12 ROM", "nu12",
                        "E2 inverse ROM", "E2Inverse",
                        "G12 inverse ROM", "G12Inverse",
                        "E2 Halpin-Tsai xi=2", "E2",
                        "G12 Halpin-Tsai xi=1", "G12",
                        "Gm", "Gm",
                        "alpha1 Schapery", "alpha1",
                        "alpha2 Schapery", "alpha2"),
                Map.of(),
                Map.of());
    }

    private static PairWords twoMaterials() {
        return new PairWords(
                "micromechanics",
                Map.of("Ef", "Ef1", "Em", "Em", "Vf", "Vf"),
                Set.of(),
                Map.of(
                        "E longitudinal", "E1",
                        "E transverse", "E2Inverse",
                        "E transverse inverse rule", "E2Inverse"),
                Map.of(),
                Map.of());
    }

    private static PairWords layUp() {
        return new PairWords(
                "asmade",
                Map.ofEntries(
                        Map.entry("fibre areal weight", "cloth"),
                        Map.entry("rho_f", "rhoF"),
                        Map.entry("rho_m", "rhoM"),
                        Map.entry("rho_c measured", "rhoC"),
                        Map.entry("Vf", "Vf"),
                        Map.entry("Wf", "Wf"),
                        Map.entry("plies", "plies"),
                        Map.entry("resin:fibre by mass", "resinPerFibre"),
                        Map.entry("area", "area"),
                        Map.entry("resin waste", "waste")),
                Set.of(),
                Map.ofEntries(
                        Map.entry("cured ply t", "plyThickness"),
                        Map.entry("ply t", "plyThickness"),
                        Map.entry("laminate t", "thickness"),
                        Map.entry("Wf", "Wf"),
                        Map.entry("Vf", "Vf"),
                        Map.entry("Vm", "Vm"),
                        Map.entry("resin weight fraction", "resinContent"),
                        Map.entry("resin content by weight", "resinContent"),
                        Map.entry("laminate density, no voids", "density"),
                        Map.entry("ply areal mass", "plyMass"),
                        Map.entry("fibre mass", "fibreMass"),
                        Map.entry("resin in part", "resinInPart"),
                        Map.entry("resin to mix", "resinToMix"),
                        Map.entry("void content", "voids")),
                Map.of(),
                Map.of());
    }

    private static PairWords corner() {
        return new PairWords(
                "springin",
                Map.of(
                        "arc (turn) angle", "arc",
                        "alpha in-plane", "alphaInPlane",
                        "alpha through-thickness", "alphaThrough",
                        "T cure", "cure",
                        "T room", "room",
                        "cure shrinkage in-plane", "shrinkInPlane",
                        "cure shrinkage through-thickness", "shrinkThrough"),
                // The answer depends on neither.
                Set.of("inner radius", "t"),
                Map.of(
                        "thermal part, increase of arc angle", "thermal",
                        "cure-shrinkage part", "byCure",
                        "total spring-in (included angle closes by)", "springIn",
                        "tool included angle needed for nominal 90", "toolIncluded",
                        "tool included angle needed for nominal 120", "toolIncluded"),
                Map.of(),
                Map.of());
    }
}
