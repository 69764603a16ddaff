package fayline.method.fitup.frame;

import fayline.checks.FitCase;
import fayline.method.fitup.frame.bond.BondSpring;
import fayline.method.fitup.frame.spring.Clamp;
import fayline.method.fitup.frame.spring.SpringBack;
import fayline.method.fitup.frame.spring.Watch;
import java.util.ArrayList;
import java.util.List;

/** Reads the spring-back cases. */
public final class FrameCases {
    private FrameCases() {}

    /** The question of a case in the plane. */
    public static SpringBack inPlane(FitCase.Node in) {
        List<FramePoint> nodes = in.get("nodes").items().stream()
                .map(p -> FramePoint.of(p.numbers().get(0), p.numbers().get(1)))
                .toList();
        return SpringBack.of(
                Frame.inPlane(nodes, planeBeams(in.get("partElements"))),
                Frame.inPlane(nodes, planeBeams(in.get("structureElements"))),
                in.get("bondSprings").items().stream()
                        .map(b -> BondSpring.inPlane(
                                (int) b.number("partNode"),
                                (int) b.number("structureNode"),
                                b.number("kx"),
                                b.number("ky"),
                                b.number("kr")))
                        .toList(),
                freedoms(in.get("partSupports")),
                freedoms(in.get("assemblySupports")),
                clamps(in),
                freedoms(in.get("watch")).stream().map(Watch::at).toList());
    }

    /** The question of a case in space; its clamps are watched. */
    public static SpringBack inSpace(FitCase.Node in) {
        List<FramePoint> nodes =
                in.get("nodes").items().stream().map(p -> point(p.numbers())).toList();
        return SpringBack.of(
                Frame.inSpace(nodes, spaceBeams(in.get("partElements"))),
                Frame.inSpace(nodes, spaceBeams(in.get("structureElements"))),
                List.of(),
                freedoms(in.get("partSupports")),
                freedoms(in.get("assemblySupports")),
                clamps(in),
                freedoms(in.get("clamps")).stream().map(Watch::at).toList());
    }

    /** A place of three numbers. */
    public static FramePoint point(List<Double> p) {
        return new FramePoint(p.get(0), p.get(1), p.get(2));
    }

    private static List<Beam> planeBeams(FitCase.Node list) {
        return list.items().stream()
                .map(e -> Beam.of(
                        (int) e.number("i"),
                        (int) e.number("j"),
                        BeamSection.plane(e.number("E"), e.number("A"), e.number("I"))))
                .toList();
    }

    private static List<Beam> spaceBeams(FitCase.Node list) {
        return list.items().stream()
                .map(e -> Beam.of(
                        (int) e.number("i"),
                        (int) e.number("j"),
                        BeamSection.entered(
                                e.number("E"),
                                e.number("G"),
                                e.number("A"),
                                e.number("Iy"),
                                e.number("Iz"),
                                e.number("J"))))
                .toList();
    }

    private static List<NodeFreedom> freedoms(FitCase.Node list) {
        return list.items().stream()
                .map(s -> new NodeFreedom(
                        (int) s.number("node"), Freedom.named(s.text("dof")).orElseThrow()))
                .toList();
    }

    private static List<Clamp> clamps(FitCase.Node in) {
        List<NodeFreedom> at = freedoms(in.get("clamps"));
        List<Double> deviation = in.get("deviation").numbers();
        List<Clamp> clamps = new ArrayList<>();
        for (int k = 0; k < at.size(); k++) {
            clamps.add(Clamp.toNominal("C" + (k + 1), at.get(k), deviation.get(k)));
        }
        return clamps;
    }
}
