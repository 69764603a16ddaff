package fayline.app.usecase.calc.laminate;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.laminate.LayeredStrip;
import java.util.ArrayList;
import java.util.List;

/** A narrow strip of layers, free to contract sideways. */
final class StripForm {
    private static final double EIGHT = 8;
    private static final Form LAYER = Form.empty()
            .needs("E", Kind.quantity("GPa"), "modulus along the strip")
            .takes("G", Kind.quantity("GPa"), "shear modulus through the thickness; E/2.6 where it is not given")
            .takes("alpha", Kind.quantity("1/K"), "expansion along the strip; 0 where it is not given")
            .needs("thickness", Kind.quantity("mm"), "of the layer");
    static final Form FORM = Form.empty()
            .needs("layers", Kind.list(LAYER.asKind(), 1), "from z = -h/2")
            .takes("dT", Kind.quantity("K"), "temperature change")
            .takes("length", Kind.quantity("mm"), "over which bow and tip deflection are asked")
            .takes("span", Kind.quantity("mm"), "between supports of three-point bending")
            .takes("lineLoad", Kind.quantity("N/mm"), "load at midspan per width");

    private StripForm() {}

    static ObjectNode answer(Given in) {
        List<LayeredStrip.Layer> layers = new ArrayList<>();
        for (Given l : in.objects("layers")) {
            double e = l.si("E", "GPa");
            layers.add(MaterialForm.made(
                    "strip.layers",
                    () -> new LayeredStrip.Layer(
                            e, l.si("G", "GPa", e / 2.6), l.si("alpha", "1/K", 0), l.si("thickness", "mm"))));
        }
        LayeredStrip strip = new LayeredStrip(layers);
        ObjectNode out = Json.object();
        out.put("bendingStiffness", strip.bendingStiffnessNm() / Told.MM);
        if (in.has("dT")) {
            double k = strip.thermalCurvaturePerM(in.si("dT", "K"));
            out.put("curvature", k);
            if (k != 0) {
                out.put("radius", 1 / Math.abs(k));
            }
            if (in.has("length")) {
                double length = in.si("length", "mm");
                out.put("bow", Math.abs(k) * length * length / EIGHT / Told.MM);
                // Layers are listed upwards: the strip bends up where the lowest becomes the longer one.
                out.put("tip", -k * length * length / 2 / Told.MM);
            }
        }
        if (in.has("span") != in.has("lineLoad")) {
            throw CalcInputException.of("strip.span", "span or lineLoad alone", "both");
        }
        if (in.has("span")) {
            bending(strip, layers.size(), in.si("lineLoad", "N/mm"), in.si("span", "mm"), out);
        }
        return out;
    }

    private static void bending(LayeredStrip strip, int layers, double load, double span, ObjectNode out) {
        if (!(span > 0)) {
            throw CalcInputException.of("strip.span", span / Told.MM + " mm", "a span above 0");
        }
        LayeredStrip.ThreePoint t = strip.threePoint(load, span);
        out.put("outerStress", t.outerStressPa() / Told.MPA);
        ArrayNode between = out.putArray("shearBetween");
        for (int k = 0; k < layers - 1; k++) {
            between.add(strip.shearBetweenPa(k, load / 2) / Told.MPA);
        }
        out.put("bendingDeflection", t.bendingDeflectionM() / Told.MM);
        out.put("shearDeflection", t.shearDeflectionM() / Told.MM);
        out.put("deflection", (t.bendingDeflectionM() + t.shearDeflectionM()) / Told.MM);
    }
}
