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
import fayline.method.laminate.EngineeringConstants;
import fayline.method.laminate.Laminate;
import fayline.method.laminate.SectionLoad;
import fayline.method.laminate.SectionStrain;
import fayline.method.laminate.Warp;
import fayline.method.laminate.strength.PolarCalculator;
import fayline.method.laminate.strength.PolarPoint;
import fayline.method.laminate.strength.StrongPly;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How stiff a stack of plies is, how it expands and warps, and what each ply carries. */
final class LaminateTopic implements CalcTopic {
    private static final Form FORM = StackForm.load(StackForm.stack(Form.empty()))
            .takes("length", Kind.quantity("mm"), "along x, over which the bow is asked")
            .takes("polarStep", Kind.quantity("deg"), "also stiffness all round, from one direction to the next")
            .takes("strip", StripForm.FORM.asKind(), "a narrow strip of layers, in place of plies");

    @Override
    public String name() {
        return "laminate";
    }

    @Override
    public String about() {
        return "How stiff a stack of plies is in plane and in bending, how it expands and warps, and what each ply carries.";
    }

    @Override
    public ObjectNode schema() {
        return FORM.schema(name(), about());
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        Given in = FORM.read(inputs);
        if (in.has("plies") == in.has("strip")) {
            throw CalcInputException.of("plies", in.has("plies") ? "beside strip" : "nothing", "plies, or a strip");
        }
        List<String> cautions = new ArrayList<>(List.of(Told.CAUTION));
        ObjectNode out = Json.object();
        if (in.has("strip")) {
            out.set("strip", StripForm.answer(in.object("strip")));
            cautions.add("A narrow strip contracts sideways as it likes; a wide sheet is stiffer by about 1/(1 - nu).");
        } else {
            stack(in, out, cautions);
        }
        return new CalcAnswer(
                out,
                Told.units(
                        "thickness", "mm",
                        "A", "N/mm",
                        "B", "N",
                        "D", "N mm",
                        "compliance", "N and mm",
                        "constants", "GPa",
                        "bending", "N mm",
                        "expansion", "1e-6/K, 1/m/K",
                        "strain", "1e-6, 1/m",
                        "free", "1e-6, 1/m",
                        "stresses", "deg, mm, MPa",
                        "warp", "mm, 1/m",
                        "polar", "deg, GPa, 1e-6/K",
                        "strip", "N mm, 1/m, m, mm, MPa"),
                List.of("lamination theory, plies from z = -h/2; constants from the inverse of the whole 6 by 6"),
                Told.SOURCES,
                cautions,
                false);
    }

    private static void stack(Given in, ObjectNode out, List<String> cautions) {
        List<StrongPly> plies = StackForm.plies(in);
        Laminate l = Laminate.of(plies.stream().map(StrongPly::ply).toList());
        SectionLoad load = StackForm.load(in, l.thicknessM());
        out.put("thickness", l.thicknessM() / Told.MM);
        out.set("A", Told.stiffness(l, 'A'));
        out.set("B", Told.stiffness(l, 'B'));
        out.set("D", Told.stiffness(l, 'D'));
        out.put("coupled", !l.isUncoupled());
        out.set("compliance", Told.compliance(l));
        out.set("constants", constants(l.constants()));
        out.putObject("bending")
                .put("narrow", 1 / l.compliance(3, 3) / Told.MM)
                .put("kappaYPerKappaX", l.compliance(3, 4) / l.compliance(3, 3))
                .put("kappaXyPerKappaX", l.compliance(3, 5) / l.compliance(3, 3));
        out.set("expansion", Told.strain(l.expansionPerK()));
        double change = load.temperatureChangeK();
        if (!load.isUnloaded()) {
            out.set("strain", Told.strain(l.strain(load).plus(l.expansionPerK().times(change))));
        }
        if (change != 0) {
            SectionStrain free = l.expansionPerK().times(change);
            out.set("free", Told.strain(free));
        }
        if (!load.isUnloaded() || change != 0) {
            out.set("stresses", Told.stresses(l, load));
        }
        if (in.has("length")) {
            warp(l, change, in.si("length", "mm"), out, cautions);
        }
        if (in.has("polarStep")) {
            out.set("polar", polar(plies, StackForm.degrees(in.si("polarStep", "deg"))));
        }
    }

    private static ObjectNode constants(EngineeringConstants c) {
        return Json.object()
                .put("Ex", c.exPa() / Told.GPA)
                .put("Ey", c.eyPa() / Told.GPA)
                .put("Gxy", c.gxyPa() / Told.GPA)
                .put("nuxy", c.nuXy())
                .put("nuyx", c.nuYx())
                .put("flexEx", c.flexXPa() / Told.GPA)
                .put("flexEy", c.flexYPa() / Told.GPA)
                .put("flexGxy", c.flexGxyPa() / Told.GPA)
                .put("flexNuxy", c.flexNuXy());
    }

    private static void warp(Laminate l, double change, double length, ObjectNode out, List<String> cautions) {
        Warp w = MaterialForm.made("length", () -> Warp.of(l, change, length));
        ObjectNode n = out.putObject("warp").put("bow", w.bowM() / Told.MM).put("linear", w.linear());
        if (!w.linear()) {
            n.put("cylinder", w.cylinderPerM());
            cautions.add(
                    "The bow passes the thickness: the linear saddle is no answer there. A large thin plate becomes a"
                            + " cylinder; its curvature is told as warp.cylinder, about either axis.");
        }
    }

    private static ArrayNode polar(List<StrongPly> plies, double step) {
        ArrayNode all = Json.array();
        for (PolarPoint p :
                MaterialForm.made("polarStep", () -> PolarCalculator.calculate(plies, Optional.empty(), 0, step))) {
            all.addObject()
                    .put("angle", p.angleDeg())
                    .put("E", p.modulusPa() / Told.GPA)
                    .put("G", p.shearModulusPa() / Told.GPA)
                    .put("nu", p.poisson())
                    .put("alpha", p.expansionPerK() / Told.MICRO);
        }
        return all;
    }
}
