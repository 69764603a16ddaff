package fayline.method.fitup.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * What moves without resistance because a support is missing.
 *
 * @param motions independent motions, each with its farthest shift at 1 mm
 */
public record Mechanism(List<NodalField> motions) {
    private static final double SAME = 1e-6;
    private static final int NAMED = 3;

    /** Copies the list. */
    public Mechanism {
        motions = List.copyOf(motions);
    }

    /** Each motion in words. */
    public List<String> words() {
        return words(NodeNames.NUMBERED);
    }

    /** The same with names for its nodes. */
    public List<String> words(NodeNames names) {
        return motions.stream().map(m -> words(m, names)).toList();
    }

    private static String words(NodalField motion, NodeNames names) {
        List<Integer> moving = IntStream.range(0, motion.nodes())
                .filter(n -> moves(motion.at(n)))
                .boxed()
                .toList();
        List<NodeMotion> all = moving.stream().map(motion::at).toList();
        NodeMotion one = all.get(0);
        boolean noTurn = all.stream().allMatch(m -> turn(m) < SAME);
        if (noTurn && all.stream().allMatch(m -> m.shift().from(one.shift()).lengthMm() < SAME)) {
            return "it slides as a whole along " + along(one.shift());
        }
        boolean oneTurn = all.stream()
                .allMatch(m -> Math.abs(m.rx() - one.rx()) + Math.abs(m.ry() - one.ry()) + Math.abs(m.rz() - one.rz())
                        < SAME * turn(one));
        if (oneTurn) {
            return "it turns about " + along(new FramePoint(one.rx(), one.ry(), one.rz())) + "; "
                    + farthest(motion, moving, names);
        }
        return farthest(motion, moving, names);
    }

    private static boolean moves(NodeMotion m) {
        return m.sizeMm() > SAME || turn(m) > 0;
    }

    private static double turn(NodeMotion m) {
        return Math.sqrt(m.rx() * m.rx() + m.ry() * m.ry() + m.rz() * m.rz());
    }

    private static String farthest(NodalField motion, List<Integer> moving, NodeNames names) {
        List<String> told = new ArrayList<>();
        moving.stream()
                .sorted(Comparator.comparingDouble(
                        (Integer n) -> -Math.rint(motion.at(n).sizeMm() / SAME)))
                .limit(NAMED)
                .forEach(n -> told.add(String.format(
                        Locale.ROOT,
                        "%s goes %.2f along %s",
                        names.node(n),
                        motion.at(n).sizeMm(),
                        motion.at(n).sizeMm() > SAME ? along(motion.at(n).shift()) : "nothing and turns")));
        return String.join(", ", told);
    }

    private static String along(FramePoint arm) {
        Axis a = Axis.of(arm);
        double[] parts = {a.x(), a.y(), a.z()};
        String[] names = {"x", "y", "z"};
        for (int k = 0; k < parts.length; k++) {
            if (Math.abs(parts[k]) > 1 - SAME) {
                return names[k];
            }
        }
        return String.format(Locale.ROOT, "(%.2f, %.2f, %.2f)", a.x(), a.y(), a.z());
    }
}
