package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.Finding;
import fayline.method.fitup.frame.BeamStrain;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.NodeMotion;
import fayline.method.fitup.frame.bond.BondForce;
import fayline.method.fitup.frame.load.BeamTable;
import fayline.method.fitup.frame.load.BeamTableCalculator;
import fayline.method.fitup.frame.load.BeamTableResult;
import fayline.method.fitup.frame.pin.LatchPin;
import fayline.method.fitup.frame.pin.PinCalculator;
import fayline.method.fitup.frame.pin.PinPlace;
import fayline.method.fitup.frame.pin.PinResult;
import fayline.method.fitup.frame.pin.PinShift;
import fayline.method.fitup.frame.spring.ClampForce;
import fayline.method.fitup.frame.spring.SpringBack;
import fayline.method.fitup.frame.spring.SpringBackCalculator;
import fayline.method.fitup.frame.spring.SpringBackResult;
import fayline.method.fitup.frame.spring.SpringBackShape;
import fayline.method.fitup.frame.spring.Watched;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Clamped and bonded frames, their latch pins, and the tables of single beams. */
final class FrameTopics {
    private FrameTopics() {}

    static List<CalcTopic> all() {
        return List.of(beamTable(), plane(), space());
    }

    private static CalcTopic beamTable() {
        return new FitTopic(
                "beam.table",
                "How far a straight beam bends under one force, held in the four ways of a table.",
                Form.empty()
                        .needs("E", Kind.positive(), "modulus, MPa")
                        .needs("A", Kind.positive(), "area, mm2")
                        .needs("I", Kind.positive(), "second moment, mm4")
                        .needs("length", Kind.positive(), "mm")
                        .needs("force", Kind.number(), "across, at the tip or in the middle, N")
                        .needs("elements", Kind.whole(2), "pieces of the beam; even"),
                g -> FitAnswers.refusing(() -> table(g)));
    }

    private static CalcTopic plane() {
        return new FitTopic(
                "springback.2d",
                "What a part does that is clamped, bonded and let go, as a frame in the plane.",
                FrameShapes.question(true),
                g -> FitAnswers.refusing(() -> springBack(g, true)));
    }

    private static CalcTopic space() {
        return new FitTopic(
                "springback.3d",
                "What a part does that is clamped, bonded and let go, as a frame in space, and whether its latch pins go in.",
                FrameShapes.question(false),
                g -> FitAnswers.refusing(() -> springBack(g, false)));
    }

    private static CalcAnswer table(Given g) {
        BeamTableResult r = BeamTableCalculator.calculate(new BeamTable(
                g.number("E"),
                g.number("A"),
                g.number("I"),
                g.number("length"),
                g.number("force"),
                g.whole("elements")));
        ObjectNode out = Json.object();
        out.putObject("cantileverTip").put("deflection", r.cantileverTipMm()).put("rotationRad", r.cantileverTipRad());
        out.putObject("simplySupportedCentre").put("deflection", r.simplySupportedCentreMm());
        out.putObject("fixedFixedCentre").put("deflection", r.fixedFixedCentreMm());
        out.putObject("proppedCentre").put("deflection", r.proppedCentreMm());
        Map<String, String> units = new HashMap<>();
        out.fieldNames().forEachRemaining(name -> units.put(name, "mm, rad"));
        return FitAnswers.of(out, units, r.figures(), List.of());
    }

    private static CalcAnswer springBack(Given g, boolean plane) {
        SpringBack question = FrameShapes.read(g, plane);
        SpringBackResult r = SpringBackCalculator.calculate(question);
        ObjectNode out = Json.object().put("status", r.status().name());
        List<Finding> findings = new ArrayList<>(r.findings());
        r.mechanism().ifPresent(m -> m.words().forEach(out.putArray("modes")::add));
        if (r.shape().isPresent()) {
            SpringBackShape s = r.shape().get();
            out.set(
                    "clampForces",
                    Shapes.json(s.clampForces().stream().map(ClampForce::forceN).toList()));
            watched(out, s, plane ? 0 : question.clamps().size());
            if (!plane) {
                PinResult pins = PinCalculator.calculate(pins(g), s, question.deviationCovariance());
                pins(out, pins);
                findings.addAll(pins.findings());
            }
            bonds(out, s, plane);
            strain(out, "bendingStrainClamped", s.bendingClamped());
            strain(out, "bendingStrainReleased", s.bendingReleased());
        }
        return FitAnswers.of(
                out,
                Map.of(
                        "clampForces", "N, of a turn N mm",
                        "releasedDisplacement", "mm, of a turn rad",
                        "releasedStd", "mm, of a turn rad",
                        "clampDisplacementAfterRelease", "mm, of a turn rad",
                        "leastRelief", "mm, of a turn rad",
                        "pins", "mm",
                        "bonds", "N, N mm, N/mm"),
                r.figures(),
                findings);
    }

    /** In space the clamps are watched first, under a name of their own. */
    private static void watched(ObjectNode out, SpringBackShape s, int clamps) {
        List<Double> shifts = s.watched().stream().map(Watched::shiftMm).toList();
        if (clamps > 0) {
            out.set("clampDisplacementAfterRelease", Shapes.json(shifts.subList(0, clamps)));
        }
        List<Watched> asked = s.watched().subList(clamps, s.watched().size());
        if (clamps > 0 && asked.isEmpty()) {
            return;
        }
        out.set("releasedDisplacement", Shapes.json(shifts.subList(clamps, shifts.size())));
        ArrayNode rows = out.putArray("sensitivity");
        for (int w = clamps; w < shifts.size(); w++) {
            ArrayNode row = rows.addArray();
            for (double v : s.sensitivity().row(w)) {
                row.add(v);
            }
        }
        if (s.covariance().isPresent()) {
            ArrayNode std = out.putArray("releasedStd");
            asked.forEach(w -> FitAnswers.add(std, w.stdMm()));
        }
        ArrayNode most = out.putArray("mostFromClamp");
        asked.forEach(w -> most.add(w.most().clampId()));
        if (clamps == 0) {
            out.set("leastRelief", Shapes.json(s.leastRelief()));
        }
    }

    private static List<LatchPin> pins(Given g) {
        return g.objects("pins").stream()
                .map(p -> new LatchPin(
                        p.text("id"),
                        new PinPlace(p.whole("node"), FrameShapes.point(p.numbers("offset")), true),
                        FrameShapes.axis(p.numbers("axis")),
                        p.number("radialClearance"),
                        striker(p)))
                .toList();
    }

    private static Optional<PinPlace> striker(Given p) {
        return p.has("strikerNode")
                ? Optional.of(new PinPlace(
                        p.whole("strikerNode"),
                        p.has("strikerOffset")
                                ? FrameShapes.point(p.numbers("strikerOffset"))
                                : new FramePoint(0, 0, 0),
                        false))
                : Optional.empty();
    }

    private static void pins(ObjectNode out, PinResult result) {
        ObjectNode pins = out.putObject("pins");
        ObjectNode sensitivity = out.putObject("sensitivityPins");
        for (PinShift p : result.pins()) {
            ObjectNode one = pins.putObject(p.pin().id());
            FramePoint d = p.displacement();
            one.putArray("displacement").add(d.xMm()).add(d.yMm()).add(d.zMm());
            one.put("lateral", p.lateralMm())
                    .put("clearanceLeft", p.clearanceLeftMm())
                    .put("status", p.binds() ? "BINDS" : "OK")
                    .put("tiltDeg", Math.toDegrees(p.tiltRad()));
            p.lateralStdMm().ifPresent(v -> one.put("lateralStd", v));
            FitAnswers.rows(p.sensitivity(), sensitivity.putArray(p.pin().id()));
        }
    }

    private static void bonds(ObjectNode out, SpringBackShape s, boolean plane) {
        ArrayNode bonds = out.putArray("bonds");
        for (BondForce b : s.bonds()) {
            ObjectNode one = bonds.addObject().put("partNode", b.partNode()).put("structureNode", b.structureNode());
            NodeMotion f = b.force();
            ArrayNode force = one.putArray("force").add(f.ux()).add(f.uy());
            if (plane) {
                force.add(f.rz());
            } else {
                force.add(f.uz()).add(f.rx()).add(f.ry()).add(f.rz());
            }
            b.peelNPerMm().ifPresent(v -> one.put("peelPerMm", v));
            b.openingMm().ifPresent(v -> one.put("opening", v));
            if (b.atSupport()) {
                one.put("atSupport", true);
            }
        }
    }

    private static void strain(ObjectNode out, String name, Optional<BeamStrain> strain) {
        strain.ifPresent(v -> out.put(name, v.strain()));
    }
}
