/**
 * How stiff a stack of plies is, how it expands, and what stress each ply carries. Start at {@link
 * fayline.method.laminate.Laminate}; one ply is {@link fayline.method.laminate.Lamina}.
 *
 * <p>Axes: x and y lie in the plane, z through it; plies are listed from z = -h/2 to z = +h/2. An angle is counter-clockwise
 * from x to the fibres. Strain at z is eps + z kappa, kappa_x = -d2w/dx2, shear strain is engineering strain. A temperature
 * change is the new temperature less the stress-free one: cooling from cure is negative. Numbers are in SI.
 *
 * <p>Sources: [jones1999], [tsai-hahn1980], [nettles1994]; limits on {@code docs/methods/laminate.md}. What does not belong
 * here: failure ({@code strength}), how constants follow from fibre and resin ({@code method.micro}), panels and joints.
 */
@NullMarked
package fayline.method.laminate;

import org.jspecify.annotations.NullMarked;
