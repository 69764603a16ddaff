package fayline.method.fitup.frame.load;

import fayline.basis.finding.Figure;
import fayline.method.fitup.frame.Beam;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.Frame;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.Freedom;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.NodeFreedom;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * The four lines of a beam table by the same finite elements that the spring-back of a frame is computed with: PL³/3EI and
 * PL²/2EI, PL³/48EI, PL³/192EI, 7PL³/768EI [roark1989] follow at the nodes, whatever the number of elements.
 */
public final class BeamTableCalculator {
    private BeamTableCalculator() {}

    /**
     * Answers the question.
     *
     * @throws IllegalArgumentException if the section is none
     */
    public static BeamTableResult calculate(BeamTable beam) {
        int n = beam.elements();
        NodalField cantilever = solved(beam, n, held(0, true));
        NodeFreedom tip = new NodeFreedom(n, Freedom.UY);
        NodeFreedom middle = new NodeFreedom(n / 2, Freedom.UY);
        double tipMm = cantilever.get(tip);
        double simpleMm = solved(beam, n / 2, both(n, false, false)).get(middle);
        double fixedMm = solved(beam, n / 2, both(n, true, true)).get(middle);
        double proppedMm = solved(beam, n / 2, both(n, true, false)).get(middle);
        return new BeamTableResult(
                tipMm,
                cantilever.get(new NodeFreedom(n, Freedom.RZ)),
                simpleMm,
                fixedMm,
                proppedMm,
                List.of(
                        figure(beam, "Cantilever, tip", tipMm),
                        figure(beam, "Ends free to turn, middle", simpleMm),
                        figure(beam, "Ends held fast, middle", fixedMm),
                        figure(beam, "One end held fast, one free to turn, middle", proppedMm)));
    }

    private static List<NodeFreedom> held(int node, boolean fast) {
        List<NodeFreedom> held = new ArrayList<>();
        held.add(new NodeFreedom(node, Freedom.UX));
        held.add(new NodeFreedom(node, Freedom.UY));
        if (fast) {
            held.add(new NodeFreedom(node, Freedom.RZ));
        }
        return held;
    }

    private static List<NodeFreedom> both(int last, boolean firstFast, boolean lastFast) {
        List<NodeFreedom> held = new ArrayList<>(held(0, firstFast));
        held.addAll(held(last, lastFast));
        return held;
    }

    private static NodalField solved(BeamTable beam, int loaded, List<NodeFreedom> supports) {
        int n = beam.elements();
        BeamSection section = BeamSection.plane(beam.eMpa(), beam.areaMm2(), beam.iMm4());
        Frame frame = Frame.inPlane(
                IntStream.rangeClosed(0, n)
                        .mapToObj(k -> FramePoint.of(beam.lengthMm() * k / n, 0))
                        .toList(),
                IntStream.range(0, n).mapToObj(k -> Beam.of(k, k + 1, section)).toList());
        return FrameCalculator.calculate(new FrameCase(
                        frame, supports, List.of(new FrameLoad(new NodeFreedom(loaded, Freedom.UY), beam.forceN()))))
                .motion()
                .orElseThrow();
    }

    private static Figure figure(BeamTable beam, String name, double mm) {
        return new Figure(
                name,
                String.format(Locale.ROOT, "%.3f mm", mm),
                "finite elements, Euler and Bernoulli",
                List.of(
                        input("E", beam.eMpa(), "MPa"),
                        input("I", beam.iMm4(), "mm4"),
                        input("length", beam.lengthMm(), "mm"),
                        input("force", beam.forceN(), "N")),
                "[roark1989]",
                List.of("No shear deflection: a short or soft-cored beam bends farther."));
    }

    private static Figure.Input input(String name, double value, String unit) {
        return new Figure.Input(name, String.format(Locale.ROOT, "%.6g %s", value, unit), Figure.Origin.ENTERED);
    }
}
