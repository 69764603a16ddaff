package fayline.app.usecase.calc.laminate;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.laminate.Laminate;
import fayline.method.laminate.PlyStress;
import fayline.method.laminate.SectionLoad;
import fayline.method.laminate.strength.Criterion;
import fayline.method.laminate.strength.FirstPlyCalculator;
import fayline.method.laminate.strength.FirstPlyResult;
import fayline.method.laminate.strength.LastPlyCalculator;
import fayline.method.laminate.strength.LastPlyResult;
import fayline.method.laminate.strength.PlyFailure;
import fayline.method.laminate.strength.PlyStrength;
import fayline.method.laminate.strength.PolarCalculator;
import fayline.method.laminate.strength.PolarPoint;
import fayline.method.laminate.strength.Strength;
import fayline.method.laminate.strength.StrongPly;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How much more a stack of plies bears: first ply, last ply, by several criteria. */
final class StrengthTopic implements CalcTopic {
    private static final Form FORM = StackForm.load(StackForm.stack(Form.empty()))
            .takes(
                    "criteria",
                    Kind.list(Kind.word("maxStress", "maxStrain", "tsaiHill", "tsaiWu", "hashin"), 1),
                    "all five where it is not given")
            .takes("F12", Kind.quantity("-"), "product term of Tsai-Wu over sqrt(F11 F22); -0.5 where it is not given")
            .takes("progressive", Kind.truth(), "go on to the last ply by ply discount")
            .takes(
                    "discount",
                    Kind.quantity("-"),
                    "what is left of a failed ply's property; 0.01 where it is not given")
            .takes("polarStep", Kind.quantity("deg"), "also strength all round by the first criterion asked");

    private static final List<String> ALL = List.of("maxStress", "maxStrain", "tsaiHill", "tsaiWu", "hashin");

    @Override
    public String name() {
        return "strength";
    }

    @Override
    public String about() {
        return "How many times a load can act on a stack of plies until the first ply fails, and the last, by several criteria.";
    }

    @Override
    public ObjectNode schema() {
        return FORM.schema(name(), about());
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        Given in = FORM.read(inputs);
        if (!in.has("plies")) {
            throw CalcInputException.of("plies", "nothing", "the plies of the stack");
        }
        List<StrongPly> plies = StackForm.plies(in);
        Laminate l = Laminate.of(plies.stream().map(StrongPly::ply).toList());
        SectionLoad load = StackForm.load(in, l.thicknessM());
        ObjectNode out = Json.object();
        out.set("stresses", Told.stresses(l, load));
        Map<String, Criterion> asked = criteria(in);
        ObjectNode by = out.putObject("criteria");
        asked.forEach((name, c) -> by.set(name, judged(in, plies, load, c, l.thicknessM())));
        if (asked.containsKey("tsaiWu")) {
            terms(plies, in, out);
        }
        if (in.has("polarStep")) {
            out.set("polar", polar(plies, asked.values().iterator().next(), load, in));
        }
        return new CalcAnswer(
                out,
                Told.units(
                        "stresses", "deg, mm, MPa",
                        "criteria", "MPa",
                        "tsaiWuTerms", "1/MPa, 1/MPa^2",
                        "polar", "deg, MPa"),
                List.of(
                        "strength ratio R: forces and moments times R, stress left by temperature as it is",
                        "ply discount to the last ply where asked",
                        "Hashin's matrix compression with ST as given, else YC/2"),
                List.of("jones1999", "tsai-wu1971", "hashin1980", "tsai-hahn1980"),
                List.of(
                        Told.CAUTION,
                        "Not asked here: edges, holes, delamination, buckling, fatigue, impact, damage tolerance."),
                false);
    }

    private static Map<String, Criterion> criteria(Given in) {
        Map<String, Criterion> all = new LinkedHashMap<>();
        for (String name : in.has("criteria") ? in.texts("criteria") : ALL) {
            all.put(
                    name,
                    switch (name) {
                        case "maxStress" -> Criterion.maxStress();
                        case "maxStrain" -> Criterion.maxStrain();
                        case "tsaiHill" -> Criterion.tsaiHill();
                        case "tsaiWu" ->
                            MaterialForm.made("F12", () -> Criterion.tsaiWu(in.si("F12", "-", Criterion.USUAL_F12)));
                        default -> Criterion.hashin();
                    });
        }
        return all;
    }

    private static ObjectNode judged(Given in, List<StrongPly> plies, SectionLoad load, Criterion c, double thickness) {
        Strength question = MaterialForm.made("materials", () -> new Strength(plies, load, c));
        FirstPlyResult r = FirstPlyCalculator.calculate(question);
        ObjectNode n = Json.object().put("name", c.name());
        r.first().ifPresent(f -> {
            n.put("ratio", f.ratio());
            n.put("mode", f.mode());
            r.together().forEach(n.putArray("plies")::add);
            ArrayNode angles = n.putArray("angles");
            r.together().stream()
                    .map(k -> plies.get(k).ply().angleDeg())
                    .distinct()
                    .forEach(angles::add);
            n.putObject("stress")
                    .put("sx", f.ratio() * load.nxNPerM() / thickness / Told.MPA)
                    .put("sy", f.ratio() * load.nyNPerM() / thickness / Told.MPA)
                    .put("txy", f.ratio() * load.nxyNPerM() / thickness / Told.MPA);
        });
        oneBased(n);
        if (in.isTrue("progressive")) {
            LastPlyResult last = MaterialForm.made(
                    "discount",
                    () -> LastPlyCalculator.calculate(question, in.si("discount", "-", LastPlyCalculator.USUAL_SHARE)));
            n.set("last", last(last));
        }
        return n;
    }

    private static void oneBased(ObjectNode n) {
        ArrayNode counted = Json.array();
        n.path("plies").forEach(k -> counted.add(k.intValue() + 1));
        if (n.has("plies")) {
            n.set("plies", counted);
        }
    }

    private static ObjectNode last(LastPlyResult r) {
        ObjectNode n = Json.object().put("ratio", r.lastRatio()).put("allFibresGone", r.allFibresGone());
        ArrayNode steps = n.putArray("steps");
        for (PlyFailure f : r.steps()) {
            steps.addObject()
                    .put("ply", f.ply() + 1)
                    .put("ratio", f.ratio())
                    .put("mode", f.mode())
                    .put("fibre", f.fibre());
        }
        return n;
    }

    /** The terms of Tsai-Wu for the first ply with strengths, and its index at the load as it acts, which is not 1/R. */
    private static void terms(List<StrongPly> plies, Given in, ObjectNode out) {
        for (int k = 0; k < plies.size(); k++) {
            StrongPly p = plies.get(k);
            if (p.strength().isPresent()) {
                PlyStrength s = p.strength().get();
                double f11 = Told.MPA * Told.MPA / (s.xtPa() * s.xcPa());
                double f22 = Told.MPA * Told.MPA / (s.ytPa() * s.ycPa());
                JsonNode at = out.path("stresses").path(2 * k);
                double f12 = in.si("F12", "-", Criterion.USUAL_F12);
                out.putObject("tsaiWuTerms")
                        .put("ply", k + 1)
                        .put("F1", Told.MPA / s.xtPa() - Told.MPA / s.xcPa())
                        .put("F2", Told.MPA / s.ytPa() - Told.MPA / s.ycPa())
                        .put("F11", f11)
                        .put("F22", f22)
                        .put("F66", Told.MPA * Told.MPA / (s.sPa() * s.sPa()))
                        .put("F12", f12 * Math.sqrt(f11 * f22))
                        .put("index", Criterion.tsaiWu(f12).index(p.ply().lamina(), s, stress(at)));
                return;
            }
        }
    }

    private static PlyStress stress(JsonNode at) {
        return new PlyStress(
                at.path("s1").doubleValue() * Told.MPA,
                at.path("s2").doubleValue() * Told.MPA,
                at.path("t12").doubleValue() * Told.MPA);
    }

    private static ArrayNode polar(List<StrongPly> plies, Criterion c, SectionLoad load, Given in) {
        double step = StackForm.degrees(in.si("polarStep", "deg"));
        ArrayNode all = Json.array();
        for (PolarPoint p : MaterialForm.made(
                "polarStep", () -> PolarCalculator.calculate(plies, Optional.of(c), load.temperatureChangeK(), step))) {
            ObjectNode n = all.addObject().put("angle", p.angleDeg());
            p.tensionPa().ifPresent(s -> n.put("tension", s / Told.MPA));
            p.compressionPa().ifPresent(s -> n.put("compression", s / Told.MPA));
        }
        return all;
    }
}
