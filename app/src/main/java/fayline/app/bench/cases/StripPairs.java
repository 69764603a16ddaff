package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.bench.cases.Subject.Reckoned;
import fayline.app.usecase.calc.Json;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rows of narrow strips of layers: two metals, sheet on laminate, a laminated strip in three-point bending. */
final class StripPairs extends FormPairs {
    private static final Map<String, String[]> NAMES = Map.of(
            "curvature", new String[] {"curvature", "1/m"},
            "radius", new String[] {"radius", "m"},
            "bow = k L^2/8", new String[] {"bow", "mm"},
            "tip deflection", new String[] {"tip", "mm"},
            "bending stress at midspan, outer face", new String[] {"outerStress", "MPa"},
            "interface shear stress, first ply boundary", new String[] {"shearBetween/0", "MPa"},
            "deflection at midspan, with transverse shear", new String[] {"deflection", "mm"});

    StripPairs() {
        super(
                "laminate",
                "t1|E1|alpha1|t2|E2|alpha2|dT|L|E lower|E upper|CTE lower|CTE upper|t each|length|nu12|G12|G13|G23"
                        + "|plies from z=-h/2|ply t|span|width|line load at midspan",
                String.join(
                        "|",
                        NAMES.keySet().stream()
                                .map(java.util.regex.Pattern::quote)
                                .toList()));
    }

    @Override
    Optional<Reckoned> found(PairQuestion question, String name) {
        ObjectNode in = Json.object();
        ObjectNode strip = in.putObject("strip");
        ArrayNode layers = strip.putArray("layers");
        if (question.given().containsKey("span")) {
            plies(question, layers);
            take(question, "span", strip, "span");
            lineLoad(question, strip);
        } else if (question.given().containsKey("E lower")) {
            two(question, layers, List.of("E lower", "CTE lower", "t each"), List.of("E upper", "CTE upper", "t each"));
        } else {
            two(question, layers, List.of("E1", "alpha1", "t1"), List.of("E2", "alpha2", "t2"));
        }
        take(question, "dT", strip, "dT");
        take(question, "L", strip, "length");
        take(question, "length", strip, "length");
        JsonNode told = told(in);
        String[] known = NAMES.getOrDefault(name, new String[] {"", "-"});
        return at(told, known[1], "/strip/" + known[0]);
    }

    private static void two(PairQuestion question, ArrayNode layers, List<String> first, List<String> second) {
        for (List<String> names : List.of(first, second)) {
            ObjectNode layer = layers.addObject();
            take(question, names.get(0), layer, "E");
            take(question, names.get(1), layer, "alpha");
            take(question, names.get(2), layer, "thickness");
        }
    }

    /** The load is given per width already; the width of the table says over what it is spread. */
    private static void lineLoad(PairQuestion question, ObjectNode strip) {
        take(question, "line load at midspan", strip, "lineLoad");
    }

    private static void plies(PairQuestion question, ArrayNode layers) {
        List<Double> angles = pair(question, "plies from z=-h/2").numbers();
        for (int k = 0; k < angles.size(); k++) {
            ObjectNode layer = layers.addObject();
            boolean along = angles.get(k) == 0;
            take(question, along ? "E1" : "E2", layer, "E");
            take(question, along ? "G13" : "G23", layer, "G");
            layer.set("thickness", quantity(number(question, "ply t", k), "mm"));
        }
    }
}
