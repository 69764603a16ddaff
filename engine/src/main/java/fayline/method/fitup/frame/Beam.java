package fayline.method.fitup.frame;

/**
 * A straight beam between two nodes.
 *
 * @param i first node, counted from 0
 * @param j second node
 * @param section its stiffness
 * @param zref which way its own z axis lies; what of it lies along the beam is taken off
 */
public record Beam(int i, int j, BeamSection section, Axis zref) {
    /** Refuses a beam from a node to itself. */
    public Beam {
        if (i < 0 || j < 0 || i == j) {
            throw new IllegalArgumentException("a beam joins two nodes, found " + i + " and " + j);
        }
    }

    /** A beam whose own z axis is the one of the frame, as in every plane frame. */
    public static Beam of(int i, int j, BeamSection section) {
        return new Beam(i, j, section, Axis.Z);
    }
}
