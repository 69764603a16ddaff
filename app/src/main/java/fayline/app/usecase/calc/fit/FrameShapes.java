package fayline.app.usecase.calc.fit;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.Beam;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.Frame;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.Freedom;
import fayline.method.fitup.frame.NodeFreedom;
import fayline.method.fitup.frame.bond.BondSpring;
import fayline.method.fitup.frame.spring.Clamp;
import fayline.method.fitup.frame.spring.ClampLimits;
import fayline.method.fitup.frame.spring.SpringBack;
import fayline.method.fitup.frame.spring.Watch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads frames, supports, clamps and bonds. */
final class FrameShapes {
    private static final String NODE = "node, counted from 0";

    private FrameShapes() {}

    static Form question(boolean plane) {
        Kind point = plane ? Kind.plane() : Kind.space();
        Kind freedoms = Kind.list(freedom(plane).asKind(), 0);
        Form form = Form.empty()
                .needs("nodes", Kind.list(point, 2), "places of all nodes of part and structure, mm")
                .needs("partElements", Kind.list(element(plane).asKind(), 1), "beams of the part")
                .needs("structureElements", Kind.list(element(plane).asKind(), 1), "beams of the structure");
        Kind springs = Kind.list(spring(plane).asKind(), 0);
        String tied = "adhesive as springs along the axes; nodes with beams of both are tied";
        form = plane ? form.needs("bondSprings", springs, tied) : form.takes("bondSprings", springs, tied);
        form = form.needs("partSupports", freedoms, "what holds the part in its fixture")
                .needs("assemblySupports", freedoms, "what holds the bonded assembly")
                .needs("clamps", Kind.list(freedom(plane).asKind(), 1), "where the part is pulled in")
                .needs("deviation", Kind.list(Kind.number(), 1), "free part less nominal at each clamp, mm");
        form = plane
                ? form.needs("watch", freedoms, "where the shift after release is asked")
                : form.needs("pins", Kind.list(pin().asKind(), 0), "latch pins and hinge points")
                        .takes("watch", freedoms, "where the shift after release is asked, besides the clamps");
        return form.takes("clampPosition", Kind.list(Kind.number(), 1), "where each clamp holds, less nominal, mm")
                .takes(
                        "clampWay",
                        Kind.list(Kind.word("both", "along", "against"), 1),
                        "what each clamp can do along its dof")
                .takes(
                        "deviationCovariance",
                        Kind.list(Kind.list(Kind.number(), 1), 1),
                        "covariance of the deviations, mm2, a row for each clamp")
                .takes("peel", point, "the way from structure to part in which the bond is pulled open")
                .takes("acrylic", Kind.truth(), "whether the part is of acrylic, which creeps")
                .takes("handLimit", Kind.positive(), "most force of a clamp, N; 150 where it is not given")
                .takes(
                        "strainLimit",
                        Kind.positive(),
                        "most bending strain, as a fraction; 0.002 where it is not given")
                .takes("bondRule", Kind.passedOver(), "explains, is not read")
                .takes("localAxes", Kind.passedOver(), "explains, is not read");
    }

    private static Form freedom(boolean plane) {
        String[] ways = Arrays.stream(Freedom.values())
                .filter(f -> !plane || f.isInPlane())
                .map(Freedom::symbol)
                .toArray(String[]::new);
        return Form.empty()
                .needs("node", Kind.whole(0), NODE)
                .needs("dof", Kind.word(ways), "shift along or turn about an axis");
    }

    private static Form element(boolean plane) {
        Form e = Form.empty()
                .needs("i", Kind.whole(0), NODE)
                .needs("j", Kind.whole(0), NODE)
                .needs("E", Kind.positive(), "modulus, MPa")
                .needs("A", Kind.positive(), "area, mm2");
        return plane
                ? e.needs("I", Kind.positive(), "second moment, mm4")
                        .takes("depth", Kind.positive(), "depth in the plane, mm, for the bending strain")
                : e.needs("G", Kind.positive(), "shear modulus, MPa")
                        .needs("Iy", Kind.positive(), "second moment for bending in local x-z, mm4")
                        .needs("Iz", Kind.positive(), "second moment for bending in local x-y, mm4")
                        .needs("J", Kind.positive(), "torsion constant, mm4")
                        .takes("zref", Kind.space(), "which way local z lies; global z where it is not given")
                        .takes("depthY", Kind.positive(), "depth along local y, mm, for the bending strain")
                        .takes("depthZ", Kind.positive(), "depth along local z, mm, for the bending strain");
    }

    private static Form spring(boolean plane) {
        Form s = Form.empty()
                .needs("partNode", Kind.whole(0), NODE)
                .needs("structureNode", Kind.whole(0), NODE)
                .needs("kx", Kind.notNegative(), "N/mm")
                .needs("ky", Kind.notNegative(), "N/mm");
        return (plane ? s : s.needs("kz", Kind.notNegative(), "N/mm"))
                .needs("kr", Kind.notNegative(), "N mm/rad")
                .takes("thickness", Kind.positive(), "thickness of the adhesive, mm");
    }

    private static Form pin() {
        return Form.empty()
                .needs("id", Kind.text(), "its name")
                .needs("node", Kind.whole(0), NODE)
                .needs("offset", Kind.space(), "rigid arm from the node, mm")
                .needs("axis", Kind.space(), "the way it slides in")
                .needs("radialClearance", Kind.notNegative(), "play all round, mm")
                .takes("strikerNode", Kind.whole(0), "node of the structure that carries its hole, where that moves")
                .takes("strikerOffset", Kind.space(), "rigid arm from that node, mm");
    }

    static SpringBack read(Given g, boolean plane) {
        List<FramePoint> nodes = g.rows("nodes").stream()
                .map(p -> new FramePoint(p.get(0), p.get(1), plane ? 0 : p.get(2)))
                .toList();
        List<Clamp> clamps = clamps(g);
        List<Watch> watches = new ArrayList<>();
        if (!plane) {
            clamps.forEach(c -> watches.add(Watch.at(c.at())));
        }
        freedoms(g, "watch").forEach(w -> watches.add(Watch.at(w)));
        return new SpringBack(
                new Frame(nodes, beams(g, "partElements", plane), plane),
                new Frame(nodes, beams(g, "structureElements", plane), plane),
                g.objects("bondSprings").stream().map(FrameShapes::spring).toList(),
                freedoms(g, "partSupports"),
                freedoms(g, "assemblySupports"),
                clamps,
                watches,
                covariance(g, clamps.size()),
                g.has("peel") ? Optional.of(axis(g.numbers("peel"))) : Optional.empty(),
                List.of(),
                new ClampLimits(
                        g.number("handLimit", ClampLimits.USUAL.handN()),
                        g.number("strainLimit", ClampLimits.USUAL.bendingStrain())),
                g.isTrue("acrylic"));
    }

    private static List<Clamp> clamps(Given g) {
        List<NodeFreedom> at = freedoms(g, "clamps");
        List<Double> deviation = g.numbers("deviation");
        requireEach("deviation", deviation.size(), at.size());
        if (g.has("clampPosition")) {
            requireEach("clampPosition", g.numbers("clampPosition").size(), at.size());
        }
        if (g.has("clampWay")) {
            requireEach("clampWay", g.texts("clampWay").size(), at.size());
        }
        List<Clamp> clamps = new ArrayList<>();
        for (int k = 0; k < at.size(); k++) {
            clamps.add(new Clamp(
                    String.valueOf(k + 1),
                    at.get(k),
                    deviation.get(k),
                    g.has("clampPosition") ? g.numbers("clampPosition").get(k) : 0,
                    g.has("clampWay") ? way(g.texts("clampWay").get(k)) : Clamp.Way.BOTH));
        }
        return clamps;
    }

    private static Clamp.Way way(String word) {
        return switch (word) {
            case "along" -> Clamp.Way.ALONG_ONLY;
            case "against" -> Clamp.Way.AGAINST_ONLY;
            default -> Clamp.Way.BOTH;
        };
    }

    private static void requireEach(String field, int found, int clamps) {
        if (found != clamps) {
            throw CalcInputException.of(field, found + " values", "one for each of " + clamps + " clamps");
        }
    }

    private static Optional<DenseMatrix> covariance(Given g, int clamps) {
        if (!g.has("deviationCovariance")) {
            return Optional.empty();
        }
        List<List<Double>> rows = g.rows("deviationCovariance");
        requireEach("deviationCovariance", rows.size(), clamps);
        rows.forEach(r -> requireEach("deviationCovariance", r.size(), clamps));
        return Optional.of(DenseMatrix.of(rows.stream()
                .map(r -> r.stream().mapToDouble(Double::doubleValue).toArray())
                .toArray(double[][]::new)));
    }

    private static List<NodeFreedom> freedoms(Given g, String name) {
        return g.objects(name).stream()
                .map(s -> new NodeFreedom(
                        s.whole("node"), Freedom.named(s.text("dof")).orElseThrow()))
                .toList();
    }

    private static List<Beam> beams(Given g, String name, boolean plane) {
        return g.objects(name).stream()
                .map(e -> new Beam(
                        e.whole("i"),
                        e.whole("j"),
                        section(e, plane),
                        e.has("zref") ? axis(e.numbers("zref")) : Axis.Z))
                .toList();
    }

    private static BeamSection section(Given e, boolean plane) {
        return plane
                ? new BeamSection(
                        e.number("E"), 0, e.number("A"), 0, e.number("I"), 0, half(e, "depth"), OptionalDouble.empty())
                : new BeamSection(
                        e.number("E"),
                        e.number("G"),
                        e.number("A"),
                        e.number("Iy"),
                        e.number("Iz"),
                        e.number("J"),
                        half(e, "depthY"),
                        half(e, "depthZ"));
    }

    private static OptionalDouble half(Given e, String name) {
        return e.has(name) ? OptionalDouble.of(e.number(name) / 2) : OptionalDouble.empty();
    }

    private static BondSpring spring(Given b) {
        return new BondSpring(
                b.whole("partNode"),
                b.whole("structureNode"),
                b.number("kx"),
                b.number("ky"),
                b.number("kz", 0),
                b.number("kr"),
                b.maybe("thickness"));
    }

    static FramePoint point(List<Double> p) {
        return new FramePoint(p.get(0), p.get(1), p.get(2));
    }

    static Axis axis(List<Double> a) {
        return new Axis(a.get(0), a.get(1), a.size() > 2 ? a.get(2) : 0);
    }
}
