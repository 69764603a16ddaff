package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.method.fitup.outline.EdgePoint;
import fayline.method.fitup.outline.EdgeRun;
import fayline.method.fitup.outline.OutlineCalculator;
import fayline.method.fitup.outline.OutlineResult;
import fayline.method.fitup.outline.PartOutline;
import fayline.method.fitup.outline.RoundedPolygon;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Places and normals on a polygon with rounded corners, by arc length. */
final class OutlineTopic {
    private OutlineTopic() {}

    static CalcTopic topic() {
        return new FitTopic(
                "outline",
                "Point, outward normal and run of the part's edge at arc lengths along a polygon with rounded corners.",
                Form.empty()
                        .needs("corners", Kind.list(Kind.plane(), 3), "corners in order, mm")
                        .needs(
                                "radii",
                                Kind.list(Kind.notNegative(), 3),
                                "blend radius of each corner, mm; 0 for a sharp one")
                        .needs(
                                "s",
                                Kind.list(Kind.number(), 0),
                                "arc lengths from the end of the blend of corner 1, counter-clockwise, mm; modulo the perimeter")
                        .takes("startRule", Kind.passedOver(), "explanation; not read"),
                in -> FitAnswers.refusing(() -> answer(in)));
    }

    private static CalcAnswer answer(Given in) {
        int corners = in.rows("corners").size();
        if (in.numbers("radii").size() != corners) {
            throw CalcInputException.of(
                    "radii", in.numbers("radii").size() + " radii", "one for each of " + corners + " corners");
        }
        OutlineResult r = OutlineCalculator.calculate(
                new RoundedPolygon(in.rows("corners").stream().map(Shapes::spot).toList(), in.numbers("radii")));
        List<Finding> findings = new ArrayList<>(r.findings());
        ObjectNode out = Json.object().put("status", r.status().name()).put("reversed", r.reversed());
        r.corner().ifPresent(c -> out.put("corner", c));
        r.outline().ifPresent(o -> write(out, o, in.numbers("s"), findings));
        return Replies.of(
                out,
                "straights and tangent arcs in closed form",
                "plane geometry",
                findings,
                r.outline().isEmpty());
    }

    private static void write(ObjectNode out, PartOutline outline, List<Double> places, List<Finding> findings) {
        out.put("perimeter", outline.perimeterMm());
        out.put("area", outline.areaMm2());
        ArrayNode points = out.putArray("points");
        for (double s : places) {
            EdgePoint p = outline.at(s);
            ObjectNode one = points.addObject()
                    .put("s", s)
                    .put("x", p.at().xMm())
                    .put("y", p.at().yMm())
                    .put("nx", p.nx())
                    .put("ny", p.ny())
                    .put("segment", p.run());
            if (p.sharp()) {
                one.put("status", "NORMAL_UNDEFINED");
                findings.add(new Finding(
                        Severity.CAUTION,
                        "s",
                        String.format(
                                Locale.ROOT,
                                "s = %.3f lies on a sharp corner, where no normal exists; the one given is that of %s. Name the"
                                        + " edge a station there belongs to.",
                                s,
                                p.run()),
                        "plane geometry"));
            }
        }
        ArrayNode runs = out.putArray("runs");
        for (EdgeRun run : outline.runs()) {
            runs.addObject()
                    .put("segment", run.name())
                    .put("from", run.fromMm())
                    .put("length", run.lengthMm());
        }
    }
}
