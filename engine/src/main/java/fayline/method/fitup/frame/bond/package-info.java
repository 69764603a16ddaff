/**
 * The adhesive between two frames: as springs, what it carries, and whether it is pulled open or the frames would overlap.
 * Start at {@link fayline.method.fitup.frame.bond.BondLine}.
 *
 * <p>Frame, signs and units are those of the package above. A bond's force is told on the structure, so it is positive along
 * the opening where the bond is pulled. Film stiffness is that of a thin uniform layer (balance of forces); joints after
 * [liu-hu1997]. What does not belong here: strength of adhesives, the release itself.
 */
@NullMarked
package fayline.method.fitup.frame.bond;

import org.jspecify.annotations.NullMarked;
