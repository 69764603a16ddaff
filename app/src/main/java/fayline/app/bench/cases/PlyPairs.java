package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.bench.cases.Subject.Reckoned;
import fayline.app.usecase.calc.Json;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rows of one ply: its stiffness in its own and turned axes, its invariants. */
final class PlyPairs extends FormPairs {
    private static final Pattern TURNED = Pattern.compile("Qbar\\((-?\\d+)\\):? (.+)");
    private static final Pattern OWN = Pattern.compile("Q\\d\\d( Q\\d\\d)*");

    PlyPairs() {
        super(
                "lamina",
                "material|E1|E2|nu12|G12|angles",
                "Q\\d\\d( Q\\d\\d)*|Qbar\\(-?\\d+\\):? .+|U1 U2 U3 U4 U5|E_qi|G_qi|nu_qi");
    }

    @Override
    Optional<Reckoned> found(PairQuestion question, String name) {
        ObjectNode in = Json.object();
        in.set("material", material(question, ""));
        Matcher turned = TURNED.matcher(name);
        if (turned.matches()) {
            in.set("angles", quantity(Double.parseDouble(turned.group(1)), "deg"));
            return at(told(in), "GPa", below("/turned/0", turned.group(2)));
        }
        JsonNode told = told(in);
        if (OWN.matcher(name).matches()) {
            return at(told, "GPa", below("/Q", name.replace("Q", "")));
        }
        return switch (name) {
            case "E_qi" -> at(told, "GPa", "/evenlySpread/E");
            case "G_qi" -> at(told, "GPa", "/evenlySpread/G");
            case "nu_qi" -> at(told, "-", "/evenlySpread/nu");
            default -> at(told, "GPa", below("/invariants", name));
        };
    }
}
