package fayline.method.fitup.frame;

import fayline.basis.numeric.ProfileFactor;
import fayline.basis.numeric.ProfileMatrix;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The stiffness of one frame, or of frames tied at shared nodes and joined by springs. Small motions, straight beams without
 * shear deflection, straight from the definition of stiffness [przemieniecki1968]. It never changes.
 */
public final class FrameStiffness {
    private static final int WAYS = Freedom.values().length;
    private static final int NOT_THERE = -1;

    private final int nodes;
    private final int[] unknown;
    private final ProfileMatrix matrix;

    private FrameStiffness(int nodes, int[] unknown, ProfileMatrix matrix) {
        this.nodes = nodes;
        this.unknown = unknown;
        this.matrix = matrix;
    }

    /** The stiffness of one frame, free in space. */
    public static FrameStiffness of(Frame frame) {
        return of(List.of(frame), List.of());
    }

    /**
     * The stiffness of frames together.
     *
     * @param frames at least one, all with the same nodes and all in the plane or all in space
     * @param springs what joins them besides shared nodes
     * @throws IllegalArgumentException if the frames do not share their nodes, or a spring ends at a node without beams
     */
    public static FrameStiffness of(List<Frame> frames, List<NodeSpring> springs) {
        Frame lead = frames.get(0);
        if (frames.stream().anyMatch(f -> !f.nodes().equals(lead.nodes()) || f.plane() != lead.plane())) {
            throw new IllegalArgumentException("frames that are joined share one list of nodes and one kind of motion");
        }
        int[] unknown = numbered(frames, lead);
        int size = (int) Arrays.stream(unknown).filter(u -> u != NOT_THERE).count();
        ProfileMatrix.Builder builder = ProfileMatrix.builder(size);
        for (Frame frame : frames) {
            frame.beams().forEach(b -> add(builder, unknown, new BeamElement(frame, b)));
        }
        springs.forEach(s -> add(builder, unknown, s));
        return new FrameStiffness(lead.nodes().size(), unknown, builder.build());
    }

    private static int[] numbered(List<Frame> frames, Frame lead) {
        int[] unknown = new int[lead.nodes().size() * WAYS];
        BitSet used = new BitSet();
        frames.forEach(f -> f.beams().forEach(b -> {
            used.set(b.i());
            used.set(b.j());
        }));
        Arrays.fill(unknown, NOT_THERE);
        int next = 0;
        for (int node = used.nextSetBit(0); node >= 0; node = used.nextSetBit(node + 1)) {
            for (Freedom f : Freedom.values()) {
                if (!lead.plane() || f.isInPlane()) {
                    unknown[node * WAYS + f.place()] = next++;
                }
            }
        }
        return unknown;
    }

    private static void add(ProfileMatrix.Builder builder, int[] unknown, BeamElement element) {
        for (int a = 0; a < 2 * WAYS; a++) {
            int row = unknown[element.node(a) * WAYS + a % WAYS];
            for (int b = 0; b <= a && row != NOT_THERE; b++) {
                int col = unknown[element.node(b) * WAYS + b % WAYS];
                if (col != NOT_THERE) {
                    builder.add(row, col, element.stiffness(a, b));
                }
            }
        }
    }

    private static void add(ProfileMatrix.Builder builder, int[] unknown, NodeSpring spring) {
        int a = unknown[spring.a() * WAYS + spring.freedom().place()];
        int b = unknown[spring.b() * WAYS + spring.freedom().place()];
        if (a == NOT_THERE || b == NOT_THERE) {
            throw new IllegalArgumentException("a spring joins nodes with beams that can move along "
                    + spring.freedom().symbol() + ", found " + spring.a() + " and " + spring.b());
        }
        builder.add(a, a, spring.stiffness()).add(b, b, spring.stiffness()).add(a, b, -spring.stiffness());
    }

    /** Whether a freedom is there: its node has a beam, and in a plane frame it stays in the plane. */
    public boolean has(NodeFreedom at) {
        int k = at.node() * WAYS + at.freedom().place();
        return k < unknown.length && unknown[k] != NOT_THERE;
    }

    /** The forces that hold a motion. */
    public NodalField times(NodalField motion) {
        return field(matrix.times(column(motion)));
    }

    /**
     * The frame with some freedoms held.
     *
     * @param supports what is held at zero
     * @throws IllegalArgumentException if a support holds what is not there
     */
    public Held held(Collection<NodeFreedom> supports) {
        BitSet held = new BitSet();
        for (NodeFreedom s : supports) {
            if (!has(s)) {
                throw new IllegalArgumentException(s.words() + " cannot be held: nothing moves there");
            }
            held.set(unknown[s.node() * WAYS + s.freedom().place()]);
        }
        return new Held(matrix.factor(held));
    }

    private double[] column(NodalField field) {
        double[] c = new double[matrix.size()];
        for (int k = 0; k < unknown.length; k++) {
            if (unknown[k] != NOT_THERE) {
                c[unknown[k]] = field.get(k);
            }
        }
        return c;
    }

    private NodalField field(double[] column) {
        return NodalField.of(nodes, k -> unknown[k] == NOT_THERE ? 0 : column[unknown[k]]);
    }

    /** The frame on its supports. */
    public final class Held {
        private final ProfileFactor factor;

        private Held(ProfileFactor factor) {
            this.factor = factor;
        }

        /** How the nodes move under forces; forces at held freedoms do not count. */
        public NodalField solve(NodalField forces) {
            return field(factor.solve(column(forces)));
        }

        /** The motions that nothing resists, each with its farthest shift at 1 mm; empty where the frame stands. */
        public Optional<Mechanism> mechanism() {
            List<NodalField> free = new ArrayList<>();
            for (double[] motion : factor.freeMotions()) {
                NodalField f = field(motion);
                double size = f.farthestShiftMm();
                free.add(f.scaled(size > 0 ? 1 / size : 1));
            }
            return free.isEmpty() ? Optional.empty() : Optional.of(new Mechanism(free));
        }
    }
}
