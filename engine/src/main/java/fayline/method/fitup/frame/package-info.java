/**
 * Frames of straight beams in the plane and in space: how stiff they are, how they move, and what moves freely where a support
 * is missing. Start at {@link fayline.method.fitup.frame.Frame} and {@link fayline.method.fitup.frame.FrameStiffness}; below it
 * lie the spring-back of a clamped and bonded frame, its latch pins, the tables of single beams, and the bench form of the
 * question.
 *
 * <p>Nodes are counted from 0. Axes are those of the part: x aft, y up, z outboard on a left-side part. Lengths in mm, turns in
 * rad by the right-hand rule, forces in N, moments in N mm, moduli in MPa. Sources: element stiffness [przemieniecki1968],
 * torsion of sections [roark1989]; linear small motions, no shear deflection, no buckling, no contact. What does not belong
 * here: projects, laminates, which material a frame is of.
 */
@NullMarked
package fayline.method.fitup.frame;

import org.jspecify.annotations.NullMarked;
