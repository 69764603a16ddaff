package fayline.method.laminate.strength;

import java.util.OptionalDouble;

/**
 * What a laminate is in one direction of its plane.
 *
 * @param angleDeg from x counter-clockwise, degrees
 * @param modulusPa modulus in that direction, Pa
 * @param shearModulusPa shear modulus in axes turned so, Pa
 * @param poisson contraction across over stretch along
 * @param expansionPerK expansion in that direction, 1/K
 * @param tensionPa mean stress in that direction at which the first ply fails, pulled, Pa; empty without strengths
 * @param compressionPa the same pressed, a positive number, Pa
 */
public record PolarPoint(
        double angleDeg,
        double modulusPa,
        double shearModulusPa,
        double poisson,
        double expansionPerK,
        OptionalDouble tensionPa,
        OptionalDouble compressionPa) {}
