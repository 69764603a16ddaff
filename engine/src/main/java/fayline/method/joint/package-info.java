/**
 * Bonded joints under load and heat. Closed forms [volkersen1938], [goland-reissner1944], [hart-smith1973] stand beside a better
 * method, two beams that shear on a layer of adhesive, solved by finite elements. Start at
 * {@link fayline.method.joint.LapJointCalculator}. Widths of one metre; adherend 1 is loaded at the left end of the overlap and
 * lies above, adherend 2 at the right end; x runs to the right, z up; a pull is positive, peel is positive where it opens the bond.
 * What does not belong here: whether a surface was made ready.
 */
@NullMarked
package fayline.method.joint;

import org.jspecify.annotations.NullMarked;
