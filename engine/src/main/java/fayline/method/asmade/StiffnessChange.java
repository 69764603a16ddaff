package fayline.method.asmade;

/**
 * What another resin content does to a laminate of the same cloth, as factors on the planned one.
 *
 * @param modulus along the fibres
 * @param thickness of the laminate
 * @param membrane stiffness per width, modulus times thickness
 * @param bending stiffness per width, modulus times the cube of the thickness
 */
public record StiffnessChange(double modulus, double thickness, double membrane, double bending) {}
