package fayline.method.fitup.frame.bond;

import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.Frame;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.FrameStiffness;
import fayline.method.fitup.frame.Freedom;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.NodeFreedom;
import fayline.method.fitup.frame.NodeMotion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The bond between a part and a structure: nodes at which both have beams, tied, and springs between others.
 *
 * @param part the part
 * @param structure the structure, with the same list of nodes
 * @param bonds springs
 * @param peel the way from structure to part in which the bond is pulled open, where it is one and the same; else, for springs
 *     between nodes that lie apart, the line from one to the other is taken
 */
public record BondLine(Frame part, Frame structure, List<BondSpring> bonds, Optional<Axis> peel) {
    private static final double APART_MM = 1e-6;

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if a spring does not join a node of the part to one of the structure
     */
    public BondLine {
        bonds = List.copyOf(bonds);
        for (BondSpring b : bonds) {
            requirePair(part, structure, b.partNode(), b.structureNode(), "a bond");
        }
    }

    /** Nodes at which part and structure are tied. */
    public List<Integer> tied() {
        return IntStream.range(0, part.nodes().size())
                .filter(n -> part.carries(n) && structure.carries(n))
                .boxed()
                .toList();
    }

    /** The stiffness of part and structure together. */
    public FrameStiffness assembly() {
        return FrameStiffness.of(
                List.of(part, structure),
                bonds.stream().flatMap(b -> b.springs(part.plane()).stream()).toList());
    }

    /**
     * What the bond carries.
     *
     * @param movement how the assembly moved from the state in which the bond set
     * @param supports what holds the assembly
     * @return tied nodes first, then springs, in order
     */
    public List<BondForce> forces(NodalField movement, List<NodeFreedom> supports) {
        Set<Integer> held = supports.stream().map(NodeFreedom::node).collect(Collectors.toSet());
        NodalField onStructure = FrameStiffness.of(structure).times(movement);
        List<BondForce> all = new ArrayList<>();
        for (int node : tied()) {
            NodeMotion f = onStructure.at(node);
            double run = part.tributaryMm(node);
            OptionalDouble line =
                    peel.isPresent() ? OptionalDouble.of(f.shift().along(peel.get()) / run) : OptionalDouble.empty();
            all.add(new BondForce(node, node, f, run, line, OptionalDouble.empty(), false, held.contains(node)));
        }
        bonds.forEach(b -> all.add(force(b, movement)));
        return all;
    }

    private BondForce force(BondSpring bond, NodalField movement) {
        double[] f = new double[Freedom.values().length];
        double[] apart = new double[f.length];
        for (Freedom way : Freedom.values()) {
            apart[way.place()] = movement.get(new NodeFreedom(bond.partNode(), way))
                    - movement.get(new NodeFreedom(bond.structureNode(), way));
            f[way.place()] = bond.stiffness(way) * apart[way.place()];
        }
        NodeMotion force = new NodeMotion(f[0], f[1], f[2], f[3], f[4], f[5]);
        double run = bond.runMm().orElse(part.tributaryMm(bond.partNode()));
        Optional<Axis> way = opening(bond);
        if (way.isEmpty()) {
            return new BondForce(
                    bond.partNode(),
                    bond.structureNode(),
                    force,
                    run,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    false,
                    false);
        }
        double opened = new FramePoint(apart[0], apart[1], apart[2]).along(way.get());
        return new BondForce(
                bond.partNode(),
                bond.structureNode(),
                force,
                run,
                OptionalDouble.of(force.shift().along(way.get()) / run),
                OptionalDouble.of(opened),
                bond.thicknessMm().isPresent() && -opened > bond.thicknessMm().getAsDouble(),
                false);
    }

    private Optional<Axis> opening(BondSpring bond) {
        FramePoint arm = part.nodes().get(bond.partNode()).from(part.nodes().get(bond.structureNode()));
        return peel.isPresent() || arm.lengthMm() < APART_MM ? peel : Optional.of(Axis.of(arm));
    }

    /**
     * What is left of gaps beside the bond.
     *
     * @param gaps the gaps while clamped
     * @param partMovement how the part moved since
     * @param structureMovement how the structure moved
     */
    public List<ClearanceLeft> clearances(List<Clearance> gaps, NodalField partMovement, NodalField structureMovement) {
        return gaps.stream()
                .map(c -> new ClearanceLeft(
                        c,
                        c.gapMm()
                                + partMovement
                                        .at(c.partNode())
                                        .shift()
                                        .from(structureMovement
                                                .at(c.structureNode())
                                                .shift())
                                        .along(c.opening())))
                .toList();
    }

    /**
     * Refuses two nodes of which the first is not of the part or the second not of the structure.
     *
     * @throws IllegalArgumentException naming both
     */
    public static void requirePair(Frame part, Frame structure, int a, int b, String name) {
        if (!part.carries(a) || !structure.carries(b)) {
            throw new IllegalArgumentException(
                    name + " joins a node of the part to one of the structure, found " + a + " and " + b);
        }
    }
}
