package fayline.app.bench.cases;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Words of the tables of sandwiches, sheets under pressure and the standard atmosphere. */
final class PanelPairs {
    private static final Map<String, String> EDGES = Map.of(
            "simply supported", "supported",
            "simply supported, held in plane", "supported",
            "clamped, held in plane", "clamped");
    private static final Map<String, String> EDGES_IN_TITLE =
            Map.of("simply supported", "edges=supported", "clamped", "edges=clamped");

    private PanelPairs() {}

    static List<PairSubject> all() {
        return List.of(
                atmosphere(),
                beam(),
                wrinkling(),
                panel(),
                grainedPanel(),
                flat(),
                shapes(),
                circular(),
                round(),
                curved());
    }

    private static PairWords atmosphere() {
        return new PairWords(
                "atmosphere",
                Map.of("altitude", "height", "geometric altitude", "height"),
                Set.of(),
                Map.ofEntries(
                        Map.entry("T geopotential", "temperature"),
                        Map.entry("p geopotential", "pressure"),
                        Map.entry("T if altitude is geometric", "temperature heightIs=geometric"),
                        Map.entry("p if altitude is geometric", "pressure heightIs=geometric"),
                        Map.entry("p0 - p geopotential", "difference"),
                        Map.entry("T", "temperature"),
                        Map.entry("p", "pressure"),
                        Map.entry("rho", "density"),
                        Map.entry("sound", "sound")),
                // The tables that others printed are of geometric height, whatever their heading says.
                Map.of("tabulated", "heightIs=geometric", "geometric altitude", "heightIs=geometric"),
                Map.of());
    }

    private static PairWords beam() {
        return new PairWords(
                "sandwich",
                Map.ofEntries(
                        Map.entry("loading", "loading"),
                        Map.entry("Ef", "faceModulus"),
                        Map.entry("tf each", "face"),
                        Map.entry("Ec", "coreModulus"),
                        Map.entry("Gc", "coreShear"),
                        Map.entry("core c", "core"),
                        Map.entry("width b", "width"),
                        Map.entry("span S", "span"),
                        Map.entry("total load P", "load"),
                        Map.entry("core shear strength", "coreShearStrength"),
                        Map.entry("face strength", "faceStrength")),
                Set.of(),
                Map.ofEntries(
                        Map.entry("D = Ef(d^3-c^3)b/12", "bendingStiffness"),
                        Map.entry("D incl. core", "bendingWithCore"),
                        Map.entry("U = G(d+c)^2 b/4c", "shearStiffness"),
                        Map.entry("mid deflection bending", "bent"),
                        Map.entry("mid deflection shear", "sheared"),
                        Map.entry("mid deflection total", "deflection"),
                        Map.entry("core shear stress", "coreStress"),
                        Map.entry("face stress", "faceStress"),
                        Map.entry("wrinkling stress k=0.5", "wrinkling wrinklingFactor=0.5"),
                        Map.entry("P at core shear", "loadAtCoreShear"),
                        Map.entry("P at face strength", "loadAtFaceStrength"),
                        Map.entry("P at wrinkling", "loadAtWrinkling"),
                        Map.entry("thin-face formula valid", "thinFaces")),
                Map.of(
                        "3-pt", "loading=three point",
                        "4-pt quarter", "loading=quarter point",
                        "4-pt third", "loading=third point"),
                Map.of("3-pt midspan", "three point", "4-pt quarter span", "quarter point"));
    }

    private static PairWords wrinkling() {
        return new PairWords(
                "sandwich",
                Map.of("Ef", "faceModulus", "Ec", "coreModulus", "Gc", "coreShear"),
                Set.of("nu_f"),
                Map.of(
                        "0.50 (EfEcGc)^(1/3)", "wrinkling wrinklingFactor=0.5",
                        "0.91 (EfEcGc)^(1/3)", "wrinkling wrinklingFactor=0.91"),
                Map.of(),
                Map.of());
    }

    private static PairWords panel() {
        return new PairWords(
                "sandwich",
                Map.of(
                        "a", "a",
                        "b", "b",
                        "Ef", "faceModulus",
                        "nu_f", "facePoisson",
                        "tf each", "face",
                        "core c", "core",
                        "Gc", "coreShear",
                        "pressure", "pressure"),
                Set.of(),
                Map.of(
                        "D per width", "panelBending",
                        "S per width", "panelShear",
                        "w bending", "bent",
                        "w shear", "sheared",
                        "w total centre", "deflection",
                        "face stress short direction, centre", "stress2"),
                Map.of(),
                Map.of());
    }

    private static PairWords grainedPanel() {
        return new PairWords(
                "sandwich",
                Map.ofEntries(
                        Map.entry("face Ex", "faceModulus1"),
                        Map.entry("face Ey", "faceModulus2"),
                        Map.entry("face nu_xy", "facePoisson"),
                        Map.entry("face Gxy", "faceShear"),
                        Map.entry("face t each", "face"),
                        Map.entry("core t", "core"),
                        Map.entry("core Gxz", "coreShear1"),
                        Map.entry("core Gyz", "coreShear2"),
                        Map.entry("side a=b", "a b"),
                        Map.entry("pressure", "pressure")),
                Set.of(),
                Map.of(
                        "centre deflection", "deflection",
                        "centre face sigma_x, face mid-plane", "stress1",
                        "centre face sigma_y, face mid-plane", "stress2",
                        "face tau_xy at quarter point, face mid-plane, magnitude", "twist"),
                Map.of(),
                Map.of());
    }

    private static PairWords flat() {
        return new PairWords(
                "plate",
                Map.ofEntries(
                        Map.entry("a", "a"),
                        Map.entry("b short side", "b"),
                        Map.entry("a along 1", "a"),
                        Map.entry("b along 2", "b"),
                        Map.entry("side", "a b"),
                        Map.entry("t", "thickness"),
                        Map.entry("q", "pressure"),
                        Map.entry("pressure", "pressure"),
                        Map.entry("E", "modulus"),
                        Map.entry("nu", "poisson"),
                        Map.entry("E1", "modulus1"),
                        Map.entry("E2", "modulus2"),
                        Map.entry("nu12", "poisson12"),
                        Map.entry("G12", "shear"),
                        Map.entry("edges", "edges")),
                Set.of(),
                Map.ofEntries(
                        Map.entry("alpha", "alpha"),
                        Map.entry("beta", "beta"),
                        Map.entry("beta1 mid long edge", "betaEdge"),
                        Map.entry("beta2 centre short direction", "beta"),
                        Map.entry("sigma max = beta q b^2/t^2", "highestStress"),
                        Map.entry("sigma max", "highestStress"),
                        Map.entry("sigma edge", "edgeStress"),
                        Map.entry("sigma centre", "stress2"),
                        Map.entry("sigma 1 centre", "stress1"),
                        Map.entry("sigma 2 centre", "stress2"),
                        Map.entry("y max = alpha q b^4/(E t^3)", "deflection"),
                        Map.entry("y max", "deflection"),
                        Map.entry("small-deflection y max, not to be used", "deflection"),
                        Map.entry("small deflection valid (y <= t/2)", "smallDeflection"),
                        Map.entry("centre deflection coefficient w D/(q a^4)", "deflectionOverD"),
                        Map.entry("centre deflection", "deflection")),
                EDGES_IN_TITLE,
                EDGES);
    }

    private static PairWords shapes() {
        return new PairWords(
                "plate",
                Map.of("a/b", "aspect", "nu", "poisson"),
                Set.of(),
                Map.of(
                        "w SSSS", "deflectionOverD edges=supported",
                        "M centre SSSS", "moment edges=supported",
                        "w CCCC", "deflectionOverD edges=clamped",
                        "M edge CCCC", "edgeMoment edges=clamped",
                        "M centre CCCC", "moment edges=clamped",
                        "coefficient alpha in y = alpha W b^2/(E t^3)", "centralLoad"),
                Map.of(),
                Map.of());
    }

    private static PairWords circular() {
        return new PairWords(
                "plate",
                Map.of("radius", "radius", "q", "pressure", "E", "modulus", "t", "thickness", "nu", "poisson"),
                Set.of(),
                Map.of(
                        "clamped edge stress", "highestStress edges=clamped",
                        "clamped y", "deflection edges=clamped",
                        "SS centre stress", "highestStress edges=supported",
                        "SS y", "deflection edges=supported"),
                Map.of(),
                Map.of());
    }

    private static PairWords round() {
        return new PairWords(
                "plate",
                Map.of("radius", "radius", "pressure", "pressure", "E", "modulus", "t", "thickness", "nu", "poisson"),
                Set.of(),
                Map.of(
                        "edge stress", "highestStress",
                        "centre deflection", "deflection",
                        "centre moment per width", "centreMoment"),
                EDGES_IN_TITLE,
                Map.of());
    }

    private static PairWords curved() {
        return new PairWords(
                "plate",
                Map.of("R", "curve", "pressure inside", "pressure", "t", "thickness", "E", "modulus", "nu", "poisson"),
                Set.of(),
                Map.of("hoop stress", "hoopStress", "radial growth", "growth"),
                Map.of(),
                Map.of());
    }
}
