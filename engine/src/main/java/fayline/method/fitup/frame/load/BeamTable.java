package fayline.method.fitup.frame.load;

/**
 * The question how far a straight beam bends under one force, in the four ways in which tables hold it.
 *
 * @param eMpa modulus; positive
 * @param areaMm2 area; positive
 * @param iMm4 second moment; positive
 * @param lengthMm length; positive
 * @param forceN force across the beam, at the tip of the cantilever and in the middle of the others
 * @param elements into how many pieces the beam is cut; even, at least 2, so that the middle is a node
 */
public record BeamTable(double eMpa, double areaMm2, double iMm4, double lengthMm, double forceN, int elements) {
    private static final int MOST = 2_000;

    /** Checks length and pieces; the section checks the rest. */
    public BeamTable {
        if (!(lengthMm > 0) || Double.isInfinite(lengthMm)) {
            throw new IllegalArgumentException("length must be above zero, found " + lengthMm);
        }
        if (elements < 2 || elements % 2 != 0 || elements > MOST) {
            throw new IllegalArgumentException(
                    "elements must be an even number from 2 to " + MOST + ", found " + elements);
        }
    }
}
