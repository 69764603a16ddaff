package fayline.method.fitup.frame;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Nodes and the beams between them. Two frames that are bonded share one list of nodes; a node at which both have beams is
 * tied.
 *
 * @param nodes every node, also those of the other frame
 * @param beams the beams of this frame
 * @param plane whether everything lies and moves in the plane of x and y
 */
public record Frame(List<FramePoint> nodes, List<Beam> beams, boolean plane) {
    private static final double SHORTEST_MM = 1e-9;
    private static final double PARALLEL = 1e-6;

    /**
     * Copies the lists and checks every beam.
     *
     * @throws IllegalArgumentException naming the beam, counted from 0
     */
    public Frame {
        nodes = List.copyOf(nodes);
        beams = List.copyOf(beams);
        for (int n = 0; n < beams.size(); n++) {
            check(nodes, beams.get(n), n, plane);
        }
    }

    /** A frame in the plane of x and y. */
    public static Frame inPlane(List<FramePoint> nodes, List<Beam> beams) {
        return new Frame(nodes, beams, true);
    }

    /** A frame in space. */
    public static Frame inSpace(List<FramePoint> nodes, List<Beam> beams) {
        return new Frame(nodes, beams, false);
    }

    /** Whether a beam of this frame ends at a node. */
    public boolean carries(int node) {
        return beams.stream().anyMatch(b -> b.i() == node || b.j() == node);
    }

    /** Half the length of the beams that end at a node, in mm: the run of frame that the node stands for. */
    public double tributaryMm(int node) {
        return beams.stream()
                .filter(b -> b.i() == node || b.j() == node)
                .mapToDouble(b -> nodes.get(b.j()).from(nodes.get(b.i())).lengthMm() / 2)
                .sum();
    }

    /**
     * The highest bending strain in any beam whose section has a known depth.
     *
     * @param motion how the nodes moved from the shape without stress
     * @return empty where no section has a depth
     */
    public Optional<BeamStrain> highestBending(NodalField motion) {
        return IntStream.range(0, beams.size())
                .filter(n -> depthKnown(beams.get(n).section()))
                .mapToObj(n -> new BeamStrain(
                        n,
                        beams.get(n).i(),
                        beams.get(n).j(),
                        new BeamElement(this, beams.get(n)).bendingStrain(motion, plane)))
                .max(Comparator.comparingDouble(BeamStrain::strain));
    }

    private boolean depthKnown(BeamSection section) {
        return section.fibreYMm().isPresent() && (plane || section.fibreZMm().isPresent());
    }

    private static void check(List<FramePoint> nodes, Beam beam, int n, boolean plane) {
        String name = "beam " + n + " (" + beam.i() + " to " + beam.j() + ")";
        if (Math.max(beam.i(), beam.j()) >= nodes.size()) {
            throw new IllegalArgumentException(name + " names a node that is not there; there are " + nodes.size());
        }
        FramePoint from = nodes.get(beam.i());
        FramePoint to = nodes.get(beam.j());
        FramePoint arm = to.from(from);
        if (arm.lengthMm() < SHORTEST_MM) {
            throw new IllegalArgumentException(name + " has no length");
        }
        if (plane && (from.zMm() != 0 || to.zMm() != 0 || Math.abs(beam.zref().z()) != 1)) {
            throw new IllegalArgumentException(name + " leaves the plane of x and y");
        }
        if (1 - Math.abs(Axis.of(arm).dot(beam.zref())) < PARALLEL * PARALLEL) {
            throw new IllegalArgumentException(name + " runs along its reference for z; give it another zref");
        }
    }
}
