package fayline.app.usecase.calc.laminate;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.laminate.Lamina;
import fayline.method.laminate.StiffnessInvariants;
import fayline.method.laminate.TurnedStiffness;
import java.util.List;

/** How stiff one ply is, in its own axes and in turned ones. */
final class LaminaTopic implements CalcTopic {
    private static final Form FORM = Form.empty()
            .needs("material", MaterialForm.FORM.asKind(), "the ply's material")
            .takes("angles", Kind.quantities("deg"), "from x counter-clockwise to the fibres");

    @Override
    public String name() {
        return "lamina";
    }

    @Override
    public String about() {
        return "How stiff one ply is in its own axes and in turned ones, and what a stack of evenly spread directions has.";
    }

    @Override
    public ObjectNode schema() {
        return FORM.schema(name(), about());
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        Given in = FORM.read(inputs);
        Lamina l = MaterialForm.lamina("material", in.object("material"));
        ObjectNode out = Json.object();
        out.putObject("Q")
                .put("11", l.q11Pa() / Told.GPA)
                .put("12", l.q12Pa() / Told.GPA)
                .put("22", l.q22Pa() / Told.GPA)
                .put("66", l.q66Pa() / Told.GPA);
        out.put("nu21", l.nu21());
        StiffnessInvariants u = l.invariants();
        out.putObject("invariants")
                .put("U1", u.u1Pa() / Told.GPA)
                .put("U2", u.u2Pa() / Told.GPA)
                .put("U3", u.u3Pa() / Told.GPA)
                .put("U4", u.u4Pa() / Told.GPA)
                .put("U5", u.u5Pa() / Told.GPA);
        out.putObject("evenlySpread")
                .put("E", u.evenModulusPa() / Told.GPA)
                .put("G", u.evenShearModulusPa() / Told.GPA)
                .put("nu", u.evenPoisson());
        if (in.has("angles")) {
            ArrayNode turned = out.putArray("turned");
            for (double a : in.siList("angles", "deg")) {
                turned.add(turned(l, StackForm.degrees(a)));
            }
        }
        return new CalcAnswer(
                out,
                Told.units(
                        "Q", "GPa",
                        "invariants", "GPa",
                        "evenlySpread", "GPa",
                        "turned", "GPa",
                        "turned.alpha", "1e-6/K"),
                List.of("plane stress; Qbar by the fourth powers of cosine and sine; invariants"),
                List.of("jones1999", "tsai-hahn1980"),
                List.of(Told.CAUTION),
                false);
    }

    private static ObjectNode turned(Lamina l, double angle) {
        TurnedStiffness q = l.turned(angle);
        return Json.object()
                .put("angle", angle)
                .put("11", q.q11Pa() / Told.GPA)
                .put("12", q.q12Pa() / Told.GPA)
                .put("16", q.q16Pa() / Told.GPA)
                .put("22", q.q22Pa() / Told.GPA)
                .put("26", q.q26Pa() / Told.GPA)
                .put("66", q.q66Pa() / Told.GPA)
                .put("alphaX", q.alphaXPerK() / Told.MICRO)
                .put("alphaY", q.alphaYPerK() / Told.MICRO)
                .put("alphaXy", q.alphaXyPerK() / Told.MICRO);
    }
}
