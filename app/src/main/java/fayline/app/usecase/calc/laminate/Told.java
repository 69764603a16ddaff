package fayline.app.usecase.calc.laminate;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.method.laminate.Laminate;
import fayline.method.laminate.Ply;
import fayline.method.laminate.PlyStress;
import fayline.method.laminate.SectionLoad;
import fayline.method.laminate.SectionStrain;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Values of the engine as the topics about laminates answer them: GPa, MPa, mm, N/mm, 1e-6. */
final class Told {
    static final double GPA = 1e9;
    static final double MPA = 1e6;
    static final double MM = 1e-3;
    static final double MICRO = 1e-6;
    private static final double PER_WIDTH = 1e3;

    static final List<String> SOURCES =
            List.of("jones1999", "tsai-hahn1980", "nettles1994", "hyer1981", "timoshenko1925");

    static final String CAUTION =
            "Design aid: loads, allowables and the structure are approved by licensed engineers on approved data.";

    private Told() {}

    /** Units of the outputs that the topics share. */
    static Map<String, String> units(String... more) {
        Map<String, String> units = new LinkedHashMap<>();
        for (int i = 0; i < more.length; i += 2) {
            units.put(more[i], more[i + 1]);
        }
        return units;
    }

    static ObjectNode stiffness(Laminate l, char which) {
        ObjectNode n = Json.object();
        int[][] terms = {{0, 0}, {0, 1}, {0, 2}, {1, 1}, {1, 2}, {2, 2}};
        for (int[] t : terms) {
            // One minus one is not minus nought.
            double v = switch (which) {
                case 'A' -> l.a(t[0], t[1]) / PER_WIDTH;
                case 'B' -> l.b(t[0], t[1]);
                default -> l.d(t[0], t[1]) / MM;
            };
            n.put(index(t[0], t[1]), v + 0.0);
        }
        return n;
    }

    private static String index(int i, int j) {
        return (i == 2 ? "6" : String.valueOf(i + 1)) + (j == 2 ? "6" : String.valueOf(j + 1));
    }

    /** The inverse of the whole 6 by 6 in N and mm. */
    static ArrayNode compliance(Laminate l) {
        ArrayNode rows = Json.array();
        for (int i = 0; i < 6; i++) {
            ArrayNode row = rows.addArray();
            for (int j = 0; j < 6; j++) {
                double unit = i < 3 && j < 3 ? PER_WIDTH : i >= 3 && j >= 3 ? MM : 1;
                row.add(l.compliance(i, j) * unit);
            }
        }
        return rows;
    }

    static ObjectNode strain(SectionStrain e) {
        return Json.object()
                .put("epsX", e.epsX() / MICRO)
                .put("epsY", e.epsY() / MICRO)
                .put("gammaXy", e.gammaXy() / MICRO)
                .put("kappaX", e.kappaXPerM())
                .put("kappaY", e.kappaYPerM())
                .put("kappaXy", e.kappaXyPerM());
    }

    /** Stress of every ply at both faces, load and temperature together. */
    static ArrayNode stresses(Laminate l, SectionLoad load) {
        SectionStrain under = l.strain(load);
        double change = load.temperatureChangeK();
        SectionStrain free = l.expansionPerK().times(change);
        ArrayNode all = Json.array();
        for (int k = 0; k < l.plies().size(); k++) {
            Ply p = l.plies().get(k);
            for (int face = 0; face < 2; face++) {
                PlyStress r = l.residual(k, face, free, change);
                PlyStress s = l.stress(k, face, under).plus(r);
                double a = p.angleDeg();
                all.addObject()
                        .put("ply", k + 1)
                        .put("angle", a)
                        .put("z", l.heightM(k, face) / MM)
                        .put("s1", s.s1Pa() / MPA)
                        .put("s2", s.s2Pa() / MPA)
                        .put("t12", s.t12Pa() / MPA)
                        .put("sx", s.alongXPa(a) / MPA)
                        .put("sy", s.alongYPa(a) / MPA)
                        .put("txy", s.shearXyPa(a) / MPA);
            }
        }
        return all;
    }
}
