package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.bench.cases.Subject.Reckoned;
import fayline.basis.units.UnitOfMeasure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rows of first ply failure and of strength ratios of one ply. */
final class StrengthPairs extends FormPairs {
    private static final String CRITERION =
            "max stress|Tsai-Hill|Tsai-Wu F12\\*=-0\\.5|Tsai-Wu F12=0|Hashin ST=(?:YC/2|S)";
    private static final Pattern LOAD = Pattern.compile("(" + CRITERION + "): sx sy txy at FPF");
    private static final Pattern WHERE = Pattern.compile("(" + CRITERION + "): ply, mode");
    private static final Pattern RATIO = Pattern.compile("(?:R )?(" + CRITERION + ")");
    private static final Pattern PLY = Pattern.compile("ply (-?\\d+): s1 s2 t12 at 100 x ratio");
    private static final double HUNDRED = 100;

    StrengthPairs() {
        super(
                "strength",
                "material|E1|E2|nu12|G12|XT|XC|YT|YC|S|plies|ply t|load direction sx sy txy|theta|sigma_x",
                "(" + CRITERION + "): (sx sy txy at FPF|ply, mode)|(R )?(" + CRITERION + ")|ply -?\\d+: .+"
                        + "|s1 s2 t12|F1 F2|F11 F22 F66|Tsai-Wu index at applied load \\(not 1/R\\)");
    }

    @Override
    Optional<Reckoned> found(PairQuestion question, String name) {
        Matcher load = LOAD.matcher(name);
        if (load.matches()) {
            return at(told(asked(question, load.group(1))), "MPa", below(path(load.group(1)) + "/stress", "sx sy txy"));
        }
        Matcher where = WHERE.matcher(name);
        if (where.matches()) {
            JsonNode by = told(asked(question, where.group(1))).at(path(where.group(1)));
            List<String> angles = new ArrayList<>();
            by.path("angles").forEach(a -> angles.add(String.valueOf(Math.round(a.asDouble()))));
            return Optional.of(new Reckoned(
                    String.join("/", angles) + " " + by.path("mode").asText(), UnitOfMeasure.ONE));
        }
        Matcher ratio = RATIO.matcher(name);
        if (ratio.matches()) {
            return at(told(asked(question, ratio.group(1))), "-", path(ratio.group(1)) + "/ratio");
        }
        Matcher ply = PLY.matcher(name);
        if (ply.matches()) {
            return ofPly(told(asked(question, "max stress")), Double.parseDouble(ply.group(1)));
        }
        JsonNode told = told(asked(question, "Tsai-Wu F12*=-0.5"));
        return switch (name) {
            case "s1 s2 t12" -> at(told, "MPa", below("/stresses/0", name));
            case "F1 F2" -> at(told, "1/MPa", below("/tsaiWuTerms", name));
            case "F11 F22 F66" -> at(told, "1/MPa^2", below("/tsaiWuTerms", name));
            default -> at(told, "-", "/tsaiWuTerms/index");
        };
    }

    private static Optional<Reckoned> ofPly(JsonNode told, double angle) {
        for (int i = 0; i < told.path("stresses").size(); i++) {
            if (told.at("/stresses/" + i + "/angle").asDouble() == angle) {
                return at(told, "MPa", below("/stresses/" + i, "s1 s2 t12"));
            }
        }
        return Optional.empty();
    }

    private static String path(String criterion) {
        return "/criteria/" + word(criterion);
    }

    private static String word(String criterion) {
        return criterion.startsWith("max")
                ? "maxStress"
                : criterion.startsWith("Tsai-H") ? "tsaiHill" : criterion.startsWith("Tsai") ? "tsaiWu" : "hashin";
    }

    private static ObjectNode asked(PairQuestion question, String criterion) {
        ObjectNode in = stack(question);
        ArrayNode criteria = in.putArray("criteria");
        criteria.add(word(criterion));
        if (criterion.endsWith("F12=0")) {
            in.put("F12", 0);
        }
        if (criterion.endsWith("ST=S")) {
            ObjectNode strength = (ObjectNode) in.at("/materials/1/strength");
            strength.set("ST", strength.path("S"));
        }
        if (question.given().containsKey("sigma_x")) {
            take(question, "sigma_x", in, "sx");
        } else {
            List<Double> direction = pair(question, "load direction sx sy txy").numbers();
            in.set("sx", quantity(HUNDRED * direction.get(0), "MPa"));
            in.set("sy", quantity(HUNDRED * direction.get(1), "MPa"));
            in.set("txy", quantity(HUNDRED * direction.get(2), "MPa"));
        }
        return in;
    }
}
