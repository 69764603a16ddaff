package fayline.method.fitup.frame;

/**
 * Bending strain of one beam.
 *
 * @param beam the beam's place in its frame, from 0
 * @param i its first node
 * @param j its second node
 * @param strain the largest at its ends, as a fraction; at the corner of the section, so a little high for a tube that bends
 *     both ways
 */
public record BeamStrain(int beam, int i, int j, double strain) {}
