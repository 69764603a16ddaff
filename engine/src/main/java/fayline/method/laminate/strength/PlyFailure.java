package fayline.method.laminate.strength;

/**
 * Where and how a ply fails.
 *
 * @param ply counted from 0
 * @param face 0 towards -h/2, 1 towards +h/2
 * @param ratio how many times forces and moments can act until then
 * @param mode in words; "-" where the criterion tells none
 * @param fibre whether fibres fail; where the criterion tells no mode, whether their share of it is the larger
 */
public record PlyFailure(int ply, int face, double ratio, String mode, boolean fibre) {}
