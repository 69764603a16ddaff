/**
 * The stiffness of a beam that is made of plies: the sum over its plies. Start at {@link
 * fayline.method.fitup.frame.ply.PlySum}.
 *
 * <p>The x axis runs along the beam; fibre angles count from it. Lengths in mm, moduli in MPa. Classical lamination theory
 * [jones1999]. What does not belong here: strength, warpage, laminates loaded both ways; those are questions of a laminate's own.
 */
@NullMarked
package fayline.method.fitup.frame.ply;

import org.jspecify.annotations.NullMarked;
