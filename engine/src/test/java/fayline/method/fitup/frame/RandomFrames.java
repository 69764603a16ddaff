package fayline.method.fitup.frame;

import fayline.method.fitup.frame.bond.BondSpring;
import fayline.method.fitup.frame.spring.Clamp;
import fayline.method.fitup.frame.spring.SpringBack;
import fayline.method.fitup.frame.spring.Watch;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

/** Seeded questions: a crooked ring bonded to a heavier one, tied at some nodes and sprung at others. */
public final class RandomFrames {
    private static final int RING = 8;

    private RandomFrames() {}

    /** A question in space; the fixture lets go where the assembly is held elsewhere. */
    public static SpringBack inSpace(long seed) {
        Random r = new Random(seed);
        List<FramePoint> nodes = new ArrayList<>();
        ring(nodes, r, 200, 0);
        ring(nodes, r, 260, 20);
        List<Beam> part = new ArrayList<>();
        List<Beam> structure = new ArrayList<>();
        for (int k = 0; k < RING; k++) {
            int next = (k + 1) % RING;
            part.add(new Beam(k, next, section(r, 1), direction(r)));
            structure.add(new Beam(RING + k, RING + next, section(r, 3), direction(r)));
        }
        structure.add(new Beam(RING, 0, section(r, 3), direction(r)));
        structure.add(new Beam(RING + 3, 3, section(r, 3), direction(r)));
        List<BondSpring> bonds = List.of(spring(r, 2), spring(r, 5), spring(r, 6));
        List<NodeFreedom> fixture = List.of(
                at(0, Freedom.UX),
                at(0, Freedom.UY),
                at(0, Freedom.UZ),
                at(3, Freedom.UX),
                at(3, Freedom.UZ),
                at(5, Freedom.UZ));
        List<NodeFreedom> stand = List.of(
                at(9, Freedom.UX),
                at(9, Freedom.UY),
                at(9, Freedom.UZ),
                at(9, Freedom.RX),
                at(12, Freedom.UX),
                at(12, Freedom.UZ),
                at(14, Freedom.UY));
        List<Clamp> clamps = List.of(
                Clamp.toNominal("a", at(1, Freedom.UZ), r.nextDouble() * 3 - 1),
                Clamp.toNominal("b", at(4, Freedom.UY), r.nextDouble() * 3 - 1),
                Clamp.toNominal("c", at(6, Freedom.RZ), r.nextDouble() * 0.02),
                Clamp.toNominal("d", at(7, Freedom.UX), r.nextDouble() * 3 - 1));
        List<Watch> watches = List.of(
                Watch.at(at(1, Freedom.UZ)),
                Watch.at(at(2, Freedom.UX)),
                Watch.at(at(11, Freedom.UY)),
                Watch.at(at(6, Freedom.RX)));
        return SpringBack.of(
                Frame.inSpace(nodes, part), Frame.inSpace(nodes, structure), bonds, fixture, stand, clamps, watches);
    }

    private static void ring(List<FramePoint> nodes, Random r, double radius, double z) {
        for (int k = 0; k < RING; k++) {
            double angle = 2 * Math.PI * k / RING;
            nodes.add(new FramePoint(
                    radius * Math.cos(angle) + 20 * r.nextDouble(),
                    radius * Math.sin(angle) + 20 * r.nextDouble(),
                    z + 30 * r.nextDouble()));
        }
    }

    private static BeamSection section(Random r, double stiff) {
        return BeamSection.entered(
                40_000 + 20_000 * r.nextDouble(),
                15_000 + 5_000 * r.nextDouble(),
                stiff * (150 + 100 * r.nextDouble()),
                stiff * (2_000 + 4_000 * r.nextDouble()),
                stiff * (2_000 + 9_000 * r.nextDouble()),
                stiff * (3_000 + 4_000 * r.nextDouble()));
    }

    private static Axis direction(Random r) {
        return new Axis(r.nextDouble() * 0.4, r.nextDouble() * 0.4, 1);
    }

    private static BondSpring spring(Random r, int node) {
        return new BondSpring(
                node,
                RING + node,
                100 + 900 * r.nextDouble(),
                100 + 900 * r.nextDouble(),
                300 + 900 * r.nextDouble(),
                2_000 * r.nextDouble(),
                OptionalDouble.empty());
    }

    private static NodeFreedom at(int node, Freedom freedom) {
        return new NodeFreedom(node, freedom);
    }
}
